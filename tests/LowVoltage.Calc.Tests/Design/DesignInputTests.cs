using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>What bad input gets: the parameter, the value, its unit and what is accepted.</summary>
public class DesignInputTests
{
    private static readonly CircuitRequirements Good = Circuit(Load.ConstantCurrent(A(5)));

    public static TheoryData<string, string, string, Action> Refused => new()
    {
        { "Feed", "0 m", "greater than zero", () => With(feed: Length.Zero) },
        { "Feed", "-3 m", "greater than zero", () => With(feed: M(-3)) },
        { "Feed", "1E+09 m", "at most 1E+07 m", () => With(feed: M(1e9)) },
        { "Ambient", "-300 °C", "absolute zero", () => With(ambient: C(-300)) },
        { "Ambient", "-273.15 °C", "absolute zero", () => With(ambient: Temperature.FromKelvins(0)) },
        { "Ambient", "-60.1 °C", "from -60 °C to 250 °C", () => With(ambient: C(-60.1)) },
        { "Ambient", "250.1 °C", "from -60 °C to 250 °C", () => With(ambient: C(250.1)) },
        { "LoadedConductors", "was 0", "from 1 to 1000", () => With(conductors: 0) },
        { "LoadedConductors", "was -2", "from 1 to 1000", () => With(conductors: -2) },
        { "LoadedConductors", "was 1001", "from 1 to 1000", () => With(conductors: 1001) },
        { "BundleLoading", "was 0", "from 0.01 to 1", () => With(loading: 0) },
        { "BundleLoading", "was -0.5", "from 0.01 to 1", () => With(loading: -0.5) },
        { "BundleLoading", "was 1.01", "from 0.01 to 1", () => With(loading: 1.01) },
        { "BundleLoading", "was NaN", "from 0.01 to 1", () => With(loading: double.NaN) },
        { "BundleLoading", "was Infinity", "from 0.01 to 1", () => With(loading: double.PositiveInfinity) },
        { "Altitude", "-1 m", "zero or greater", () => With(altitude: M(-1)) },
        { "Altitude", "20001 m", "from 0 m to 20000 m", () => With(altitude: M(20001)) },
        { "Upstream", "-0.01 Ω", "zero or greater", () => With(upstream: MilliOhm(-10)) },
        { "Upstream", "1E+10 Ω", "at most 1E+09 Ω", () => With(upstream: ElectricResistance.FromOhms(1e10)) },
        { "FuseDistance", "-0.1 m", "zero or greater", () => With(distance: M(-0.1)) },
        { "FuseDistance", "1E+08 m", "at most 1E+07 m", () => With(distance: M(1e8)) },
        { "FuseAmbient", "-60.1 °C", "from -60 °C to 250 °C", () => _ = new CircuitRequirements(Good) { FuseAmbient = C(-60.1) } },
        { "FuseAmbient", "250.1 °C", "from -60 °C to 250 °C", () => _ = new CircuitRequirements(Good) { FuseAmbient = C(250.1) } },
        { "Starts", "was 0", "from 1 to 100000", () => _ = new CircuitRequirements(Good) { Starts = 0 } },
        { "Starts", "was 100001", "from 1 to 100000", () => _ = new CircuitRequirements(Good) { Starts = 100_001 } },
        { "Wall", "-0.001 m", "zero or greater", () => With(wall: Length.FromMillimeters(-1)) },
        { "Wall", "21 mm", "from 0 mm to 20 mm", () => With(wall: Length.FromMillimeters(21)) },
        { "MinimumSection", "0 mm²", "greater than zero", () => _ = new DesignRules(DesignRules.Bench) { MinimumSection = Area.Zero } },
        { "MinimumSection", "-1 mm²", "greater than zero", () => _ = new DesignRules(DesignRules.Bench) { MinimumSection = Area.FromSquareMillimeters(-1) } },
        { "Loading", "was 0", "from 0.1 to 1", () => _ = new FusePractice { Loading = 0 } },
        { "Loading", "was 1.01", "from 0.1 to 1", () => _ = new FusePractice { Loading = 1.01 } },
        { "Loading", "was NaN", "from 0.1 to 1", () => _ = new FusePractice { Loading = double.NaN } },
        { "ShareOfAmpacity", "was 1.51", "from 0.1 to 1.5", () => _ = new FusePractice { ShareOfAmpacity = 1.51 } },
        { "ShareOfAmpacity", "was -1", "from 0.1 to 1.5", () => _ = new FusePractice { ShareOfAmpacity = -1 } },
        { "FaultTime", "5.1 s", "from 0.001 s to 5 s", () => _ = new FusePractice { FaultTime = Duration.FromSeconds(5.1) } },
        { "FaultTime", "0 s", "greater than zero", () => _ = new FusePractice { FaultTime = Duration.Zero } },
        { "percent", "0 %", "from 0.001 % to 99.9 %", () => DropLimit.Percent(0) },
        { "percent", "-3 %", "from 0.001 % to 99.9 %", () => DropLimit.Percent(-3) },
        { "percent", "100 %", "from 0.001 % to 99.9 %", () => DropLimit.Percent(100) },
        { "percent", "NaN %", "from 0.001 % to 99.9 %", () => DropLimit.Percent(double.NaN) },
        { "drop", "0 V", "greater than zero", () => DropLimit.Volts(V(0)) },
        { "drop", "-0.2 V", "greater than zero", () => DropLimit.Volts(V(-0.2)) },
        { "nominal", "0 V", "greater than zero", () => DropLimit.Percent(3).TryFor(V(0), false, out _) },
        { "open", "-0.1 m", "zero or greater", () => SourceDistance.Create("x", M(-0.1), M(1), Reference.CommonPractice("x")) },
        { "sheathed", "0.1 m", "from 0.2 m", () => SourceDistance.Create("x", M(0.2), M(0.1), Reference.CommonPractice("x")) },
    };

