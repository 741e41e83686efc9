using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>What the referee of trees says of one kind of check at one fuse, wire or load.</summary>
internal readonly record struct TreeRuling(string Kind, string Place, Ruling Ruling)
{
    /// <summary>Whether the library may not pass it.</summary>
    public bool Refuses => Ruling.Say is Say.MustFail or Say.MustNotPass;

    public override string ToString() => $"{Kind} of {Place}: {Ruling}";
}
