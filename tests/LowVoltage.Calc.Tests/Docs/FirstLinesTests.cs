using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The first lines a user types, room by room: they compile, and answer what a handbook says.</summary>
public class FirstLinesTests
{
    [Fact]
    public void Sizes_ParseAndGiveResistance()
    {
        AwgSize size = AwgSize.Parse("14 AWG");
        Conductor wire = Conductor.Solid(size, ConductorMaterial.Copper);
        LinearResistance r75 = wire.ResistancePerLength(Temperature.FromDegreesCelsius(75));

        // NEC Chapter 9 Table 8: 14 AWG solid uncoated copper, 3.07 Ω/1000 ft at 75 °C.
        Assert.InRange(r75.OhmsPerThousandFeet, 3.065, 3.075);
        Assert.Equal(AwgSize.FromNumber(0), AwgSize.Parse("1/0"));
        Assert.Equal(AwgSize.FromNumber(-3), AwgSize.Parse("4/0 AWG"));
        Assert.Equal(MetricSize.FromSquareMillimeters(2.5), MetricSize.Parse("2.5 mm²"));
    }

    [Fact]
    public void ShortCircuit_FinalTemperatureAndTimeAgreeWithTheKFactor()
    {
        Conductor wire = Conductor.OfArea(Area.FromSquareMillimeters(1), ConductorMaterial.Copper);
        ElectricCurrent current = ElectricCurrent.FromAmperes(115);
        Temperature initial = Temperature.FromDegreesCelsius(70);

        Temperature hot = AdiabaticHeating.FinalTemperature(wire, current, Duration.FromSeconds(1), initial);
        Duration limit = AdiabaticHeating.TimeToReach(wire, current, initial, InsulationMaterial.PolyvinylChloride.ShortCircuitLimit);

        // IEC 60364-4-43 Table 43A: k = 115 A·√s/mm² from 70 °C to 160 °C, rounded to the unit: 1 mm² carries 115 A for 1 s within 2 · 0.5/115.
        Assert.InRange(limit.Seconds, 1 - (2 * 0.5 / 115), 1 + (2 * 0.5 / 115));
        Assert.InRange(hot.DegreesCelsius, 159, 161);
    }

    [Fact]
    public void Fuse_IsChosenAndKnowsItsOperatingTime()
    {
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(13));
        (Duration least, Duration longest) = fuse.OperatingTime(ElectricCurrent.FromAmperes(30));

        // ISO 8820-3 type C at 200 % of 15 A: 0.15 s to 5 s (from memory).
        Assert.Equal(15, fuse.Current.Amperes);
        Assert.Equal(0.15, least.Seconds, 12);
        Assert.Equal(5, longest.Seconds, 12);
    }

    [Fact]
    public void HeatBalance_AndOverload_AnswerForTheUsersOwnWire()
    {
        Conductor conductor = Conductor.Stranded(AwgSize.Parse("14"), ConductorMaterial.Copper);
        Wire insulated = Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, wall: Length.FromMillimeters(0.6));
        Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(40), Altitude = Length.FromMeters(0), Emissivity = 0.9 };
        Temperature limit = Temperature.FromDegreesCelsius(70);

        ElectricCurrent most = HeatBalance.CurrentFor(insulated, air, limit);
        Temperature steady = HeatBalance.TemperatureAt(insulated, air, most);
        Duration? never = OverloadHeating.TimeToReach(insulated, air, most * 0.99, limit);
        Duration? survives = OverloadHeating.TimeToReach(insulated, air, most * 2, limit);

        Assert.Equal(70, steady.DegreesCelsius, 6);
        Assert.Null(never);
        Assert.True(survives > Duration.FromSeconds(1));
    }

    [Fact]
    public void Design_ExplainsItselfAsMarkdown()
    {
        var requirements = new CircuitRequirements
        {
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.ConstantPower(Power.FromWatts(60)),
            Feed = Length.FromMeters(5.5),
            Return = ReturnPath.Wire(Length.FromMeters(5.5)),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(50), LoadedConductors = 6 },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        string sheet = design.Explain().ToMarkdown();

        // The parts of a calculation sheet that a user would look for; the numbers are checked where they are computed.
        Assert.StartsWith("## Calculation sheet", sheet, StringComparison.Ordinal);
        Assert.All(design.Checks, check => Assert.Contains(check.Name, sheet, StringComparison.Ordinal));
        Assert.Contains("$$", sheet, StringComparison.Ordinal);
        Assert.Contains("**Cautions**", sheet, StringComparison.Ordinal);
    }
}
