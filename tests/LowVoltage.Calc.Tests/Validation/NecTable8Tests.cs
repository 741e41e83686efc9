using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>NEC chapter 9 table 8 (from memory): at 75 °C copper and aluminium within 0.5 %, the tolerance that goes with the transcription (its areas have three or four digits).</summary>
public class NecTable8Tests
{
    private static readonly Temperature SeventyFive = Temperature.FromDegreesCelsius(75);

    public static TheoryData<string, int> Rows()
    {
        TheoryData<string, int> rows = [];
        foreach (PublishedTable.Row row in PublishedTable.Load("nec-chapter-9-table-8.csv").Rows)
        {
            rows.Add(row.Text("size"), (int)row.Number("strands"));
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Resistance_At75Celsius_AgreesWithTheTable(string size, int strands)
    {
        PublishedTable.Row row = Row(size, strands);
        Assert.Equal(row.Number("copper"), At75(Make(size, strands, ConductorMaterial.Copper)), row.Number("copper") * 0.005);
        Assert.Equal(row.Number("aluminium"), At75(Make(size, strands, ConductorMaterial.Aluminium)), row.Number("aluminium") * 0.005);

        // Coated: the limit of ASTM B33 for the printed strand diameter; 0.5 % more for the rounding of the strand and the memory of the table.
        ConductorMaterial tinned = ConductorMaterial.TinnedCopperOfStrand(
            strands == 1 ? AwgSize.Parse(size).Diameter : Length.FromInches(row.Number("strand_in")));
        Assert.Equal(row.Number("coated"), At75(Make(size, strands, tinned)), row.Number("coated") * 0.0055);
    }

    // Overall diameters: printed to the mil from strands rounded to the mil, so one mil is the table's own uncertainty.
    [Theory]
    [MemberData(nameof(Rows))]
    public void Diameter_OverAll_AgreesWithTheTable(string size, int strands) =>
        Assert.Equal(Row(size, strands).Number("overall_in"), Make(size, strands, ConductorMaterial.Copper).Diameter.Inches, 0.001);

    // The note's formula from 75 °C and α20 from 20 °C are the same line: within 0.1 %.
    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(105)]
    public void NecFormula_AgreesWithTheLineFrom20(double celsius)
    {
        Temperature temperature = Temperature.FromDegreesCelsius(celsius);
        ElectricResistance at75 = ElectricResistance.FromOhms(3.07);
        double nec = TemperatureCorrection.NecResistanceAt(at75, temperature, TemperatureCorrection.NecCopperAt75).Ohms;
        double line = TemperatureCorrection.ResistanceAt(at75, SeventyFive, temperature, ConductorMaterial.Copper).Ohms;
        Assert.Equal(line, nec, line * 0.001);
        Assert.Equal(3.07 * (1 + (0.00323 * (celsius - 75))), nec, 1e-12);
    }

    // 0.00323 and 0.00330 are printed to five decimals; half a unit is 0.000005.
    [Fact]
    public void NecCoefficients_FollowFromTheCoefficientsAt20()
    {
        Temperature twenty = Temperature.FromDegreesCelsius(20);
        Assert.Equal(TemperatureCorrection.NecCopperAt75, TemperatureCorrection.CoefficientAt(0.00393, twenty, SeventyFive), 5e-6);
        Assert.Equal(TemperatureCorrection.NecAluminiumAt75, TemperatureCorrection.CoefficientAt(0.00403, twenty, SeventyFive), 5e-6);
    }

    private static PublishedTable.Row Row(string size, int strands) => PublishedTable.Load("nec-chapter-9-table-8.csv").Rows
        .Single(row => row.Text("size") == size && (int)row.Number("strands") == strands);

    private static Conductor Make(string size, int strands, ConductorMaterial material) =>
        KcmilSize.TryParse(size + " kcmil", out KcmilSize kcmil) ? Conductor.Stranded(kcmil, material)
        : strands == 1 ? Conductor.Solid(AwgSize.Parse(size), material)
        : Conductor.Stranded(AwgSize.Parse(size), material);

    private static double At75(Conductor conductor) => conductor.ResistancePerLength(SeventyFive).OhmsPerThousandFeet;
}
