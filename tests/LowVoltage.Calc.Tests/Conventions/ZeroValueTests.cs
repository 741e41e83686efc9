using System.Reflection;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>The zero of every public struct: no size, a refusal to be read, or a zero that is a true value of its quantity and documented as one.</summary>
public class ZeroValueTests
{
    private static readonly Type[] Sizes = [typeof(AwgSize), typeof(MetricSize), typeof(KcmilSize), typeof(VehicleGaugeSize), typeof(AircraftWireSize), typeof(ConductorSize)];

    // 0 A²s and 0 Ω/m are values, as 0 A is; X = Y = 0 is the adiabatic case, which is the safe one.
    private static readonly Type[] TrueZeros = [typeof(JouleIntegral), typeof(LinearResistance), typeof(NonAdiabaticCoefficients)];

    // The checks of a design are read as verdicts and have their own tests.
    private static Type[] Structs => [.. typeof(AwgSize).Assembly.GetExportedTypes()
        .Where(type => type.IsValueType && !type.IsEnum && SurfaceTests.IsOurs(type) && type.Namespace is not ("LowVoltage.Calc.Design" or "LowVoltage.Calc.Checks" or "LowVoltage.Calc.Harnesses"))];

    public static TheoryData<string> Readable => [.. Structs.Except(TrueZeros).Select(type => type.Name)];

    [Fact]
    public void PublicStructs_AreAllKnownHere()
    {
        Type[] results = [typeof(DutyCycle), typeof(OhmsLawPoint), typeof(OpposingSources), typeof(RunPoint), typeof(SharedNeutral), typeof(TimeCurrentPoint)];
        Assert.Equal(
            Sizes.Concat(TrueZeros).Concat(results).Select(type => type.Name).Order(StringComparer.Ordinal), Structs.Select(type => type.Name).Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Readable))]
    public void Default_NumberOrQuantity_RefusesToBeRead(string name)
    {
        object zero = Activator.CreateInstance(Array.Find(Structs, type => type.Name == name)!)!;
        PropertyInfo[] read = [.. zero.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.PropertyType == typeof(double) || p.PropertyType == typeof(int) || typeof(IQuantity).IsAssignableFrom(p.PropertyType))];
        Assert.NotEmpty(read);
        Assert.All(read, property => Assert.IsType<InvalidOperationException>(Assert.Throws<TargetInvocationException>(() => property.GetValue(zero)).InnerException));
    }

    [Fact]
    public void DefaultSize_IsNoSizeAndSaysSo()
    {
        foreach (Type type in Sizes)
        {
            object none = Activator.CreateInstance(type)!;
            Assert.Equal(true, type.GetProperty("IsNone")!.GetValue(none));
            Assert.Equal("no size", none.ToString());
            Assert.True(none.Equals(Activator.CreateInstance(type)));
            Assert.Throws<FormatException>(() => ((IFormattable)none).ToString("X", null));
        }

        Assert.Equal("no size", default(ConductorSize).Designation);
        Assert.Equal("no size", default(AwgSize).ToString("N", null));
        Assert.Equal("no point", default(TimeCurrentPoint).ToString());
        Assert.False(default(SharedNeutral).Exists);
    }

    [Fact]
    public void EverySize_IsASize()
    {
        Assert.All(AwgSize.All, size => Assert.False(size.IsNone));
        Assert.All(KcmilSize.All, size => Assert.False(size.IsNone));
        Assert.All(MetricSize.RoadVehicleSeries, size => Assert.False(size.IsNone));
        Assert.All(VehicleGaugeSize.All, size => Assert.False(size.IsNone));
        Assert.All(AircraftWireSize.All, size => Assert.False(size.IsNone));
        Assert.False(ConductorSize.FromAwg(AwgSize.FromNumber(0)).IsNone);
    }

    [Fact]
    public void TryParse_Nonsense_LeavesNoSize()
    {
        Assert.False(AwgSize.TryParse("nonsense", out AwgSize awg));
        Assert.True(awg.IsNone); // it was 1/0 AWG
        Assert.NotEqual(AwgSize.FromNumber(0), awg);
        Assert.False(VehicleGaugeSize.TryParse("nonsense", out VehicleGaugeSize vehicle));
        Assert.True(vehicle.IsNone);
        Assert.False(AircraftWireSize.TryParse("nonsense", out AircraftWireSize aircraft));
        Assert.True(aircraft.IsNone);
        Assert.False(ConductorSize.FromAwg(AwgSize.FromNumber(14)).TryGetMetric(out MetricSize metric));
        Assert.True(metric.IsNone);
    }

    [Fact]
    public void NoSize_ComesBeforeEverySize()
    {
        Assert.All(AwgSize.All, size => Assert.True(default(AwgSize) < size));
        Assert.All(VehicleGaugeSize.All, size => Assert.True(default(VehicleGaugeSize) < size));
        Assert.All(AircraftWireSize.All, size => Assert.True(default(AircraftWireSize) < size));
        Assert.All(MetricSize.Iec60228Series, size => Assert.True(default(MetricSize) < size));
        Assert.All(KcmilSize.All, size => Assert.True(default(KcmilSize) < size));
    }

    [Fact]
    public void NoSize_WhereASizeIsNeeded_IsRefusedByName()
    {
        ConductorMaterial copper = ConductorMaterial.Copper;
        Action[] uses =
        [
            () => Conductor.Solid(default(AwgSize), copper), () => Conductor.Stranded(default(AwgSize), copper), () => Conductor.Solid(default(KcmilSize), copper),
            () => Conductor.Stranded(default(KcmilSize), copper), () => Conductor.Iec60228(default, Iec60228Class.Flexible), () => Conductor.Iso6722(default),
            () => Conductor.TryIso6722(default, false, out _), () => Conductor.VehicleGauge(default, copper), () => Conductor.AircraftWire(default),
            () => ConductorSize.FromAwg(default), () => ConductorSize.FromKcmil(default), () => ConductorSize.FromMetric(default),
            () => ConductorSize.FromVehicleGauge(default), () => ConductorSize.FromAircraft(default), () => ConductorSeries.AwgSolid.TryGet(default, out _),
        ];
        foreach (Action use in uses)
        {
            string said = Assert.Throws<ArgumentOutOfRangeException>("size", use).Message;
            Assert.Contains("no size", said, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentException>("sizes", () => ConductorSeries.AwgSolid.Only("none", default(ConductorSize)));
        Assert.Throws<InvalidOperationException>(() => default(AwgSize).TryNextLarger(out _));
        Assert.Throws<InvalidOperationException>(() => default(AwgSize).TryNextSmaller(out _));
        Assert.Throws<InvalidOperationException>(() => default(AwgSize).Explain());
        Assert.Throws<InvalidOperationException>(() => default(OhmsLawPoint).Explain());
        Assert.Throws<InvalidOperationException>(() => default(OpposingSources).Explain());
    }
}
