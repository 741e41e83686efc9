namespace LowVoltage.Calc.Circuits;

/// <summary>Solves a source behind a fixed resistance and a conductor of some temperature into a load, on doubles, without allocation.</summary>
/// <remarks>
/// <code>U = V − I·R(I)    R(I) = Rf + Rc·ratio(I)    I = load(U)</code>
/// <para>V open-circuit volts; Rf ohms that do not change (source, joints, chassis); Rc conductor ohms at 20 °C; U volts at the load. The ratio is a straight line of the squared
/// current, so this is <see cref="LoopKernel"/> with A = Rf + Rc·ratio(0) and B = Rc times the slope of that line.</para>
/// </remarks>
internal static class OperatingPointKernel
{
    internal static KernelPoint Solve<TTemperature>(
        double volts, double fixedOhms, double conductorOhms20, in TTemperature temperature, Load load, LoadState state, double limitAmperes = double.PositiveInfinity)
        where TTemperature : struct, IConductorTemperature
    {
        bool wired = conductorOhms20 > 0;
        double ohms = wired ? fixedOhms + (conductorOhms20 * temperature.RatioAt(0)) : fixedOhms;
        double cubic = wired ? conductorOhms20 * temperature.RatioPerSquareAmpere : 0;
        LoopPoint point = LoopKernel.Solve(
            volts, ohms, cubic, load, state, limitAmperes, wired ? temperature.MeltingAmperes : double.PositiveInfinity);
        return point.Exists
            ? new KernelPoint(
                point.Amperes,
                point.HeatingAmperes,
                point.Volts,
                ohms + (cubic * point.HeatingAmperes * point.HeatingAmperes),
                temperature.CelsiusAt(point.HeatingAmperes),
                point.Limited)
            : new KernelPoint(point.Reason, point.LargestWatts);
    }
}
