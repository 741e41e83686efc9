using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>Writes how the resistances of a path come about: R1, R2 … in order from the source to the load and back.</summary>
/// <param name="board">Where to.</param>
/// <param name="names">What tells the conductors apart; one for all paths of a solution.</param>
internal sealed class PathSteps(SolutionBuilder board, ConductorMarks names)
{
    private readonly List<(Conductor Conductor, double Celsius, Symbol Meter)> perMeter = [];
    private readonly List<Formula> parts = [];

    internal IReadOnlyList<Formula> Parts => parts;

    /// <summary>Lengths and stated resistances of a path, as givens.</summary>
    internal static void Givens(SolutionBuilder board, CircuitPath path)
    {
        int part = 0;
        void length(Segment segment, string where) => board.Given(LengthOf(segment, where, ++part), "L_" + Text(part), segment.Meters, "m");
        void ohms(string name, double value) => board.Given(OhmsOf(name, ++part), "R_" + Text(part), value, "Ω");
        foreach (Segment segment in path.FeedArray)
        {
            length(segment, "feed");
        }

        foreach (Joint joint in path.FeedJoints)
        {
            ohms(joint.Name, joint.Ohms);
        }

        foreach (Segment segment in path.BackArray)
        {
            length(segment, "return");
        }

        foreach (Joint joint in path.ReturnJoints)
        {
            ohms(joint.Name, joint.Ohms);
        }

        if (Rest(path) is { } rest)
        {
            ohms(rest, path.Return.Ohms);
        }

        if (path.Return.IsShared)
        {
            board.Given("current of the other circuits in the shared return", "I_o", path.Return.OtherAmperes, "A");
        }
    }

    /// <summary>A stretch of conductor at a temperature that is a symbol already, or is written down here.</summary>
    /// <param name="segment">The stretch.</param>
    /// <param name="celsius">Its temperature.</param>
    /// <param name="where">Out or back.</param>
    /// <param name="theta">The temperature where it stands here already.</param>
    /// <param name="mark">What is set behind the letters of all that depends on that temperature.</param>
    /// <returns>Its resistance: R′·L.</returns>
    internal Formula Stretch(Segment segment, double celsius, string where, Symbol? theta = null, string mark = "")
    {
        string part = Text(parts.Count + 1);
        Symbol? meter = perMeter.Find(known => known.Conductor.Equals(segment.Conductor) && known.Celsius.Equals(celsius)).Meter;
        if (meter is null)
        {
            string pair = (perMeter.Count == 0 ? "" : Text(perMeter.Count + 1)) + mark;
            Symbol at = theta ?? board.LookUp($"temperature of {segment.Conductor.Name}", SymbolName.With("θ", pair), celsius, "°C", null, "As stated for the circuit.");
            meter = segment.Conductor.ExplainPerMeter(board, at, SymbolName.With("R′", pair), names.Of(segment.Conductor));
            perMeter.Add((segment.Conductor, celsius, meter));
        }

        Symbol length = board.LookUp(LengthOf(segment, where, parts.Count + 1), "L_" + part, segment.Meters, "m", null);
        return Add(segment.Parallel == 1 ? meter * length : meter * length / segment.Parallel);
    }

    /// <summary>A joint, a chassis or another stated resistance.</summary>
    internal Symbol Stated(string name, double ohms)
    {
        Symbol stated = board.LookUp(OhmsOf(name, parts.Count + 1), "R_" + Text(parts.Count + 1), ohms, "Ω", null, "As stated for the circuit.");
        Add(stated);
        return stated;
    }

    /// <summary>All of a path with every conductor at one temperature.</summary>
    /// <param name="path">The path.</param>
    /// <param name="celsius">The temperature.</param>
    /// <param name="theta">The same as a symbol.</param>
    /// <param name="mark">What is set behind the letters of all that depends on it.</param>
    internal void All(CircuitPath path, double celsius, Symbol? theta, string mark) => All(path, (_, _) => (celsius, theta, mark));

    /// <summary>All of a path, each stretch at a temperature of its own.</summary>
    /// <param name="path">The path.</param>
    /// <param name="warmth">Of a segment, in order, and whether others share it: its temperature, the same as a symbol where there is one, and the mark of what depends on it.</param>
    internal void All(CircuitPath path, Func<Segment, bool, (double Celsius, Symbol? Theta, string Mark)> warmth)
    {
        void stretch(Segment segment, string where)
        {
            (double celsius, Symbol? theta, string mark) = warmth(segment, where == "return" && path.Return.IsShared);
            Stretch(segment, celsius, where, theta, mark);
        }

        foreach (Segment segment in path.FeedArray)
        {
            stretch(segment, "feed");
        }

        foreach (Joint joint in path.FeedJoints)
        {
            Stated(joint.Name, joint.Ohms);
        }

        foreach (Segment segment in path.BackArray)
        {
            stretch(segment, "return");
        }

        foreach (Joint joint in path.ReturnJoints)
        {
            Stated(joint.Name, joint.Ohms);
        }

        if (Rest(path) is { } rest)
        {
            Stated(rest, path.Return.Ohms);
        }
    }

    /// <summary>Their sum.</summary>
    internal Symbol Sum(string name, double ohms, string sought) =>
        board.Step(sought, name, Formula.Total(parts), ohms, "Ω", null, Why());

    private static string? Rest(CircuitPath path) => path.Return.Kind switch
    {
        ReturnKind.Chassis => "chassis return",
        ReturnKind.SharedResistance => "shared return",
        _ => null,
    };

    private static string LengthOf(Segment segment, string where, int part) =>
        $"length of part {Text(part)}, {where} of {(segment.Parallel == 1 ? "" : Text(segment.Parallel) + " × ")}{segment.Conductor.Name}";

    private static string OhmsOf(string name, int part) => $"resistance of part {Text(part)}, {name}";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private string Why() => parts.Count == 1 ? "" : parts.Exists(part => part.Kind == FormulaKind.Quotient)
        ? "The current flows through all stretches and joints one after another, so their resistances add. Conductors side by side share it, an equal part each."
        : "The current flows through all stretches and joints one after another, so their resistances add.";

    private Formula Add(Formula part)
    {
        parts.Add(part);
        return part;
    }
}
