using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc;

/// <content>How far a given wire and fuse can be pushed.</content>
public static partial class CircuitDesigner
{
    /// <summary>The longest run: feed and wire return grow in the same proportion, all else stays.</summary>
    /// <param name="requirements">The circuit to start from. Its return is a wire like the feed, or a chassis, whose resistance stays.</param>
    /// <param name="wire">The conductor.</param>
    /// <param name="fuse">The fuse.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>The longest feed, one way, searched from 1 mm to 10 km; where the shortest fails (a larger surge, a resistance that draws more), from the length required.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static DesignLimit<Length> LongestRun(CircuitRequirements requirements, Conductor wire, FuseRating fuse, DesignRules rules)
    {
        Check(requirements, wire, fuse, rules);

        // A return many times longer or shorter than the feed must stay a length that can be.
        double ratio = requirements.Return.Meters / requirements.FeedMeters;
        double longest = ratio > 0 ? Math.Min(1e4, 0.5 * Accept.MostMeters / ratio) : 1e4;
        double shortest = ratio > 0 ? Math.Max(1e-3, 2 * Accept.Least / ratio) : 1e-3;
        BranchState at = Laid(requirements, wire, fuse, rules);
        return LimitSearch.Find(
            Math.Min(shortest, longest),
            longest,
            1e-6,
            meters => at.WithMeters(meters, requirements.Return.Kind == ReturnKind.SameConductor ? meters * ratio : 0),
            meters => Verify(requirements.Stretched(meters), wire, fuse, rules),
            meters => Length.FromMeters(meters),
            "a feed",
            "m",
            requirements.FeedMeters);
    }

    /// <summary>The largest constant current that a load at the end may draw. The minimum voltage of the required load is kept.</summary>
    /// <param name="requirements">The circuit; its load is replaced.</param>
    /// <param name="wire">The conductor.</param>
    /// <param name="fuse">The fuse.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>The current, searched from 1 mA to 10 kA; where the current that the circuit draws passes, from that.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static DesignLimit<ElectricCurrent> LargestCurrent(CircuitRequirements requirements, Conductor wire, FuseRating fuse, DesignRules rules)
    {
        Check(requirements, wire, fuse, rules);
        BranchState at = Laid(requirements, wire, fuse, rules);
        Load load(double amperes) => Keep(Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes)), requirements);
        return LimitSearch.Find(
            1e-3,
            1e4,
            1e-6,
            amperes => at.WithLoad(load(amperes)),
            amperes => Verify(requirements.WithLoad(load(amperes)), wire, fuse, rules),
            amperes => ElectricCurrent.FromAmperes(amperes),
            "a current",
            "A",
            Drawn(at, 1));
    }

    /// <summary>The largest constant power that a load at the end may draw. The minimum voltage of the required load is kept.</summary>
    /// <param name="requirements">The circuit; its load is replaced.</param>
    /// <param name="wire">The conductor.</param>
    /// <param name="fuse">The fuse.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>The power, searched from 1 mW to 600 kW; where the power that the circuit draws passes, from that.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static DesignLimit<Power> LargestPower(CircuitRequirements requirements, Conductor wire, FuseRating fuse, DesignRules rules)
    {
        Check(requirements, wire, fuse, rules);
        BranchState at = Laid(requirements, wire, fuse, rules);
        Load load(double watts) => Keep(Load.ConstantPower(Power.FromWatts(watts)), requirements);
        return LimitSearch.Find(
            1e-3,
            6e5,
            1e-5,
            watts => at.WithLoad(load(watts)),
            watts => Verify(requirements.WithLoad(load(watts)), wire, fuse, rules),
            watts => Power.FromWatts(watts),
            "a power",
            "W",
            Drawn(at, at.Duty.LeastLoadVolts));
    }

    /// <summary>The hottest air around the wire.</summary>
    /// <param name="requirements">The circuit; its ambient is replaced.</param>
    /// <param name="wire">The conductor.</param>
    /// <param name="fuse">The fuse.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>The ambient, searched from −40 °C to 250 °C.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static DesignLimit<Temperature> HottestAmbient(CircuitRequirements requirements, Conductor wire, FuseRating fuse, DesignRules rules)
    {
        Check(requirements, wire, fuse, rules);
        CircuitRequirements asked(double celsius) => requirements.WithPlace(requirements.Place.WithAmbient(Temperature.FromDegreesCelsius(celsius)));
        return LimitSearch.Find(
            -40,
            250,
            1e-4,
            celsius => Laid(asked(celsius), wire, fuse, rules),
            celsius => Verify(asked(celsius), wire, fuse, rules),
            celsius => Temperature.FromDegreesCelsius(celsius),
            "an ambient",
            "°C",
            requirements.Place.AmbientCelsius);
    }

    /// <summary>The most loaded conductors that may run together with this circuit's, its own included.</summary>
    /// <param name="requirements">The circuit; its number of loaded conductors is replaced.</param>
    /// <param name="wire">The conductor.</param>
    /// <param name="fuse">The fuse.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>The number, searched from the circuit's own (two, or one with a chassis return; more of them in parallel) to 1000.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static DesignLimit<int> MostLoadedConductors(CircuitRequirements requirements, Conductor wire, FuseRating fuse, DesignRules rules)
    {
        Check(requirements, wire, fuse, rules);
        int own = Branches.OwnConductors(requirements);
        CircuitRequirements asked(double count) => requirements.WithPlace(requirements.Place.WithLoadedConductors((int)count));
        return LimitSearch.Find(
            own,
            1000,
            0.5,
            count => Laid(asked(count), wire, fuse, rules),
            count => Verify(asked(count), wire, fuse, rules),
            count => (int)count,
            "a bundle",
            "loaded conductors",
            Math.Max(requirements.Place.LoadedConductors ?? own, own));
    }

    private static BranchState Laid(CircuitRequirements requirements, Conductor wire, FuseRating fuse, DesignRules rules)
    {
        BranchState at = Branches.ForCandidate(requirements, rules);
        at.SetCandidate(wire);
        at.SetFuse(fuse);
        return at;
    }

    private static Load Keep(Load load, CircuitRequirements requirements) =>
        requirements.Load.MinimumVoltage is { } least ? load.WithMinimumVoltage(least) : load;

    // What the circuit draws now; null where its load has no operating point.
    private static double? Drawn(BranchState at, double volts) => at.Duty.Exists ? at.Duty.OnAmperes * volts : null;

    private static void Check(CircuitRequirements requirements, Conductor wire, FuseRating fuse, DesignRules rules)
    {
        Refuse(requirements, rules);
        _ = wire ?? throw new ArgumentNullException(nameof(wire));
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
    }
}
