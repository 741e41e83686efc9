namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>One case answered by the library and ruled on by the simulator.</summary>
internal sealed record Trial(CaseGiven Given, LibraryAnswer Answer, SortedDictionary<string, Ruling> Rulings)
{
    public static Trial Of(CaseGiven given)
    {
        LibraryAnswer answer = Library.Answer(given);
        SortedDictionary<string, Ruling> rulings = answer.Wire is { } wire ? Referee.Rule(new OwnCircuit(given, wire, answer.Fuse)) : new(StringComparer.Ordinal);
        return new Trial(given, answer, rulings);
    }

    /// <summary>What the library made of a check: its outcome, or "none" where it did not ask.</summary>
    public string Outcome(string check) => Answer.Checks.TryGetValue(check, out LibraryCheck found) ? found.Outcome : "none";

    /// <summary>Checks that must not pass although the whole verdict is a pass.</summary>
    public IEnumerable<string> FalsePasses => Answer.Passes ? Rulings.Where(r => r.Value.Say is Say.MustFail or Say.MustNotPass).Select(r => r.Key) : [];

    /// <summary>Checks that must fail and were passed or not asked, in a verdict that is left undetermined.</summary>
    public IEnumerable<string> PassesInOpenVerdicts => Answer.Passes || Answer.Fails
        ? []
        : Rulings.Where(r => r.Value.Say == Say.MustFail && Outcome(r.Key) is "Pass" or "none" && r.Value.Say == Say.MustFail).Select(r => r.Key);

    /// <summary>Checks that must fail and were left undetermined where nothing else failed.</summary>
    public IEnumerable<string> LeftOpen => Answer.Passes || Answer.Fails ? [] : Rulings.Where(r => r.Value.Say == Say.MustFail && Outcome(r.Key) is not ("Pass" or "none" or "Fail")).Select(r => r.Key);

    /// <summary>Checks that failed with at least a twentieth to spare by the simulator's numbers.</summary>
    public IEnumerable<string> FalseFails => Rulings.Where(r => r.Value.Say == Say.MustPass && Outcome(r.Key) == "Fail").Select(r => r.Key);
}
