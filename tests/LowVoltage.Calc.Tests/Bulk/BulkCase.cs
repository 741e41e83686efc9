using LowVoltage.Calc.Bulk;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Bulk;

/// <summary>A bulk call, the typed call for one case of it, and the inputs as a caller could have them.</summary>
public sealed class BulkCase
{
    private const double Limit = 160;

    private static readonly ConductorMaterial Copper = ConductorMaterial.Copper;

    // Name, least and most as documented, a range to draw from, unit. Draws are log-uniform, temperatures uniform.
    private static readonly Input Ohms20 = new("ohmsPerMeter20", 0, 1e9, 1e-5, 10, "Ω/m");
    private static readonly Input Metal = new("celsius", -100, 1083, -100, 1083, "°C");
    private static readonly Input Initial = new("initialCelsius", -100, Limit, -100, Limit, "°C");
    private static readonly Input Section = new("squareMillimeters", 1e-12, 1e6, 0.05, 500, "mm²");
    private static readonly Input Fault = new("amperes", 1e-12, 1e7, 0.1, 1e5, "A");
    private static readonly Input Short = new("seconds", 1e-12, 5, 1e-5, 5, "s");
    private static readonly Input Supply = new("sourceVolts", 1e-12, 1e6, 1, 60, "V");
    private static readonly Input Series = new("ohms", 0, 1e9, 1e-4, 20, "Ω");

    private delegate int Bulk(double[][] inputs, Span<double> results);

    private readonly Bulk bulk;
    private readonly Func<double[], double> typed;

    private BulkCase(string name, string results, Input[] inputs, Bulk bulk, Func<double[], double> typed) =>
        (Name, Results, Inputs, this.bulk, this.typed) = (name, results, inputs, bulk, typed);

    internal sealed record Input(string Name, double Least, double Most, double From, double To, string Unit)
    {
        internal double Draw(Random random) => From < 0
            ? From + ((To - From) * random.NextDouble())
            : From * Math.Pow(To / From, random.NextDouble());
    }

    public static TheoryData<string> Names => [.. All.Select(c => c.Name)];

