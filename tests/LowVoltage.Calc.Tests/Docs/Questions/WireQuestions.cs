using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;
using Console = LowVoltage.Calc.Tests.Docs.Snippets.Console;

namespace LowVoltage.Calc.Tests.Docs.Questions;

/// <summary>Gauges, square millimetres and metals.</summary>
internal static class WireQuestions
{
    public static void GaugeInSquareMillimetres()
    {
        #region gauge-in-square-millimetres
        AwgSize size = AwgSize.Parse("10");
        Console.WriteLine($"{size}: {size.Area.SquareMillimeters:0.00} mm², {size.Diameter.Millimeters:0.00} mm solid");
        Console.WriteLine($"next metric cable up: {ConductorSeries.RoadVehicle.SmallestAtLeast(size.Area)}");
        #endregion
    }

    public static void AmpsOfAGauge()
    {
        #region amps-of-a-gauge
        Wire wire = Wire.Create(Conductor.Awg(12), InsulationMaterial.HeatResistantPolyvinylChloride);
        Temperature limit = wire.Insulation.ContinuousLimit;
        foreach (double celsius in new[] { 25.0, 50, 80 })
        {
            ElectricCurrent most = HeatBalance.CurrentFor(wire, Surroundings.Create(Temperature.FromDegreesCelsius(celsius)), limit);
            Console.WriteLine($"alone in air of {celsius} °C: {most.Amperes:0} A at {limit.DegreesCelsius:0} °C");
        }
        #endregion
    }

    public static void AmpsByTheBook()
    {
        #region amps-by-the-book
        Temperature rated = Temperature.FromDegreesCelsius(75);
        foreach (AmpacityTable table in new[] { NecTable310Dash16.Table, NecTable310Dash17.Table, Cfr33Part183Table5.Table })
        {
            Console.WriteLine($"{table.Name}: {table.Rating(AwgSize.Parse("10"), rated).Current.Amperes} A");
        }
        #endregion
    }

    public static void TwoThinOrOneThick()
    {
        #region two-thin-or-one-thick
        LinearResistance thick = Conductor.Awg(6).ResistancePerLength(Temperature.FromDegreesCelsius(20));
        foreach (int gauge in new[] { 8, 9, 10 })
        {
            LinearResistance thin = Conductor.Awg(gauge).ResistancePerLength(Temperature.FromDegreesCelsius(20));
            Console.WriteLine($"two of {gauge} AWG: {thin.OhmsPerKilometer / 2:0.00} Ω/km, one of 6 AWG: {thick.OhmsPerKilometer:0.00} Ω/km");
        }
        #endregion
    }

    public static void CopperCladCable()
    {
        #region copper-clad-cable
        AwgSize size = AwgSize.Parse("4");
        Conductor copper = Conductor.Stranded(size, ConductorMaterial.Copper);
        Conductor clad = Conductor.Stranded(size, ConductorMaterial.CopperCladAluminium(copperShareByVolume: 0.10));
        Length meter = Length.FromMeters(1);
        Temperature room = Temperature.FromDegreesCelsius(20);
        double more = clad.Resistance(meter, room) / copper.Resistance(meter, room);
        Console.WriteLine($"{more:0.00} times the resistance at {clad.Mass(meter) / copper.Mass(meter):0.00} of the mass");
        #endregion
    }

    public static void TinnedCable()
    {
        #region tinned-cable
        foreach (ConductorSeries series in new[] { ConductorSeries.AwgTrade, ConductorSeries.AwgTinned })
        {
            Conductor wire = series.SmallestFor(Length.FromFeet(2 * 45), ElectricCurrent.FromAmperes(9),
                Temperature.FromDegreesCelsius(40), ElectricPotential.FromVolts(0.36));
            Console.WriteLine(wire);
        }
        #endregion
    }

    public static void WireForAnInverter()
    {
        #region wire-for-an-inverter
        CircuitRequirements inverter = CircuitRequirements.Create(
            Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(280)),
            Load.ConstantPower(Power.FromWatts(2000), efficiency: 0.9), Length.FromMeters(1.5), ReturnPath.Wire(Length.FromMeters(1.5)),
            Place.Create(Temperature.FromDegreesCelsius(40)), InsulationMaterial.CrossLinkedPolyethylene);
        CircuitDesign design = CircuitDesigner.Design(inverter, DesignRules.RoadVehicle);
        Console.WriteLine($"{design.SupplyRange.MostCurrent!.Current.Amperes:0} A when the pack is empty");
        Console.WriteLine(design);
        #endregion
    }
}
