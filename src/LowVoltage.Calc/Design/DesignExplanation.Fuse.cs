using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <content>The fuse: its rating, and whether it holds while the load starts.</content>
internal sealed partial class DesignExplanation
{
    private FusePractice Practice => design.Rules.FusePractice;

    private void Fused(FuseRating chosen)
    {
        board.Section(design.Fuse is null ? $"The fuse that comes nearest: {chosen}" : "The fuse");
        Loading(chosen);
        Allowance(chosen);
        if (chosen.Series.Volts is { } volts && Has(CheckKind.FuseVoltage))
        {
            Value(CheckKind.FuseVoltage, board.LookUp("voltage that the fuse is rated for", "V_f", volts, "V", chosen.Series.Reference));
            Limit(CheckKind.FuseVoltage, source.Volts(SupplyLevel.Maximum));
        }

        if (board.Find("l_f") is { } distance)
        {
            Value(CheckKind.FuseDistance, distance);
        }

        Checks(CheckKind.FuseVoltage, CheckKind.FuseDistance);
        board.Section("The fuse while the load starts");
        Inrush(chosen);
        Checks(CheckKind.InrushHeld);
        board.Section("Short circuit at the fuse");
        double atFuse = AtFuse(chosen);
        board.Section("Short circuit at the far end");
        FarEnd(chosen, atFuse);
        Checks(CheckKind.FaultOpensFuse, CheckKind.ShortCircuitTemperature);
        board.Section("Overload");
        Overload(chosen, atFuse);
        Checks(CheckKind.OverloadTemperature);
    }

    private void Loading(FuseRating chosen)
    {
        if (largest is not null)
        {
            Symbol share = board.LookUp("share of its rating that a fuse may carry for good", "k_f", Practice.Loading, "", Practice.LoadingReference);
            Limit(CheckKind.FuseCarriesLoad, board.Step("least rating of the fuse", "I_min", largest / share, largest.Value / Practice.Loading, "A", Practice.LoadingReference));
        }

        string why = design.Fuse is null ? "the one that comes nearest; no fuse of the series passes" : 
            design.Verdict == Verdict.Fail || design.Existing is not null ? "the one that was verified"
            : "the smallest of the series that passes every check with this wire, or the one that was verified";
        Symbol rating = board.LookUp(design.Fuse is null ? "rating tried" : design.Verdict == Verdict.Fail || design.Existing is not null ? "rating of the fuse" : "rating chosen", "I_n", chosen.Amperes, "A", chosen.Series.Reference, $"{chosen}: {why}.");
        Value(CheckKind.FuseCarriesLoad, rating);
        Value(CheckKind.FuseProtectsWire, rating);
        Checks(CheckKind.FuseCarriesLoad);
    }

    // The fuse against the currents of the stretch that carries the least.
    private void Allowance(FuseRating chosen)
    {
        if (design.Check(CheckKind.FuseProtectsWire) is not { Outcome: not CheckOutcome.Undetermined } check)
        {
            Checks(CheckKind.FuseProtectsWire);
            return;
        }

        (ChainLink link, double other, int place) = evaluator.Stretches.Select((s, i) => (s.Link, s.OtherAmperes, i)).OrderBy(s => Math.Max(0, s.Link.RatedAmperes - s.OtherAmperes)).First();
        Tightest(place, "stretch that the fuse is held against");
        Symbol carries = Left(link, other, place);
        Formula most = Practice.ShareOfAmpacity.Equals(1) ? carries : carries * board.LookUp("largest fuse as a share of the wire's current", "k_z", Practice.ShareOfAmpacity, "", Practice.ShareReference);
        double byShare = carries.Value * Practice.ShareOfAmpacity, byFusing = evaluator.MostByFusingCurrent(chosen);
        string reason = "";
        if (!double.IsInfinity(byFusing))
        {
            Symbol fusing = chosen.Curve!.Fusing(board, chosen.Series.Reference);
            most = Formula.Least(most, OverloadCoordination.FusingFactor * carries * board.Find("I_n")! / fusing);
            reason = "Both halves of the rule: the rating against the wire's current, and the conventional fusing current against 1.45 times that.";
        }

        Limit(check.Kind, board.Step("largest fuse that the wire allows", "I_w", most, Math.Min(byShare, byFusing), "A", Practice.ShareReference, reason));
        Checks(CheckKind.FuseProtectsWire);
    }