    internal static IReadOnlyList<BulkCase> All { get; } =
    [
        new("BulkResistance.PerMeter", "ohmsPerMeter", [Ohms20, Metal],
            (x, r) => { BulkResistance.PerMeter(Copper, x[0], x[1], r); return 0; },
            x => x[0] * Copper.RatioTo20(x[1])),
        new("BulkResistance.OutAndBack", "ohms",
            [new("feedOhmsPerMeter", 0, 1e9, 1e-5, 10, "Ω/m"), new("feedMeters", 0, 1e7, 0.1, 1e3, "m"), new("returnOhmsPerMeter", 0, 1e9, 1e-5, 10, "Ω/m"), new("returnMeters", 0, 1e7, 0.1, 1e3, "m")],
            (x, r) => { BulkResistance.OutAndBack(x[0], x[1], x[2], x[3], r); return 0; },
            x => VoltageDrop.OutAndBack(PerMeter(x[0]), Length.FromMeters(x[1]), PerMeter(x[2]), Length.FromMeters(x[3])).Ohms),
        new("BulkVoltageDrop.Along", "volts", [new("ohmsPerMeter", 0, 1e9, 1e-5, 10, "Ω/m"), new("meters", 0, 1e7, 0.1, 1e3, "m"), new("amperes", 0, 1e7, 0.01, 1e3, "A")],
            (x, r) => { BulkVoltageDrop.Along(x[0], x[1], x[2], r); return 0; },
            x => VoltageDrop.Along(PerMeter(x[0]), Length.FromMeters(x[1]), A(x[2])).Volts),
        new("BulkVoltageDrop.OutAndBack", "volts",
            [new("feedOhmsPerMeter", 0, 1e9, 1e-5, 10, "Ω/m"), new("feedMeters", 0, 1e7, 0.1, 1e3, "m"), new("returnOhmsPerMeter", 0, 1e9, 1e-5, 10, "Ω/m"), new("returnMeters", 0, 1e7, 0.1, 1e3, "m"), new("amperes", 0, 1e7, 0.01, 1e3, "A")],
            (x, r) => { BulkVoltageDrop.OutAndBack(x[0], x[1], x[2], x[3], x[4], r); return 0; },
            x => VoltageDrop.OutAndBack(PerMeter(x[0]), Length.FromMeters(x[1]), PerMeter(x[2]), Length.FromMeters(x[3])).Ohms * x[4]),
        new("BulkVoltageDrop.LeastArea", "squareMillimeters",
            [Metal, new("meters", 1e-12, 1e7, 0.1, 1e3, "m"), new("amperes", 1e-12, 1e7, 0.01, 1e3, "A"), new("allowedVolts", 1e-12, 1e6, 0.01, 5, "V")],
            (x, r) => { BulkVoltageDrop.LeastArea(Copper, x[0], x[1], x[2], x[3], r); return 0; },
            x => VoltageDrop.LeastArea(Copper.ResistivityAt(C(x[0])), Length.FromMeters(x[1]), A(x[2]), ElectricPotential.FromVolts(x[3])).SquareMillimeters),
        new("BulkLoadVoltage.ConstantCurrent", "loadVolts", [Supply, Series, new("amperes", 1e-12, 1e7, 0.01, 1e3, "A")],
            (x, r) => BulkLoadVoltage.ConstantCurrent(x[0], x[1], x[2], r),
            x => Volts(x, Load.ConstantCurrent(A(x[2])))),
        new("BulkLoadVoltage.Resistance", "loadVolts", [Supply, Series, new("loadOhms", 1e-12, 1e9, 0.01, 1e3, "Ω")],
            (x, r) => { BulkLoadVoltage.Resistance(x[0], x[1], x[2], r); return 0; },
            x => Volts(x, Load.Resistance(ElectricResistance.FromOhms(x[2])))),
        new("BulkLoadVoltage.ConstantPower", "loadVolts", [Supply, Series, new("watts", 1e-12, 1e12, 0.125, 4096, "W")],
            (x, r) => BulkLoadVoltage.ConstantPower(x[0], x[1], x[2], r),
            x => Volts(x, new ConstantPowerLoad(x[2]))),
        new("BulkConductorTemperature.AtCurrent", "celsius", [new("ambientCelsius", -100, 1000, 30, 30, "°C"), new("amperes", 0, 1e7, 0.01, 1e3, "A")],
            (x, r) => { BulkConductorTemperature.AtCurrent(25, 75, x[0], x[1], r); return 0; },
            x => ConductorTemperature.SelfHeated(C(30), A(25), C(105)).AtCurrent(A(x[1])).DegreesCelsius),
        new("BulkProspectiveCurrent.Least", "amperes", [new("leastSourceVolts", 1e-12, 1e6, 1, 60, "V"), new("greatestSourceOhms", 1e-12, 1e9, 1e-3, 1, "Ω"), new("hotPathOhms", 0, 1e9, 1e-3, 10, "Ω")],
            (x, r) => { BulkProspectiveCurrent.Least(x[0], x[1], x[2], r); return 0; },
            x => ProspectiveCurrent.LeastAt(new SourceNumbers(x[0], 2 * x[0], 3 * x[0], 0, 0, x[1]), x[2])),
        new("BulkProspectiveCurrent.Greatest", "amperes", [new("greatestSourceVolts", 1e-12, 1e6, 1, 60, "V"), new("leastSourceOhms", 1e-12, 1e9, 1e-3, 1, "Ω"), new("coldPathOhms", 0, 1e9, 1e-3, 10, "Ω")],
            (x, r) => { BulkProspectiveCurrent.Greatest(x[0], x[1], x[2], r); return 0; },
            x => ProspectiveCurrent.GreatestAt(new SourceNumbers(0.1, 0.2, x[0], x[1], 2 * x[1], 3 * x[1]), x[2])),
        new("BulkAdiabaticHeating.FinalTemperature", "finalCelsius", [Section, Fault, Short, Metal with { Name = "initialCelsius" }],
            (x, r) => BulkAdiabaticHeating.FinalTemperature(Copper, x[0], x[1], x[2], x[3], r),
            Final),
        new("BulkAdiabaticHeating.TimeToReach", "seconds", [Section, Fault, Initial],
            (x, r) => { BulkAdiabaticHeating.TimeToReach(Copper, Limit, x[0], x[1], x[2], r); return 0; },
            x => AdiabaticHeating.TimeToReach(Copper, Mm2(x[0]), A(x[1]), C(x[2]), C(Limit)).Seconds),
        new("BulkAdiabaticHeating.WithstandJouleIntegral", "ampereSquaredSeconds", [Section, Initial],
            (x, r) => { BulkAdiabaticHeating.WithstandJouleIntegral(Copper, Limit, x[0], x[1], r); return 0; },
            x => AdiabaticHeating.WithstandJouleIntegral(Copper, Mm2(x[0]), C(x[1]), C(Limit)).AmpereSquaredSeconds),
        new("BulkAdiabaticHeating.LeastArea", "squareMillimeters", [Fault, Short, Initial],
            (x, r) => { BulkAdiabaticHeating.LeastArea(Copper, Limit, x[0], x[1], x[2], r); return 0; },
            x => AdiabaticHeating.AreaFor(Copper, A(x[0]), S(x[1]), C(x[2]), C(Limit)).SquareMillimeters),
        new("BulkAdiabaticHeating.GreatestCurrent", "amperes", [Section, Short, Initial],
            (x, r) => { BulkAdiabaticHeating.GreatestCurrent(Copper, Limit, x[0], x[1], x[2], r); return 0; },
            x => AdiabaticHeating.CurrentFor(Copper, Mm2(x[0]), S(x[1]), C(x[2]), C(Limit)).Amperes),
    ];

