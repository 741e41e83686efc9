using LowVoltage.Calc;

namespace CircuitPage;

/// <summary>What of the answer takes longer than a key press may: worked out when the typing pauses.</summary>
internal sealed class LaterAnswer
{
    public LaterAnswer(Answer answer)
    {
        CircuitDesign design = answer.Design;
        Answer = answer;
        Drawing = design.Diagram.ToSvg("drawn");
        Limits = answer.IsOfStretches ? [] : LimitRow.Of(design, answer.Units);
        Assumptions = design.Assumptions;
    }

    /// <summary>The answer that this belongs to.</summary>
    public Answer Answer { get; }

    public string Drawing { get; }

    public IReadOnlyList<LimitRow> Limits { get; }

    public IReadOnlyList<string> Assumptions { get; }
}
