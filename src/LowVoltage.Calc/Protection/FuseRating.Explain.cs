using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <content>The working.</content>
public sealed partial class FuseRating
{
    /// <summary>The working of the operating time at a current.</summary>
    /// <param name="current">Constant current through the fuse. Positive.</param>
    /// <returns>The steps, the longest time last; that nothing is stated, or that the fuse need not open, is an answer too.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public WorkedSolution ExplainOperatingTime(ElectricCurrent current)
    {
        _ = Accept.Amperes(current, nameof(current));
        string title = $"Time for the {this} to open";
        if (Curve is not null)
        {
            return Curve.Explain(current, title, Series.Reference);
        }

        SolutionBuilder board = new(title);
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Fuse);
        board.State("operating time", $"No operating-time limits are published for the {this}.", Series.Reference);
        return board.Build();
    }
}
