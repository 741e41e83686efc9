using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>Writes how the resistances of a path come about: R1, R2 … in order from the source to the load and back.</summary>
internal sealed class PathSteps(SolutionBuilder board)
{
    private readonly Dictionary<(Conductor Conductor, double Celsius), Symbol> perMeter = [];
    private readonly List<Symbol> parts = [];

    internal IReadOnlyList<Symbol> Parts => parts;

    /// <summary>A stretch of conductor at a temperature that is a symbol already, or is written down here.</summary>
    internal Symbol Stretch(Segment segment, double celsius, double ohms, string where, Symbol? theta = null)
    {
        if (!perMeter.TryGetValue((segment.Conductor, celsius), out Symbol? meter))
        {
            string mark = perMeter.Count == 0 ? "" : (perMeter.Count + 1).ToString(CultureInfo.InvariantCulture);
            Symbol at = theta ?? board.LookUp($"temperature of {segment.Conductor.Name}", mark.Length == 0 ? "θ" : "θ_" + mark, celsius, "°C", null, "As stated for the circuit.");
            meter = segment.Conductor.ExplainPerMeter(board, at, mark);
            perMeter.Add((segment.Conductor, celsius), meter);
        }

        Symbol length = board.LookUp($"length of the {where}", "L_" + Next, segment.Meters, "m", null);
        Formula formula = segment.Parallel == 1 ? meter * length : meter * length / segment.Parallel;
        return Add(board.Step(
            $"resistance of the {where}: {segment}", "R_" + Next, formula, ohms, "Ω", null, segment.Parallel == 1 ? "" : "Conductors side by side share the current, an equal part each."));
    }

    /// <summary>A joint, a chassis or another stated resistance.</summary>
    internal Symbol Stated(string name, double ohms) => Add(board.LookUp($"resistance of the {name}", "R_" + Next, ohms, "Ω", null, "As stated for the circuit."));

    /// <summary>All of a path with every conductor at one temperature.</summary>
    internal void All(CircuitPath path, double celsius)
    {
        foreach (Segment segment in path.FeedArray)
        {
            Stretch(segment, celsius, segment.OhmsAt(celsius), "feed");
        }

        foreach (Joint joint in path.FeedJoints)
        {
            Stated(joint.Name, joint.Ohms);
        }

        foreach (Segment segment in path.BackArray)
        {
            Stretch(segment, celsius, segment.OhmsAt(celsius), "return");
        }

        foreach (Joint joint in path.ReturnJoints)
        {
            Stated(joint.Name, joint.Ohms);
        }

        if (path.Return.Kind is ReturnKind.Chassis or ReturnKind.SharedResistance)
        {
            Stated(path.Return.Kind == ReturnKind.Chassis ? "chassis return" : "shared return", path.Return.Ohms);
        }
    }

    /// <summary>Their sum.</summary>
    internal Symbol Sum(string name, double ohms, string sought) =>
        board.Step(sought, name, Formula.Total(parts), ohms, "Ω", null, "The current flows through all of them one after another, so their resistances add.");

    private string Next => (parts.Count + 1).ToString(CultureInfo.InvariantCulture);

    private Symbol Add(Symbol part)
    {
        parts.Add(part);
        return part;
    }
}
