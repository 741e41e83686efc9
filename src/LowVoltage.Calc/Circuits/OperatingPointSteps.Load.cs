using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <content>The load: what it draws, and the voltage at which that agrees with the loop.</content>
internal sealed partial class OperatingPointSteps
{
    private const string Filament = "A filament resists more when it is hotter, so its current changes less than the voltage.";

    /// <summary>The current where the load draws it at any voltage, or the source holds it.</summary>
    private Symbol? Known()
    {
        if (point.CurrentLimitReached)
        {
            return board.LookUp("current limit of the source", "I_lim", point.Amperes, "A", point.Supply.Reference, "The load asks for more than the source gives; the source holds its limit and lets the voltage fall.");
        }

        LoadLaw law = point.Fed.LawAt(point.State);
        if (!law.Exact || law.Watts != 0 || law.Siemens != 0)
        {
            return null;
        }

        List<Formula> currents = point.State == LoadState.Running ? letters.Load.Currents : [];
        return currents.Count switch
        {
            0 => board.LookUp("current of the load", "I", point.Amperes, "A", null, "This load draws it at any voltage."),
            1 => (Symbol)currents[0],
            _ => board.Step("current of the loads", "I", Formula.Total(currents), point.Amperes, "A", null, "They draw it at any voltage."),
        };
    }

    private (Symbol Current, Symbol? Volts) Settle(Symbol v, Formula r)
    {
        LoadLaw law = point.Fed.LawAt(point.State);
        if (law.Watts == 0 && law.Amperes == 0)
        {
            return (Step("current", "I", v / (r + Resistance(law)), point.Amperes, "A", OhmsLaw.Reference, "Ohm's law for the whole loop."), null);
        }

        return law.Siemens == 0 && law.Amperes == 0 ? ConstantPower(v, r, law) : Mixed(v, r, law);
    }

    private Symbol Resistance(in LoadLaw law) => point.State == LoadState.Running && LoadSymbols.Only(letters.Load.Resistances) is { } only
        ? only
        : point.State == LoadState.Running && letters.Load.Resistances.Count > 1
        ? board.Step("resistance of the loads together", "R_L", 1 / Formula.Total([.. letters.Load.Resistances.Select(ohms => 1 / ohms)]), 1 / law.Siemens, "Ω", null, "Side by side their conductances add.")
        : board.LookUp("resistance of the load", "R_L", 1 / law.Siemens, "Ω", null);

    private Symbol Power(in LoadLaw law)
    {
        List<Formula> powers = letters.Load.Powers();
        return LoadSymbols.Only(powers) is { } only ? only : board.Step("power of the loads together", "P_sum", Formula.Total(powers), law.Watts, "W", null);
    }

    private (Symbol Current, Symbol? Volts) ConstantPower(Symbol v, Formula r, in LoadLaw law)
    {
        Symbol p = Power(law);
        Symbol u = Step(
            "voltage at the load",
            "U",
            (v + Formula.SquareRoot(Formula.Square(v) - (4 * r * p))) / 2,
            point.LoadVolts,
            "V",
            Loop,
            "U = V − R·P/U is a quadratic in U. Its higher root is the stable one; the load could not run if the root were of a negative number.");
        return (Step("current", "I", p / u, point.Amperes, "A", OhmsLaw.Reference), u);
    }

    private (Symbol Current, Symbol? Volts) Mixed(Symbol v, Formula r, in LoadLaw law)
    {
        Formula one = 1, left = v;
        List<Formula> drawn = [];
        if (law.Siemens != 0)
        {
            Symbol g = board.Step("conductance of the resistances among the loads", "G_L", 1 / Resistance(law), law.Siemens, "S", null);
            one += r * g;
            drawn.Add(g);
        }

        if (law.Amperes != 0)
        {
            Symbol j = LoadSymbols.Only(letters.Load.Currents) is { } only ? only : board.Step("constant currents among the loads", "J", Formula.Total(letters.Load.Currents), law.Amperes, "A", null);
            left -= r * j;
            drawn.Add(j);
        }

        Symbol? p = law.Watts == 0 ? null : Power(law);
        Symbol u = Step(
            "voltage at the load",
            "U",
            p is null ? left / one : (left + Formula.SquareRoot(Formula.Square(left) - (4 * one * r * p))) / (2 * one),
            point.LoadVolts,
            "V",
            Loop,
            p is null ? "Kirchhoff, solved for U." : "Kirchhoff, solved for U: the higher root is the stable one.");
        if (law.Siemens != 0)
        {
            drawn[0] *= u;
        }

        if (p is not null)
        {
            drawn.Add(p / u);
        }

        return (Step("current", "I", Formula.Total(drawn), point.Amperes, "A", OhmsLaw.Reference, "Each load draws its own current at that voltage."), u);
    }

    // Tried until both sides agree.
    private (Symbol Current, Symbol? Volts) Tried()
    {
        Symbol u = Own(board.LookUp(
            "voltage at the load" + Level, SymbolName.With("U", letters.Mark), point.LoadVolts, "V", null, "Tried until the last step, round the loop, gives it again; shown is the last value."));
        return (Step(
            "current", "I", Drawn(u), point.Amperes, "A", letters.Load.Lamps > 0 ? LampLoad.CurrentReference : OhmsLaw.Reference, letters.Load.Lamps > 0 ? Filament : "What the load draws at that voltage."), u);
    }

    private Formula Drawn(Symbol u)
    {
        LoadLaw law = point.Fed.LawAt(point.State);
        List<Formula> drawn = [.. letters.Load.RatedLamps().Select(lamp => lamp.Amperes * Formula.Power(u / lamp.Volts, LampLoad.Exponent))];
        drawn.AddRange(letters.Load.Resistances.Select(ohms => u / ohms));
        drawn.AddRange(letters.Load.Currents);
        drawn.AddRange(letters.Load.Measured.Select((load, at) => (Formula)Own(board.LookUp(
            "current between the measured points" + Level, SymbolName.With(at == 0 ? "I_m" : $"I_m{Accept.Text(at + 1)}", letters.Mark), load.AmperesAt(point.LoadVolts, point.State), "A", null, "A monotone cubic through the points."))));
        drawn.AddRange(law.Watts == 0 ? [] : letters.Load.Powers().Select(p => p / u));
        return Formula.Total(drawn);
    }

    private void Limited()
    {
        LoadLaw law = point.Fed.LawAt(point.State);
        LoadVolts = law.Exact && law.Watts == 0 && law.Amperes == 0
            ? Step("voltage at the load", "U", Current * Resistance(law), point.LoadVolts, "V", OhmsLaw.Reference)
            : Own(board.LookUp("voltage at the load" + Level, SymbolName.With("U", letters.Mark), point.LoadVolts, "V", null, "Where the load draws just that current."));
    }
}
