using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The main fuse against the supply lead's current.</content>
public abstract partial class CheckKind
{
    /// <summary>Is each main fuse small enough to protect the supply lead behind it? Rating, A, at most.</summary>
    public static CheckKind MainFuseProtectsLead { get; } = Register(new MainFuseProtectsLeadCheck());
}

internal sealed class MainFuseProtectsLeadCheck() : SupplyCheck(320, nameof(MainFuseProtectsLead), "main fuse protects the supply lead", "A", limitIsLeast: false, ("I_mv", "I_ml"))
{
    private const byte NotStated = 1;

    private protected override CheckKind Asked => FuseProtectsWire;

    private protected override bool TryAsk(BranchState at, SupplyStage stage, out CheckResult result)
    {
        if (stage.HasLead || stage.IsWithoutLead)
        {
            return base.TryAsk(at, stage, out result);
        }

        result = Unknown(at.Practice.ShareReference, new CheckSubject { Note = NotStated, About = stage.Device, Stretch = NameOf(at, stage) }, stage.Device.Amperes);
        return true;
    }

    internal override string Note(in CheckResult result) => result.NoteKind == NotStated ? $"state the wire of the supply lead behind the {result.About}, out and back" : base.Note(result);

    internal override string Advice(in CheckResult result, BranchState at) => result.NoteKind == NotStated
        ? $"State the wire of the supply lead behind the {result.About} (UpstreamProtection.WithLead): without it nobody knows whether that protects it."
        : result.Outcome == CheckOutcome.Undetermined ? Unrated.Advice
        : "The main fuse is too large for the supply lead: a smaller main fuse where that still carries all circuits, or a larger lead.";

    // The lead is a branch of its own: what its checks find is told, not derived again.
    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        foreach (SupplyStage stage in sheet.At.Supply)
        {
            double prospective = stage.At.AtFuseAmperes;
            string most = double.IsInfinity(prospective) ? "The source is given without internal resistance" : $"Up to {Quantities.Accept.Short(prospective)} A can flow into a short right behind it";
            sheet.Board.State($"the {stage.Device}", SolutionText.Sentence($"{most}; the lead behind it is held to the same rules as a circuit, with this as its fuse") + ".");
        }
    }
}