    internal string Name { get; }

    internal string Results { get; }

    internal IReadOnlyList<Input> Inputs { get; }

    /// <summary>What stands for "there is none"; NaN where there always is one.</summary>
    internal double None => Name.EndsWith("FinalTemperature", StringComparison.Ordinal) ? 1083
        : Name.EndsWith("ConstantCurrent", StringComparison.Ordinal) || Name.EndsWith("ConstantPower", StringComparison.Ordinal) ? 0 : double.NaN;

    internal static BulkCase Of(string name) => All.Single(c => c.Name == name);

    internal double[][] Draw(Random random, int count) =>
        [.. Inputs.Select(input => Enumerable.Range(0, count).Select(_ => input.Draw(random)).ToArray())];

    internal int Run(double[][] inputs, Span<double> results) => bulk(inputs, results);

    internal double Typed(double[][] inputs, int index) => typed([.. inputs.Select(values => values[index])]);

    private static double Final(double[] x)
    {
        AdiabaticHeating.TryFinalTemperature(Copper, Mm2(x[0]), A(x[1]), S(x[2]), C(x[3]), out Temperature final);
        return final.DegreesCelsius;
    }

    // The solver behind OperatingPoint, given the resistance as it is.
    private static double Volts(double[] x, Load load)
    {
        LoopPoint point = LoopKernel.Solve(x[0], x[1], 0, load, LoadState.Running);
        return point.Exists ? point.Volts : 0;
    }

    private static LinearResistance PerMeter(double value) => LinearResistance.FromOhmsPerMeter(value);

    private static ElectricCurrent A(double value) => ElectricCurrent.FromAmperes(value);

    private static Duration S(double value) => Duration.FromSeconds(value);

    private static Area Mm2(double value) => Area.FromSquareMillimeters(value);

    private static Temperature C(double value) => Temperature.FromDegreesCelsius(value);
}
