using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Tests.Docs.Tables;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The twelve everyday circuits beside the handbooks: the sentences were written for these wires, and what each names is what makes the difference.</summary>
public class EverydayCircuitsTests
{
    public static TheoryData<string> Names() => [.. EverydayCircuits.All.Select(circuit => circuit.Name)];

    [Fact]
    public void Circuits_AreTwelve() => Assert.Equal(12, EverydayCircuits.All.Count);

    [Theory, MemberData(nameof(Names))]
    public void Wires_AreThoseThatTheSentenceWasWrittenFor(string name)
    {
        EverydayCircuit circuit = EverydayCircuits.All.Single(item => item.Name == name);
        Assert.Equal(circuit.Wires, (EverydayCircuits.Size(circuit.ByTheBook().Wire), EverydayCircuits.Size(circuit.Design().Wire)));
    }

    // Never thinner than the book, and where thicker, nearer to it without what the sentence names.
    [Theory, MemberData(nameof(Names))]
    public void Difference_GoesWithWhatTheSentenceNames(string name)
    {
        EverydayCircuit circuit = EverydayCircuits.All.Single(item => item.Name == name);
        int apart = circuit.StepsTo(circuit.Wires.Design);
        Assert.InRange(apart, 0, int.MaxValue);
        Assert.Equal(apart == 0, circuit.Without is null);
        if (circuit.Without is { } without)
        {
            Assert.Equal(without.Wire, EverydayCircuits.Size(CircuitDesigner.Design(without.Requirements, without.Rules).Wire));
            Assert.InRange(circuit.StepsTo(without.Wire), 0, apart - 1);
        }
    }

    // What the page says of the change: all but the inverter keep the wire, the fuse and the pass that they had.
    [Fact]
    public void Before_ElevenHadTheSameWireAndFuse()
    {
        Assert.Equal(EverydayCircuits.All.Select(circuit => circuit.Name).Order(StringComparer.Ordinal), EverydayCircuits.Before.Keys.Order(StringComparer.Ordinal));
        string[] changed = [.. EverydayCircuits.All.Where(circuit => !Same(circuit.Design(), EverydayCircuits.Before[circuit.Name])).Select(circuit => circuit.Name)];
        Assert.StartsWith("an inverter", Assert.Single(changed), StringComparison.Ordinal);
    }

    private static bool Same(CircuitDesign design, string before) =>
        FormattableString.Invariant($"{EverydayCircuits.Size(design.Wire)}, {design.Fuse!.Current.Amperes} A, {(design.Verdict == Verdict.Pass ? "pass" : "fail")}") == before;

    [Fact]
    public void Differences_AreSaidInOneSentence() =>
        Assert.All(EverydayCircuits.All, circuit => Assert.Equal(1, circuit.Why.Split(". ").Length - (circuit.Why.EndsWith('.') ? 0 : 1)));

    [Fact]
    public void VoltsOfTheSupplyLead_AreAsTheSentencesSay()
    {
        foreach (EverydayCircuit circuit in EverydayCircuits.All.Where(item => item.Why.Contains("The supply lead takes", StringComparison.Ordinal)))
        {
            double volts = circuit.Amperes * circuit.Requirements.Upstream!.Value.Ohms;
            double allowed = circuit.Design().Find(CheckKind.VoltageDrop)!.Value.Limit!.Value;
            Assert.Contains(FormattableString.Invariant($"takes {Math.Round(volts, 2, MidpointRounding.AwayFromZero):0.00} V of the {allowed:0.##} V"), circuit.Why, StringComparison.Ordinal);
        }
    }
}
