using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>What a circuit feeds: how much current it draws at which voltage, and how little voltage it works on.</summary>
/// <remarks>
/// Made by the factories here. Immutable and thread-safe. A minimum voltage is judged at the load, whatever the drop in per cent.
/// </remarks>
public abstract partial class Load
{
    private DutyCycle duty = DutyCycle.FromFraction(1);
    private double? minimumVolts;
    private bool thermalCutOut;

    private protected Load(string name) => Name = name;

    /// <summary>What kind of load it is: <c>constant power</c>.</summary>
    public string Name { get; }

    /// <summary>The least voltage at which the load works; <c>null</c> when it has none of its own.</summary>
    public ElectricPotential? MinimumVoltage => MinimumVolts is { } volts ? ElectricPotential.FromVolts(volts) : null;

    /// <summary>The duty cycle; 1 when the load is on all the time.</summary>
    public DutyCycle DutyCycle => duty;

    internal virtual double? MinimumVolts => minimumVolts;

    /// <summary>The least voltage stated for this load itself, those of its parts left out.</summary>
    internal double? OwnMinimumVolts => minimumVolts;

    /// <summary>Whether a thermal cut-out was stated for this load itself.</summary>
    internal bool OwnThermalCutOut => thermalCutOut;

    /// <summary>A resistance, such as a heater: I = U/R.</summary>
    /// <param name="resistance">Resistance R while it runs, positive.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive or is absurdly large.</exception>
    public static Load Resistance(ElectricResistance resistance) => new ResistiveLoad(Accept.Ohms(resistance, nameof(resistance)));

    /// <summary>A load that draws the same current at any voltage, such as a linear regulator.</summary>
    /// <param name="current">Current I, positive.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is not positive or is absurdly large.</exception>
    public static Load ConstantCurrent(ElectricCurrent current) => new ConstantCurrentLoad(Accept.Amperes(current, nameof(current)));

    /// <summary>A load that draws the same power at any voltage, such as a switching converter, an inverter or a cooler, by its wattage: I = P/(η·U).</summary>
    /// <param name="power">Power P that the converter gives (or takes, with an efficiency of 1), positive.</param>
    /// <param name="efficiency">Efficiency η, above 0 to 1.</param>
    /// <param name="minimumVoltage">The least voltage at which it works; <c>null</c> for none.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>
    /// <para>Behind a resistance R such a load has two operating points, I = [V ∓ √(V² − 4RP)]/(2R), or none. The one with the higher voltage is
    /// stable and is the one that every result here gives. The other, with the larger current, is unstable: any disturbance moves the
    /// circuit away from it, towards the stable one or to collapse.</para>
    /// </remarks>
    public static Load ConstantPower(Power power, double efficiency = 1, ElectricPotential? minimumVoltage = null)
    {
        Load load = new ConstantPowerLoad(Accept.Watts(power, nameof(power)), Accept.Positive(efficiency, 1, "", nameof(efficiency)));
        return minimumVoltage is { } least ? load.WithMinimumVoltage(least) : load;
    }

    /// <summary>An incandescent lamp: I = I0·(U/U0)^0.55, and a cold filament at switching on.</summary>
    /// <param name="rated">Power at the rated voltage, positive.</param>
    /// <param name="ratedVoltage">Rated voltage U0, positive.</param>
    /// <param name="coldResistanceRatio">Hot resistance over cold resistance, 1 to 25.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>
    /// <para>The exponent holds within 10 % of the rated voltage; a result outside that says so. The
    /// sources are at
    /// <see cref="LampLoad"/>.</para>
    /// </remarks>
    public static LampLoad Lamp(Power rated, ElectricPotential ratedVoltage, double coldResistanceRatio = LampLoad.DefaultColdResistanceRatio) =>
        new(Accept.Watts(rated, nameof(rated)), Accept.Volts(ratedVoltage, nameof(ratedVoltage)), Accept.Within(coldResistanceRatio, 1, 25, "", nameof(coldResistanceRatio)));

    /// <summary>A load by measured points, such as a pump, a light strip or a heater with a controller: the current at each of several voltages.</summary>
    /// <param name="voltages">Voltages at the load, each above the one before it; at least three. Measure over the range that the supply has.</param>
    /// <param name="currents">The current at each, positive and not below the one before it.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentNullException">A list is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than three points, or a voltage or current does not rise; the message names it and says why.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A voltage or current is not positive or is absurdly large.</exception>
    /// <remarks>
    /// Between the points a monotone cubic (F. N. Fritsch and J. Butland, 1984), which has no waves of its own. Below the first point the current goes straight to nothing, above the last straight on: a
    /// result there says that it is only a guide. A current that falls while the voltage rises is a converter's: <see cref="ConstantPower"/>.
    /// </remarks>
    public static Load Measured(IReadOnlyList<ElectricPotential> voltages, IReadOnlyList<ElectricCurrent> currents) => MeasuredLoad.Create(voltages, currents);

