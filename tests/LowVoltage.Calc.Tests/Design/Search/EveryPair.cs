using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Checks;

namespace LowVoltage.Calc.Tests.Design.Search;

/// <summary>The choice of wire and fuse by verifying every wire with every fuse of the rules, whatever the outcome, and picking by what the designer promises. It shares nothing with the search.</summary>
internal sealed class EveryPair(CircuitRequirements asked, DesignRules rules)
{
    // The share of a limit that one failing size must come nearer than a smaller one, and one fuse than a smaller one.
    private const double Nearer = 0.1;

    private static readonly CheckKind[] OfWire =
    [
        CheckKind.MechanicalMinimum, CheckKind.PowerDelivery, CheckKind.VoltageDrop, CheckKind.LoadVoltage, CheckKind.StartVoltage, CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature,
    ];

    private readonly IReadOnlyList<Conductor> sizes = rules.Conductors.Conductors;
    private readonly IReadOnlyList<FuseRating> fuses = rules.Fuses.Ratings;
    private readonly Dictionary<(int, FuseRating?), CircuitDesign> verified = [];

    internal enum Rank
    {
        Passes,
        Undetermined,
        FailsWhatNothingCures,
        None,
    }

    internal sealed record Choice(int Size, FuseRating? Fuse, bool IsNearest, Rank Rank);

    internal Choice Best()
    {
        for (int i = 0; i < sizes.Count; i++)
        {
            Answers wire = Wire(i);
            if (wire.Curable.Length == 0 && wire.Rated && wire.Delivers && Serving(i) is { Fuse: not null } chosen)
            {
                return new Choice(i, chosen.Fuse, false, chosen.Rank);
            }
        }

        return Nearest();
    }

    /// <summary>The worst failure of the wire, or else of the fuse that comes nearest on it, what a size or rating cures first; or else the first that is undetermined.</summary>
    internal CheckResult WhyNot(int size)
    {
        Answers wire = Wire(size), all = wire.Failed.Length == 0 && wire.Rated && wire.Delivers ? NearestFuse(size).Answers : wire;
        return all.Curable.Length > 0 ? Answers.Worst(all.Curable) : all.Failed.Length > 0 ? Answers.Worst(all.Failed) : all.Undetermined[0];
    }

    // The smallest that carries the load and protects the wire; one that settles more, or of known times where those of the smallest are not, up to twice or three times that.
    private (FuseRating? Fuse, Rank Rank) Serving(int size)
    {
        FuseRating? kept = null;
        Rank best = Rank.None;
        double most = double.PositiveInfinity;
        bool smallerFailed = false;
        foreach (FuseRating fuse in fuses.Where(fuse => fuse.Amperes >= Least(size) && !IsBelow(fuse)))
        {
            if (fuse.Amperes > most)
            {
                break;
            }

            Answers own = OfFuse(size, fuse);
            bool timed = fuse.FaultCurve is not null, fails = own.Curable.Length > 0 || (!timed && smallerFailed);
            smallerFailed |= fails;
            Rank rank = own.Failed.Length > 0 ? Rank.FailsWhatNothingCures : own.Undetermined.Length > 0 ? Rank.Undetermined : Rank.Passes;
            if (!fails && (rank < best || (rank == best && timed && kept!.FaultCurve is null)))
            {
                (kept, best) = (fuse, rank);
                most = Math.Min(most, fuse.Amperes * (timed ? 2 : 3));
            }

            if (best == Rank.Passes)
            {
                break;
            }
        }

        return (kept, best);
    }

    private Choice Nearest()
    {
        int size = First(Enumerable.Range(0, sizes.Count), i => Weighed(Wire(i)));
        if (Weighed(Wire(size)).Bad >= 100)
        {
            return new Choice(size, Wire(size).Delivers ? NearestFuse(size).Fuse : null, true, Rank.None);
        }

        List<int> asked = [];
        for (int i = size, step = 1; i < sizes.Count; i += step++)
        {
            asked.Add(i);
        }

        size = First(asked.Append(sizes.Count - 1).Distinct(), i => Weighed(NearestFuse(i).Answers));
        return new Choice(size, NearestFuse(size).Fuse, true, Rank.None);
    }

    // The first of the least number of failures, unless a later one of as many comes a good deal nearer to its limit.
    private static T First<T>(IEnumerable<T> candidates, Func<T, (int Bad, double Tightness)> rank)
    {
        T best = candidates.First();
        foreach (T next in candidates.Skip(1))
        {
            (int bad, double tightness) = rank(next);
            if (bad < rank(best).Bad || (bad == rank(best).Bad && tightness > rank(best).Tightness + Nearer))
            {
                best = next;
            }
        }

        return best;
    }

    private static (int Bad, double Tightness) Weighed(Answers all) => (all.Failed.Length + (all.Delivers ? 0 : 1000) + (all.Rated ? 0 : 100), all.Reach);

