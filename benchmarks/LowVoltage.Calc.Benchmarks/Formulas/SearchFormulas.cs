using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Benchmarks.Formulas;

/// <summary>What the calculations without a closed formula are given: a wire in still air, a bundle, a circuit, a fault.</summary>
internal static class Given
{
    internal static readonly Wire Wire = Wire.Create(
        Conductor.Iec60228(MetricSize.FromSquareMillimeters(1.5), Iec60228Class.Flexible), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));

    internal static readonly Surroundings Air = new() { Ambient = Temperature.FromDegreesCelsius(30) };

    internal static readonly WireBundle Bundle = WireBundle.Create(Wire, 12, 12);

    internal static readonly HeatBalanceKernel Heat = HeatBalanceKernel.For(Wire, Air);

    internal static readonly double Capacity = OverloadKernel.Capacity(Wire, InsulationHeat.None);

    internal static readonly Temperature Start = Temperature.FromDegreesCelsius(70);

    internal static readonly Temperature Limit = Temperature.FromDegreesCelsius(160);

    internal static readonly FuseRating Fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10));

    internal static readonly ProtectedWire Protected = ProtectedWire.Create(Wire, Air);

    internal static readonly WireLimits Limits = Protected.Limits();

    internal static readonly FaultPath Fault = FaultPath.Create(
        ElectricPotential.FromVolts(12.6), ElectricResistance.FromMilliohms(15), FaultSegment.Create(Wire.Conductor, Length.FromMeters(6), Start));

    internal static readonly CircuitPath Path = CircuitPath.Create(
        Segment.Create(Wire.Conductor, Length.FromMeters(5)), ReturnPath.Wire(Length.FromMeters(5)));

    internal static readonly ConductorTemperature Warm = ConductorTemperature.At(Temperature.FromDegreesCelsius(60));

    internal static readonly Load Draw = Load.ConstantPower(Power.FromWatts(60));

    internal static readonly double PathOhms = Path.OhmsAt(60);
}

[Formula("CircuitPath.ResistanceAt", "Σ R′(θ)·L and the joints", 1, Baseline = "kernel")]
public readonly struct PathResistance : IFormula
{
    public double Raw(Case x) => Given.Path.OhmsAt(x.Celsius);

    public double Typed(Case x) => Given.Path.ResistanceAt(x.Temperature).Ohms;
}

[Formula("OperatingPoint.Solve, constant power", "U = [V + √(V² − 4·R·P)]/2; also losses, elements and sentences", 1, Baseline = "the formula alone")]
public readonly struct OperatingPointOfPower : IFormula
{
    public double Raw(Case x) => 0.5 * (x.Volts + Math.Sqrt((x.Volts * x.Volts) - (4 * Given.PathOhms * 60)));

    public double Typed(Case x) => OperatingPoint.Solve(x.Supply, Given.Path, Given.Draw, Given.Warm).VoltageAtLoad.Volts;
}

[Formula("OperatingPoint.Solve, lamp", "root search; also losses, elements and sentences", 1, Baseline = "kernel")]
public readonly struct OperatingPointOfLamp : IFormula
{
    private static readonly Load Lamp = Load.Lamp(Power.FromWatts(60), ElectricPotential.FromVolts(12));

    public double Raw(Case x) => LoopKernel.Solve(x.Volts, Given.PathOhms, 0, Lamp, LoadState.Running).Volts;

    public double Typed(Case x) => OperatingPoint.Solve(x.Supply, Given.Path, Lamp, Given.Warm).VoltageAtLoad.Volts;
}

[Formula("ProspectiveCurrent.AtEnd, least", "V/(Rs + R(θ)); also the greatest, and sentences", 2, Baseline = "the formula alone")]
public readonly struct ProspectiveAtEnd : IFormula
{
    private static readonly Source Supply = Source.BehindResistance(ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(10));
    private static readonly double Ohms20 = Given.Path.OhmsAt(20);

    public double Raw(Case x) => 12 / (0.010 + (Ohms20 * Copper.RatioTo20(x.HotCelsius)));

    public double Typed(Case x) => ProspectiveCurrent.AtEnd(Supply, Given.Path, x.Hot, x.Temperature).Least!.Value.Amperes;
}

