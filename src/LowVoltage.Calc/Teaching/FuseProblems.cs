using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on the choice of a fuse and on the time it takes to open.</summary>
internal static class FuseProblems
{
    internal const string Paper = "Paper exercise. Never try out a short circuit or an overload: wires burn, fuses can burst and batteries can explode.";

    internal const double LeastTimed = 3;

    private const double Clear = 1.03;

    private static readonly FuseSeries Blades = FuseSeries.RoadVehicleBlade;
    // Those that the standard gives times for.
    private static readonly FuseRating[] Timed = [.. Blades.Ratings.Where(fuse => fuse.Current.Amperes is >= LeastTimed and <= 40)];

    // The blade fuses of this series are rated 32 V; a problem must not teach otherwise.
    private const int MostVolts = 32;

    private static readonly decimal[] Loadings = [0.75m, 0.8m, 0.7m];
    private static readonly double[] Multiples = [1.35, 1.6, 2, 3.5, 6];

    /// <summary>The ratings that problems offer.</summary>
    internal static IEnumerable<double> Standards => Blades.Ratings.Select(fuse => fuse.Current.Amperes);

    internal static bool ChoiceOneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven i = d.Give("current of the load", "I", load.Amperes, 3, "A");
        DrawnGiven share = d.Give("share of its rating that a fuse carries continuously", "k", d.Random.Pick(Loadings), "");
        d.Say($"{d.Subject(load)} draws {i} for hours on end. A blade fuse may carry at most {share} times its rating continuously. Fuses available: {RatingList()}.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Fuse, "? A")], [ProblemDraft.Part(load, i)]);
        d.GiveWords("ratings available", RatingList());
        double least = FuseLoading.LeastRatingFor(Make.A(i.Value), share.Value).Amperes;
        Symbol needed = d.Step("the least rating", "I_m", i.Symbol / share.Symbol, least, "A", null, "The load may be at most that share of the rating.");
        if (load.Volts > MostVolts || IsTooNear(needed.Value) || !Blades.TrySmallestAtLeast(Make.A(needed.Value), out FuseRating? fuse))
        {
            return false;
        }

        Symbol rating = d.Choose("the next standard rating", "I_n", fuse.Current.Amperes, "A", Blades.Reference, "The smallest rating that is not below it.");
        d.AskStandard("Which is the smallest fuse that carries the load?", rating, Standards);
        d.Wrong(Mistake.LoadingForgotten, Rating(i.Value));
        d.Wrong(Mistake.LoadingMultiplied, Rating(i.Value * share.Value));
        d.Wrong(Mistake.RoundedDown, Blades.NextSmaller(fuse.Current)?.Current.Amperes ?? double.NaN);
        d.Wrong(Mistake.LoadingComplement, Rating(i.Value / (1 - share.Value)));
        d.Wrong(Mistake.TooLargeByOne, Blades.NextLarger(fuse.Current)?.Current.Amperes ?? double.NaN);
        d.Wrong(Mistake.LoadingTwice, Rating(needed.Value / share.Value));
        return true;
    }

