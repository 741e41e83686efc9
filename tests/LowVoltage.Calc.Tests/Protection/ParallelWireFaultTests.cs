using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>n equal copper wires in XLPE, a supply and a fuse.</summary>
public sealed record ParallelCase(int Parallel, double Section, double Meters, double Volts, double Milliohms, int Fuse, int PlacePerMille)
{
    internal Wire Wire => Wire.Create(Conductor.OfArea(Area.FromSquareMillimeters(Section), ConductorMaterial.Copper), InsulationMaterial.CrossLinkedPolyethylene, Length.FromMillimeters(0.5));

    internal FuseRating Rating => FuseSeries.RoadVehicleHighCurrentBlade.Ratings[Fuse];

    internal FaultSupply Supply => FaultSupply.Create(FaultCase.V(Volts), FaultCase.V(Volts), FaultCase.M(Milliohms), FaultCase.M(Milliohms));

    internal ParallelWireOutcome Outcome() => ParallelWireFault.Check(Rating, Wire, Parallel, Length.FromMeters(Meters), C(20), C(90), Supply);
}

public static class ParallelCases
{
    public static Arbitrary<ParallelCase> Case() => (
        from parallel in Gen.OneOf(Gen.Choose(2, 4), Gen.Choose(2, 20))
        from section in AdiabaticCases.LogUniform(0.5, 35)
        from meters in AdiabaticCases.LogUniform(0.2, 40)
        from volts in AdiabaticCases.LogUniform(10, 60)
        from ohms in AdiabaticCases.LogUniform(3, 60)
        from fuse in Gen.Choose(0, FuseSeries.RoadVehicleHighCurrentBlade.Ratings.Count - 1)
        from place in Gen.Choose(0, 1000)
        select new ParallelCase(parallel, section, meters, volts, ohms, fuse, place)).ToArbitrary();
}

