using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Every published factor against its separate transcription, and the ambient factors against the square-root law.</summary>
public class DeratingFactorValidationTests
{
    private static double SquareRoot(double conductor, double ambient, double baseAmbient) =>
        Math.Sqrt((conductor - ambient) / (conductor - baseAmbient));

    [Fact]
    public void Cfr33EngineSpace_EveryRating_IsAsPrinted()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-cfr33-183-note1.csv").Rows;
        Assert.Equal(7, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            Assert.Equal(row.Number("factor"), Cfr33Part183EngineSpace.Factor(C(row.Number("insulation_c"))).Value);
        }
    }

    [Theory]
    [InlineData(60, true)]
    [InlineData(75, true)]
    [InlineData(80, false)] // 0.78 printed, 0.7746 by the law
    [InlineData(90, true)]
    [InlineData(105, false)] // 0.85 printed, 0.856 by the law
    [InlineData(125, true)]
    [InlineData(200, false)] // 1.00 printed, 0.939 by the law
    public void Cfr33EngineSpace_AgainstTheSquareRootLaw_AgreesExceptWhereNamed(double insulation, bool agrees)
    {
        double difference = Math.Abs(Cfr33Part183EngineSpace.Factor(C(insulation)).Value - SquareRoot(insulation, 50, 30));
        Assert.Equal(agrees, difference <= 0.005 + 1e-12);
    }

    [Fact]
    public void Cfr33ConductorCount_EveryRow_IsAsPrintedAtBothEnds() =>
        AssertCounts("ampacity-cfr33-183-note2.csv", count => Cfr33Part183ConductorCount.Factor(count, V(50)).Value, 2);

    [Fact]
    public void NecConductorCount_EveryRow_IsAsPrintedAtBothEnds() =>
        AssertCounts("ampacity-nec-conductor-count.csv", count => NecConductorCount.Factor(count).Value, 3);

    [Fact]
    public void NecAmbient_EveryTabulatedFactor_FollowsFromTheEquation()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-nec-ambient.csv").Rows;
        Assert.Equal(146, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            double value = NecAmbient.Factor(C(row.Number("ambient_c")), C(row.Number("conductor_c")), C(row.Number("base_c"))).Value;
            double tolerance = PublishedTable.HalfUnitInLastPlace(row.Text("factor")) + 1e-12;
            Assert.InRange(value, row.Number("factor") - tolerance, row.Number("factor") + tolerance);
        }
    }

    [Fact]
    public void Iec60364Ambient_EveryRow_IsAsPrintedAndFollowsTheSquareRootLaw()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-iec60364-ambient.csv").Rows;
        Assert.Equal(26, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            double insulation = row.Number("insulation_c"), ambient = row.Number("ambient_c");
            DeratingFactor factor = Iec60364Ambient.Factor(C(ambient), C(insulation));
            Assert.Equal(row.Number("factor"), factor.Value);
            Assert.Equal(insulation, factor.InsulationRating!.Value.DegreesCelsius);
            Assert.InRange(Math.Abs(factor.Value - SquareRoot(insulation, ambient, 30)), 0, 0.005 + 1e-12);
        }
    }

    [Fact]
    public void Iec60364Grouping_EveryRow_IsAsPrinted()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-iec60364-grouping.csv").Rows;
        Assert.Equal(21, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            Iec60364Arrangement arrangement = row.Text("item") == "1" ? Iec60364Arrangement.Bunched : Iec60364Arrangement.SingleLayerOnSurface;
            Assert.Equal(row.Number("factor"), Iec60364Grouping.Factor((int)row.Number("circuits"), arrangement).Value);
        }
    }

    [Fact]
    public void FaaBundle_EveryPoint_IsAsRead()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-faa-figure-11-5.csv").Rows;
        Assert.Equal(99, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            int wires = (int)row.Number("wires");
            double value = FaaBundle.Factor(wires, Percent(row.Number("percent"))).Value;
            if (row.Text("kind") == "stated" && wires == 8)
            {
                // The circular states 0.6 in a worked example; the digitised point, 0.595, is the safer and within the step of the reading.
                Assert.InRange(value, row.Number("factor") - 0.005 - 1e-12, row.Number("factor"));
                continue;
            }

            Assert.Equal(row.Number("factor"), value, 12);
        }
    }

    [Fact]
    public void FaaAltitude_EveryPoint_IsAsStated()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-faa-figure-11-6.csv").Rows;
        Assert.Equal(4, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            Assert.Equal(row.Number("factor"), FaaAltitude.Factor(Feet(row.Number("feet"))).Value, 12);
        }
    }

    [Fact]
    public void NasaInsulation_EveryRating_IsAsRemembered()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-nasa-insulation.csv").Rows;
        Assert.Equal(3, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            Assert.Equal(row.Number("factor"), NasaInsulation.Factor(C(row.Number("insulation_c"))).Value);
        }
    }

    private static void AssertCounts(string file, Func<int, double> factor, int lastFree)
    {
        Assert.Equal(1, factor(1));
        Assert.Equal(1, factor(lastFree));
        foreach (PublishedTable.Row row in PublishedTable.Load(file).Rows)
        {
            Assert.Equal(row.Number("factor"), factor((int)row.Number("from")));
            Assert.Equal(row.Number("factor"), factor(row.Has("to") ? (int)row.Number("to") : 100_000));
        }
    }
}
