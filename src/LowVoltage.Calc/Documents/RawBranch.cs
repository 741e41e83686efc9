using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A branch as it stands in a document, to be settled with what its harness states for all; null where that refuses it.</summary>
internal sealed record RawBranch(string Id, Func<HarnessUsual, HarnessBranch?> Settle);

/// <summary>What a harness states for all its branches.</summary>
internal sealed record HarnessUsual(DesignRules Rules, Place? Place, InsulationMaterial? Insulation);