    internal static bool ChoiceSeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven n = d.Give("number of loads", "n", (decimal)(2 + d.Random.Next(5)), "");
        DrawnGiven p = d.Give("power of each load", "P", load.Watts, "W");
        DrawnGiven u = d.Give("voltage", "U", load.Volts, "V");
        DrawnGiven share = d.Give("share of its rating that a fuse carries continuously", "k", d.Random.Pick(Loadings), "");
        DrawnGiven f = d.Give("factor for the hot place", "f", d.Random.Pick((decimal[])[0.71m, 0.79m, 0.87m, 0.94m, 0.61m]), "");
        IReadOnlyList<DesignRow> rows = DesignTable.For(d).Rows;
        d.Say($"{d.InAtStart}, {n} loads run together for hours on one wire behind one blade fuse; each is {load.One} rated {p} at {u}. A fuse may carry at most {share} times its rating continuously, and the wire must carry the full rating. Where the wire runs, it may carry only {f} times the table current. Fuses available: {RatingList()}.");
        d.Sketch(d.Feeder(u), [ProblemDraft.Part(DiagramSymbol.Fuse, "? A"), ProblemDraft.Part(DiagramSymbol.Wire, "? size")], [ProblemDraft.Part(load, $"{n} × {p}")]);
        d.GiveWords("ratings available", RatingList());
        d.Show(new ProblemTable(["size", "table, A"], [.. rows.Select(row => (IReadOnlyList<string>)[row.Text, AnswerText.Of(row.Amperes, "")])]));
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(u.Value), Make.W(n.Value * p.Value)).Current.Amperes;
        Symbol i = d.Step("the current of all together", "I", n.Symbol * p.Symbol / u.Symbol, amperes, "A", OhmsLaw.Reference, "Their powers add; power over voltage.");
        Symbol needed = d.Step("the least rating of the fuse", "I_m", i / share.Symbol, FuseLoading.LeastRatingFor(Make.A(amperes), share.Value).Amperes, "A", null, "The load may be at most that share of the rating.");
        if (load.Volts > MostVolts || IsTooNear(needed.Value) || !Blades.TrySmallestAtLeast(Make.A(needed.Value), out FuseRating? fuse))
        {
            return false;
        }

        Symbol rating = d.Choose("the fuse", "I_n", fuse.Current.Amperes, "A", Blades.Reference, "The smallest rating that is not below it.");
        Symbol table = d.Step("the current that the table must give", "I_t", rating / f.Symbol, "A", null, "Derated, the wire must still carry what the fuse lets pass.");
        if (Fit(rows, table.Value) is not { } fit || rows.Any(row => Rounding.IsTooNear(table.Value, (double)row.Amperes)))
        {
            return false;
        }

        d.AskStandard("Which is the smallest size that suits this fuse?", d.Choose("the smallest size", "S", fit.Value, d.SizeUnit, null, $"The first row of the table with at least that: {AnswerText.Of(fit.Amperes, "A")}."), rows.Select(row => row.Value));
        d.Wrong(Mistake.FuseForLoadNotWire, Size(rows, amperes / f.Value));
        d.Wrong(Mistake.DeratingForgotten, Size(rows, rating.Value));
        d.Wrong(Mistake.DeratingTwice, Size(rows, table.Value / f.Value));
        d.Wrong(Mistake.OneLoadOnly, Size(rows, Rating(amperes / n.Value / share.Value) / f.Value));
        d.Wrong(Mistake.RoundedDown, rows.LastOrDefault(row => (double)row.Amperes < table.Value)?.Value ?? double.NaN);
        d.Wrong(Mistake.TooThick, rows.Where(row => row.Amperes > fit.Amperes).Select(row => row.Value).DefaultIfEmpty(double.NaN).First());
        return true;
    }

    internal static bool TimeOneStep(ProblemDraft d)
    {
        FuseRating fuse = d.Random.Pick(Timed);
        LoadDraw load = d.DrawLoad();
        DrawnGiven rating = d.Give("rating of the fuse", "I_n", (decimal)fuse.Current.Amperes, "A");
        int gate = 1 + d.Random.Next(3);
        decimal most = (decimal)(Multiples[gate + 1] / Clear), multiple = d.Random.OnGrid((decimal)Multiples[gate], most, 0.01m);
        DrawnGiven i = d.Give("current", "I", Math.Round((decimal)fuse.Current.Amperes * multiple, 1), "A");
        d.Say($"{d.InAtStart}, a faulty {load.Name} draws {i} through a {rating} blade fuse. The standard gives such a fuse the times in the table; the longest time of a row also holds for any larger current.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Fuse, rating)], [ProblemDraft.Part(load, "faulty", i)]);
        Gates(d);
        Symbol m = d.Step("the current as a multiple of the rating", "m", i.Symbol / rating.Symbol, "", null, "The table counts in multiples of the rating.");
        double longest = Longest(fuse, Multiples[gate]);
        Symbol t = d.Choose("the longest time", "t", longest, "s", OperatingTimeLimits.RoadVehicleBlade.Reference, $"From the row of {Print(Multiples[gate])} times the rating, the last that is not above the current.");
        d.Ask("By this table, how long may the fuse take at most to open?", t, 2);
        d.Warn(Paper);
        d.Wrong(Mistake.LeastForLongest, Least(fuse, Multiples[gate]));
        d.Wrong(Mistake.NextGate, Longest(fuse, Multiples[gate + 1]));
        d.Wrong(Mistake.OneMultipleTooLow, Longest(fuse, Multiples[gate - 1]));
        d.Wrong(Mistake.LeastOfNextGate, Least(fuse, Multiples[gate + 1]));
        d.Wrong(Mistake.ThousandTooMuch, longest / 1000);
        return m.Value >= Multiples[gate] && m.Value <= Multiples[gate + 1] / Clear;
    }

    internal static bool TimeSeveralSteps(ProblemDraft d)
    {
        FuseRating fuse = d.Random.Pick(Timed);
        DrawnGiven rating = d.Give("rating of the fuse", "I_n", (decimal)fuse.Current.Amperes, "A");
        int gate = 1 + d.Random.Next(3);
        decimal multiple = d.Random.OnGrid((decimal)Multiples[gate], (decimal)Multiples[gate + 1], 0.01m);
        LoadDraw load = d.DrawLoad();
        DrawnGiven i = d.Give("current", "I", Rounding.Trimmed((decimal)fuse.Current.Amperes * multiple), "A");
        d.Say($"{d.InAtStart}, a faulty {load.Name} draws {i} through a {rating} blade fuse. The standard gives such a fuse the times in the table. Between two rows, the logarithm of the longest time follows a straight line against the logarithm of the current.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Fuse, rating)], [ProblemDraft.Part(load, "faulty", i)]);
        Gates(d);
        Symbol m = d.Step("the current as a multiple of the rating", "m", i.Symbol / rating.Symbol, "", null, "The table counts in multiples of the rating.");
        double low = Multiples[gate], high = Multiples[gate + 1], slow = Longest(fuse, low), fast = Longest(fuse, high);
        Symbol m1 = d.Choose("the row below: multiple", "m_1", low, "", null, "From the table."), t1 = d.Choose("its longest time", "t_1", slow, "s", null, "From the table.");
        Symbol m2 = d.Choose("the row above: multiple", "m_2", high, "", null, "From the table."), t2 = d.Choose("its longest time", "t_2", fast, "s", null, "From the table.");
        Symbol slope = d.Step("the slope on logarithmic axes", "n", Formula.Logarithm(t2 / t1) / Formula.Logarithm(m2 / m1), "", null, "Change of the logarithm of time over that of current.");
        double longest = Longest(fuse, i.Value / rating.Value);
        d.Ask("How long may the fuse take at most to open?", d.Step("the longest time", "t", t1 * Formula.Power(m / m1, slope), longest, "s", OperatingTimeLimits.RoadVehicleBlade.Reference, "From the row below along the straight line."), 3, 0.02 * longest);
        d.Warn(Paper);
        d.Wrong(Mistake.LinearForLogarithmic, slow + ((fast - slow) * ((i.Value / rating.Value) - low) / (high - low)));
        d.Wrong(Mistake.NotInterpolated, slow);
        d.Wrong(Mistake.NextGate, fast);
        d.Wrong(Mistake.LeastForLongest, fuse.OperatingTime(Make.A(i.Value)).Least.Seconds);
        return (double)multiple > low * 1.05 && (double)multiple < high / 1.05;
    }

    internal static string RatingList() => string.Join(", ", Blades.Ratings.Select(fuse => AnswerText.Of((decimal)fuse.Current.Amperes, ""))) + " A";

    internal static DesignRow? Fit(IReadOnlyList<DesignRow> rows, double amperes) => rows.FirstOrDefault(row => (double)row.Amperes >= amperes);

    internal static double Rating(double amperes) => Blades.TrySmallestAtLeast(Make.A(amperes), out FuseRating? fuse) ? fuse.Current.Amperes : double.NaN;

    /// <summary>Whether a number is so near a rating that rounding on the way could change the choice.</summary>
    internal static bool IsTooNear(double amperes) => Blades.Ratings.Any(fuse => Rounding.IsTooNear(amperes, fuse.Current.Amperes));

    private static double Size(IReadOnlyList<DesignRow> rows, double amperes) => double.IsNaN(amperes) ? double.NaN : Fit(rows, amperes)?.Value ?? double.NaN;

    private static double Least(FuseRating fuse, double multiple) => fuse.OperatingTime(Make.A(fuse.Current.Amperes * multiple)).Least.Seconds;

    private static double Longest(FuseRating fuse, double multiple) => fuse.OperatingTime(Make.A(fuse.Current.Amperes * multiple)).Longest.Seconds;

    // The gates of the standard that a statement prints.
    private static void Gates(ProblemDraft d)
    {
        FuseRating any = Blades.SmallestAtLeast(Make.A(10));
        d.Show(new ProblemTable(
            ["times the rating", "least, s", "longest, s"],
            [.. Multiples.Select(m => (IReadOnlyList<string>)[Print(m), Print(any.OperatingTime(Make.A(10 * m)).Least.Seconds), Print(Longest(any, m))])]));
    }

    private static string Print(double value) => AnswerText.Of(Rounding.Figures(value, 6), "");
}
