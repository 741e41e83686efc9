using System.Text.Json.Nodes;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Documents;

public class CircuitDocumentTests
{
    [Property(MaxTest = 300)]
    public Property Write_AndRead_GivesTheSameCircuitAndTheSameAnswer() => Prop.ForAll(
        AnyCircuits.Requirements.Zip(AnyCircuits.Rules, CircuitDocument.Create).ToArbitrary(),
        Held);

    [Property(MaxTest = 150)]
    public Property Write_AndRead_OfLaidWiring_GivesTheSameCircuitAndTheSameAnswer() => Prop.ForAll(
        (from requirements in AnyCircuits.Requirements
         from rules in AnyCircuits.Rules
         from path in AnyCircuits.Path
         from fused in Gen.Elements(true, false)
         select CircuitDocument.Create(requirements, path, fused ? rules.Fuses.Ratings[0] : null, rules)).ToArbitrary(),
        Held);

    [Fact]
    public void Write_AndRead_OfOneLaidSize_GivesTheSameAnswer()
    {
        CircuitRequirements requirements = CircuitDocument.Read(Pieces.Least).Requirements;
        Held(CircuitDocument.Create(requirements, ConductorSeries.RoadVehicle.Conductors[8], FuseSeries.RoadVehicleBlade.Ratings[2], DesignRules.RoadVehicle));
        Held(CircuitDocument.Create(requirements, ConductorSeries.RoadVehicle.Conductors[8], fuse: null, DesignRules.RoadVehicle));
    }

    [Fact]
    public void Read_OfTheLeast_HasWhatTheLibraryTakesWhereNothingIsStated()
    {
        CircuitRequirements read = CircuitDocument.Read(Pieces.Least).Requirements;
        CircuitRequirements made = CircuitRequirements.Create(
            Battery.LeadAcid(ElectricCurrent.FromAmperes(600)),
            Load.ConstantPower(Power.FromWatts(60)),
            Length.FromMeters(5.5),
            ReturnPath.Wire(Length.FromMeters(5.5)),
            Place.Create(Temperature.FromDegreesCelsius(50)),
            InsulationMaterial.CrossLinkedPolyethylene);
        Assert.Equal("", Same.Difference(made, read));
        Assert.Same(DesignRules.RoadVehicle, CircuitDocument.Read(Pieces.Least).Rules);
        Assert.False(CircuitDocument.Read(Pieces.Least).IsVerification);
    }

    [Theory]
    [MemberData(nameof(Circuits))]
    public void Read_OfEveryKind_IsAnsweredAndComesBack(string json)
    {
        CircuitDocument read = CircuitDocument.Read(json);
        Held(read);
        Assert.True(CircuitDocument.TryRead(json, out CircuitDocument? tried, out IReadOnlyList<DocumentFault> faults));
        Assert.Empty(faults);
        Assert.Equal(read.Write(), tried.Write());
    }

    [Fact]
    public void Read_KeepsALoadOfMeasuredPoints()
    {
        Load load = Load.Measured([V(6), V(9.1), V(12.3)], [A(1.5), A(2.07), A(2.2)]).WithMinimumVoltage(ElectricPotential.FromVolts(9));
        CircuitRequirements asked = CircuitDocument.Read(Pieces.Least).Requirements.WithLoad(load);
        Load read = CircuitDocument.Read(CircuitDocument.Create(asked, DesignRules.RoadVehicle).Write()).Requirements.Load;
        foreach (double volts in new[] { 1, 6, 7.7, 9.1, 11, 14.4 })
        {
            Assert.Equal(load.CurrentAt(ElectricPotential.FromVolts(volts), LoadState.Running), read.CurrentAt(ElectricPotential.FromVolts(volts), LoadState.Running));
        }

        Assert.Equal(load.MinimumVoltage, read.MinimumVoltage);
    }

    [Theory]
    [InlineData("[ 6, 9, 9 ]", "[ 1, 2, 3 ]", "voltages[2] must be above the one before it, 9 V; it was 9 V.")]
    [InlineData("[ 6, 9, 12 ]", "[ 1, 3, 2 ]", "currents[2] must not be below the one before it, 3 A; it was 2 A.")]
    [InlineData("[ 6, 9, 12 ]", "[ 1, 2, 3, 4 ]", "there were 3 voltages and 4 currents")]
    public void Read_MeasuredPointsThatDoNotRise_NamesTheRow(string volts, string amperes, string says)
    {
        JsonObject circuit = JsonNode.Parse(Pieces.Least)!.AsObject();
        circuit["load"] = JsonNode.Parse($$"""{ "kind": "measured points", "voltages_V": {{volts}}, "currents_A": {{amperes}} }""");
        string json = circuit.ToJsonString();
        Assert.False(CircuitDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults));
        Assert.Contains(says, Assert.Single(faults).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_KeepsWhatALoadSaysBehindItsCapacitor()
    {
        Load load = Load.Motor(A(5), A(18), A(20), Duration.FromSeconds(0.3)).WithInputCapacitor(ElectricCapacitance.FromMillifarads(2)).WithMinimumVoltage(ElectricPotential.FromVolts(9))
            .WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(3), Duration.FromSeconds(11))).WithThermalCutOut().WithInputCapacitor(ElectricCapacitance.FromMillifarads(5));
        CircuitRequirements asked = CircuitDocument.Read(Pieces.Least).Requirements.WithLoad(load);
        Load read = CircuitDocument.Read(CircuitDocument.Create(asked, DesignRules.RoadVehicle).Write()).Requirements.Load;
        foreach (LoadState state in Enum.GetValues<LoadState>())
        {
            Assert.Equal(load.CurrentAt(ElectricPotential.FromVolts(12), state), read.CurrentAt(ElectricPotential.FromVolts(12), state));
            Assert.Equal(load.HeatFactor(state), read.HeatFactor(state));
        }

