using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using UnitsNet;

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
            list.Add(DesignCheck.Open(CheckKind.OverloadTemperature, 0, allowance.Reference, missing));
            return;
        }

        double prospective = Math.Min(atFuse, Accept.MostAmperes);
        TightestPoint tightest = default;
        WireLimits weakest = default;
        bool any = false;
        foreach (ChainLink[] chain in chains)
        {
            for (int i = 0; i < chain.Length; i++)
            {
                WireLimits limits = LimitsOf(chain[i], chain == shared ? othersAmperes : 0, allowance);
                TightestPoint point = FuseAgainstWireKernel.Verdict(limits, curve, prospective);
                if (!any || point.Ratio < tightest.Ratio)
                {
                    (any, tightest, weakest) = (true, point, limits);
                }
            }
        }

        list.Add(OverloadCheck(fuse, tightest, weakest, allowance));
    }

    private static DesignCheck OverloadCheck(FuseRating fuse, in TightestPoint point, in WireLimits wire, OverloadAllowance allowance)
    {
        bool opens = fuse.TryLongestSeconds(point.Amperes, out double seconds) && point.Regime != ProtectionRegime.Sustained;
        double? reached = wire.ReachedCelsius(point.Amperes, opens ? seconds : null);
        NoteKind note = reached is null ? NoteKind.OverloadMelts : opens ? NoteKind.OverloadOpened : NoteKind.OverloadHeld;
        return DesignCheck.Judged(
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
        InsulationMaterial insulation = requirements.Insulation;
        double wall = requirements.WallMillimeters ?? InsulationWall.UsualMillimeters(link.Conductor.AreaSquareMillimeters);
        Wire wire = Wire.Create(link.Conductor, insulation, Length.FromMillimeters(wall));
        HeatBalanceKernel free = HeatBalanceKernel.For(wire, still ??= StillAir());
        if (link.Parallel > 1)
        {
            free = free.Sharing(link.Parallel);
        }

        HeatBalanceKernel cooled = WireLimits.Cooled(free, Math.Max(Accept.Least, link.RatedAmperes - others), rating.LimitCelsiusFor(link.Conductor));
        return WireLimits.Of(cooled, wire, allowance, StartCelsius);
    }

    private Surroundings StillAir() => new()
    {
        Ambient = Temperature.FromDegreesCelsius(Ambient),
        Altitude = Length.FromMeters(requirements.AltitudeMeters),
        Emissivity = requirements.Insulation.Emissivity,
    };
}