    // What the others leave of a stretch's continuous current.
    private Symbol Left(in ChainLink link, double other, int place)
    {
        Symbol all = Carried(link, place);
        return other > 0
            ? board.Step($"what the other circuits leave of {NameOf(place)}", "I_left", Formula.Greatest(all - board.Find("I_o")!, 0), Math.Max(0, link.RatedAmperes - other), "A", null)
            : all;
    }

    private void Inrush(FuseRating chosen)
    {
        if (design.Check(CheckKind.InrushHeld) is not { } check || evaluator.FindStart(chosen) is not { } start)
        {
            return;
        }

        Symbol cool = PathInAir();
        Symbol inner = source.Ohms(SupplyLevel.Maximum), v = source.Volts(SupplyLevel.Maximum);
        Symbol around = inner.Value > 0 ? board.Step("least resistance that the surge meets", "R_st", inner + cool, inner.Value + cool.Value, "Ω", null, $"{source.Strongest} The wire is as cool as the air.") : cool;
        (Symbol peak, Symbol length, bool decays) = Surge(start.Surge, start.PeakAmperes, v, around);
        Symbol seconds = peak;
        double held = Math.Min(start.PeakAmperes, asked.Source.Numbers.HeldAmperes);
        if (held < start.PeakAmperes)
        {
            Symbol limit = source.Limit;
            seconds = board.Step("time that the surge takes at the source's limit", "t_i", length * peak / limit, check.Value, "s", null, "The source gives the same charge, later.");
            peak = limit;
        }
        else
        {
            seconds = decays
                ? board.Step("time that the peak, held, would need for the same Joule integral", "t_i", length / 2, check.Value, "s", start.Surge.Reference, "½·I²·τ is the Joule integral of a surge that decays with τ.")
                : length;
        }

        Value(check.Kind, seconds);
        if (check.Outcome != CheckOutcome.Undetermined && chosen.Curve?.WriteLeast(board, peak, chosen.Series.Reference, "t_l", "l") is { } least)
        {
            Limit(check.Kind, least);
        }
    }

    private (Symbol Peak, Symbol Length, bool Decays) Surge(Inrush surge, double amperes, Symbol v, Symbol around)
    {
        const string What = "peak of the surge at switching on";
        bool decays = surge.Wave == InrushWave.Exponential, alone = amperes.Equals(surge.PeakAmperes);
        Symbol tau(string why) => board.LookUp("time constant of the surge", "τ", surge.Seconds, "s", surge.Reference, why);
        Symbol? peak = null, length = null;
        if (alone && surge.Load == "motor" && load.Motors.Count == 1)
        {
            (Symbol most, Symbol start, Symbol? rated) = load.Motors[0];
            length = start;
            peak = board.Step(What, "I_s", rated is null ? Formula.Least(most, v / around) : v / (around + (rated / most)), amperes, "A", surge.Reference);
        }
        else if (alone && surge.Load == "incandescent lamp" && load.Lamps == 1)
        {
            peak = board.Step(What, "I_s", v / (around + load.ColdLamps()[0]), amperes, "A", surge.Reference);
        }
        else if (alone && surge.Load == "input capacitor" && LoadSymbols.Only(load.Capacitors) is { } capacitor)
        {
            peak = board.Step(What, "I_s", v / around, amperes, "A", surge.Reference, "An empty capacitor is a short circuit at first.");
            length = board.Step("time constant of the surge", "τ", around * capacitor * Formula.FromNumber(1e-6, "F/µF"), surge.Seconds, "s", surge.Reference);
        }

        peak ??= board.LookUp(What, "I_s", amperes, "A", surge.Reference, "Of all loads that surge alike at the same time, bounded by what the path lets through.");
        length ??= decays ? tau("") : board.LookUp("duration of the surge", "t_i", surge.Seconds, "s", surge.Reference);
        return (peak, length, decays);
    }
}
