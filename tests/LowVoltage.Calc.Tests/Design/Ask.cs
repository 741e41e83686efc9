using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>Short ways to write requirements and to read checks.</summary>
internal static class Ask
{
    public static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    public static ElectricPotential V(double volts) => ElectricPotential.FromVolts(volts);

    public static Length M(double meters) => Length.FromMeters(meters);

    public static Power W(double watts) => Power.FromWatts(watts);

    public static ElectricResistance MilliOhm(double milliohms) => ElectricResistance.FromMilliohms(milliohms);

    public static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    public static Conductor RoadVehicle(double squareMillimeters) => Conductor.Iso6722(MetricSize.FromSquareMillimeters(squareMillimeters));

    public static Conductor Class5(double squareMillimeters) => Conductor.Iec60228(MetricSize.FromSquareMillimeters(squareMillimeters), Iec60228Class.Flexible);

    public static Conductor Awg(int number) => Conductor.Stranded(AwgSize.FromNumber(number), ConductorMaterial.Copper);

    public static FuseRating Blade(double amperes) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(amperes));

    public static Source LeadAcid(int blocks = 1) => Battery.LeadAcid(A(600), blocksInSeries: blocks);

    public static CircuitRequirements Circuit(
        Load load,
        Source? source = null,
        double feed = 3,
        ReturnPath? back = null,
        double ambient = 30,
        int conductors = 2,
        InsulationMaterial? insulation = null,
        double? upstreamMilliOhms = 20,
        double? fuseDistance = 0.1,
        bool engineSpace = false,
        double bundleLoading = 1,
        DropLimit? drop = null,
        params Joint[] joints) => new()
        {
            Source = source ?? LeadAcid(),
            Load = load,
            Feed = M(feed),
            Return = back ?? ReturnPath.Wire(M(feed)),
            Place = new Place { Ambient = C(ambient), LoadedConductors = conductors, EngineSpace = engineSpace, BundleLoading = bundleLoading },
            Insulation = insulation ?? InsulationMaterial.PolyvinylChloride,
            Upstream = upstreamMilliOhms is { } ohms ? MilliOhm(ohms) : null,
            FuseDistance = fuseDistance is { } meters ? M(meters) : null,
            DropLimit = drop,
            Joints = joints,
        };

    public static bool TryRate(this AmpacityBasis basis, Conductor conductor, CircuitRequirements asked, out ElectricCurrent current) =>
        basis.TryRate(conductor, asked.Insulation, asked.Place, out current);

    public static DeratedAmpacity? Derate(this AmpacityBasis basis, Conductor conductor, CircuitRequirements asked) =>
        basis.Derate(conductor, asked.Insulation, asked.Place);

    public static CheckResult Of(this CircuitDesign design, CheckKind kind) =>
        design.Find(kind) ?? throw new InvalidOperationException($"There is no {kind} check in: {design}");

    /// <summary>The value of a check against plain arithmetic, relative.</summary>
    public static void Is(this CircuitDesign design, CheckKind kind, double value, double limit, double tolerance = 1e-7)
    {
        CheckResult check = design.Of(kind);
        Near(value, check.Value, tolerance, kind + " value");
        Near(limit, check.Limit, tolerance, kind + " limit");
    }

    /// <summary>Two numbers that are there and agree; a check without a number agrees with nothing.</summary>
    public static void Near(double? expected, double? actual, double tolerance, string what = "value") => Assert.True(
        expected is { } e && actual is { } a && Math.Abs(e - a) <= tolerance * Math.Max(Math.Abs(e), 1e-12), $"{what}: expected {expected:R}, was {actual:R}");
}
