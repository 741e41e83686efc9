using System.Globalization;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>One of the harnesses with a known answer in <c>PublishedData/solved-harnesses.csv</c>; its header says what the lines mean.</summary>
internal sealed class SolvedHarness
{
    private static readonly Lazy<List<SolvedHarness>> Read = new(ReadAll);

    private readonly List<Element> elements = [];
    private readonly List<double> amperes = [];
    private readonly List<double> volts = [];

    public required string Id { get; init; }

    public required double SourceVolts { get; init; }

    public required double BalanceLeft { get; init; }

    public Element[] Elements => [.. elements];

    public IReadOnlyList<double> Amperes => amperes;

    public IReadOnlyList<double> Volts => volts;

    public static IReadOnlyList<SolvedHarness> All => Read.Value;

    public NetworkSolver Solver() => new(NetworkShape.Create(volts.Count, 0, Elements, []), Elements, []);

    private static List<SolvedHarness> ReadAll()
    {
        List<SolvedHarness> all = [];
        using StreamReader reader = new(PublishedTable.Open("solved-harnesses.csv"));
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            string[] cells = line.Split(',');
            if (cells[0] == "case")
            {
                all.Add(new() { Id = cells[1], SourceVolts = Number(cells[2]), BalanceLeft = Number(cells[3]) });
                continue;
            }

            SolvedHarness harness = all[^1];
            if (cells[0] == "node")
            {
                harness.volts.Add(Number(cells[1]));
                continue;
            }

            double answer = Number(cells[^1]);
            harness.elements.Add(Make(cells[0], int.Parse(cells[1], CultureInfo.InvariantCulture), int.Parse(cells[2], CultureInfo.InvariantCulture), [.. cells[3..^1].Select(Number)]));
            harness.amperes.Add(cells[0] is "battery" or "limited" or "solar" ? -answer : answer);
        }

        return all;
    }

    private static Element Make(string kind, int p, int n, double[] x) => kind switch
    {
        "wire" or "resistor" or "short" => Element.Resistance(p, n, x[0]),
        "warm" => Element.RunawayWire(p, n, x[0], x[1]),
        "current" => Element.Steady(p, n, x[0]),
        "power" => Element.Power(p, n, x[0], x[1]),
        "lamp" => Element.Of(p, n, new SmoothLamp(x[0], x[1]), 0, x[0] / x[1]),
        "battery" => Element.Battery(p, n, x[0], x[1]),
        "limited" => Element.Of(p, n, new SmoothLimit(x[0], x[1], x[2]), -x[1] / 2, x[1] / 2 / x[0]),
        "solar" => Element.Solar(p, n, x[0], x[1], x[2]),
        _ => throw new InvalidOperationException($"Unknown element {kind}."),
    };

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>The reference's lamp: it bends to a resistance at nothing.</summary>
    private sealed class SmoothLamp(double amperes, double volts) : ICurrentLaw
    {
        public double CurrentAt(double across, out double slope)
        {
            double u = across / volts, square = (u * u) + 1e-8, current = amperes * u * Math.Pow(square, -0.225);
            slope = amperes / volts * Math.Pow(square, -1.225) * ((0.55 * u * u) + 1e-8);
            return current;
        }
    }

    /// <summary>The reference's limited supply: it bends from voltage to current over a few s.</summary>
    private sealed class SmoothLimit(double volts, double most, double width) : ICurrentLaw
    {
        public double CurrentAt(double across, out double slope)
        {
            double bend = Math.Tanh((across - volts) / (2 * width));
            slope = most / (4 * width) * (1 - (bend * bend));
            return -most / 2 * (1 - bend);
        }
    }
}
