using System.Globalization;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>One of the networks with printed answers in <c>PublishedData/network-problems.csv</c>; its header says what the lines mean.</summary>
internal sealed class NetworkProblem(string id)
{
    private readonly List<NetworkElement> elements = [];
    private readonly List<(string Kind, string Of, double Printed, double Tolerance)> answers = [];

    public string Id => id;

    public IReadOnlyList<(string Kind, string Of, double Printed, double Tolerance)> Answers => answers;

    public static IReadOnlyList<NetworkProblem> All { get; } = Read();

    public ResistiveNetwork Network() => ResistiveNetwork.Create("0", [.. elements]);

    private static List<NetworkProblem> Read()
    {
        List<NetworkProblem> all = [];
        using StreamReader reader = new(PublishedTable.Open("network-problems.csv"));
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            string[] cells = line.Split(',');
            if (cells[0] == "problem")
            {
                all.Add(new NetworkProblem(cells[1]));
                continue;
            }

            double number = Number(cells[^1]);
            NetworkProblem problem = all[^1];
            switch (cells[0])
            {
                case "R":
                    problem.elements.Add(NetworkElement.Resistance(cells[1], cells[2], cells[3], ElectricResistance.FromOhms(number)));
                    break;
                case "V":
                    problem.elements.Add(NetworkElement.VoltageSource(cells[1], cells[2], cells[3], ElectricPotential.FromVolts(number)));
                    break;
                case "I":
                    problem.elements.Add(NetworkElement.Current(cells[1], cells[2], cells[3], ElectricCurrent.FromAmperes(number)));
                    break;
                case "P":
                    problem.elements.Add(NetworkElement.ConstantPower(cells[1], cells[2], cells[3], Power.FromWatts(number)));
                    break;
                case "answer":
                    problem.answers.Add((cells[1], cells[2], Number(cells[3]), number));
                    break;
                default:
                    throw new InvalidOperationException($"Unknown line {line}.");
            }
        }

        return all;
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
