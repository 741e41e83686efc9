using System.Xml.Linq;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>The words that people search for stand in the summary of what answers them.</summary>
public class SearchWordsTests
{
    [Theory]
    [InlineData("T:LowVoltage.Calc.Circuits.VoltageDrop", "voltage-drop")]
    [InlineData("T:LowVoltage.Calc.Circuits.VoltageDrop", "longest run")]
    [InlineData("M:LowVoltage.Calc.Circuits.CircuitPath.TwoWire", "round trip")]
    [InlineData("M:LowVoltage.Calc.Circuits.CircuitPath.TwoWire", "one-way length")]
    [InlineData("T:LowVoltage.Calc.Conductors.AwgSize", "American Wire Gauge (AWG)")]
    [InlineData("T:LowVoltage.Calc.Conductors.AwgSize", "mm²")]
    [InlineData("M:LowVoltage.Calc.Conductors.Conductor.Awg", "gauge")]
    [InlineData("T:LowVoltage.Calc.Conductors.KcmilSize", "MCM")]
    [InlineData("P:LowVoltage.Calc.Conductors.ConductorSeries.AwgTinned", "boats")]
    [InlineData("P:LowVoltage.Calc.Conductors.InsulationMaterial.PolyvinylChloride", "PVC")]
    [InlineData("P:LowVoltage.Calc.Conductors.InsulationMaterial.CrossLinkedPolyethylene", "XLPE")]
    [InlineData("M:LowVoltage.Calc.Conductors.ConductorMaterial.CopperCladAluminium", "CCA")]
    [InlineData("T:LowVoltage.Calc.Ampacity.AmpacityTable", "current ratings")]
    [InlineData("T:LowVoltage.Calc.Ampacity.AmpacityTable", "how many amps")]
    [InlineData("T:LowVoltage.Calc.Heating.HeatBalance", "how many amps")]
    [InlineData("T:LowVoltage.Calc.Heating.WireBundle", "loom or harness")]
    [InlineData("M:LowVoltage.Calc.Circuits.ReturnPath.Chassis", "ground return")]
    [InlineData("T:LowVoltage.Calc.Circuits.UniformRun", "LED")]
    [InlineData("T:LowVoltage.Calc.Circuits.TappedRun", "daisy chain")]
    [InlineData("T:LowVoltage.Calc.Circuits.ElectricalEnergy", "how long a battery lasts")]
    [InlineData("M:LowVoltage.Calc.Circuits.Load.ConstantPower", "inverter")]
    [InlineData("M:LowVoltage.Calc.Circuits.Load.ConstantPower", "wattage")]
    [InlineData("M:LowVoltage.Calc.Circuits.Battery.LeadAcid", "CCA")]
    [InlineData("M:LowVoltage.Calc.Circuits.Battery.LeadAcid", "AGM")]
    [InlineData("M:LowVoltage.Calc.Circuits.Battery.LithiumIronPhosphate", "LiFePO4")]
    [InlineData("P:LowVoltage.Calc.Protection.FuseSeries.Iec60127Sheet3", "slow-blow")]
    [InlineData("T:LowVoltage.Calc.Protection.FuseAgainstFuse", "blows first")]
    [InlineData("T:LowVoltage.Calc.CircuitDesigner", "wire size")]
    [InlineData("T:LowVoltage.Calc.CircuitDesigner", "fuse size")]
    public void Summary_HasTheWordThatPeopleSearchFor(string member, string word)
    {
        XElement[] found = [.. XDocument.Load(Path.ChangeExtension(typeof(Conductor).Assembly.Location, ".xml")).Descendants("member")
            .Where(m => ((string)m.Attribute("name")!).Split('(')[0] == member)];
        Assert.NotEmpty(found);
        Assert.Contains(found, m => m.Element("summary")!.Value.Contains(word, StringComparison.OrdinalIgnoreCase));
    }
}
