using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <summary>The rating that says how well a stretch is cooled: its current, the conductor temperature and the air that it stands for.</summary>
internal readonly record struct CoolingSymbols(Symbol Amperes, Symbol Celsius, Symbol Ambient);
