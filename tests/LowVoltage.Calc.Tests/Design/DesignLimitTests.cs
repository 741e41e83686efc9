using FsCheck.Xunit;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>The inverses: at the limit the same wiring passes, a little beyond it fails by the check that is named.</summary>
public class DesignLimitTests
{
    // The searches stop within these: 1 µm, 1 µA, 10 µW, 0.1 mK. The fuse against the wire by the rule on currents alone, which plain arithmetic can follow.
    private static readonly DesignRules Table = new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable, FusePractice = new FusePractice { Overload = null } };

    [Property(Arbitrary = [typeof(AnyCircuit)], MaxTest = 80)]
    public void Limits_AtThem_PassAndBeyondFailAsNamed(AnyCircuit c)
    {
        CircuitRequirements asked = c.Requirements();
        CircuitDesign design = CircuitDesigner.Design(asked, c.Rules);
        Conductor wire = design.Wire;
        if (!design.IsFeasible || design.IsNearest || design.Fuse is not { } fuse)
        {
            return;
        }

        if (c.ReturnKind is 0 or 1 or 2)
        {
            double ratio = c.Back / c.Feed;
            DesignLimit<Length> run = CircuitDesigner.LongestRun(asked, wire, fuse, c.Rules);
            Assert.True(run.Value is { } l && l.Meters >= asked.Feed.Meters - 1e-5, run + " for " + design);
            Around(run, x => x.Meters, x => Verify(asked, c, wire, fuse, feed: x, back: c.ReturnKind <= 1 ? ReturnPath.Wire(M(x * ratio)) : asked.Return), 1e-5, 1e4);
        }

        Around(CircuitDesigner.LargestCurrent(asked, wire, fuse, c.Rules), x => x.Amperes, x => Verify(asked, c, wire, fuse, load: Keep(asked, Load.ConstantCurrent(A(x)))), 1e-5, 1e4);
        Around(CircuitDesigner.LargestPower(asked, wire, fuse, c.Rules), x => (double)x.Watts, x => Verify(asked, c, wire, fuse, load: Keep(asked, Load.ConstantPower(W(x)))), 1e-4, 6e5);
        Around(CircuitDesigner.HottestAmbient(asked, wire, fuse, c.Rules), x => x.DegreesCelsius, x => Verify(asked, c, wire, fuse, ambient: x), 1e-3, 250);
        Around(CircuitDesigner.MostLoadedConductors(asked, wire, fuse, c.Rules), x => x, x => Verify(asked, c, wire, fuse, conductors: (int)x), 1, 1000);
    }

    [Fact]
    public void LongestRun_GovernedByDrop_IsOhmsLaw()
    {
        // 10 A on 2.5 mm² (7.60 Ω/km, 32 A at 30 °C, two together 0.825), 20 mΩ lead, at most 0.36 V: 16 mΩ for the wire, out and back.
        DesignLimit<Length> run = CircuitDesigner.LongestRun(Circuit(Load.ConstantCurrent(A(10)), feed: 1), RoadVehicle(2.5), Blade(15), Table);
        double perMeter = 2 * Plain.PerMeter(7.60, Plain.Warm(30, 70, 10, 32 * 0.825));
        Near(0.016 / perMeter, run.Value!.Value.Meters, 2e-6);
        Assert.Equal(CheckKind.VoltageDrop, run.Governing!.Value.Kind);
        Assert.StartsWith("A feed of ", run.ToString(), StringComparison.Ordinal);
        Assert.Contains("beyond it: voltage drop", run.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void LargestCurrent_GovernedByTheFuse_IsFourFifthsOfIt()
    {
        DesignLimit<ElectricCurrent> most = CircuitDesigner.LargestCurrent(Circuit(Load.ConstantCurrent(A(1)), feed: 0.2), RoadVehicle(2.5), Blade(15), Table);
        Near(12, most.Value!.Value.Amperes, 2e-6);
        Assert.Equal(CheckKind.FuseCarriesLoad, most.Governing!.Value.Kind);
    }

    [Fact]
    public void LargestPower_KeepsTheLoadsOwnMinimumVoltage()
    {
        // 11 V at the load from 11.89 V behind 18 mΩ + 20 mΩ + wire; no fuse stands in the way before.
        DesignRules rules = new(Table) { DropLimit = DropLimit.Percent(20) };
        CircuitRequirements asked = Circuit(Load.ConstantPower(W(1), 1, V(11)), feed: 2);
        DesignLimit<Power> most = CircuitDesigner.LargestPower(asked, RoadVehicle(2.5), Blade(25), rules);
        double i = 0;
        for (int k = 0; k < 200; k++)
        {
            i = 0.89 / (0.038 + (4 * Plain.PerMeter(7.60, Plain.Warm(30, 70, i, 32 * 0.825))));
        }

        Near(11 * i, (double)most.Value!.Value.Watts, 1e-6);
        Assert.Equal(CheckKind.LoadVoltage, most.Governing!.Value.Kind);
    }

    [Fact]
    public void HottestAmbient_GovernedByTheFuse_IsWhereTheTableMeetsIt()
    {
        // 32 A·0.825·√((70 − θ)/40) = 15 A.
        DesignLimit<Temperature> most = CircuitDesigner.HottestAmbient(Circuit(Load.ConstantCurrent(A(5)), feed: 0.3), RoadVehicle(2.5), Blade(15), Table);
        Near(70 - (40 * 15 * 15 / (26.4 * 26.4)), most.Value!.Value.DegreesCelsius, 1e-5);
        Assert.Equal(CheckKind.FuseProtectsWire, most.Governing!.Value.Kind);
    }

    /// <summary>What becomes undetermined on the way ends the search, though nothing fails there: the guidance on gG fuse-links in warm air ends at 80 °C.</summary>
    [Fact]
    public void HottestAmbient_EndsWhereAReratingIsNoLongerPublished()
    {
        FuseRating fuse = FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(A(16));
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(1)), insulation: InsulationMaterial.SiliconeRubber, feed: 1);
        DesignLimit<Temperature> limit = CircuitDesigner.HottestAmbient(asked, RoadVehicle(4), fuse, DesignRules.Bench);
        Near(80, limit.Value?.DegreesCelsius, 1e-5, "°C");
        CheckOutcome Carries(double ambient) => CircuitDesigner.Verify(asked.WithPlace(asked.Place.WithAmbient(C(ambient))), RoadVehicle(4), fuse, DesignRules.Bench).Of(CheckKind.FuseCarriesLoad).Outcome;
        Assert.Equal((CheckOutcome.Pass, CheckOutcome.Undetermined), (Carries(79.9), Carries(80.1)));
    }

    [Fact]
    public void MostLoadedConductors_ByTheTableOfFactors()
    {
        // 32 A·0.825 times the factor must stay at 15 A: 0.5682, so up to six circuits (0.57), that is 12 wires; seven circuits have 0.54.
        DesignLimit<int> most = CircuitDesigner.MostLoadedConductors(Circuit(Load.ConstantCurrent(A(5)), feed: 0.3), RoadVehicle(2.5), Blade(15), Table);
        Assert.Equal(12, most.Value);
        Assert.Equal(CheckKind.FuseProtectsWire, most.Governing!.Value.Kind);
        Assert.Contains("A bundle of 12 loaded conductors", most.Explanation, StringComparison.Ordinal);

        // With a 5 A fuse the table ends first, at 20 circuits.
        DesignLimit<int> end = CircuitDesigner.MostLoadedConductors(Circuit(Load.ConstantCurrent(A(3)), feed: 0.3), RoadVehicle(2.5), Blade(5), Table);
        Assert.Equal(40, end.Value);
        Assert.Equal((CheckKind.ContinuousCurrent, CheckOutcome.Undetermined), (end.Governing!.Value.Kind, end.Governing.Value.Outcome));
    }

    [Fact]
    public void Limit_WhereNothingPasses_SaysWhatStopsTheEasiest()
    {
        DesignLimit<Length> none = CircuitDesigner.LongestRun(Circuit(Load.ConstantCurrent(A(50))), RoadVehicle(2.5), Blade(15), Table);
        Assert.Null(none.Value);
        Assert.NotNull(none.Governing);
        Assert.StartsWith("Not even a feed of 0.001 m passes: ", none.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Limit_WhereAllPasses_SaysSo()
    {
        DesignLimit<int> all = CircuitDesigner.MostLoadedConductors(Circuit(Load.ConstantCurrent(A(0.5)), feed: 0.3), Class5(400), Blade(3), DesignRules.Bench);
        Assert.Equal(1000, all.Value);
        Assert.Null(all.Governing);
        Assert.StartsWith("All of the range searched passes", all.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void LongestRun_WhereTheShortestRunLetsTooLargeASurgeThrough_StartsFromTheRunAsked()
    {
        // A 24 W lamp on a 3 A fuse, 100 starts: on 1 mm the cold filament draws more than the fuse holds, on 20 m it does not.
        CircuitRequirements asked = new(Circuit(Load.Lamp(W(24), V(12)), feed: 20, conductors: 1, drop: DropLimit.Percent(30))) { Starts = 100 };
        DesignRules rules = new(DesignRules.Bench) { FusePractice = new FusePractice { Loading = 1 } };
        Assert.Equal(CheckKind.InrushHeld, CircuitDesigner.Verify(asked.WithFeed(M(0.001)).WithReturn(ReturnPath.Wire(M(0.001))), Class5(0.75), Blade(3), rules).Governing.Kind);
        Assert.True(CircuitDesigner.Verify(asked, Class5(0.75), Blade(3), rules).IsFeasible);
        DesignLimit<Length> run = CircuitDesigner.LongestRun(asked, Class5(0.75), Blade(3), rules);
        Assert.True(run.Value!.Value.Meters > 20, run.ToString());
        Assert.Equal(CheckKind.FaultOpensFuse, run.Governing!.Value.Kind);
    }

    [Fact]
    public void LongestRun_OfAResistanceThatDrawsTooMuchUpClose_StartsFromTheRunAsked()
    {
        // 1.17 Ω at 14.4 V: 12.06 A behind 24 mΩ alone, above 12 A of a 15 A fuse; behind 1 m out and back less.
        Load heater = Load.Resistance(ElectricResistance.FromOhms(1.17));
        DesignRules rules = new(Table) { DropLimit = DropLimit.Percent(10) };
        Assert.False(CircuitDesigner.Verify(Circuit(heater, feed: 0.001), RoadVehicle(2.5), Blade(15), rules).IsFeasible);
        DesignLimit<Length> run = CircuitDesigner.LongestRun(Circuit(heater, feed: 1), RoadVehicle(2.5), Blade(15), rules);
        Assert.True(run.Value!.Value.Meters > 1);
        Assert.Equal(CheckKind.VoltageDrop, run.Governing!.Value.Kind);
    }

    [Theory]
    [InlineData(0.001, 9000)]
    [InlineData(9000, 0.001)]
    [InlineData(1e-9, 1e6)]
    [InlineData(1e6, 1e-9)]
    public void LongestRun_OfVeryUnequalWays_NeverThrows(double feed, double back)
    {
        DesignLimit<Length> run = CircuitDesigner.LongestRun(
            Circuit(Load.ConstantCurrent(A(0.1)), feed: feed, back: ReturnPath.Wire(M(back))), Class5(400), Blade(3), DesignRules.Bench);
        Assert.NotEqual("", run.Explanation);
    }

    private static void Around<T>(DesignLimit<T> limit, Func<T, double> number, Func<double, CircuitDesign> at, double step, double far)
        where T : struct
    {
        if (limit.Value is not { } value)
        {
            Assert.NotNull(limit.Governing);
            return;
        }

        double x = number(value);
        Assert.True(at(x).IsFeasible, $"{limit}; but there {at(x)}");
        if (x + step > far)
        {
            return;
        }

        CircuitDesign beyond = at(x + step);
        CheckKind named = limit.Governing!.Value.Kind!;
        CheckResult? check = beyond.Find(named);
        Assert.True(check is { Outcome: not CheckOutcome.Pass }, $"{limit}; but beyond {beyond}");
    }

    private static Load Keep(CircuitRequirements asked, Load load) => asked.Load.MinimumVoltage is { } least ? load.WithMinimumVoltage(least) : load;

    private static CircuitDesign Verify(
        CircuitRequirements r, AnyCircuit c, Conductor wire, FuseRating fuse, double? feed = null, ReturnPath? back = null, Load? load = null, double? ambient = null, int? conductors = null) =>
        CircuitDesigner.Verify(
            new CircuitRequirements
            {
                Source = r.Source, Load = load ?? r.Load, Feed = feed is { } m ? M(m) : r.Feed, Return = back ?? r.Return, Place = new Place { Ambient = ambient is { } t ? C(t) : r.Place.Ambient, LoadedConductors = conductors ?? r.Place.LoadedConductors, EngineSpace = r.Place.EngineSpace }, Insulation = r.Insulation, Upstream = r.Upstream, FuseDistance = r.FuseDistance, Joints = r.Joints,
            },
            wire,
            fuse,
            c.Rules);
}
