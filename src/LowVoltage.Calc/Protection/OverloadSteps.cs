using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Protection;

/// <summary>Writes how a fuse stands against a wire: the cooling, the temperature that the wire settles at where the fuse need not open, and the race of wire and fuse where it must.</summary>
internal sealed class OverloadSteps(SolutionBuilder board, OverloadLetters letters, TimeCurrentCurve curve, Reference? source)
{
    private Symbol cold = null!;
    private Symbol alpha = null!;
    private Symbol shortest = null!;

    /// <summary>Where the wire settles at the largest current that the fuse need not open; null when it melts there.</summary>
    internal Symbol? Settled { get; private set; }

    /// <summary>Conductor temperature when the fuse has opened at the tightest current; null where it need not open, or the wire melts.</summary>
    internal Symbol? Reached { get; private set; }

    internal Symbol SettledLimit { get; private set; } = null!;

    internal Symbol? ReachedLimit { get; private set; }

    /// <summary>Writes the steps.</summary>
    /// <param name="wire">The wire with its limits, as they were used.</param>
    /// <param name="point">The tightest current, as it was found.</param>
    internal void Write(in WireLimits wire, in TightestPoint point)
    {
        Symbol? cooling = Cooling(wire);
        Limits(wire);
        Symbol fusing = curve.Fusing(board, source);
        bool opens = point.Regime != ProtectionRegime.Sustained && !double.IsInfinity(point.Ratio);
        double first = Math.Min(curve.FusingAmperes, point.Amperes);
        Symbol sustained = first.Equals(fusing.Value)
            ? fusing
            : board.LookUp("largest current that can flow", "I_u", first, "A", null, "The supply gives no more: it never gets to the conventional fusing current.");
        Settle(wire, cooling, sustained);
        if (opens)
        {
            Race(wire, point);
        }
        else if (Settled is { } hot && hot.Value <= wire.SustainedCelsius)
        {
            board.State("currents beyond", "None needs a closer look: whatever the wire does not carry continuously opens the fuse before the wire is at its limit, up to the largest current that can flow.");
        }
    }

    // The balance of the wire where it runs.
    private Symbol? Cooling(in WireLimits wire)
    {
        Wire insulated = letters.Wire;
        Conductor conductor = insulated.Conductor;
        Symbol hot = conductor.ExplainPerMeter(board, letters.RatedCelsius, "R′_" + letters.Mark + (ReferenceEquals(letters.RatedCelsius, letters.Continuous) ? "hot" : "z"), letters.Mark);
        cold = board.Find("R′_20" + (letters.Mark.Length == 0 ? "" : "," + letters.Mark))!;
        alpha = board.Find("α_20," + letters.Mark) ?? board.Find("α_20")!;
        if (wire.Heat.Conductance == 0 || letters.Rated is not { } rated)
        {
            board.State("cooling of the wire", "That of one wire free in still air, the best that is ever counted.", HeatBalance.References[0]);
            return null;
        }

        double n = letters.Parallel, heat = rated.Value * rated.Value * wire.Heat.OhmsPerMeterAt(letters.RatedCelsius.Value);
        Formula made = Formula.Square(rated) * hot;
        Symbol q = board.Step(
            "heat per metre at the rating", "q_z", letters.Parallel == 1 ? made : made / Formula.Square(n), heat, "W/m", null, "What the wire carries continuously brings it to the temperature that the rating stands for: that says how well it is cooled there.");
        double all = 1 / ((1 / wire.Heat.Conductance) + wire.Heat.InnerResistance), shown = heat / (letters.RatedCelsius.Value - RatedAmbient.Value);
        if (Math.Abs(shown - all) > 1e-9 * all)
        {
            return board.LookUp("heat that leaves per metre and kelvin, from conductor to air", "G", all, "W/(m·K)", null, "The least that is counted: hardly anything is left of the rating.");
        }

        return board.Step(
            "heat that leaves per metre and kelvin, from conductor to air", "G", q / (letters.RatedCelsius - RatedAmbient), shown, "W/(m·K)", null,
            "Taken as the same at every temperature: free air would cool a hotter wire better.");
    }

    private Symbol RatedAmbient => letters.RatedAmbient ?? letters.Ambient;

    private void Limits(in WireLimits wire)
    {
        shortest = board.LookUp("limit of the insulation in a short circuit, or of the metal", board.Find("θ_sc") is { } other && !other.Value.Equals(wire.ShortCircuitCelsius) ? "θ_sco" : "θ_sc", wire.ShortCircuitCelsius, "°C", letters.Wire.Insulation.Reference, "For at most 5 s.");
        SettledLimit = Allowed("θ_sus", letters.Allowance.SustainedKelvins, wire.SustainedCelsius, shortest, "limit while the fuse need not open");
    }

    private Symbol Allowed(string name, double kelvins, double celsius, Symbol most, string what) => board.Step(
        what, name, Formula.Least(kelvins == 0 ? letters.Continuous : letters.Continuous + Formula.FromNumber(kelvins, "K"), most), celsius, "°C", letters.Allowance.Reference, $"The allowance: {letters.Allowance.Name}. Never above the limit for short circuits.");