[Formula("HeatBalance.CurrentFor", "I = √(loss/R′)", 1, Baseline = "kernel")]
public readonly struct HeatCurrent : IFormula
{
    public double Raw(Case x) => Given.Heat.AmperesFor(x.HotCelsius);

    public double Typed(Case x) => HeatBalance.CurrentFor(Given.Wire, Given.Air, x.Hot).Amperes;
}

[Formula("HeatBalance.TemperatureAt", "root search", 1, Baseline = "kernel")]
public readonly struct HeatTemperature : IFormula
{
    public double Raw(Case x) => HeatBalance.TrySteady(Given.Heat, x.Amperes, out _, out double celsius) ? celsius : double.NaN;

    public double Typed(Case x) => HeatBalance.TemperatureAt(Given.Wire, Given.Air, x.Current).DegreesCelsius;
}

[Formula("BundleHeat.CurrentFor", "the same for a bundle", 1, Baseline = "kernel")]
public readonly struct BundleCurrent : IFormula
{
    private static readonly HeatBalanceKernel Heat = BundleHeat.Kernel(Given.Bundle, Given.Air);

    public double Raw(Case x) => Heat.AmperesFor(x.HotCelsius);

    public double Typed(Case x) => BundleHeat.CurrentFor(Given.Bundle, Given.Air, x.Hot).Amperes;
}

[Formula("OverloadHeating.TimeToReach", "∫ C·dθ/(I²R − loss)", 3, Baseline = "kernel")]
public readonly struct OverloadTime : IFormula
{
    public double Raw(Case x) => OverloadHeating.Seconds(Given.Heat, Given.Capacity, x.MoreAmperes, 70, 160);

    public double Typed(Case x) => OverloadHeating.TimeToReach(Given.Wire, Given.Air, x.MoreCurrent, Given.Start, Given.Limit)!.Value.Seconds;
}

[Formula("OverloadHeating.TemperatureAfter", "the integral solved for θ", 3, Baseline = "kernel")]
public readonly struct OverloadTemperature : IFormula
{
    public double Raw(Case x)
    {
        OverloadKernel overload = new(Given.Heat, x.MoreAmperes, Given.Capacity, Given.Heat.SurfaceFor(70));
        return overload.TryAdvance(x.Seconds, Given.Heat.SurfaceFor(Given.Heat.MostCelsius), out double surface) ? Given.Heat.ConductorAt(surface) : double.NaN;
    }

    public double Typed(Case x) => OverloadHeating.TemperatureAfter(Given.Wire, Given.Air, x.MoreCurrent, x.Duration, Given.Start).DegreesCelsius;
}

[Formula("OverloadHeating.CurrentToReach", "the integral solved for I", 3, Baseline = "bisection over the kernel, by hand")]
public readonly struct OverloadCurrent : IFormula
{
    public double Raw(Case x)
    {
        double low = 1, high = 1e5;
        while (high - low > 1e-12 * high)
        {
            double middle = 0.5 * (low + high);
            bool late = OverloadHeating.Seconds(Given.Heat, Given.Capacity, middle, 70, 160) > x.Seconds;
            (low, high) = late ? (middle, high) : (low, middle);
        }

        return high;
    }

    public double Typed(Case x) => OverloadHeating.CurrentToReach(Given.Wire, Given.Air, Given.Start, Given.Limit, x.Duration).Amperes;
}

[Formula("FaultTransient.TimeToReach", "∫ of a current that falls as the wire warms", 1, Baseline = "kernel")]
public readonly struct FaultTime : IFormula
{
    public double Raw(Case x) => Given.Fault.Kernel.SecondsTo(Given.Fault.Kernel.JoulesTo(0, x.LimitCelsius));

    public double Typed(Case x) => FaultTransient.TimeToReach(Given.Fault, x.Limit).Seconds;
}

[Formula("FaultClearing.Latest, Joule integral", "where a falling current meets the fuse's curve", 0, Baseline = "kernel")]
public readonly struct FaultCleared : IFormula
{
    private static readonly TimeCurrentCurve Curve = Given.Fuse.Curve!;

    public double Raw(Case x)
    {
        FaultKernel fault = Given.Fault.Kernel;
        FaultClearing.Latest(ref fault, Curve, out double joules);
        return joules;
    }

    public double Typed(Case x) => FaultClearing.Latest(Given.Fault, Given.Fuse).State!.LetThrough.AmpereSquaredSeconds;
}

