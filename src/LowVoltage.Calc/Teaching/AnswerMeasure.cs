namespace LowVoltage.Calc.Teaching;

/// <summary>When two answers of one problem are the same: within a tolerance, measured in the base unit.</summary>
internal sealed class AnswerMeasure
{
    // Two standard sizes or ratings are far more than this apart.
    private const double SameStandard = 0.01;

    // So that a printed, rounded wrong answer still is the nearest to its own mistake.
    private const double Apart = 2.5;

    private readonly AnswerUnit unit;
    private readonly double relative;
    private readonly double absolute;

    internal AnswerMeasure(ProblemAnswer answer)
    {
        unit = AnswerUnits.Find(answer.Unit);
        Right = unit.ToBase(answer.Value);
        bool standard = answer.SignificantFigures == 0;
        IsTemperature = unit.Dimension == AnswerDimension.Temperature;
        // A voltage that is left over after a small drop, and a temperature, have a tolerance of their own; the rest is judged by its size.
        absolute = standard ? 0 : unit.ToBase(answer.Value + answer.Tolerance) - Right;
        relative = standard ? SameStandard : Math.Abs(answer.Tolerance / answer.Value);
    }

    internal AnswerUnit Unit => unit;

    internal AnswerDimension Dimension => unit.Dimension;

    internal double Right { get; }

    internal bool IsTemperature { get; }

    internal double Base(double value) => unit.ToBase(value);

    internal double Shown(double inBase) => unit.FromBase(inBase);

    internal bool IsRight(double inBase) => IsNear(inBase, Right);

    /// <summary>Whether a value in the base unit is the same as another.</summary>
    internal bool IsNear(double inBase, double other) => Math.Abs(inBase - other) <= Tolerance(other);

    /// <summary>Whether two values, in the unit of the answer, can be told apart even after rounding.</summary>
    internal bool AreApart(double one, double other)
    {
        double first = unit.ToBase(one), second = unit.ToBase(other);
        return Math.Abs(first - second) > Math.Max(Tolerance(Right), Apart * Math.Max(Tolerance(first), Tolerance(second)));
    }

    private double Tolerance(double inBase) => IsTemperature && absolute > 0 ? absolute : relative * Math.Abs(inBase);
}