    public static TheoryData<string, Action> Null => new()
    {
        { "Name", () => With(Good, name: null!) },
        { "Source", () => _ = new CircuitRequirements { Source = null!, Load = Good.Load, Feed = Good.Feed, Return = Good.Return, Place = Good.Place, Insulation = Good.Insulation } },
        { "Load", () => _ = new CircuitRequirements { Source = Good.Source, Load = null!, Feed = Good.Feed, Return = Good.Return, Place = Good.Place, Insulation = Good.Insulation } },
        { "Return", () => _ = new CircuitRequirements { Source = Good.Source, Load = Good.Load, Feed = Good.Feed, Return = null!, Place = Good.Place, Insulation = Good.Insulation } },
        { "Insulation", () => _ = new CircuitRequirements { Source = Good.Source, Load = Good.Load, Feed = Good.Feed, Return = Good.Return, Place = Good.Place, Insulation = null! } },
        { "Joints", () => With(Good, joints: null!) },
        { "Joints", () => With(Good, joints: [Joint.Create("a", MilliOhm(1)), null!]) },
        { "basis", () => _ = new DesignRules(null!) },
        { "Name", () => _ = new DesignRules(DesignRules.Bench) { Name = null! } },
        { "Conductors", () => _ = new DesignRules(DesignRules.Bench) { Conductors = null! } },
        { "Fuses", () => _ = new DesignRules(DesignRules.Bench) { Fuses = null! } },
        { "Ampacity", () => _ = new DesignRules(DesignRules.Bench) { Ampacity = null! } },
        { "DropLimit", () => _ = new DesignRules(DesignRules.Bench) { DropLimit = null! } },
        { "FusePractice", () => _ = new DesignRules(DesignRules.Bench) { FusePractice = null! } },
        { "MinimumSectionReference", () => _ = new DesignRules(DesignRules.Bench) { MinimumSectionReference = null! } },
        { "LoadingReference", () => _ = new FusePractice { LoadingReference = null! } },
        { "ShareReference", () => _ = new FusePractice { ShareReference = null! } },
        { "FaultReference", () => _ = new FusePractice { FaultReference = null! } },
        { "reference", () => SourceDistance.Create("x", M(0.1), M(1), null!) },
        { "first", () => AmpacityBasis.LowerOf(null!, AmpacityBasis.HeatBalance) },
        { "second", () => AmpacityBasis.LowerOf(AmpacityBasis.HeatBalance, null!) },
        { "conductor", () => AmpacityBasis.HeatBalance.TryRate(null!, Good, out _) },
        { "place", () => AmpacityBasis.HeatBalance.TryRate(RoadVehicle(1), Good.Insulation, null!, out _) },
        { "conductor", () => AmpacityBasis.HeatBalance.Derate(null!, Good) },
        { "insulation", () => AmpacityBasis.SmallCraftTable.Derate(RoadVehicle(1), null!, Good.Place) },
        { "requirements", () => CircuitDesigner.Design(null!, DesignRules.Bench) },
        { "rules", () => CircuitDesigner.Design(Good, null!) },
        { "requirements", () => CircuitDesigner.Verify(null!, RoadVehicle(1), Blade(5), DesignRules.Bench) },
        { "wire", () => CircuitDesigner.Verify(Good, (Conductor)null!, Blade(5), DesignRules.Bench) },
        { "path", () => CircuitDesigner.Verify(Good, (CircuitPath)null!, Blade(5), DesignRules.Bench) },
        { "basis", () => _ = new CircuitRequirements(null!) },
        { "kind", () => CircuitDesigner.Verify(Good, RoadVehicle(1), Blade(5), DesignRules.Bench).Find(null!) },
        { "id", () => CheckKind.Find(null!) },
        { "rules", () => CircuitDesigner.Verify(Good, RoadVehicle(1), Blade(5), null!) },
        { "wire", () => CircuitDesigner.LongestRun(Good, null!, Blade(5), DesignRules.Bench) },
        { "fuse", () => CircuitDesigner.LargestCurrent(Good, RoadVehicle(1), null!, DesignRules.Bench) },
        { "rules", () => CircuitDesigner.LargestPower(Good, RoadVehicle(1), Blade(5), null!) },
        { "requirements", () => CircuitDesigner.HottestAmbient(null!, RoadVehicle(1), Blade(5), DesignRules.Bench) },
        { "wire", () => CircuitDesigner.MostLoadedConductors(Good, null!, Blade(5), DesignRules.Bench) },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Value_OutsideItsRange_IsRefusedByName(string name, string value, string range, Action act)
    {
        ArgumentOutOfRangeException thrown = Assert.Throws<ArgumentOutOfRangeException>(name, act);
        Assert.Contains(value, thrown.Message, StringComparison.Ordinal);
        Assert.Contains(range, thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Null))]
    public void Null_IsRefusedByName(string name, Action act) => Assert.Throws<ArgumentNullException>(name, act);

