using System.Reflection;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>Everything that the library carries has a word in a document, and the word gives the same object back.</summary>
public class CarriedWordsTests
{
    [Fact]
    public void EveryConductorSeries_HasAWord() => Held(Statics<ConductorSeries>(typeof(ConductorSeries)), rules => rules.Conductors, series => new DesignRules(DesignRules.Bench) { Conductors = series }, 12);

    [Fact]
    public void EveryFuseSeries_HasAWord() => Held(Statics<FuseSeries>(typeof(FuseSeries)), rules => rules.Fuses, series => new DesignRules(DesignRules.Bench) { Fuses = series }, 20);

    [Fact]
    public void EveryAmpacityBasis_HasAWord() => Held(Statics<AmpacityBasis>(typeof(AmpacityBasis)), rules => rules.Ampacity, basis => new DesignRules(DesignRules.Bench) { Ampacity = basis }, 5);

    [Fact]
    public void EveryAmpacityTable_HasAWord() => Held(
        [.. typeof(AmpacityTable).Assembly.GetExportedTypes().SelectMany(Statics<AmpacityTable>)],
        rules => ((TableAmpacity)rules.Ampacity).Table,
        table => new DesignRules(DesignRules.Bench) { Ampacity = AmpacityBasis.FromTable(table) },
        13);

    [Fact]
    public void EverySourceDistance_HasAWord() => Held([.. SourceDistance.All], rules => rules.FusePractice.Distance!, distance => new DesignRules(DesignRules.Bench) { FusePractice = new FusePractice { Distance = distance } }, 5);

    [Fact]
    public void EveryOverloadAllowance_HasAWord() => Held(
        Statics<OverloadAllowance>(typeof(OverloadAllowance)), rules => rules.FusePractice.Overload!, allowance => new DesignRules(DesignRules.Bench) { FusePractice = new FusePractice { Overload = allowance } }, 3);

    [Fact]
    public void EveryRerating_HasAWord() => Held(
        Statics<AmbientRerating>(typeof(AmbientRerating)), rules => rules.Fuses.Rerating!, rerating => new DesignRules(DesignRules.Bench) { Fuses = Own(definition => definition.WithRerating(rerating)) }, 3);

    [Fact]
    public void EveryOperatingTimeLimit_HasAWord() => Held(
        Statics<OperatingTimeLimits>(typeof(OperatingTimeLimits)), rules => rules.Fuses.Limits!, limits => new DesignRules(DesignRules.Bench) { Fuses = Own(definition => definition.WithLimits(limits)) }, 12);

    [Fact]
    public void EveryPreset_HasAWord() => Held([.. DesignRules.Presets], rules => rules, rules => rules, 5);

    [Fact]
    public void EveryInsulation_HasAWord()
    {
        InsulationMaterial[] carried = [.. Statics<InsulationMaterial>(typeof(InsulationMaterial)), .. Enum.GetValues<RoadVehicleTemperatureClass>().Select(InsulationMaterial.RoadVehicle)];
        Assert.Equal(17, carried.Length);
        foreach (InsulationMaterial insulation in carried)
        {
            CircuitRequirements asked = new(CircuitDocument.Read(Pieces.Least).Requirements) { Insulation = insulation };
            string json = CircuitDocument.Create(asked, DesignRules.Bench).Write();
            Assert.Contains($"\"insulation\": \"{insulation.Name}\"", json, StringComparison.Ordinal);
            Assert.Same(insulation, CircuitDocument.Read(json).Requirements.Insulation);
        }
    }

    [Fact]
    public void EveryConductorOfACarriedSeries_IsASizeOfASeries()
    {
        CircuitRequirements asked = CircuitDocument.Read(Pieces.Least).Requirements;
        foreach (Conductor conductor in Statics<ConductorSeries>(typeof(ConductorSeries)).SelectMany(series => series.Conductors))
        {
            string json = CircuitDocument.Create(asked, conductor, fuse: null, DesignRules.Bench).Write();
            Assert.Contains("\"series\": ", json, StringComparison.Ordinal);
            Assert.Equal(conductor, CircuitDocument.Read(json).Wire);
        }
    }

    private static FuseSeries Own(Func<FuseSeriesDefinition, FuseSeriesDefinition> more) => FuseSeries.Create(
        more(FuseSeriesDefinition.Create("own", "fuse", [ElectricCurrent.FromAmperes(10), ElectricCurrent.FromAmperes(20)], References.Reference.CommonPractice("a test"))));

    private static T[] Statics<T>(Type type) =>
        [.. type.GetProperties(BindingFlags.Public | BindingFlags.Static).Where(property => property.PropertyType == typeof(T)).Select(property => (T)property.GetValue(null)!)];

    private static void Held<T>(T[] carried, Func<DesignRules, T> read, Func<T, DesignRules> rules, int count)
        where T : class
    {
        Assert.Equal(count, carried.Length);
        CircuitRequirements asked = CircuitDocument.Read(Pieces.Least).Requirements;
        Assert.All(carried, own => Assert.Same(own, read(CircuitDocument.Read(CircuitDocument.Create(asked, rules(own)).Write()).Rules)));
    }
}