        Assert.Equal(load.MinimumVoltage, read.MinimumVoltage);
        Assert.Equal(load.HasThermalCutOut, read.HasThermalCutOut);
        Assert.Equal(
            load.InrushFrom(ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(50)).Select(surge => (surge.Peak, surge.Duration)),
            read.InrushFrom(ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(50)).Select(surge => (surge.Peak, surge.Duration)));
    }

    [Fact]
    public void Write_OfADutyCycleStatedBehindACapacitor_IsThatOfTheOneLoad()
    {
        Load load = Load.ConstantCurrent(A(5)).WithDutyCycle(DutyCycle.FromFraction(0.25)).WithInputCapacitor(ElectricCapacitance.FromMillifarads(2)).WithDutyCycle(DutyCycle.FromFraction(0.5)).WithMinimumVoltage(ElectricPotential.FromVolts(9));
        string json = CircuitDocument.Create(CircuitDocument.Read(Pieces.Least).Requirements.WithLoad(load), DesignRules.RoadVehicle).Write();
        JsonObject written = JsonNode.Parse(json)!["load"]!.AsObject();
        Assert.Equal(
            """{"kind":"constant current","current_A":5,"minimum_V":9,"duty_fraction":0.5,"input_capacitance_F":0.002}""", written.ToJsonString());
        Load read = CircuitDocument.Read(json).Requirements.Load;
        Assert.Equal((0.5, 9.0), (read.DutyCycle.Fraction, read.MinimumVoltage!.Value.Volts));
        Assert.Equal(json, CircuitDocument.Read(json).Write());
    }

    /// <summary>The document was read, and its answer then threw.</summary>
    [Fact]
    public void Read_OfALeadShorterThanTheWayToItsLastDevice_NamesBoth()
    {
        JsonObject circuit = JsonNode.Parse(CircuitDocument.Create(
            new CircuitRequirements(CircuitDocument.Read(Pieces.Least).Requirements)
            {
                Upstream = ElectricResistance.FromMilliohms(2),
                UpstreamProtection = [UpstreamProtection.Fuse(FuseSeries.RoadVehicleBlade.Ratings[^1]).WithUpstream(ElectricResistance.FromMilliohms(2))],
            },
            DesignRules.RoadVehicle).Write())!.AsObject();
        Assert.True(CircuitDocument.TryRead(circuit.ToJsonString(), out CircuitDocument? read, out _));
        Assert.NotNull(read.Answer());
        circuit["supply_lead_ohm"] = 0;
        Assert.False(CircuitDocument.TryRead(circuit.ToJsonString(), out _, out IReadOnlyList<DocumentFault> faults));
        DocumentFault fault = Assert.Single(faults);
        Assert.EndsWith("supply_lead_ohm", fault.Path, StringComparison.Ordinal);
        Assert.Contains("supply_lead_ohm must be at least the supply_lead_ohm of the last device in supply_protection, 0.002 Ω; it was 0 Ω.", fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_TakesAByteOrderMarkAndAnyLineEnds()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. System.Text.Encoding.UTF8.GetBytes(Pieces.Least.ReplaceLineEndings("\r\n"))];
        Assert.Equal(CircuitDocument.Read(Pieces.Least).Write(), CircuitDocument.Read(bytes).Write());
    }

    [Fact]
    public void Write_HasLineFeedsAloneAndEndsInUnits()
    {
        string json = CircuitDocument.Read(Pieces.Least).Write();
        Assert.DoesNotContain('\r', json);
        Assert.Contains("\"XLPE (90 °C)\"", json, StringComparison.Ordinal);
        Assert.StartsWith("{\n  \"lowvoltage_circuit\": 1,\n", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_OfMoreThanSixtyVolts_IsRefusedByTheDesigner() => Assert.Throws<ArgumentOutOfRangeException>(
        () => CircuitDocument.Read(Pieces.Least.Replace("{ \"kind\": \"lead-acid battery\", \"cold_cranking_A\": 600 }", "{ \"kind\": \"voltage\", \"voltage_V\": 72 }", StringComparison.Ordinal)).Answer());

    public static TheoryData<string> Circuits() => [.. Pieces.Circuits().Select(piece => piece.Json)];

    private static ElectricPotential V(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static void Held(CircuitDocument circuit)
    {
        string json = circuit.Write();
        CircuitDocument back = CircuitDocument.Read(json);
        Assert.Equal(json, back.Write());
        Assert.True(Same.Difference(circuit, back) is "", Same.Difference(circuit, back));
        if (circuit.Requirements.Source.MaximumVoltage.Volts > 60)
        {
            return;
        }

        CircuitDesign one = circuit.Answer(), other = back.Answer();
        Assert.Equal(one.Checks, other.Checks);
        Assert.Equal(one.ToString(), other.ToString());
        Assert.Equal(one.Assumptions, other.Assumptions);
    }
}