[Properties(Arbitrary = [typeof(ParallelCases)], MaxTest = 300)]
public class ParallelWireFaultTests
{
    private static readonly FuseRating Sixty = FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(60));

    /// <summary>Twelve wires of 1.5 mm² once passed at 93 °C, the fault being divided over all of them; in one wire it is 1051 °C at the near end and 435 °C at 30 %.</summary>
    [Fact]
    public void Check_TwelveWiresOneAndAHalfSquare_FailsAtTheNearEnd()
    {
        Wire wire = Wire.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(1.5)), InsulationMaterial.CrossLinkedPolyethylene, Length.FromMillimeters(0.4));
        FaultSupply supply = FaultSupply.Create(FaultCase.V(12), FaultCase.V(12.8), FaultCase.M(8), FaultCase.M(14));
        ParallelWireOutcome outcome = ParallelWireFault.Check(Sixty, wire, 12, Length.FromMeters(1), C(25), C(90), supply);
        Assert.Equal(ProtectionVerdict.NotProtected, outcome.Verdict);
        Assert.InRange(outcome.Position, 0, 0.001);
        Assert.False(outcome.IsFarPart);

        // By hand with K = 226 A·√s/mm², whose last digit leaves 8 K and 2 K: 324.5 K · exp(129 600/(226 · 1.3576)²) − 234.5 °C.
        Assert.Equal(1051, outcome.TemperatureReached!.Value.DegreesCelsius, 8.0);
        Assert.Contains("Not protected against a fault in one of the wires", outcome.ToString(), StringComparison.Ordinal);

        ParallelWireKernel kernel = new(wire.Conductor, 12, 1, 25, 90, 250, supply, Sixty.Curve!);
        Assert.Equal(1051, kernel.Between(0, 0).Celsius, 8.0);
        Assert.Equal(435, kernel.Between(0.3, 0.3).Celsius, 2.0);

        // By hand: of twelve wires the near part carries (0.7 + 1/11)/(12/11) of the current.
        Assert.Equal(8.7 / 12, kernel.Between(0.3, 0.3).Share, 1e-12);
    }

    [Fact]
    public void Check_TwoThickWires_PassAndSayWhere()
    {
        ParallelCase c = new(2, 16, 3, 12.5, 15, 3, 0);
        ParallelWireOutcome outcome = c.Outcome();
        Assert.Equal(ProtectionVerdict.Protected, outcome.Verdict);
        Assert.True(outcome.Opens);
        Assert.True(outcome.TemperatureReached!.Value.DegreesCelsius <= outcome.Limit!.Value.DegreesCelsius);
        Assert.NotNull(outcome.LongestTime);
        Assert.StartsWith("Protected against a fault in one of the wires; worst with the fault at", outcome.Reason, StringComparison.Ordinal);
    }

    /// <summary>A weak supply over a long stretch: the fault in the middle draws least, and a fuse need not open on it.</summary>
    [Fact]
    public void Check_WeakSupply_NeedNotOpen()
    {
        ParallelWireOutcome outcome = new ParallelCase(2, 1.5, 20, 12, 20, 3, 0).Outcome();
        Assert.Equal(ProtectionVerdict.NotProtected, outcome.Verdict);
        Assert.False(outcome.Opens);
        Assert.Null(outcome.LongestTime);
        Assert.Null(outcome.TemperatureReached);
        Assert.Contains("need not open", outcome.Reason, StringComparison.Ordinal);

        FaultSupply held = new ParallelCase(2, 16, 3, 12.5, 15, 3, 0).Supply.Holding(A(30));
        Assert.Equal(30, held.HeldCurrent!.Value.Amperes);
        ParallelWireOutcome limited = ParallelWireFault.Check(Sixty, new ParallelCase(2, 16, 3, 12, 15, 3, 0).Wire, 2, Length.FromMeters(1), C(20), C(90), held);
        Assert.Equal(30, limited.LeastCurrent.Amperes);
        Assert.False(limited.Opens);
    }

    [Fact]
    public void Check_WhatItCannotDo_IsSaid()
    {
        Wire wire = Solid(2, 0.5);
        FaultSupply supply = FaultSupply.Create(FaultCase.V(12), FaultCase.V(12), FaultCase.M(8), FaultCase.M(14));
        FuseRating strip = FuseSeries.RoadVehicleStrip51.SmallestAtLeast(A(80));
        ParallelWireOutcome unknown = ParallelWireFault.Check(strip, wire, 2, Length.FromMeters(1), C(20), C(70), supply);
        Assert.Equal(ProtectionVerdict.NotEvaluated, unknown.Verdict);
        Assert.Null(unknown.Limit);
        Assert.Throws<ArgumentOutOfRangeException>("parallel", () => ParallelWireFault.Check(Sixty, wire, 1, Length.FromMeters(1), C(20), C(70), supply));
        Assert.Throws<ArgumentOutOfRangeException>("coldest", () => ParallelWireFault.Check(Sixty, wire, 2, Length.FromMeters(1), C(75), C(70), supply));
        Assert.Throws<ArgumentOutOfRangeException>("initial", () => ParallelWireFault.Check(Sixty, wire, 2, Length.FromMeters(1), C(75), C(170), supply));
        Assert.Throws<ArgumentOutOfRangeException>("greatestVoltage", () => FaultSupply.Create(FaultCase.V(12), FaultCase.V(11), FaultCase.M(8), FaultCase.M(14)));
        Assert.Throws<ArgumentOutOfRangeException>("greatestResistance", () => FaultSupply.Create(FaultCase.V(12), FaultCase.V(12), FaultCase.M(8), FaultCase.M(7)));
    }

    /// <summary>A pass holds at every place: three temperatures (near part, far part, the other wires) integrated in time until the fuse has opened.</summary>
    [Property]
    public bool Check_Passes_NoPlaceGetsHotterInTime(ParallelCase c)
    {
        ParallelWireOutcome outcome = c.Outcome();
        if (outcome.Verdict != ProtectionVerdict.Protected)
        {
            return true;
        }

        double reached = Simulate(c, c.PlacePerMille / 1000.0);
        return reached <= outcome.TemperatureReached!.Value.DegreesCelsius + 0.01;
    }

    /// <summary>And a failure is one: at the place that it names the simulated wire passes its limit, or comes within what two bounds of the current leave.</summary>
    [Property]
    public bool Check_FailsByFar_TheNamedPlaceDoesInTime(ParallelCase c)
    {
        ParallelWireOutcome outcome = c.Outcome();
        return outcome.Verdict == ProtectionVerdict.Protected || outcome.TemperatureReached is not { } hot || hot.DegreesCelsius < 500
            || Simulate(c, outcome.Position) > 250;
    }

    [Fact]
    public void Cases_OfTheseRanges_PassAndFailOften()
    {
        ProtectionVerdict[] verdicts = [.. ParallelCases.Case().Generator.Sample(400).Select(c => c.Outcome().Verdict)];
        Assert.InRange(verdicts.Count(v => v == ProtectionVerdict.Protected), 40, 360);
    }

    // The hottest by the moment at which the rule of the latest clearing is met; +∞ when the current falls below the fusing one before.
    private static double Simulate(ParallelCase c, double x)
    {
        double area = c.Wire.Conductor.EffectiveAreaSquareMillimeters * 1e-6, capacity = area * ConductorMaterial.Copper.HeatCapacityJoulesPerCubicMeterKelvin;
        double perMeter = c.Wire.Conductor.OhmsPerMeter20, near = 90, far = 90, rest = 90, joules = 0;
        double Per(double celsius) => perMeter * (1 + (0.00393 * (celsius - 20)));
        for (int i = 0; i < 200_000; i++)
        {
            double first = x * c.Meters * Per(near), second = (c.Meters * Per(rest) / (c.Parallel - 1)) + ((1 - x) * c.Meters * Per(far));
            double amperes = c.Volts / ((c.Milliohms / 1000) + (first * second / (first + second)));
            if (!c.Rating.TryLongestSeconds(amperes, out double longest))
            {
                return double.PositiveInfinity;
            }

            double needed = amperes * amperes * longest;
            if (joules >= needed)
            {
                return Math.Max(near, far);
            }

            // Explicit steps of 1/2000 of what is needed.
            double step = needed / 2000 / (amperes * amperes);
            double one = amperes * second / (first + second), two = amperes - one, other = two / (c.Parallel - 1);
            near += step * one * one * Per(near) / capacity;
            far += step * two * two * Per(far) / capacity;
            rest += step * other * other * Per(rest) / capacity;
            joules += step * amperes * amperes;
        }

        return double.PositiveInfinity;
    }
}
