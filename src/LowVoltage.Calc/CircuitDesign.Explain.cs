using LowVoltage.Calc.Design;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc;

/// <content>The calculation sheet.</content>
public sealed partial class CircuitDesign
{
    /// <summary>The calculation sheet: what was asked, every step, every check with its margin and source, why each smaller size was not taken, what governs, and the cautions.</summary>
    /// <returns>The sheet; where nothing passes, that of the nearest wire and fuse.</returns>
    /// <remarks>One letter stands for one quantity on the whole sheet. Numbers are rounded to the nearest, so that a quantity reads the same wherever it is met; nothing is rounded in between.</remarks>
    public WorkedSolution Explain() => new DesignSheet(this).Write();
}
