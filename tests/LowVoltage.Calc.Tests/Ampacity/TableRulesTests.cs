using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

/// <summary>Every table read for a place: cell times published factors by hand, and the places where it has no answer.</summary>
public class TableRulesTests
{
    private static double Amperes(AmpacityTable table, SizeSystem system, double key, in TablePlace place)
    {
        PlacedTable placed = table.At(place);
        Assert.Equal("", placed.Gap);
        Assert.True(placed.TryAmperes(system, key, out double amperes));
        return amperes;
    }

    private static string Gap(AmpacityTable table, bool place, in TablePlace at)
    {
        PlacedTable placed = table.At(at);
        Assert.Equal(place, placed.PlaceIsTooHard);
        Assert.False(placed.TryAmperes(SizeSystem.AmericanWireGauge, 14, out double amperes));
        Assert.Equal(0, amperes);
        Assert.NotEmpty(placed.Gap);
        return placed.Gap;
    }

    // 14 AWG, 75 °C: 20 A · √((75 − 50)/(75 − 30)) · 0.80 for four conductors; cool air and two conductors leave 20 A.
    [Fact]
    public void Nec16_AmbientAndCount_AreMultiplied()
    {
        Assert.Equal(20 * Math.Sqrt(25.0 / 45) * 0.80, Amperes(NecTable310Dash16.Table, SizeSystem.AmericanWireGauge, 14, new TablePlace(50, 75, 4)), 1e-9);
        Assert.Equal(20, Amperes(NecTable310Dash16.Table, SizeSystem.AmericanWireGauge, 14, new TablePlace(10, 75, 2)), 1e-12);
        Assert.Contains("75 °C", Gap(NecTable310Dash16.Table, true, new TablePlace(75, 75, 1)), StringComparison.Ordinal);
        Assert.Contains("no column", Gap(NecTable310Dash16.Table, false, new TablePlace(30, 59, 1)), StringComparison.Ordinal);
    }

    [Fact]
    public void Nec17_HoldsForOneConductorAlone()
    {
        Assert.Equal(30, Amperes(NecTable310Dash17.Table, SizeSystem.AmericanWireGauge, 14, new TablePlace(30, 75, 1)), 1e-12);
        Assert.Contains("one conductor alone", Gap(NecTable310Dash17.Table, true, new TablePlace(30, 75, 2)), StringComparison.Ordinal);
    }

    // 14 AWG, 75 °C: 20 A; in the engine space 0.75 (note 1), five conductors 0.60 (note 2).
    [Fact]
    public void Cfr33_EngineSpaceAndCount_AreMultiplied()
    {
        Assert.Equal(20, Amperes(Cfr33Part183Table5.Table, SizeSystem.AmericanWireGauge, 14, new TablePlace(30, 75, 2)), 1e-12);
        Assert.Equal(20 * 0.75 * 0.60, Amperes(Cfr33Part183Table5.Table, SizeSystem.AmericanWireGauge, 14, new TablePlace(40, 75, 5)), 1e-12);
        Assert.Equal(20 * 0.75, Amperes(Cfr33Part183Table5.Table, SizeSystem.AmericanWireGauge, 14, new TablePlace(20, 75, 2, engineSpace: true)), 1e-12);
        Assert.Contains("ends at 50 °C", Gap(Cfr33Part183Table5.Table, true, new TablePlace(51, 75, 2)), StringComparison.Ordinal);
    }

    // Method F, 25 mm², PVC: 131 A; 40 °C 0.87, two circuits 0.80.
    [Fact]
    public void Iec60364_AmbientAndGrouping_AreMultiplied()
    {
        Assert.Equal(131 * 0.87 * 0.80, Amperes(Iec60364MethodF.Table, SizeSystem.Iec60228, 25, new TablePlace(40, 70, 4)), 1e-9);
        Assert.Equal(131, Amperes(Iec60364MethodF.Table, SizeSystem.Iec60228, 25, new TablePlace(25, 70, 2)), 1e-12);
        Assert.Equal(27 * 0.87, Amperes(Iec60364MethodC.Table, SizeSystem.RoadVehicle, 2.5, new TablePlace(40, 70, 2)), 1e-9);
        Gap(Iec60364MethodC.Table, true, new TablePlace(30, 70, 41));
        Gap(Iec60364MethodC.Table, true, new TablePlace(80, 70, 2));
    }