    // Of what is made for the volts and carries the load, if there is such a fuse: the one that fails least. One too large for the wire is a last resort, and one of unknown times comes after one of known.
    private (FuseRating? Fuse, Answers Answers) NearestFuse(int size)
    {
        Answers wire = Wire(size);
        double least = Math.Min(Least(size), fuses[^1].Amperes);
        bool forVolts = fuses.Any(fuse => fuse.Amperes >= least && !IsBelow(fuse));
        FuseRating? nearest = null;
        foreach (FuseRating fuse in fuses.Where(fuse => fuse.Amperes >= least && !(forVolts && IsBelow(fuse))))
        {
            if (nearest is null)
            {
                nearest = fuse;
                continue;
            }

            Answers before = All(size, nearest), own = All(size, fuse);
            bool sameRating = forVolts && fuses.TakeWhile(other => other != fuse).Any(other => other.Amperes.Equals(fuse.Amperes) && IsAsked(other));
            if (!wire.Rated || fuse.Amperes > Most(size) || before.Failed.Length == wire.Failed.Length)
            {
                break;
            }

            if (!sameRating && !(fuse.FaultCurve is null && nearest.FaultCurve is not null)
                && (own.Failed.Length < before.Failed.Length || (own.Failed.Length == before.Failed.Length && Answers.Worst(own.Failed).Tightness > Answers.Worst(before.Failed).Tightness + Nearer)))
            {
                nearest = fuse;
            }
        }

        return (nearest, nearest is null ? wire : All(size, nearest));

        // A second fuse of one rating is not asked, unless the first was passed over.
        bool IsAsked(FuseRating other) => other.Amperes >= least && !IsBelow(other) && (other.FaultCurve is not null || !fuses.TakeWhile(f => f != other).Any(f => f.Amperes >= least && !IsBelow(f) && f.FaultCurve is not null));
    }

    // A share of 1e-9 is what rounding may take.
    private double Least(int size) => Verified(size, null).State().LeastFuseAmperes * (1 - 1e-9);

    private double Most(int size) => Verified(size, null).State().MostFuseAmperes * (1 + 1e-9);

    private bool IsBelow(FuseRating fuse) => fuse.VoltageBasis == RatingBasis.DirectCurrent && fuse.VoltageRating is { } volts && volts.Volts < asked.Source.Numbers.MaximumVolts;

    private Answers Wire(int size) => new(Verified(size, null), kind => OfWire.Contains(kind));

    private Answers OfFuse(int size, FuseRating fuse) => new(Verified(size, fuse), kind => !OfWire.Contains(kind));

    private Answers All(int size, FuseRating fuse) => new(Verified(size, fuse), _ => true);

    private CircuitDesign Verified(int size, FuseRating? fuse) =>
        verified.TryGetValue((size, fuse), out CircuitDesign? known) ? known : verified[(size, fuse)] = CircuitDesigner.Verify(asked, sizes[size], fuse, rules);

    private sealed class Answers(CircuitDesign design, Func<CheckKind, bool> of)
    {
        private readonly CheckResult[] checks = [.. design.Checks.Where(check => of(check.Kind!))];

        internal bool Delivers { get; } = design.Find(CheckKind.PowerDelivery) is null;

        internal bool Rated => design.State().IsRated;

        internal CheckResult[] Failed => [.. checks.Where(check => check.Outcome == CheckOutcome.Fail)];

        internal CheckResult[] Curable => [.. Failed.Where(check => CheckCase.IsCured(design, check.Kind!))];

        internal CheckResult[] Undetermined => [.. checks.Where(check => check.Outcome == CheckOutcome.Undetermined)];

        /// <summary>
        /// How near the worst failure is. Where what was stated beside the wire loses more than is allowed, no wire cures that: then the wire's own part of the drop counts, as far as it is beyond the
        /// allowance by itself, and the worst of what fails besides.
        /// </summary>
        internal double Reach
        {
            get
            {
                BranchState at = design.State();
                double allowed = at.DropLimit.TryVolts(at.Source.NominalVolts, at.Intermittent, out double volts) ? volts : double.PositiveInfinity;
                if (!Delivers || at.FixedDropVolts <= allowed)
                {
                    return Failed.Length > 0 ? Worst(Failed).Tightness : 0;
                }

                double ownPart = 1 - (at.Duty.OnAmperes * (at.HotPathOhms - at.FixedOhms) / allowed);
                CheckResult[] others = Array.FindAll(Failed, check => check.Kind != CheckKind.VoltageDrop);
                return Math.Min(ownPart < 0 ? ownPart : double.PositiveInfinity, others.Length > 0 ? Worst(others).Tightness : double.PositiveInfinity);
            }
        }

        /// <summary>The one with the least margin; one that repeats another on a scale of its own only where there is no other.</summary>
        internal static CheckResult Worst(CheckResult[] failed)
        {
            CheckResult[] ofTheirOwn = Array.FindAll(failed, check => check.Kind != CheckKind.ConductorTemperature);
            return (ofTheirOwn.Length > 0 ? ofTheirOwn : failed).MinBy(check => check.Margin ?? -1);
        }
    }
}