    // G·(θ − θa) = I²·R′(θ), straight in θ on both sides.
    private void Settle(in WireLimits wire, Symbol? cooling, Symbol sustained)
    {
        const string What = "temperature that the wire settles at there";
        double? steady = wire.ReachedCelsius(sustained.Value, null);
        double n = letters.Parallel;
        Formula heat = letters.Parallel == 1 ? Formula.Square(sustained) * cold : Formula.Square(sustained / n) * cold;
        if (steady is { } celsius)
        {
            const string Why = "Where the heat that leaves equals the heat that is made, which grows with the resistance.";
            Settled = cooling is null
                ? board.LookUp(What, "θ_st", celsius, "°C", HeatBalance.References[0], "By iteration of I²·R′(θ) = π·D·[h·(θs − θa) + ε·σ·(Ts⁴ − Ta⁴)] with θ = θs + W·q. " + Why)
                : board.Step(
                    What,
                    "θ_st",
                    ((cooling * letters.Ambient) + (heat * (1 - (alpha * Formula.FromNumber(20, "°C"))))) / (cooling - (heat * alpha)),
                    celsius,
                    "°C",
                    null,
                    "G·(θ − θₐ) = I²·R′(θ), solved for θ. " + Why);
            board.Compare("does the wire stand what the fuse need not open", Settled, Relation.AtMost, SettledLimit, letters.Allowance.Reference, "", celsius <= wire.SustainedCelsius);
            return;
        }

        Symbol melting = board.LookUp($"melting point of {letters.Wire.Conductor.Material.Name}", "θ_m", wire.Heat.MostCelsius, "°C", letters.Wire.Conductor.Material.Reference);
        Settled = null;
        double made = sustained.Value * sustained.Value * wire.Heat.OhmsPerMeterAt(melting.Value);
        Symbol hot = board.Step("heat made per metre at the melting point", "q_m", heat * (1 + (alpha * (melting - Formula.FromNumber(20, "°C")))), made, "W/m", null);
        if (cooling is null)
        {
            board.State(What, "There is none: even at the melting point more heat is made than free air takes away.");
            return;
        }

        double away = cooling.Value * (melting.Value - letters.Ambient.Value);
        Symbol lost = board.Step("heat that leaves per metre at the melting point", "q_a", cooling * (melting - letters.Ambient), away, "W/m", null);
        board.Compare("is more heat made than leaves", hot, Relation.Above, lost, null, "Then the wire finds no steady temperature: it melts unless something else ends the current.", hot.Value > lost.Value);
    }

    private void Race(in WireLimits wire, in TightestPoint point)
    {
        bool late = point.Regime == ProtectionRegime.Overload;
        Symbol current = board.LookUp(
            "tightest current by time", "I_t", point.Amperes, "A", null, "Of all currents that must open the fuse, the one at which the wire has the least time to spare, or near it.");
        Symbol fuse = curve.WriteLongest(board, current, source, "t_o", "o");
        ReachedLimit = late ? Allowed("θ_op", letters.Allowance.OpenedKelvins, wire.OverloadCelsius, shortest, "limit where the fuse opens later than after 5 s") : shortest;
        Symbol start = letters.StartsHot && wire.StartCelsius.Equals(letters.Continuous.Value)
            ? letters.Continuous
            : board.LookUp("conductor temperature at the start", letters.StartLetter, wire.StartCelsius, "°C", null, letters.StartWords);
        Symbol capacity = board.LookUp("heat capacity per metre, of the metal alone", "C_m", wire.Capacity, "J/(m·K)", letters.Wire.Conductor.Material.Reference, "That of the insulation is left out: the wire looks faster than it is.");
        double exact = FuseAgainstWireKernel.ExactRatio(wire, curve, point), ratio = point.Ratio < 1 && exact >= 1 ? point.Ratio : exact;
        string law = "C′·dθ/dt = I²·R′(θ) − q(θ)";
        if (double.IsInfinity(ratio))
        {
            board.State("time of the wire to its limit", "It never gets there at this current.");
        }
        else
        {
            Symbol time = board.LookUp(
                $"time of the wire from {start.Name} to {ReachedLimit.Name}", "t_w", ratio * fuse.Value, "s", OverloadHeating.Reference, $"By quadrature of {law}: t = ∫ C′·dθ/[I²·R′(θ) − q(θ)], with C′ = {capacity.Name} and q as above.");
            board.Compare("does the fuse come first", time, Relation.AtLeast, fuse, FuseAgainstWire.References[1], "", point.Ratio >= 1);
        }

        Reached = wire.ReachedCelsius(point.Amperes, fuse.Value) is { } celsius
            ? board.LookUp("conductor temperature when the fuse has opened", "θ_o", celsius, "°C", OverloadHeating.Reference, $"{law}, integrated over {fuse.Name}.")
            : null;
        if (Reached is null)
        {
            board.State("conductor temperature when the fuse has opened", "There is none: the metal melts before.");
        }
    }
}