    // The table is for one cable: two together are not one. 2.5 mm²: 32 A alone, 0.825 for two (FAA figure 11-5), 0.80 of that for two circuits.
    [Fact]
    public void RoadVehicle_APair_IsRatedBelowOneCable()
    {
        Assert.Equal(32, Amperes(RoadVehicleSingleCore.Ambient30, SizeSystem.RoadVehicle, 2.5, new TablePlace(30, 70, 1)), 1e-12);
        Assert.Equal(32 * 0.825, Amperes(RoadVehicleSingleCore.Ambient30, SizeSystem.RoadVehicle, 2.5, new TablePlace(30, 70, 2)), 1e-12);
        Assert.Equal(32 * 0.825 * 0.80, Amperes(RoadVehicleSingleCore.Ambient30, SizeSystem.RoadVehicle, 2.5, new TablePlace(30, 70, 4)), 1e-12);
        Assert.Equal(32 * Math.Sqrt(0.5), Amperes(RoadVehicleSingleCore.Ambient30, SizeSystem.RoadVehicle, 2.5, new TablePlace(50, 70, 1)), 1e-9);
        Assert.Equal(22.7, Amperes(RoadVehicleSingleCore.Ambient50, SizeSystem.RoadVehicle, 2.5, new TablePlace(20, 70, 1)), 1e-12);
        Gap(RoadVehicleSingleCore.Ambient30, true, new TablePlace(70, 70, 1));
        Gap(RoadVehicleSingleCore.Ambient30, true, new TablePlace(30, 70, 41));
    }

    // Size 12 at 60 °C: 61 A; 12 wires at 100 % 0.43; 20 000 ft 0.91.
    [Fact]
    public void FaaFreeAir_BundleAndAltitude_AreMultiplied()
    {
        Assert.Equal(61 * 0.43 * 0.91, Amperes(FaaFreeAir.Ambient60, SizeSystem.AircraftWire, 12, new TablePlace(60, 200, 12, altitudeMeters: 20_000 * 0.3048)), 1e-9);
        Gap(FaaFreeAir.Ambient60, true, new TablePlace(61, 200, 1));
        Gap(FaaFreeAir.Ambient60, true, new TablePlace(60, 200, 25));
        Gap(FaaFreeAir.Ambient60, true, new TablePlace(60, 200, 1, altitudeMeters: 20_000));
    }

    [Fact]
    public void FaaDerated_HoldsForItsOwnBundle()
    {
        Assert.Equal(9, Amperes(FaaAc43Table11Dash9.Table, SizeSystem.AircraftWire, 20, new TablePlace(70, 200, 9, 0.2)), 1e-12);
        Gap(FaaAc43Table11Dash9.Table, true, new TablePlace(70, 200, 10, 0.2));
        Gap(FaaAc43Table11Dash9.Table, true, new TablePlace(71, 200, 1));
    }

    [Fact]
    public void Nasa_InVacuum_OneWireOrTheBundle()
    {
        Assert.Equal(6.5, Amperes(NasaEeeInst002.SingleWire, SizeSystem.AmericanWireGauge, 20, new TablePlace(70, 200, 1)), 1e-12);
        Assert.Equal(3.7, Amperes(NasaEeeInst002.BundledWire, SizeSystem.AmericanWireGauge, 20, new TablePlace(70, 200, 40)), 1e-12);
        Gap(NasaEeeInst002.SingleWire, true, new TablePlace(70, 200, 2));
        Gap(NasaEeeInst002.BundledWire, true, new TablePlace(71, 200, 2));
    }