    [Fact]
    public void Value_AtTheEdgeOfItsRange_IsTaken()
    {
        With(feed: M(1e-12));
        With(ambient: C(-60));
        With(ambient: C(250));
        With(conductors: 1);
        With(conductors: 1000);
        With(loading: 0.01);
        With(loading: 1);
        With(altitude: M(20000));
        With(upstream: ElectricResistance.Zero);
        With(distance: Length.Zero);
        With(wall: Length.Zero);
        With(wall: Length.FromMillimeters(20));
        Assert.Equal(1.5, new FusePractice { ShareOfAmpacity = 1.5 }.ShareOfAmpacity);
        Assert.Equal(0.1, new FusePractice { Loading = 0.1 }.Loading);
        Assert.Equal(5, new FusePractice { FaultTime = Duration.FromSeconds(5) }.FaultTime.Seconds);
        Assert.Equal(0, SourceDistance.Create("x", Length.Zero, Length.Zero, Reference.CommonPractice("at the source")).Sheathed!.Value.Meters);
    }

    [Fact]
    public void Requirements_AsSet_AreGivenBack()
    {
        CircuitRequirements r = new()
        {
            Source = Good.Source, Load = Good.Load, Feed = M(4), Return = Good.Return, Place = new Place { Ambient = C(33), LoadedConductors = 7, BundleLoading = 0.4, Altitude = M(900), EngineSpace = true }, Insulation = Good.Insulation,
            Upstream = MilliOhm(12), FuseDistance = M(0.2), SheathedToFuse = true, Wall = Length.FromMillimeters(0.5), Intermittent = true, DropLimit = DropLimit.Percent(2), Name = "pump",
            Joints = [Joint.Create("a", MilliOhm(1))], FuseAmbient = C(41), Starts = 500,
        };
        Assert.Equal((41, 500), (r.FuseAmbient!.Value.DegreesCelsius, r.Starts));
        Assert.Equal((4, 33, 7, 0.4, 900), (r.Feed.Meters, r.Place.Ambient.DegreesCelsius, r.Place.LoadedConductors, r.Place.BundleLoading, r.Place.Altitude.Meters));
        Near(0.012, r.Upstream!.Value.Ohms, 1e-12);
        Near(0.5, r.Wall!.Value.Millimeters, 1e-12);
        Assert.Equal((0.2, true, true, true, "pump"), (r.FuseDistance!.Value.Meters, r.SheathedToFuse, r.Place.EngineSpace, r.Intermittent, r.Name));
        Assert.Single(r.Joints);
        CircuitRequirements bare = Circuit(Good.Load, upstreamMilliOhms: null, fuseDistance: null);
        Assert.Null(bare.Upstream);
        Assert.Null(bare.FuseDistance);
        Assert.Null(bare.Wall);
        Assert.Null(bare.FuseAmbient);
        Assert.Null(bare.Starts);
        Assert.Equal(10_000, CircuitRequirements.UsualStarts);
        Assert.Equal("", bare.Name);
    }

