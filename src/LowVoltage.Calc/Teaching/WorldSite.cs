namespace LowVoltage.Calc.Teaching;

/// <summary>What the problems of a world say of it.</summary>
/// <param name="Task">Why a circuit is planned; {0} stands for the load with its article, {1} for power and voltage, {2} for the distance, {3} for the place.</param>
/// <param name="Warm">Where it is warm, at the beginning of a sentence.</param>
/// <param name="Bundle">Where wires lie together, at the beginning of a sentence.</param>
/// <param name="Heater">A heater of which there are several, in the plural.</param>
/// <param name="Starter">Its starter battery, with its article; {0} stands for the place.</param>
/// <param name="Chassis">What leads current back.</param>
/// <param name="MostFaultAmperes">The most that a short circuit there plausibly draws.</param>
/// <param name="MostLampWatts">The most that a filament lamp has there.</param>
internal sealed record WorldSite(
    string Task, string Warm, string Bundle, string Heater, string Starter, WorldChassis Chassis, int MostFaultAmperes, int MostLampWatts);
