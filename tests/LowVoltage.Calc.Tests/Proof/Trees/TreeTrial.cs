using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>One tree answered by the library and ruled on by the referee.</summary>
internal sealed record TreeTrial(TreeGiven Given, TreeAnswer Answer, TreeRuling[] Rulings)
{
    public static TreeTrial Verify(TreeGiven given) => new(given, new TreeAnswer(HarnessDesigner.Verify(TreeHarness.Of(given))), TreeReferee.Rule(given));

    /// <summary>The wires and fuses left to the library, and what it chose then ruled on.</summary>
    public static TreeTrial Design(TreeGiven given)
    {
        HarnessDesign design = HarnessDesigner.Design(TreeHarness.Of(given, sized: false));
        TreeGiven sized = TreeHarness.With(given, design.Harness);
        return new(sized, new TreeAnswer(design.Verification), TreeReferee.Rule(sized));
    }

    private static readonly string[] OfWires = ["FuseProtectsWire", "OverloadTemperature", "ShortCircuitTemperature", "FaultOpensFuse", "OvercurrentProtection"];

    // Where a fault does not open the fuse in time, how hot the wire gets is not asked.
    public string OutcomeOf(TreeRuling ruling) => ruling.Kind == TreeReferee.OnTheWay ? Array.Exists(OfWires, Answer.Doubts) ? "Fail" : "Pass"
        : ruling.Kind == TreeReferee.StalledAlone ? Answer.Outcome("StalledMotor", ruling.Place)
        : ruling.Place == TreeReferee.Anywhere ? Answer.Doubts(ruling.Kind) ? "Fail" : "Pass"
        : ruling.Kind == "ShortCircuitTemperature" && Answer.Outcome("FaultOpensFuse", ruling.Place) is var end and not ("Pass" or "none") ? end
        : Answer.Outcome(ruling.Kind, ruling.Place);

    /// <summary>Checks that the library passes and the referee refuses.</summary>
    public IEnumerable<TreeRuling> FalsePasses => Rulings.Where(ruling => ruling.Refuses && OutcomeOf(ruling) == "Pass");

    /// <summary>Checks that the referee refuses, that the library did not ask, and at whose place nothing else is said.</summary>
    public IEnumerable<TreeRuling> NotAsked =>
        Rulings.Where(ruling => ruling.Refuses && OutcomeOf(ruling) == "none" && !Answer.SaysSomething(ruling.Place) && !Answer.Doubts("PowerDelivery"));

    /// <summary>Checks that fail with room to spare by the referee's numbers.</summary>
    public IEnumerable<TreeRuling> FalseFails => Rulings.Where(ruling => ruling.Ruling.Say == Say.MustPass && OutcomeOf(ruling) == "Fail");

    /// <summary>What the referee refuses in a harness that passes as a whole.</summary>
    public IEnumerable<TreeRuling> FalseVerdicts => Answer.Verdict == "Pass" ? Rulings.Where(ruling => ruling.Refuses) : [];
}
