namespace LowVoltage.Calc.Teaching;

/// <summary>The sizes that mistakes lead to in a design problem.</summary>
internal static class DesignMistakes
{
    internal static IEnumerable<(Mistake Mistake, DesignChoice Choice)> Of(DesignCircuit c)
    {
        double i = c.Right.Amperes, f = c.Factor.Value, allowed = Allowed(c), needed = c.Right.Rating / f;
        DesignRow? drop = c.ByDrop(allowed), current = c.ByCurrent(needed);
        double watts = FuseProblems.Rating(c.P.Value / c.Loading.Value);
        int at = c.IndexOf(c.Right.Row);
        bool wires = c.Chassis is null;
        (Mistake, DesignRow?, double)[] all =
        [
            (Mistake.AmpacityForgotten, drop, c.Right.Rating),
            (Mistake.DropForgotten, current, c.Right.Rating),
            (Mistake.OneWayTakenForLoop, wires ? c.Larger(c.ByDrop(2 * allowed), current) : null, c.Right.Rating),
            (Mistake.ReturnTakenAsWire, wires ? null : c.Larger(c.ByDrop(allowed / 2), current), c.Right.Rating),
            (Mistake.DeratingForgotten, c.Larger(drop, c.ByCurrent(c.Right.Rating)), c.Right.Rating),
            (Mistake.DeratingTwice, c.Larger(drop, c.ByCurrent(needed / f)), c.Right.Rating),
            (Mistake.FuseForLoadNotWire, c.Larger(drop, c.ByCurrent(i / f)), c.Right.Rating),
            (Mistake.WattsForAmperes, double.IsNaN(watts) ? null : c.Larger(c.ByDrop(allowed * i / c.P.Value), c.ByCurrent(watts / f)), watts),
            (Mistake.RoundedDown, at > 0 ? c.Rows[at - 1] : null, c.Right.Rating),
            (Mistake.TooThick, at + 1 < c.Rows.Count ? c.Rows[at + 1] : null, c.Right.Rating),
        ];
        return all.Where(wrong => wrong.Item2 is not null && wrong.Item2 != c.Right.Row)
            .Select(wrong => (wrong.Item1, new DesignChoice(wrong.Item2!, wrong.Item3, c.Ohms(wrong.Item2!), i)));
    }

    private static double Allowed(DesignCircuit c) =>
        ((c.Share.Value / 100 * c.U.Value / c.Right.Amperes) - (c.Chassis is null ? 0 : c.Chassis.Value / 1000)) / (c.Ways * c.L.Value) * 1000;
}
