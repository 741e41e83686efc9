using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <content>The working.</content>
public sealed partial class TimeCurrentCurve
{
    private static Reference Reading { get; } = Reference.CommonPractice("fuse curves are read as straight lines in log-log coordinates between stated points");

    /// <summary>The working of the least and the longest time at a current.</summary>
    /// <param name="current">Constant current. Positive.</param>
    /// <returns>The steps, the longest time last; that the device need not open is an answer too.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public WorkedSolution Explain(ElectricCurrent current) => Explain(current, "Time for a device to open", null);

    internal WorkedSolution Explain(in ElectricCurrent current, string title, Reference? source)
    {
        double amperes = Accept.Amperes(current, nameof(current));
        SolutionBuilder board = new(title);
        Symbol i = board.Given("current, constant", "I", amperes, "A");
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Fuse);
        Least(board, i, source);
        if (TryLongestSeconds(amperes, out double seconds))
        {
            Time(board, longest, i, seconds, "longest", "t_max", "", source, RoundingDirection.Up);
            return board.Build();
        }

        board.Compare("must the device open", i, Relation.AtLeast, Fusing(board, source), source, "It need not: the current may flow indefinitely.", verdict: false);
        return board.Build("The device need not open at this current.");
    }

    /// <summary>Writes the conventional fusing current.</summary>
    internal Symbol Fusing(SolutionBuilder board, Reference? source) =>
        board.LookUp("conventional fusing current", "I_2", longest.FirstX, "A", source, "The fuse need not open below it: no longest time is stated there.");

    /// <summary>Writes the longest time at a current that opens the device.</summary>
    /// <param name="board">Where to.</param>
    /// <param name="i">The current.</param>
    /// <param name="source">Where the points come from.</param>
    /// <param name="name">The letter of the time.</param>
    /// <param name="mark">What tells the points from those of another current.</param>
    internal Symbol WriteLongest(SolutionBuilder board, Symbol i, Reference? source, string name, string mark)
    {
        TryLongestSeconds(i.Value, out double seconds);
        return Time(board, longest, i, seconds, "longest", name, mark, source, RoundingDirection.Up);
    }

    /// <summary>Writes the least time at a current; null where none is stated.</summary>
    internal Symbol? WriteLeast(SolutionBuilder board, Symbol i, Reference? source, string name, string mark)
    {
        if (!TryLeastSeconds(i.Value, out double seconds))
        {
            return null;
        }

        return TryNonFusingSeconds(i.Value, out _) || least!.Covers(i.Value) is false
            ? board.LookUp($"least time of the fuse at {i.Name}", name, seconds, "s", source, "The time stated for the next higher current: a smaller current never opens a device sooner.")
            : Time(board, least, i, seconds, "least", name, mark, source, RoundingDirection.Down);
    }

    private void Least(SolutionBuilder board, Symbol i, Reference? source)
    {
        if (WriteLeast(board, i, source, "t_min", "l") is null)
        {
            board.State("least time", "None is stated.");
        }
    }

    private static Symbol Time(
        SolutionBuilder board, LogLogLine line, Symbol i, double seconds, string which, string name, string mark, Reference? source, RoundingDirection rounding)
    {
        int at = line.PieceAt(i.Value);
        string sought = $"{which} time of the fuse at {i.Name}", point = $"{which} time at the stated point";
        if (line.IsPoint(i.Value, at))
        {
            return board.LookUp(sought, name, seconds, "s", source, "Stated for just this current.");
        }

        Symbol below = board.LookUp($"stated point below {i.Name}: current", "I_p" + mark, line.X(at), "A", source), first = board.LookUp($"{point} below", "t_p" + mark, line.Y(at), "s", source);
        if (at == line.Count - 1)
        {
            return line.Slope(at) == 0
                ? board.LookUp(sought, name, seconds, "s", Reading, "Beyond the last stated point the time of a mechanism stays.")
                : board.Step(sought, name, first * Formula.Power(i / below, line.Slope(at)), seconds, "s", Reading, "Beyond the last stated point the Joule integral I²·t stays.", rounding);
        }

        Symbol above = board.LookUp($"stated point above {i.Name}: current", "I_q" + mark, line.X(at + 1), "A", source), second = board.LookUp($"{point} above", "t_q" + mark, line.Y(at + 1), "s", source);
        Symbol slope = board.Step(
            "slope between the two points", mark.Length == 0 ? "m" : "m_" + mark, Formula.Logarithm(second / first) / Formula.Logarithm(above / below), line.Slope(at), "", Reading, "A straight line in log-log coordinates is a power law.");
        return board.Step(sought, name, first * Formula.Power(i / below, slope), seconds, "s", Reading, "", rounding);
    }
}
