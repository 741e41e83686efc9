using System.Collections;
using System.Reflection;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>What the sources say of themselves: editions that have a successor name it, a set is of the kind of its weakest row, and what was compared is exactly what says so.</summary>
public class ReferenceClaimsTests
{
    private const int Depth = 5;

    // What is from memory there is not what the reference stands for: the wording of a note, the basis printed under a chart, strands that set a diameter, the heat of a metal whose
    // electrical constants it is of. Each note says which.
    private static readonly string[] MemoryOfSomethingElse =
    [
        "FAA AC 43.13-1B (Change 1), Table 11-3 [handbook]", "33 CFR 183.425 (Code of Federal Regulations), Table 5, note 2; scope in 183.435(b) [law]",
        "FAA AC 43.13-1B (change 1, 2001), Table 11-9 [handbook]", "IEC 60028 (1925) [standard]", "IEC 60228 (2004), Tables 1 to 4 [standard]",
    ];

    private static HashSet<Reference> All()
    {
        HashSet<Reference> all = [];
        foreach (PropertyInfo property in typeof(Reference).Assembly.GetExportedTypes().Where(SurfaceTests.IsOurs).SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Static)))
        {
            Collect(all, property.GetValue(null), 0);
        }

        return all;
    }

    private static void Collect(HashSet<Reference> all, object? value, int depth)
    {
        if (value is null or string or IQuantity || value.GetType().IsEnum || value.GetType().IsPrimitive || depth > Depth)
        {
            return;
        }

        if (value is Reference reference)
        {
            all.Add(reference);
        }
        else if (value is IEnumerable items)
        {
            foreach (object? item in items)
            {
                Collect(all, item, depth + 1);
            }
        }
        else if (SurfaceTests.IsOurs(value.GetType()))
        {
            foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
            {
                Collect(all, property.GetValue(value), depth + 1);
            }
        }
    }

    [Theory]
    [InlineData("ISO 6722-1", "superseded by ISO 19642-3")]
    [InlineData("ISO 10133", "superseded by ISO 13297")]
    [InlineData("ISO 8820-3", "fourth edition, 2015")]
    [InlineData("IEC 60364-4-43", "restructured in 2023, the clause number is that of 2008")]
    public void EditionWithASuccessor_NamesIt(string title, string successor)
    {
        Reference[] found = [.. All().Where(reference => reference.Title == title)];
        Assert.NotEmpty(found);
        Assert.All(found, reference => Assert.Contains(successor, reference.Edition, StringComparison.Ordinal));
    }

    [Fact]
    public void StandardLawOrHandbook_CarriesNothingFromMemory()
    {
        string[] mixed = [.. All().Where(r => r.Kind is (ReferenceKind.Law or ReferenceKind.Standard or ReferenceKind.Handbook or ReferenceKind.Paper) && r.Note.Contains("memory", StringComparison.Ordinal)).Select(r => r.ToString())];
        Assert.Equal(MemoryOfSomethingElse.Order(StringComparer.Ordinal), mixed.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void ComparedKind_StandsOnExactlyWhatWasCompared()
    {
        Reference gate = OperatingTimeLimits.IndustrialGg.Gates.First(g => g.Reference.Kind == ReferenceKind.FromMemoryCompared).Reference;
        Reference[] compared =
        [
            Iec60364MethodC.Reference, Iec60364MethodF.Reference, Iec60364Ambient.Reference, Iec60364Grouping.Reference, NecTable310Dash16.Reference, NecTable310Dash17.Reference, gate,
        ];
        Assert.Equal(
            compared.Select(r => r.ToString()).Order(StringComparer.Ordinal),
            All().Where(r => r.Kind == ReferenceKind.FromMemoryCompared).Select(r => r.ToString()).Order(StringComparer.Ordinal));
        Assert.All(compared, r => Assert.EndsWith("[from memory, agrees with an independent transcription 2026-11]", r.ToString(), StringComparison.Ordinal));
    }

    // Counted from the tables: 24 + 12 + 26 + 21 + 41 + 41 + 68 + 32.
    [Fact]
    public void ComparedValues_Are265()
    {
        int Cells(AmpacityTable table, SizeSystem system) => table.SizeKeys.ToArray().Sum(key => table.Columns.ToArray().Count(column => table.TryAmperes(system, key, column, out _, out _)));
        Assert.Equal([24, 12, 41, 41], new[]
        {
            Cells(Iec60364MethodC.Table, SizeSystem.Iec60228), Cells(Iec60364MethodF.Table, SizeSystem.Iec60228),
            Cells(NecTable310Dash16.Table, SizeSystem.AmericanWireGauge), Cells(NecTable310Dash17.Table, SizeSystem.AmericanWireGauge),
        });
        int ambient = new double[] { 70, 90 }.Sum(insulation => Enumerable.Range(0, 40).Count(i => Iec60364Ambient.TryValue(10 + (5 * i), insulation, out _, out _, out _)));
        int grouping = new[] { Iec60364Arrangement.Bunched, Iec60364Arrangement.SingleLayerOnSurface }
            .Sum(how => Enumerable.Range(1, 30).Count(n => Iec60364Grouping.TryValue(n, how, out _, out int row) && row == n));
        Assert.Equal((26, 21), (ambient, grouping));
        OperatingTimeGate[] gates = [.. OperatingTimeLimits.IndustrialGg.Gates.Where(g => g.Reference.Kind == ReferenceKind.FromMemoryCompared)];
        Assert.All(gates, g => Assert.InRange(g.LeastRating.Amperes, 16, 630));
        Assert.Equal((68, 16), (gates.Count(g => g.LeastPreArcing is null), gates.Count(g => g.LeastPreArcing is not null)));
        Assert.Equal(265, 24 + 12 + 41 + 41 + ambient + grouping + gates.Length + 16);
    }

    [Fact]
    public void SetOfTimes_IsOfTheKindOfItsWeakestRow()
    {
        OperatingTimeLimits[] sets = [.. typeof(OperatingTimeLimits).GetProperties(BindingFlags.Public | BindingFlags.Static).Select(p => p.GetValue(null)).OfType<OperatingTimeLimits>()];
        Assert.True(sets.Length >= 10, $"{sets.Length}");
        Assert.All(sets, set => Assert.Equal(set.Gates.Any(gate => gate.Reference.Kind == ReferenceKind.FromMemory), set.Reference.Kind == ReferenceKind.FromMemory));
        Assert.Equal(ReferenceKind.FromMemory, OperatingTimeLimits.RoadVehicleBlade.Reference.Kind);
        Assert.Equal(ReferenceKind.FromMemory, OperatingTimeLimits.IndustrialGg.Reference.Kind);
    }

    // 240.6(A) of 2023 begins with 10 A for breakers, as it did for fuses.
    [Fact]
    public void Breakers_Of2023_BeginAtTenAmperes()
    {
        Assert.Equal(10, FuseSeries.NationalElectricalCodeBreakers.Ratings[0].Current.Amperes);
        Assert.Equal("2023", FuseSeries.NationalElectricalCodeBreakers.Reference.Edition);
        Assert.Single(FuseSeries.NationalElectricalCodeFuses.Ratings, rating => rating.Current.Amperes == 10);
    }
}
