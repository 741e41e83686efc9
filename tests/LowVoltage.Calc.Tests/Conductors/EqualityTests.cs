using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Conductors;

/// <summary>What is a value is equal by value: made twice alike it is the same, and one part that differs makes it another.</summary>
public class EqualityTests
{
    private static readonly Reference Sheet = new() { Title = "data sheet", Kind = ReferenceKind.Handbook };

    private static readonly MetricSize Two = MetricSize.FromSquareMillimeters(2.5);

    private static ConductorMaterial Metal(string name = "alloy", double ohmMeters = 2e-8, double coefficient = 0.004, double density = 8000, double heat = 3e6, double melting = 900, Reference? source = null) =>
        ConductorMaterial.Create(
            name, ElectricResistivity.FromOhmMeters(ohmMeters), coefficient, Density.FromKilogramsPerCubicMeter(density), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(heat),
            Temperature.FromDegreesCelsius(melting), source ?? Sheet);

    private static void Same<T>(T one, T other)
        where T : class, IEquatable<T>
    {
        Assert.NotSame(one, other);
        Assert.True(one.Equals(other) && other.Equals(one) && one.Equals((object)other));
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
        Assert.False(one.Equals(null));
        Assert.False(one.Equals("text"));
    }

    [Fact]
    public void Conductor_MadeTwice_IsTheSame()
    {
        Same(Conductor.Iso6722(Two), Conductor.Iso6722(Two));
        Same(Conductor.Stranded(AwgSize.FromNumber(14), ConductorMaterial.Copper), Conductor.Stranded(AwgSize.FromNumber(14), ConductorMaterial.Copper));
        Same(Conductor.OfArea(Area.FromSquareMillimeters(3), Metal()), Conductor.OfArea(Area.FromSquareMillimeters(3), Metal()));
        Assert.True(Conductor.Iso6722(Two) == Conductor.Iso6722(Two));
        Assert.False(Conductor.Iso6722(Two) != Conductor.Iso6722(Two));
        Assert.True((Conductor?)null == null && Conductor.Iso6722(Two) != null && null != Conductor.Iso6722(Two));
    }

    [Fact]
    public void Conductor_OnePartDiffers_IsAnother()
    {
        AwgSize size = AwgSize.FromNumber(14);
        Conductor[] all =
        [
            Conductor.Solid(size, ConductorMaterial.Copper), Conductor.Stranded(size, ConductorMaterial.Copper), Conductor.Stranded(size, ConductorMaterial.Copper, 1.03),
            Conductor.Stranded(size, ConductorMaterial.TinnedCopper), Conductor.Solid(size, Metal()), Conductor.Solid(size, Metal(source: Reference.CommonPractice("another"))),
            Conductor.Solid(AwgSize.FromNumber(12), ConductorMaterial.Copper), Conductor.Iso6722(Two), Conductor.Iso6722(Two, tinned: true), Conductor.Iec60228(Two, Iec60228Class.Flexible),
            Conductor.Iec60228(Two, Iec60228Class.ExtraFlexible), Conductor.OfArea(Area.FromSquareMillimeters(2.5), ConductorMaterial.Copper),
        ];
        Assert.Equal(all.Length, all.Distinct().Count());
    }

    [Fact]
    public void Material_OnePartDiffers_IsAnother()
    {
        Same(Metal(), Metal());
        Assert.True(Metal() == Metal());
        ConductorMaterial[] all =
        [
            Metal(), Metal(name: "other"), Metal(ohmMeters: 2.1e-8), Metal(coefficient: 0.0041), Metal(density: 8001), Metal(heat: 3.1e6), Metal(melting: 901),
            Metal(source: Reference.CommonPractice("another")), ConductorMaterial.Copper, ConductorMaterial.Aluminium,
        ];
        Assert.Equal(all.Length, all.Distinct().Count());
        Assert.True(all[0] != all[1]);
    }

    [Fact]
    public void Insulation_OnePartDiffers_IsAnother()
    {
        Temperature hot = Temperature.FromDegreesCelsius(125), hotter = Temperature.FromDegreesCelsius(200);
        Same(InsulationMaterial.Rated("wire", hot), InsulationMaterial.Rated("wire", hot));
        InsulationMaterial[] all =
        [
            InsulationMaterial.Rated("wire", hot), InsulationMaterial.Rated("cable", hot), InsulationMaterial.Rated("wire", hot, hotter), InsulationMaterial.Rated("wire", hotter),
            InsulationMaterial.Rated("wire", hot, hot), InsulationMaterial.PolyvinylChloride, InsulationMaterial.HeatResistantPolyvinylChloride, InsulationMaterial.Rubber60,
        ];
        Assert.Equal(all.Length, all.Distinct().Count());
        Assert.True(all[0] == InsulationMaterial.Rated("wire", hot) && all[0] != all[1]);
    }

    [Fact]
    public void Wire_OnePartDiffers_IsAnother()
    {
        Wire Of(double square, InsulationMaterial insulation, double wall) =>
            Wire.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(square)), insulation, Length.FromMillimeters(wall));
        Same(Of(2.5, InsulationMaterial.PolyvinylChloride, 0.35), Of(2.5, InsulationMaterial.PolyvinylChloride, 0.35));
        Wire[] all = [Of(2.5, InsulationMaterial.PolyvinylChloride, 0.35), Of(4, InsulationMaterial.PolyvinylChloride, 0.35), Of(2.5, InsulationMaterial.Etfe, 0.35), Of(2.5, InsulationMaterial.PolyvinylChloride, 0.4)];
        Assert.Equal(all.Length, all.Distinct().Count());
        Assert.True(all[0] == Of(2.5, InsulationMaterial.PolyvinylChloride, 0.35) && all[0] != all[1]);
    }

    [Fact]
    public void Reference_Operators_CompareEveryPart()
    {
        Same(new Reference { Title = "t", Kind = ReferenceKind.Law }, new Reference { Title = "t", Kind = ReferenceKind.Law });
        Assert.True(new Reference { Title = "t", Kind = ReferenceKind.Law } == new Reference { Title = "t", Kind = ReferenceKind.Law });
        Assert.True(new Reference { Title = "t", Kind = ReferenceKind.Law } != new Reference { Title = "t", Kind = ReferenceKind.Paper });
        Assert.True(new Reference { Title = "t", Kind = ReferenceKind.Law } != null);
    }

    // It said that the conductor is no conductor of the series, because another object was in it.
    [Fact]
    public void NextLarger_ConductorMadeByTheCaller_FindsItself() =>
        Assert.Equal(Conductor.Iso6722(MetricSize.FromSquareMillimeters(3)), ConductorSeries.RoadVehicle.NextLarger(Conductor.Iso6722(Two)));

    // It said that the feed has several sizes.
    [Fact]
    public void Path_ReturnLikeAFeedOfTwoEqualConductors_IsOneSize()
    {
        Length three = Length.FromMeters(3);
        CircuitPath path = CircuitPath.Create([Segment.Create(Conductor.Iso6722(Two), three), Segment.Create(Conductor.Iso6722(Two), three)], ReturnPath.Wire(Length.FromMeters(6)));
        Assert.Equal(Conductor.Iso6722(Two), Assert.Single(path.ReturnSegments).Conductor);
        Assert.Throws<ArgumentException>("returnPath", () => CircuitPath.Create(
            [Segment.Create(Conductor.Iso6722(Two), three), Segment.Create(Conductor.Iec60228(Two, Iec60228Class.Flexible), three)], ReturnPath.Wire(Length.FromMeters(6))));
    }
}