    [Fact]
    public void Caller_TableStandsUpToItsOwnPlace()
    {
        AmpacityTable own = AmpacityTable.Create("own", C(40), 2, [C(90)], [AmpacityRow.Create(Awg(14), A(20))], Reference.CommonPractice("a test"));
        Assert.Equal(20, Amperes(own, SizeSystem.AmericanWireGauge, 14, new TablePlace(40, 90, 2)), 1e-12);
        Assert.Contains("2 conductors together", Gap(own, true, new TablePlace(40, 90, 3)), StringComparison.Ordinal);
        Assert.Contains("41 °C", Gap(own, true, new TablePlace(41, 90, 2)), StringComparison.Ordinal);
    }

    // NEC Table 310.16, 14 AWG, 75 °C column for 90 °C wire is the 90 °C one: 25 A · √((90 − 50)/(90 − 30)) · 0.80 for four loaded conductors.
    [Fact]
    public void FromTable_AsABasis_RatesAndExplainsItsSteps()
    {
        AmpacityBasis basis = AmpacityBasis.FromTable(NecTable310Dash16.Table);
        Assert.Equal("NEC Table 310.16 (2011 and later), copper", basis.Name);
        Place place = new() { Ambient = C(50), LoadedConductors = 4 };
        Assert.True(basis.TryRate(Conductor.Awg(14), InsulationMaterial.CrossLinkedPolyethylene, place, out ElectricCurrent current));
        Assert.Equal(25 * Math.Sqrt(40.0 / 60) * 0.80, current.Amperes, 1e-9);
        Assert.False(basis.TryRate(Conductor.Iso6722(Mm2(2.5)), InsulationMaterial.CrossLinkedPolyethylene, place, out _));
        AmpacityTable own = AmpacityTable.Create("own", C(60), 4, [C(90)], [AmpacityRow.Create(Mm2(2.5), A(18))], Reference.CommonPractice("a test"));
        Assert.True(AmpacityBasis.FromTable(own).TryRate(Conductor.Iso6722(Mm2(2.5)), InsulationMaterial.CrossLinkedPolyethylene, place, out current));
        Assert.Equal(18, current.Amperes);
        Assert.Throws<ArgumentNullException>("table", () => AmpacityBasis.FromTable(null!));
    }

    // No factor raises a current, whatever the place.
    [Fact]
    public void EveryTable_InNoPlace_RatesAboveItsCell()
    {
        AmpacityTable[] all =
        [
            Cfr33Part183Table5.Table, FaaAc43Table11Dash9.Table, NasaEeeInst002.SingleWire, NasaEeeInst002.BundledWire, NecTable310Dash16.Table, NecTable310Dash17.Table,
            Iec60364MethodC.Table, Iec60364MethodF.Table, RoadVehicleSingleCore.Ambient30, RoadVehicleSingleCore.Ambient50, FaaFreeAir.Ambient25, FaaFreeAir.Ambient50, FaaFreeAir.Ambient60,
        ];
        int rated = 0;
        foreach (AmpacityTable table in all)
        {
            SizeSystem system = Array.Find([SizeSystem.AmericanWireGauge, SizeSystem.AircraftWire, SizeSystem.Iec60228], table.Accepts);
            foreach (double ambient in new double[] { -20, 25, 30, 48, 60, 70 })
            {
                foreach (int wires in new[] { 1, 2, 3, 8, 24 })
                {
                    PlacedTable placed = table.At(new TablePlace(ambient, 200, wires, 0.2));
                    foreach (double key in table.SizeKeys.ToArray())
                    {
                        if (placed.TryAmperes(system, key, out double amperes))
                        {
                            rated++;
                            Assert.True(table.TryAmperes(system, key, placed.ColumnCelsius, out double cell, out _));
                            Assert.InRange(amperes, cell * 0.1, cell);
                        }
                    }
                }
            }
        }

        Assert.True(rated > 1000, rated.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }
}
