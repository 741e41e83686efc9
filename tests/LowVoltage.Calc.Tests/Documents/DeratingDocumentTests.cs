using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>A caller's table with the caller's factors, stated in a document.</summary>
public class DeratingDocumentTests
{
    private static readonly Reference Sheet = new() { Title = "data sheet (invented)", Kind = ReferenceKind.Handbook };

    private static AmpacityBasis Whole => AmpacityBasis.FromTable(
        AmpacityTable.Create("maker's table", C(30), 1, [C(90)], [AmpacityRow.Create(Mm2(1.5), A(25))], Sheet),
        AmbientDerating.Create("air factors", Sheet, [C(30), C(40), C(50)], [1, 0.91, 0.82]),
        GroupingDerating.ByConductors("bundle factors", Sheet, [1, 2, 4], [1, 0.88, 0.75]));

    private static string Json => CircuitDocument.Create(CircuitDocument.Read(Pieces.Least).Requirements, new DesignRules(DesignRules.Bench) { Ampacity = Whole }).Write();

    // 25 A · 0.82 (row of 50 °C) · 0.88.
    [Fact]
    public void Read_WhatWasWritten_HasBothFactors()
    {
        CircuitDocument read = CircuitDocument.Read(Json);
        Assert.Equal(Json, read.Write());
        Assert.Equal((Whole.Name, Whole.Reference), (read.Rules.Ampacity.Name, read.Rules.Ampacity.Reference));
        Assert.True(read.Rules.Ampacity.TryRate(Conductor.Iso6722(Mm2(1.5)), InsulationMaterial.CrossLinkedPolyethylene, new Place { Ambient = C(45), LoadedConductors = 2 }, out ElectricCurrent current));
        Assert.Equal(18.04, current.Amperes, 1e-12);
    }

    [Theory]
    [InlineData("\"loaded_conductors\": 1,", "\"loaded_conductors\": 2,", ".ampacity.grouping", "grouping must begin with the table's own number")]
    [InlineData("\"base_ambient_C\": 30,", "\"base_ambient_C\": 40,", ".ampacity.ambient", "ambient must begin with the table's own air")]
    [InlineData("0.82", "0.95", ".ampacity.ambient.factors", "factors[2], for 50 °C, is 0.95, which is above the 0.91 of the row before it")]
    [InlineData("0.75", "1.5", ".ampacity.grouping.factors[2]", "must be from 1E-12 to 1; it was 1.5.")]
    [InlineData("loaded conductors", "wires", ".ampacity.grouping.counts", "must be one of \"loaded conductors\", \"circuits\"")]
    public void Read_FactorsThatDoNotFit_AreNamedWithTheirPlace(string right, string wrong, string path, string says)
    {
        Assert.Contains(right, Json, StringComparison.Ordinal);
        DocumentException refused = Assert.Throws<DocumentException>(() => CircuitDocument.Read(Json.Replace(right, wrong, StringComparison.Ordinal)));
        DocumentFault fault = Assert.Single(refused.Faults);
        Assert.EndsWith(path, fault.Path, StringComparison.Ordinal);
        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
    }
}
