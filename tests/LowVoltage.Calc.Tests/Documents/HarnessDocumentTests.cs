using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Documents;

public class HarnessDocumentTests
{
    [Property(MaxTest = 150)]
    public Property Write_AndRead_GivesTheSameHarnessAndTheSameSolution() => Prop.ForAll(AnyHarness.ToArbitrary(), Held);

    [Theory]
    [InlineData(HarnessPieces.Van)]
    [InlineData(HarnessPieces.ToBeSized)]
    public void Read_OfAPiece_ComesBack(string json) => Held(HarnessDocument.Read(json).Harness);

    [Fact]
    public void Read_OfTheVan_IsTheHarnessThatABuilderMakes()
    {
        Place usual = Place.Create(C(45));
        Load pump = Load.Motor(A(4), A(15), A(16), Duration.FromSeconds(0.4));
        Harness made = new HarnessBuilder("van", DesignRules.RoadVehicle)
            .Terminals("battery +").Grounds("battery −").Busbars("panel").Terminals("roof +").Splices("S1").Terminals("lamp +", "pump +").Grounds("frame").Reference("battery −")
            .Source("battery", "battery +", "battery −", Battery.LeadAcid(A(600)))
            .Add(HarnessSource.Create("roof", "roof +", "battery −", SolarPanel.Create(A(6.1), V(21.6), V(17.6), A(5.7))))
            .Add(HarnessFuse.Create("main", "battery +", "panel", FuseSeries.RoadVehicleStrip51.SmallestAtLeast(A(100))).WithResistance(R(0.001)).WithAmbient(C(55)))
            .Wire("roof lead", "roof +", "panel", Conductor.Iec60228(MetricSize.FromSquareMillimeters(4), Iec60228Class.Flexible, Iec60228Metal.CoatedCopper), Length.FromMeters(6), usual, InsulationMaterial.CrossLinkedPolyethylene)
            .Add(HarnessWire.Create("rear", "panel", "S1", Conductor.Iso6722(MetricSize.FromSquareMillimeters(4)), Length.FromMeters(4), new Place { Ambient = C(60), LoadedConductors = 4 }, InsulationMaterial.PolyvinylChloride)
                .WithParallel(2).WithWall(Length.FromMillimeters(0.5)).WithJoints(Joint.Create("plug", R(0.002))))
            .Fuse("lamp fuse", "S1", "lamp +", FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(5)))
            .Switch("pump switch", "S1", "pump +", R(0.005), isClosed: false)
            .Add(HarnessResistance.Chassis("body", "frame", "battery −", R(0.002)).WithLength(Length.FromMeters(3)))
            .Add(HarnessResistance.Create("shunt", "panel", "lamp +", R(400)).WithLength(Length.FromMeters(0.2)))
            .Load("lamp", "lamp +", "frame", Load.Lamp(Power.FromWatts(21), V(12)))
            .Add(HarnessLoad.Create("pump", "pump +", "frame", pump).WithIntermittent(true).WithDropLimit(Calc.Ampacity.DropLimit.Percent(5)).WithStarts(5000))
            .Add(
                LoadCase.Create("parked").WithOff("pump").WithSwitch("pump switch", false),
                LoadCase.Create("pumping").WithLevel(SupplyLevel.Minimum).WithAmbient(C(30)).WithOff("lamp").WithStarting("pump").WithSwitch("pump switch", true),
                LoadCase.Create("stuck").WithStalled("pump").WithSwitch("pump switch", true))
            .Build();
        string difference = Same.Difference(made, HarnessDocument.Read(HarnessPieces.Van).Harness);
        Assert.True(difference.Length == 0, difference);
    }

    [Fact]
    public void Read_OfToBeSized_LeavesWireAndFuseOpen()
    {
        Harness harness = HarnessDocument.Read(HarnessPieces.ToBeSized).Harness;
        Assert.Null(((HarnessWire)harness.Branches[1]).Conductor);
        Assert.Null(((HarnessFuse)harness.Branches[0]).Rating);
        Assert.True(harness.HasUsualCases);
        Assert.DoesNotContain("load_cases", HarnessDocument.Create(harness).Write(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"to\": \"S1\"", "\"to\": \"S2\"", ".branches[2].to", "there is no node \"S2\"; there are battery +")]
    [InlineData("\"negative\": \"frame\", \"load\": { \"kind\": \"lamp\"", "\"negative\": \"chassis\", \"load\": { \"kind\": \"lamp\"", ".loads[0].negative", "there is no node \"chassis\"")]
    [InlineData("\"reference_node\": \"battery −\"", "\"reference_node\": \"earth\"", ".reference_node", "there is no node \"earth\"")]
    [InlineData("{ \"id\": \"pump +\" }", "{ \"id\": \"lamp +\" }", ".nodes[6].id", "\"lamp +\" is the name of another node")]
    [InlineData("\"id\": \"lamp fuse\"", "\"id\": \"lamp\"", ".loads[0].id", "\"lamp\" is the name of another branch, source or load")]
    [InlineData("\"name\": \"stuck\"", "\"name\": \"parked\"", ".load_cases[2].name", "another load case")]
    [InlineData("\"stalled\": [ \"pump\" ]", "\"stalled\": [ \"motor\" ]", ".load_cases[2].stalled[0]", "there is no load \"motor\"; there are lamp, pump")]
    [InlineData("\"open\": [ \"pump switch\" ]", "\"open\": [ \"body\" ]", ".load_cases[0].open[0]", "there is no switch \"body\"; there are pump switch")]
    [InlineData("\"off\": [ \"lamp\" ]", "\"off\": [ \"pump\" ]", ".load_cases[1].starting[0]", "another load of this load case")]
    [InlineData("\"to\": \"panel\", \"fuse\"", "\"to\": \"battery +\", \"fuse\"", ".branches[0].to", "runs from node battery + to itself")]
    [InlineData("\"conductor\": \"4 mm²\"", "\"conductor\": \"14 AWG\"", ".branches[2].conductor", "must be a size of the rules' wires")]
    [InlineData("\"rating_A\": 5 }", "\"rating_A\": 6 }", ".branches[3].rating_A", "must be a rating of the rules' fuses")]
    [InlineData("\"place\": { \"ambient_C\": 45 },", "", ".branches[1]", "\"place\" is missing; it may be left out only where the harness states a usual one")]
    [InlineData("\"insulation\": \"PVC (70 °C)\",", "", ".branches[2]", "\"insulation\" is missing")]
    [InlineData("\"voltage_at_maximum_power_V\": 17.6", "\"voltage_at_maximum_power_V\": 21.5", ".sources[1].solar_panel.voltage_at_maximum_power_V", "must be from 10.8 V to 20.952 V")]
    [InlineData("\"from\": \"frame\", \"to\": \"battery −\", \"resistance_ohm\": 0.002", "\"from\": \"S1\", \"to\": \"lamp +\", \"resistance_ohm\": 0", ".branches[5]", "close a loop")]
    public void Read_OfAHarnessThatDoesNotFit_NamesThePlace(string right, string wrong, string path, string message)
    {
        string json = HarnessPieces.Van.Replace(right, wrong, StringComparison.Ordinal);
        Assert.NotEqual(HarnessPieces.Van, json);
        Assert.False(HarnessDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults));
        Assert.Contains(faults, fault => fault.Path == "$" + path && fault.Message.Contains(message, StringComparison.Ordinal) && !fault.IsOfShape);
    }

    /// <summary>Mistakes of form hide no mistakes of names, nor the other way round.</summary>
    [Fact]
    public void Read_OfManyMistakes_NamesEveryOne()
    {
        string json = HarnessPieces.Van.Replace("\"length_m\": 4", "\"length\": 4", StringComparison.Ordinal).Replace("\"to\": \"S1\"", "\"to\": \"S2\"", StringComparison.Ordinal)
            .Replace("\"cold_cranking_A\": 600", "\"cold_cranking_A\": -600", StringComparison.Ordinal).Replace("\"stalled\": [ \"pump\" ]", "\"stalled\": [ \"motor\", 5 ]", StringComparison.Ordinal)
            .Replace("\"kind\": \"busbar\"", "\"kind\": \"bar\"", StringComparison.Ordinal).Replace("\"starts\": 5000", "\"starts\": 0", StringComparison.Ordinal);
        Assert.False(HarnessDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults));
        Assert.Equal(
            ["$.nodes[2].kind", "$.sources[0].source.cold_cranking_A", "$.branches[2]", "$.branches[2].to", "$.branches[2].length", "$.loads[1].starts", "$.load_cases[2].stalled[0]", "$.load_cases[2].stalled[1]"],
            faults.Select(fault => fault.Path));
    }

    private static Gen<Harness> AnyHarness { get; } =
        from source in AnyCircuits.Sources
        from loads in AnyCircuits.Loads.ArrayOf(4)
        from path in AnyCircuits.Path
        from rules in AnyCircuits.Rules
        from asked in AnyCircuits.Requirements
        from seed in Gen.Choose(0, 1000)
        select Build(source, loads, path, rules, asked, seed);

    private static Harness Build(Source source, Load[] loads, CircuitPath path, DesignRules rules, CircuitRequirements asked, int seed)
    {
        HarnessBuilder builder = new HarnessBuilder(asked.Name, rules).Terminals("+", "−").Busbars("bar").Grounds("frame").Source("s", "+", "−", source)
            .Add(HarnessFuse.Create("main", "+", "bar", seed % 3 == 0 ? null : rules.Fuses.Ratings[seed % rules.Fuses.Ratings.Count]).WithResistance(R(0.001 + (seed / 1e5))).WithAmbient(seed % 2 == 0 ? null : C(20 + (seed / 20.0))))
            .Chassis("body", "frame", "−", R(seed / 1e5));
        if (seed % 4 == 0)
        {
            builder.Terminals("sun").Add(HarnessSource.Create("roof", "sun", "−", SolarPanel.Create(A(5 + (seed / 999.0)), V(21), V(17), A(4.5)))).Switch("link", "sun", "bar", R(0.01), seed % 8 == 0).Reference("frame");
        }

        List<LoadCase> cases = [];
        for (int i = 0; i < loads.Length; i++)
        {
            Segment own = path.FeedArray[i % path.FeedArray.Length];
            builder.Terminals("t" + i).Add(HarnessWire.Create("w" + i, "bar", "t" + i, seed % 5 == 0 && i == 0 ? null : seed % 2 == 0 ? own.Conductor : rules.Conductors.Conductors[^1], own.Length, own.Place ?? asked.Place, own.Wire?.Insulation ?? asked.Insulation)
                .WithParallel(own.Parallel).WithWall(asked.Wall).WithJoints([.. asked.Joints]));
            builder.Add(HarnessLoad.Create("l" + i, "t" + i, "frame", loads[i]).WithIntermittent(i == 0).WithDropLimit(asked.DropLimit).WithStarts(asked.Starts));
            cases.Add(LoadCase.Create("case " + i).WithOff("l" + i).WithStarting("l" + ((i + 1) % loads.Length)).WithAmbient(asked.FuseAmbient).WithLevel(i == 0 ? SupplyLevel.Maximum : null));
        }

        return (seed % 3 == 0 ? builder : builder.Add([.. cases])).Build();
    }

    private static void Held(Harness harness)
    {
        string json = HarnessDocument.Create(harness).Write();
        Harness back = HarnessDocument.Read(json).Harness;
        Assert.Equal(json, HarnessDocument.Create(back).Write());
        string difference = Same.Difference(harness, back);
        Assert.True(difference.Length == 0, difference);
        if (harness.Branches.OfType<HarnessWire>().All(wire => wire.Conductor is not null))
        {
            HarnessSolution one = harness.Solve(), other = back.Solve();
            Assert.Equal(one.ToString(), other.ToString());
            Assert.Equal(one.Exists, other.Exists);
            Assert.All(one.Exists ? harness.Nodes : [], node => Assert.Equal(one.VoltageOf(node.Id), other.VoltageOf(node.Id)));
        }
    }

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static ElectricPotential V(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance R(double ohms) => ElectricResistance.FromOhms(ohms);

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);
}