    [Fact]
    public void Requirements_CopiedWithAChange_KeepEverythingElse()
    {
        CircuitRequirements all = new(Good)
        {
            Upstream = MilliOhm(12), FuseDistance = M(0.2), SheathedToFuse = true, Wall = Length.FromMillimeters(0.5), Intermittent = true, DropLimit = DropLimit.Percent(2), Name = "pump",
            Joints = [Joint.Create("a", MilliOhm(1))], FuseAmbient = C(41), Starts = 500,
        };
        CircuitRequirements longer = new(all) { Feed = M(9) };
        Assert.Equal((9, Good.Feed.Meters), (longer.Feed.Meters, all.Feed.Meters));

        // Every public property but the one that was changed, whatever is added later.
        System.Reflection.PropertyInfo[] others = [.. typeof(CircuitRequirements).GetProperties().Where(p => p.GetMethod is { IsStatic: false } && p.Name != nameof(CircuitRequirements.Feed))];
        Assert.True(others.Length >= 15, string.Join(", ", others.Select(p => p.Name)));
        Assert.All(others, p => Assert.Equal(p.GetValue(all), p.GetValue(longer)));

        // The same by a call, for languages without initialisers; the way back stays as long as it was.
        CircuitRequirements called = all.WithFeed(M(9));
        Assert.All(others, p => Assert.Equal(p.GetValue(all), p.GetValue(called)));
        Assert.Equal(9, called.Feed.Meters);
        Assert.Same(all.Return, called.Return);
    }

    [Fact]
    public void Joints_ChangedAfterwards_AreNotChangedInTheRequirements()
    {
        Joint[] joints = [Joint.Create("a", MilliOhm(1))];
        CircuitRequirements r = Circuit(Good.Load, joints: joints);
        joints[0] = Joint.Create("b", MilliOhm(100));
        Assert.Equal("a", r.Joints[0].Name);
    }

    [Fact]
    public void Source_AboveSixtyVolts_IsRefusedWithTheReason()
    {
        // 17 cells charge to 62.05 V, 19 cells are nominally 60.8 V; 16 cells reach 58.4 V.
        foreach (Source source in new[]
        {
            Battery.LithiumIronPhosphate(17, ElectricCharge.FromAmpereHours(100)), Battery.LithiumIronPhosphate(19, ElectricCharge.FromAmpereHours(100)), Source.Ideal(V(60.0001)), LeadAcid(5),
        })
        {
            CircuitRequirements r = Circuit(Load.ConstantCurrent(A(5)), source);
            foreach (Action act in new Action[]
            {
                () => CircuitDesigner.Design(r, DesignRules.Bench),
                () => CircuitDesigner.Verify(r, RoadVehicle(1), Blade(5), DesignRules.Bench),
                () => CircuitDesigner.Verify(r, CircuitPath.Create(Segment.Create(RoadVehicle(1), M(1)), Good.Return), Blade(5), DesignRules.Bench),
                () => CircuitDesigner.LongestRun(r, RoadVehicle(1), Blade(5), DesignRules.Bench),
                () => CircuitDesigner.LargestCurrent(r, RoadVehicle(1), Blade(5), DesignRules.Bench),
                () => CircuitDesigner.LargestPower(r, RoadVehicle(1), Blade(5), DesignRules.Bench),
                () => CircuitDesigner.HottestAmbient(r, RoadVehicle(1), Blade(5), DesignRules.Bench),
                () => CircuitDesigner.MostLoadedConductors(r, RoadVehicle(1), Blade(5), DesignRules.Bench),
            })
            {
                ArgumentOutOfRangeException thrown = Assert.Throws<ArgumentOutOfRangeException>("requirements", act);
                Assert.Contains("accepted is a source of at most 60 V. This is a library for extra-low-voltage DC", thrown.Message, StringComparison.Ordinal);
                Assert.Contains("the source can reach ", thrown.Message, StringComparison.Ordinal);
            }
        }

        Assert.NotNull(CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), Source.Ideal(V(60))), DesignRules.Bench));
        Assert.NotNull(CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), Battery.LithiumIronPhosphate(16, ElectricCharge.FromAmpereHours(100))), DesignRules.Bench));
    }

    private static CircuitRequirements With(CircuitRequirements good, string name = "", Joint[]? joints = null) => new()
    {
        Source = good.Source, Load = good.Load, Feed = good.Feed, Return = good.Return, Place = good.Place, Insulation = good.Insulation, Name = name, Joints = name is "" ? joints! : [],
    };

    private static CircuitRequirements With(
        Length? feed = null,
        Temperature? ambient = null,
        int conductors = 2,
        double loading = 1,
        Length? altitude = null,
        ElectricResistance? upstream = null,
        Length? distance = null,
        Length? wall = null) => new()
        {
            Source = Good.Source, Load = Good.Load, Feed = feed ?? Good.Feed, Return = Good.Return, Place = new Place { Ambient = ambient ?? Good.Place.Ambient, LoadedConductors = conductors, BundleLoading = loading, Altitude = altitude ?? Length.Zero }, Insulation = Good.Insulation, Upstream = upstream, FuseDistance = distance, Wall = wall,
        };
}
