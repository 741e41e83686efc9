using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class ShowTheWorking
{
    public static void OneLoopOnTheBoard()
    {
        #region one-loop-on-the-board
        LinearResistance wire = LinearResistance.FromOhmsPerKilometer(7.6);
        Length oneWay = Length.FromMeters(5.5);
        WorkedSolution board = VoltageDrop.ExplainOutAndBack(wire, oneWay, wire, oneWay);

        Console.WriteLine(board.ToText());
        #endregion
    }

    public static void ASheetForTheFile()
    {
        #region a-sheet-for-the-file
        var requirements = new CircuitRequirements
        {
            Name = "cabin lamp",
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.Lamp(Power.FromWatts(21), ElectricPotential.FromVolts(12)),
            Feed = Length.FromMeters(4),
            Return = ReturnPath.Wire(Length.FromMeters(4)),
            Upstream = ElectricResistance.FromMilliohms(14),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(35) },
            Insulation = InsulationMaterial.PolyvinylChloride,
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        WorkedSolution sheet = design.Explain();

        SolutionStep fuse = sheet.Steps.First(step => step.Sought == "least rating of the fuse");
        Console.WriteLine($"{sheet.Steps.Count} steps; one of them: {fuse.Sought}");
        Console.WriteLine(fuse.InSymbols);
        Console.WriteLine(fuse.InNumbers);
        Console.WriteLine(fuse.Source);
        #endregion
    }

    public static void APageToSign()
    {
        CircuitRequirements requirements = new()
        {
            Name = "cabin lamp",
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.Lamp(Power.FromWatts(21), ElectricPotential.FromVolts(12)),
            Feed = Length.FromMeters(4),
            Return = ReturnPath.Wire(Length.FromMeters(4)),
            Upstream = ElectricResistance.FromMilliohms(14),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(35) },
            Insulation = InsulationMaterial.PolyvinylChloride,
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);

        #region a-page-to-sign
        CalculationSheet sheet = CalculationSheet.Create(design, new SheetDetails(program: "my wiring tool", version: "1.0", date: "3 March 2027", paper: SheetPaper.A4));
        string page = sheet.ToHtmlPage();

        Console.WriteLine(sheet.Title);
        Console.WriteLine(sheet.Diagram.Description);
        #endregion
    }
}