[Formula("FuseAgainstWire.Check, time ratio", "the least ratio of the wire's time to the fuse's over all currents; with its sentence", 1, Baseline = "kernel")]
public readonly struct FuseProtectsWire : IFormula
{
    private static readonly TimeCurrentCurve Curve = Given.Fuse.Curve!;

    public double Raw(Case x) =>
        FuseAgainstWireKernel.ExactRatio(Given.Limits, Curve, FuseAgainstWireKernel.Tightest(Given.Limits, Curve, x.FaultAmperes));

    public double Typed(Case x) => FuseAgainstWire.Check(Given.Fuse, Given.Protected, x.Fault).TimeRatio;
}

[Formula("Segment.ResistanceAt", "R′(θ)·L/n", 1, Baseline = "kernel")]
public readonly struct SegmentResistance : IFormula
{
    private static readonly Segment Part = Segment.Create(Given.Wire.Conductor, Length.FromMeters(5));

    public double Raw(Case x) => Part.OhmsAt(x.Celsius);

    public double Typed(Case x) => Part.ResistanceAt(x.Temperature).Ohms;
}

[Formula("BundleHeat.TemperatureAt", "root search", 1, Baseline = "kernel")]
public readonly struct BundleTemperature : IFormula
{
    private static readonly HeatBalanceKernel Heat = BundleHeat.Kernel(Given.Bundle, Given.Air);

    public double Raw(Case x) => HeatBalance.TrySteady(Heat, x.Ohms * 20, out _, out double celsius) ? celsius : double.NaN;

    public double Typed(Case x) => BundleHeat.TemperatureAt(Given.Bundle, Given.Air, ElectricCurrent.FromAmperes(x.Ohms * 20)).DegreesCelsius;
}

[Formula("BundleHeat.Factor", "current in the bundle over that of a wire alone", 1, Baseline = "kernel")]
public readonly struct BundleFactor : IFormula
{
    private static readonly HeatBalanceKernel Together = BundleHeat.Kernel(Given.Bundle, Given.Air);

    public double Raw(Case x) => Together.AmperesFor(x.HotCelsius) / Given.Heat.AmperesFor(x.HotCelsius);

    public double Typed(Case x) => BundleHeat.Factor(Given.Bundle, Given.Air, x.Hot)!.Value;
}

[Formula("OverloadHeating.TimeConstant", "C over the slope of the loss", 1, Baseline = "kernel")]
public readonly struct OverloadTimeConstant : IFormula
{
    public double Raw(Case x) => new OverloadKernel(Given.Heat, x.Amperes, Given.Capacity, Given.Heat.NoLoadCelsius).TimeConstant;

    public double Typed(Case x) => OverloadHeating.TimeConstant(Given.Wire, Given.Air, x.Current)!.Value.Seconds;
}

[Formula("OverloadHeating.CyclicBand, highest", "where a period ends as it began, by a root search", 3, Baseline = "kernel")]
public readonly struct CyclicHighest : IFormula
{
    private static readonly Duration Off = Duration.FromSeconds(60);

    public double Raw(Case x) => new CyclicKernel(Given.Heat, Given.Capacity, x.Amperes, 30 * x.Seconds, 60).TryFindBand(out _, out double highest)
        ? Given.Heat.ConductorAt(highest) : double.NaN;

    public double Typed(Case x) => OverloadHeating.CyclicBand(Given.Wire, Given.Air, x.Current, x.Duration * 30, Off)!.Highest.DegreesCelsius;
}

[Formula("FaultTransient.StateAfter, Joule integral", "the time integral solved for I²t", 1, Baseline = "kernel")]
public readonly struct FaultAfter : IFormula
{
    public double Raw(Case x)
    {
        Given.Fault.Kernel.TryJoulesAfter(x.Seconds, out double joules);
        return joules;
    }

    public double Typed(Case x) => FaultTransient.StateAfter(Given.Fault, x.Duration).LetThrough.AmpereSquaredSeconds;
}

[Formula("FaultTransient.StateAt, temperature", "θ at a Joule integral", 0, Baseline = "kernel")]
public readonly struct FaultAt : IFormula
{
    public double Raw(Case x) => Given.Fault.Kernel.CelsiusAt(0, x.AmpereSquaredSeconds);

    public double Typed(Case x) => FaultTransient.StateAt(Given.Fault, x.Joule).TemperatureOf(0).DegreesCelsius;
}
