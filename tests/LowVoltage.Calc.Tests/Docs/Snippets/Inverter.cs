using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class Inverter
{
    #region a-fuse-that-breaks-enough
    // From the data sheet of the fuse; this one is invented.
    private static FuseSeries HighBreaking() => FuseSeries.Create(new FuseSeriesDefinition
    {
        Name = "data sheet (invented)",
        Kind = "high-breaking fuse",
        Reference = new Reference { Title = "Data sheet of the fuse (invented)", Kind = ReferenceKind.Handbook },
        Ratings = [.. new[] { 80.0, 100, 125, 150, 200, 250, 300 }.Select(amperes => ElectricCurrent.FromAmperes(amperes))],
        VoltageRating = ElectricPotential.FromVolts(58),
        VoltageBasis = RatingBasis.DirectCurrent,
        BreakingCapacity = ElectricCurrent.FromKiloamperes(20),
        BreakingCapacityBasis = RatingBasis.DirectCurrent,
    });
    #endregion

    public static void WireForAnInverter()
    {
        #region wire-for-an-inverter
        var requirements = new CircuitRequirements
        {
            Source = Battery.LithiumIronPhosphate(cellsInSeries: 4, ElectricCharge.FromAmpereHours(200)),
            Load = Load.ConstantPower(Power.FromWatts(1000), efficiency: 0.88)
                .WithMinimumVoltage(ElectricPotential.FromVolts(9.5)),
            Feed = Length.FromMeters(1.2),
            Return = ReturnPath.Wire(Length.FromMeters(1.2)),
            Joints = [Joint.Create("fuse, switch, four lugs", ElectricResistance.FromMilliohms(0.8))],
            Upstream = ElectricResistance.FromMilliohms(0.5),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(40) },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        };
        var rules = new DesignRules(DesignRules.RoadVehicle) { Fuses = HighBreaking() };
        CircuitDesign design = CircuitDesigner.Design(requirements, rules);

        SupplyRange range = design.SupplyRange!;
        Console.WriteLine(
            $"full {range.Maximum.Current.Amperes:0} A, nominal "
            + $"{range.Nominal.Current.Amperes:0} A, empty {range.Minimum.Current.Amperes:0} A");
        Console.WriteLine($"{design.Wire} with {design.Fuse}: {design.Verdict}, governed by {design.Governing.Name}");
        foreach (CheckResult open in design.Undetermined)
        {
            Console.WriteLine(open);
        }

        Console.WriteLine(
            $"with the preset's own fuses: {CircuitDesigner.Design(requirements, DesignRules.RoadVehicle)}");
        #endregion
    }
}
