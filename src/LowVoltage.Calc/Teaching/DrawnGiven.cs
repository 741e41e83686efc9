using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>A given while a problem is written: prints itself into the statement, and stands in formulas through <see cref="Symbol"/>.</summary>
internal sealed class DrawnGiven(ProblemGiven given, Symbol symbol)
{
    internal Symbol Symbol => symbol;

    internal double Value => given.Value;

    public override string ToString() => given.Text;
}
