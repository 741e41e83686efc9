using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class OwnTable
{
    public static void TableOfYourOwn()
    {
        #region table-of-your-own
        // A maker's sheet, invented: currents for one conductor in air at 30 °C, factors for warmer air and for more conductors.
        Reference sheet = Reference.Create("Data sheet of the cable (invented)", ReferenceKind.Handbook);
        AmpacityTable table = AmpacityTable.Create(
            "cable sheet",
            baseAmbient: Temperature.FromDegreesCelsius(30),
            loadedConductors: 1,
            insulationRatings: [Temperature.FromDegreesCelsius(90)],
            [
                AmpacityRow.Create(MetricSize.Parse("1.5"), ElectricCurrent.FromAmperes(25)),
                AmpacityRow.Create(MetricSize.Parse("2.5"), ElectricCurrent.FromAmperes(34)),
                AmpacityRow.Create(MetricSize.Parse("4"), ElectricCurrent.FromAmperes(45)),
            ],
            sheet);
        AmbientDerating air = AmbientDerating.Create(
            "air factors", sheet, ambients: [.. new[] { 30.0, 40, 50 }.Select(celsius => Temperature.FromDegreesCelsius(celsius))], factors: [1, 0.91, 0.82]);
        GroupingDerating bundle = GroupingDerating.ByConductors("bundle factors", sheet, conductors: [1, 2, 4], factors: [1, 0.88, 0.75]);

        DesignRules rules = new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.FromTable(table, air, bundle) };
        CircuitRequirements requirements = new()
        {
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(16)),
            Feed = Length.FromMeters(1),
            Return = ReturnPath.Wire(Length.FromMeters(1)),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(45), LoadedConductors = 2 },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
            Upstream = ElectricResistance.FromMilliohms(12),
            FuseDistance = Length.FromCentimeters(10),
            DropLimit = DropLimit.Percent(5),
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, rules);
        Console.WriteLine($"{design.Wire} with {design.Fuse}: {design.Verdict}");
        foreach (DeratingStep step in design.Ampacity!.Steps)
        {
            Console.WriteLine(step);
        }
        #endregion
    }
}
