using LowVoltage.Calc.Design;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc;

/// <content>The working and the drawing.</content>
public sealed partial class CircuitDesign
{
    /// <summary>The working: what was asked, every step in engineering units, every check with its margin and source, why each smaller size was not taken, what governs, and the cautions.</summary>
    /// <returns>The working; where nothing passes, that of the nearest wire and fuse. <see cref="CalculationSheet"/> puts a page to sign before it.</returns>
    /// <remarks>One letter stands for one quantity on the whole sheet. Numbers are rounded to the nearest, so that a quantity reads the same wherever it is met; nothing is rounded in between.</remarks>
    public WorkedSolution Explain() => new DesignSheet(this).Write();

    /// <summary>The circuit drawn: source, supply lead, fuse, wire, joints, load and way back, with the symbols of IEC 60617.</summary>
    /// <remarks>Long names are cut to what a line holds; of many stretches or loads it says how many more there are.</remarks>
    public CircuitDiagram Diagram => diagram ??= DesignDiagram.Of(this);
}
