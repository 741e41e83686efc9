using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Documents;

/// <summary>Existing wiring: one size or a path, and its fuse.</summary>
internal sealed record LaidWiring(Conductor? Wire, CircuitPath? Path, FuseRating? Fuse);
