using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Circuits;

internal static class SourceCombination
{
    private static readonly Reference Rules = new()
    {
        Title = "College Physics 2e", Locator = "section 21.2", Kind = ReferenceKind.Handbook, Note = "Sources in series and in parallel.",
    };

    private const string AlikePacks = "Packs in parallel are counted as equally warm, old and charged, each at its least, nominal or greatest resistance at once: of unlike ones the one of less resistance disconnects sooner.";

    internal static Source Series(Source[] sources)
    {
        Require(sources);
        SourceNumbers sum = sources[0].Numbers;
        foreach (Source source in sources.Skip(1))
        {
            SourceNumbers n = source.Numbers;
            bool lower = n.LimitAmperes < sum.LimitAmperes;
            sum = new SourceNumbers(
                sum.MinimumVolts + n.MinimumVolts,
                sum.NominalVolts + n.NominalVolts,
                sum.MaximumVolts + n.MaximumVolts,
                sum.LeastOhms + n.LeastOhms,
                sum.NominalOhms + n.NominalOhms,
                sum.GreatestOhms + n.GreatestOhms)
            {
                LimitAmperes = lower ? n.LimitAmperes : sum.LimitAmperes,
                Action = lower ? n.Action : sum.Action,
                Beyond = SeriesLimits.Of(sum, n),
            };
        }

        return sum.Beyond is null
            ? Join(sources, "series", sum)
            : Join(sources, "series", sum, "A supply at its current limit conducts when the others push more through it: it does not limit their short-circuit current.");
    }

    internal static Source Parallel(Source[] sources)
    {
        Require(sources);
        LimitAction action = sources[0].LimitAction;
        double limit = 0;
        foreach (Source source in sources)
        {
            if (source.Numbers.LeastOhms <= 0)
            {
                throw new ArgumentException($"A source in parallel needs an internal resistance of its own; {source} has none.", nameof(sources));
            }

            if (source.Numbers.Beyond is not null)
            {
                throw new ArgumentException($"{source} holds a current limit only in part and cannot be put in parallel here.", nameof(sources));
            }

            if (source.LimitAction != action)
            {
                throw new ArgumentException("Sources in parallel must all have the same kind of current limit, or none.", nameof(sources));
            }

            limit += source.Numbers.LimitAmperes;
        }

        if (action == LimitAction.Disconnects)
        {
            limit = Math.Min(FirstTrip(sources, SupplyLevel.Minimum), Math.Min(FirstTrip(sources, SupplyLevel.Nominal), FirstTrip(sources, SupplyLevel.Maximum)));
        }

        SourceNumbers[] all = [.. sources.Select(source => source.Numbers)];
        (double nominal, double middle) = At(all.Select(n => (n.NominalVolts, n.NominalOhms)));
        double least = At(all.Select(n => (n.MaximumVolts, n.LeastOhms))).Ohms, greatest = At(all.Select(n => (n.MinimumVolts, n.GreatestOhms))).Ohms;
        double minimum = Math.Min(nominal, OpenVolts(all.OrderBy(n => n.MinimumVolts), n => n.MinimumVolts).Min());
        double maximum = Math.Max(nominal, OpenVolts(all.OrderByDescending(n => n.MaximumVolts), n => n.MaximumVolts).Max());
        return Join(
            sources, "parallel", new SourceNumbers(minimum, nominal, maximum, least, middle, greatest) { LimitAmperes = limit, Action = action },
            action == LimitAction.Disconnects ? [AlikePacks] : []);
    }

    // The open voltage is the lowest where the lowest sources have their least resistance and the others their greatest, as far up as helps; and the highest the other way.
    private static IEnumerable<double> OpenVolts(IOrderedEnumerable<SourceNumbers> ordered, Func<SourceNumbers, double> volts) =>
        Enumerable.Range(0, ordered.Count() + 1).Select(strong => At(ordered.Select((n, k) => (volts(n), k < strong ? n.LeastOhms : n.GreatestOhms))).Volts);

    // The total at which the first of them disconnects. They do not share by their limits but by voltage and resistance; what is left may carry on, which is not counted on.
    private static double FirstTrip(Source[] sources, SupplyLevel level)
    {
        double volts = double.NegativeInfinity, total = 0;
        foreach (Source source in sources)
        {
            volts = Math.Max(volts, source.Numbers.VoltsAt(level) - (source.Numbers.LimitAmperes * source.Numbers.OhmsAt(level)));
        }

        foreach (Source source in sources)
        {
            total += (source.Numbers.VoltsAt(level) - volts) / source.Numbers.OhmsAt(level);
        }

        return Math.Max(total, Quantities.Accept.Least);
    }

    private static (double Volts, double Ohms) At(IEnumerable<(double Volts, double Ohms)> lines)
    {
        double siemens = 0, amperes = 0;
        foreach ((double volts, double ohms) in lines)
        {
            siemens += 1 / ohms;
            amperes += volts / ohms;
        }

        return (amperes / siemens, 1 / siemens);
    }

    private static void Require(Source[] sources)
    {
        _ = sources ?? throw new ArgumentNullException(nameof(sources));
        if (sources.Length == 0)
        {
            throw new ArgumentException("At least one source is needed.", nameof(sources));
        }

        foreach (Source source in sources)
        {
            _ = source ?? throw new ArgumentNullException(nameof(sources));
        }
    }

    private static Source Join(Source[] sources, string how, in SourceNumbers numbers, params string[] more) => Source.Create(
        $"{sources.Length} sources in {how}",
        numbers,
        sources.All(s => s.Reference.Equals(sources[0].Reference)) ? sources[0].Reference : Rules,
        [.. sources.SelectMany(s => s.Assumptions).Distinct(StringComparer.Ordinal), $"The sources are in {how}; the links between them are not counted.", .. more]).Of(sources, how == "parallel");
}