    /// <summary>A motor whose three currents are taken as they are, whatever the voltage: the safe reading for drop and heat.</summary>
    /// <param name="running">Current when it runs, positive.</param>
    /// <param name="peak">Highest current while it starts, from the running to the locked-rotor current.</param>
    /// <param name="lockedRotor">Current while it is stalled, at least the running current.</param>
    /// <param name="startDuration">How long starting takes, positive.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Load Motor(ElectricCurrent running, ElectricCurrent peak, ElectricCurrent lockedRotor, Duration startDuration) =>
        MotorLoad.Create(running, peak, lockedRotor, startDuration, null);

    /// <summary>A motor whose peak and locked-rotor currents belong to a voltage: at standstill its winding is a resistance, so both fall with the voltage.</summary>
    /// <param name="running">Current when it runs, positive; taken as constant.</param>
    /// <param name="peak">Highest current while it starts at the rated voltage, from the running to the locked-rotor current.</param>
    /// <param name="lockedRotor">Current while it is stalled at the rated voltage, at least the running current.</param>
    /// <param name="startDuration">How long starting takes, positive.</param>
    /// <param name="ratedVoltage">Voltage at which the two currents were measured, positive.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Load Motor(
        ElectricCurrent running, ElectricCurrent peak, ElectricCurrent lockedRotor, Duration startDuration, ElectricPotential ratedVoltage) =>
        MotorLoad.Create(running, peak, lockedRotor, startDuration, Accept.Volts(ratedVoltage, nameof(ratedVoltage)));

    /// <summary>Several loads at the end of one path, all on at the same time and, in a peak, all at their peak.</summary>
    /// <param name="loads">At least one.</param>
    /// <returns>The load they make together. Its minimum voltage is the highest of theirs.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static Load Together(params Load[] loads) => new CombinedLoad(loads);

    /// <summary>The same load, with a least voltage at which it works.</summary>
    /// <param name="minimumVoltage">The voltage at the load, positive.</param>
    /// <returns>A copy with that minimum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive or is absurdly large.</exception>
    public Load WithMinimumVoltage(ElectricPotential minimumVoltage)
    {
        Load copy = (Load)MemberwiseClone();
        copy.minimumVolts = Accept.Volts(minimumVoltage, nameof(minimumVoltage));
        return copy;
    }

    /// <summary>The same load, on for a share of the time: its r.m.s. current heats the conductor, its current while on makes the drop.</summary>
    /// <param name="dutyCycle">The share; it replaces an earlier one of this load, also one stated before its input capacitor. Of a group it holds beside those of its loads: see the remarks.</param>
    /// <returns>A copy with that duty cycle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The duty cycle is the default one, which is none.</exception>
    /// <remarks>
    /// <para>Where a group of loads (<see cref="Together"/>) and one of them have a duty cycle each, that load heats by the smaller of the two shares of the heat: their pulses may coincide.</para>
    /// <para>A motor draws its starting current in every period, which heats too. With stated times (<see cref="DutyCycle.FromTimes"/>) it counts, for the length of the start in each period:
    /// I(heat)² = I(run)²·P(t) + (I(peak)² − I(run)²)·t_s/T, P the share of the steady rise at the end of the time on t, t_s the start's length, T the period; where the start takes all of the time on,
    /// I(peak)²·P(t). With a share alone it is
    /// not known and does not count.</para>
    /// </remarks>
    public Load WithDutyCycle(DutyCycle dutyCycle)
    {
        Load copy = (Load)MemberwiseClone();
        _ = Accept.Positive(dutyCycle.Share, 1, "", nameof(dutyCycle));
        copy.duty = dutyCycle;
        copy.SettleHeat();
        return copy;
    }

    /// <summary>The same load with motors that have a thermal cut-out of their own, or that withstand being stalled for as long as it lasts.</summary>
    /// <returns>A copy that says so: a fuse that need not open on a stall is then no undetermined point.</returns>
    public Load WithThermalCutOut()
    {
        Load copy = (Load)MemberwiseClone();
        copy.thermalCutOut = true;
        return copy;
    }

    /// <summary>The same load with a capacitor at its input, which charges through the resistance of the circuit at switching on.</summary>
    /// <param name="capacitance">Input capacitance C, positive.</param>
    /// <returns>A load whose <see cref="InrushFrom"/> tells of the capacitor too.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The capacitance is not positive or is absurdly large.</exception>
    public Load WithInputCapacitor(ElectricCapacitance capacitance)
    {
        // Still one load: what was stated of it is stated of both, and a later statement replaces it.
        CombinedLoad both = new([Bare(), new CapacitorInput(Accept.Positive(Accept.Raw(capacitance), 1e6, "F", nameof(capacitance)))]);
        both.TakeStated(this);
        return both;
    }

    /// <summary>The current drawn at a voltage at the load's terminals.</summary>
    /// <param name="voltage">Voltage U at the load, positive.</param>
    /// <param name="state">What the load is doing.</param>
    /// <returns>The current while the load is on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive or is absurdly large, or the state is not one of the enumeration.</exception>
    public ElectricCurrent CurrentAt(ElectricPotential voltage, LoadState state) =>
        ElectricCurrent.FromAmperes(AmperesAt(Accept.Volts(voltage, nameof(voltage)), Check(state, nameof(state))));

    /// <summary>The surges at switching on, one for each load that has any; empty when there is none.</summary>
    /// <param name="openCircuit">Voltage of the source with no current, positive.</param>
    /// <param name="series">All resistance between that voltage and the load, positive: without it a capacitor's surge has no limit.</param>
    /// <returns>The surges, each as if it were alone on the path, which overstates them when there are several.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public IReadOnlyList<Inrush> InrushFrom(ElectricPotential openCircuit, ElectricResistance series)
    {
        List<Inrush> surges = [];
        AddInrush(Accept.Volts(openCircuit, nameof(openCircuit)), Accept.Ohms(series, nameof(series)), surges);
        return surges;
    }

    /// <summary>The same load drawing so many times the current at any voltage: a tolerance of its make.</summary>
    internal Load Scaled(double factor)
    {
        if (factor.Equals(1.0))
        {
            return this;
        }

        Load copy = ScaledCore(factor);
        copy.TakeStated(this);
        return copy;
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>Current in A at U volts; U may be 0. No allocation.</summary>
    internal double AmperesAt(double volts, LoadState state) => AmperesCore(volts, state);

    /// <summary>dI/dU in A/V at U volts, above 0.</summary>
    internal virtual double SlopeAt(double volts, LoadState state)
    {
        LoadLaw law = LawAt(state);
        return law.Siemens - (law.Watts / (volts * volts));
    }

    internal abstract LoadLaw LawAt(LoadState state);

    private protected abstract Load ScaledCore(double factor);

    /// <summary>Whether it has a start of its own that takes more than running and must succeed: a motor.</summary>
    internal virtual bool Starts => false;

    /// <summary>Whether it draws more at switching on than in running, for a moment: a lamp, a motor, a capacitor.</summary>
    internal virtual bool HasSurge => false;

    /// <summary>Whether it can stall and draw its locked-rotor current: a motor.</summary>
    internal virtual bool CanStall => false;

    /// <summary>Whether a motor in it protects itself when it is stalled.</summary>
    internal virtual bool HasThermalCutOut => thermalCutOut;

    /// <summary>How it is drawn, each of its parts by itself.</summary>
    internal virtual IEnumerable<(DiagramSymbol Symbol, string Name)> Drawn => [(DiagramSymbol.Device, Name)];

    /// <summary>What a careful reader must know about the load at this voltage, or null.</summary>
    internal virtual string? RemarkAt(double volts, LoadState state) => null;

    /// <summary>Writes down what the caller stated of the load.</summary>
    internal void Describe(LoadSymbols symbols)
    {
        if (duty.Share is > 0 and < 1)
        {
            symbols.Duty(duty);
        }

        DescribeCore(symbols);
    }

    private protected abstract void DescribeCore(LoadSymbols symbols);

    private protected abstract double AmperesCore(double volts, LoadState state);

    internal virtual void AddInrush(double volts, double ohms, List<Inrush> surges)
    {
    }

    /// <summary>Adds what it draws when it is switched on: a surge of its own kind, and what then runs.</summary>
    internal virtual void AddStart(LoadStart start) => start.AddRunning(this);

    internal static LoadState Check(LoadState state, string name) =>
        state is LoadState.Running or LoadState.Peak or LoadState.LockedRotor
            ? state
            : throw new ArgumentOutOfRangeException(name, state, $"{name} must be Running, Peak or LockedRotor; it was {Accept.Text((int)state)}.");

    // The law alone, with nothing stated besides.
    private Load Bare()
    {
        Load copy = (Load)MemberwiseClone();
        (copy.duty, copy.minimumVolts, copy.thermalCutOut) = (DutyCycle.FromFraction(1), null, false);
        copy.SettleHeat();
        return copy;
    }

    private void TakeStated(Load other)
    {
        (duty, minimumVolts, thermalCutOut) = (other.duty, other.minimumVolts, other.thermalCutOut);
        SettleHeat();
    }
}
