using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Design;

/// <content>The fuse against the wire over every current from the conventional fusing current to the prospective one.</content>
internal sealed partial class CircuitEvaluator
{
    private Surroundings? still;

    private void CheckOverload(ref CheckList list, FuseRating fuse, double atFuse)
    {
        if (rules.FusePractice.Overload is not { } allowance || atFuse <= WeakestAmperes())
        {
            // The rule on currents was taken instead, or the supply cannot overload the wire.
            return;
        }

        if (fuse.Curve is not { } curve || !IsRated)
        {
            CheckNote missing = IsRated ? new CheckNote(NoteKind.NoTimes, fuse) : "the wire is not rated here";
            list.Add(CheckResult.Undetermined(CheckKind.OverloadTemperature, 0, allowance.Reference, missing));
            return;
        }

        list.Add(FindOverload(fuse, curve, allowance, atFuse).Check);
    }

    /// <summary>The stretch and the current at which the fuse is nearest to failing its wire. The wire is rated.</summary>
    internal OverloadFinding FindOverload(FuseRating fuse, TimeCurrentCurve curve, OverloadAllowance allowance, double atFuse)
    {
        // A source without resistance has no prospective current; its breaking capacity is open, and here the largest current that is accepted at all stands for it.
        double prospective = Math.Min(atFuse, Accept.MostAmperes);
        OverloadFinding worst = new() { Stretch = -1 };
        int stretch = 0;
        foreach (ChainLink[] chain in chains)
        {
            for (int i = 0; i < chain.Length; i++, stretch++)
            {
                WireLimits limits = LimitsOf(chain[i], chain == shared ? othersAmperes : 0, allowance);
                TightestPoint point = FuseAgainstWireKernel.Verdict(limits, curve, prospective);
                if (worst.Stretch >= 0 && point.Ratio > worst.Point.Ratio)
                {
                    continue;
                }

                // Currents that the fuse need never open make every stretch alike by time: then the one nearest to its limit, or furthest beyond it.
                CheckResult check = OverloadCheck(fuse, point, limits, allowance);
                bool same = worst.Stretch >= 0 && point.Ratio.Equals(worst.Point.Ratio) && worst.Check.Margin <= check.Margin;
                worst = same ? worst : new OverloadFinding { Stretch = stretch, Check = check, Point = point, Limits = limits };
            }
        }

        return worst;
    }

    /// <summary>What decides the overload check.</summary>
    internal struct OverloadFinding
    {
        /// <summary>Place among <see cref="Stretches"/>.</summary>
        internal int Stretch;
        internal CheckResult Check;
        internal TightestPoint Point;
        internal WireLimits Limits;
    }

    // What the wire settles at under the largest current that the fuse need not open, and what it reaches where time is shortest: the one nearer to its limit is shown.
    private static CheckResult OverloadCheck(FuseRating fuse, in TightestPoint point, in WireLimits wire, OverloadAllowance allowance)
    {
        CheckResult shown = CheckAt(fuse, point, wire, allowance);
        double first = Math.Min(fuse.Curve!.FusingAmperes, point.Amperes);
        if (point.Regime != ProtectionRegime.Sustained && point.Ratio >= 1)
        {
            CheckResult settled = CheckAt(fuse, new TightestPoint(first, point.Ratio, ProtectionRegime.Sustained), wire, allowance);
            shown = settled.Margin < shown.Margin ? settled : shown;
        }

        return shown;
    }

    private static CheckResult CheckAt(FuseRating fuse, in TightestPoint point, in WireLimits wire, OverloadAllowance allowance)
    {
        bool opens = fuse.TryLongestSeconds(point.Amperes, out double seconds) && point.Regime != ProtectionRegime.Sustained;
        double? reached = wire.ReachedCelsius(point.Amperes, opens ? seconds : null);
        NoteKind note = reached is null ? NoteKind.OverloadMelts : opens ? NoteKind.OverloadOpened : NoteKind.OverloadHeld;
        return CheckResult.Judged(
            CheckKind.OverloadTemperature,
            // A wire that starts above its limit fails there, whatever it cools to.
            Math.Max(reached ?? wire.Heat.MostCelsius, point.Ratio >= 1 ? double.NegativeInfinity : wire.StartCelsius),
            wire.LimitCelsius(point.Regime),
            point.Ratio >= 1,
            allowance.Reference,
            new CheckNote(note, fuse, point.Amperes));
    }

    /// <summary>A stretch as a fuse must protect it: cooled so that its continuous current brings it to the temperature that the current is rated for, never better than free in air.</summary>
    /// <remarks>In a shared return the others' current is taken from what the wire carries: at any current beyond the rest, that leaves the wire hotter than it is.</remarks>
    private WireLimits LimitsOf(in ChainLink link, double others, OverloadAllowance allowance)
    {
        Wire wire = at.WireOf(link.Conductor);
        HeatBalanceKernel free = HeatBalanceKernel.For(wire, still ??= at.StillAir());
        if (link.Parallel > 1)
        {
            free = free.Sharing(link.Parallel);
        }

        // Where others fill a shared wire nothing is left, which the rating check fails; the least current there is keeps the arithmetic alive.
        HeatBalanceKernel cooled = WireLimits.Cooled(free, Math.Max(Accept.Least, link.RatedAmperes - others), rating.LimitCelsiusFor(link.Conductor));
        return WireLimits.Of(cooled, wire, allowance, StartCelsius);
    }
}
