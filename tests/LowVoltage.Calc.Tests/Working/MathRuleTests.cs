using System.Xml.Linq;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Working;

public class MathRuleTests
{
    // Reported by looking: a browser without a font for U+1D44E and its like draws a box for every single letter.
    private const string Rule = "mi{text-transform:none;";

    private static string[] Pages() =>
    [
        AdiabaticHeating.ExplainAreaFor(ConductorMaterial.Copper, ElectricCurrent.FromAmperes(900), Duration.FromSeconds(0.2), Temperature.FromDegreesCelsius(70), Temperature.FromDegreesCelsius(160)).ToHtmlPage(),
        ProblemSheet.Create(12, 4, [], Difficulty.SeveralSteps).ToHtmlPage(SheetPart.Key),
        Sheet().ToHtmlPage(),
    ];

    [Fact]
    public void Pages_WithFormulas_TakeTheirLettersFromATextFont() => Assert.All(Pages(), Check);

    private static void Check(string page)
    {
        XElement[] letters = [.. XDocument.Parse(page).Descendants("mi")];

        Assert.Contains(Rule, page, StringComparison.Ordinal);
        Assert.NotEmpty(letters);

        // The rule slants what does not say that it is upright; a name of several letters, such as ln, says so.
        Assert.All(letters.Where(letter => letter.Value is "ln" or "exp" or "min" or "max"), letter => Assert.Equal("normal", (string?)letter.Attribute("mathvariant")));
    }

    private static CalculationSheet Sheet()
    {
        CircuitRequirements lamp = CircuitRequirements.Create(
            Battery.LeadAcid(ElectricCurrent.FromAmperes(600)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(4)), Length.FromMeters(3),
            ReturnPath.Wire(Length.FromMeters(3)), Place.Create(Temperature.FromDegreesCelsius(40)), InsulationMaterial.PolyvinylChloride);
        return CalculationSheet.Create(CircuitDesigner.Design(lamp, DesignRules.RoadVehicle), SheetDetails.Blank);
    }
}
