using System.Xml.Linq;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Tests.Checks;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

public class CalculationSheetHtmlTests
{
    [Fact]
    public void Checks_CanBeScrolledByKeys_AndHaveAName()
    {
        XDocument page = XDocument.Parse(CalculationSheet.Create(CheckCase.Verify(Load.ConstantCurrent(A(2)), Blade(10))).ToHtmlPage());
        XElement wide = page.Descendants().Single(e => e.Attribute("class")?.Value == "wide");
        Assert.Equal(("region", "checks", "0"), (wide.Attribute("role")!.Value, wide.Attribute("aria-labelledby")!.Value, wide.Attribute("tabindex")!.Value));
        Assert.Equal("Checks: what the circuit has, what is allowed, and by how much", wide.Descendants().Single(e => e.Attribute("id")?.Value == "checks").Value);
    }
}
