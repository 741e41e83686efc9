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
            Time(board, longest, i, seconds, "longest", "t_max", source, RoundingDirection.Up);
            return board.Build();
        }

        Symbol fusing = board.LookUp("conventional fusing current", "I_2", longest.FirstX, "A", source, "Below it no longest time is stated.");
        board.Compare("must the device open", i, Relation.AtLeast, fusing, source, "It need not: the current may flow for ever.", verdict: false);
        return board.Build("The device need not open at this current.");
    }

    private void Least(SolutionBuilder board, Symbol i, Reference? source)
    {
        if (!TryLeastSeconds(i.Value, out double seconds))
        {
            board.State("least time", "None is stated.");
        }
        else if (TryNonFusingSeconds(i.Value, out _) || least!.Covers(i.Value) is false)
        {
            board.LookUp("least time", "t_min", seconds, "s", source, "The time stated for the next higher current: a smaller current never opens a device sooner.");
        }
        else
        {
            Time(board, least, i, seconds, "least", "t_min", source, RoundingDirection.Down);
        }
    }

    private static void Time(SolutionBuilder board, LogLogLine line, Symbol i, double seconds, string which, string name, Reference? source, RoundingDirection rounding)
    {
        int at = line.PieceAt(i.Value);
        if (line.IsPoint(i.Value, at))
        {
            board.LookUp($"{which} time", name, seconds, "s", source, "Stated for just this current.");
            return;
        }

        Symbol i1 = board.LookUp("current of the stated point below", "I_1", line.X(at), "A", source), t1 = board.LookUp($"{which} time there", "t_1", line.Y(at), "s", source);
        Symbol slope;
        if (at == line.Count - 1)
        {
            slope = board.LookUp("slope beyond the last point", "n", line.Slope(at), "", Reading, line.Slope(at) == 0 ? "The time of a mechanism stays." : "Constant Joule integral: I²·t stays.");
        }
        else
        {
            Symbol i2 = board.LookUp("current of the stated point above", "I_2", line.X(at + 1), "A", source), t2 = board.LookUp($"{which} time there", "t_2", line.Y(at + 1), "s", source);
            slope = board.Step(
                "slope between the two points", "n", Formula.Logarithm(t2 / t1) / Formula.Logarithm(i2 / i1), line.Slope(at), "", Reading, "A straight line in log-log coordinates is a power law.");
        }

        board.Step($"{which} time", name, t1 * Formula.Power(i / i1, slope), seconds, "s", Reading, "", rounding);
    }
}
