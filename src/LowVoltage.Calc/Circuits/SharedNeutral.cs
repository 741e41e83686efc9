using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Two equal voltages in series with a common middle wire that carries only the difference of the two loads' currents.</summary>
/// <remarks>
/// <code>Vp = V − Ip·Ro − (Ip − In)·Rn    Vn = V − In·Ro + (Ip − In)·Rn</code>
/// <para><b>Symbols.</b> V voltage of each side, Ip and In currents of the positive and the negative side, Ro resistance of an outer wire, Rn that of the middle wire.</para>
/// <para>The side with less load may get more than V. With the middle wire broken two resistances share 2·V in series: the lighter load, which has the higher
/// resistance, takes most of it and may burn out.</para>
/// <para>A <c>default</c> holds no answer: <see cref="Exists"/> is false and every other member refuses.</para>
/// <para><b>Source.</b> Principles of Power System, chapter on direct-current distribution (three-wire system).</para>
/// </remarks>
public readonly struct SharedNeutral
{
    private readonly double positive;
    private readonly double negative;
    private readonly double neutral;
    private readonly bool made;

    private SharedNeutral(double positive, double negative, double neutral)
    {
        this.positive = positive;
        this.negative = negative;
        this.neutral = neutral;
        made = true;
    }

    /// <summary>Voltage at the load of the positive side.</summary>
    public ElectricPotential PositiveVoltage => ElectricPotential.FromVolts(Made(positive));

    /// <summary>Voltage at the load of the negative side.</summary>
    public ElectricPotential NegativeVoltage => ElectricPotential.FromVolts(Made(negative));

    /// <summary>Current in the middle wire back to the source; negative when the negative side draws more, zero when the wire is broken.</summary>
    public ElectricCurrent NeutralCurrent => ElectricCurrent.FromAmperes(Made(neutral));

    /// <summary>Whether both loads have a voltage above zero; when false the currents cannot flow.</summary>
    public bool Exists => positive > 0 && negative > 0;

    /// <summary>Two constant currents.</summary>
    /// <param name="eachSide">Voltage of each side, positive.</param>
    /// <param name="positiveCurrent">Current of the positive side, zero or greater.</param>
    /// <param name="negativeCurrent">Current of the negative side, zero or greater.</param>
    /// <param name="outer">Resistance of each outer wire, zero or greater.</param>
    /// <param name="middle">Resistance of the middle wire, zero or greater.</param>
    /// <returns>Voltages at the loads and the middle wire's current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static SharedNeutral Solve(
        ElectricPotential eachSide, ElectricCurrent positiveCurrent, ElectricCurrent negativeCurrent, ElectricResistance outer, ElectricResistance middle)
    {
        double v = Accept.Volts(eachSide, nameof(eachSide));
        double ip = Accept.AmperesOrZero(positiveCurrent, nameof(positiveCurrent)), @in = Accept.AmperesOrZero(negativeCurrent, nameof(negativeCurrent));
        double ro = Accept.OhmsOrZero(outer, nameof(outer)), rise = (ip - @in) * Accept.OhmsOrZero(middle, nameof(middle));
        return new SharedNeutral(v - (ip * ro) - rise, v - (@in * ro) + rise, ip - @in);
    }

    /// <summary>The middle wire broken: two resistances in series across both voltages.</summary>
    /// <param name="eachSide">Voltage of each side, positive.</param>
    /// <param name="positiveLoad">Resistance of the load on the positive side, positive.</param>
    /// <param name="negativeLoad">Resistance of the load on the negative side, positive.</param>
    /// <returns>Voltages at the loads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static SharedNeutral Broken(ElectricPotential eachSide, ElectricResistance positiveLoad, ElectricResistance negativeLoad)
    {
        double all = 2 * Accept.Volts(eachSide, nameof(eachSide));
        double rp = Accept.Ohms(positiveLoad, nameof(positiveLoad)), rn = Accept.Ohms(negativeLoad, nameof(negativeLoad));
        return new SharedNeutral(all * (rp / (rp + rn)), all * (rn / (rp + rn)), 0);
    }

    private double Made(double value) => made ? value : throw NoValue.Read(nameof(SharedNeutral));
}
