using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Open-circuit voltage of a 12 V lead-acid battery (six cells) at rest, against its state of charge.</summary>
/// <remarks>
/// <code>V(θ) = V(26.7 °C) + 6 · 0.2 mV/K · (θ − 26.7 °C)</code>
/// <para>Straight lines between the five rows at 80 °F (26.7 °C). Away from it by the cell's own coefficient, some 0.2 mV/K a cell (from memory): a battery at rest has a little less voltage
/// in the cold.</para>
/// <para><b>Another correction is in print</b>: 0.024 V for each 10 °F (4.3 mV/K for 12 V), to be subtracted from a reading in the cold. It is six times the correction of a hydrometer reading
/// (0.004 of density for 10 °F) and goes the other way. Which of the two belongs to a voltmeter is not settled by a source that was read, so <see cref="BandAt"/> holds both. At −18 °C and 12.45 V
/// the first says 82 %, the printed one 52 %, and the reading without a correction 75 %.</para>
/// <para><b>Valid</b> from empty to full, 0 °F to 110 °F (−17.8 °C to 43.3 °C), six hours or more after charging, for flooded cells filled to 1.265; AGM and gel rest higher (from memory).</para>
/// <para><b>Accuracy.</b> Published tables differ from this one by up to 0.06 V when full, 0.10 V at half and 0.15 V at a quarter. Where a wrong answer leaves somebody stranded, take
/// <see cref="ChargeBand.Least"/>.</para>
/// </remarks>
public static class LeadAcidCharge
{
    private const double ReferenceCelsius = (80 - 32) / 1.8;
    private const double VoltsPerKelvin = 6 * 0.0002;
    private const double PrintedVoltsPerKelvin = 0.024 / (10 / 1.8);
    private const double LeastCelsius = (0 - 32) / 1.8;
    private const double MostCelsius = (110 - 32) / 1.8;
    private const string Covered = "from -17.7778 °C to 43.3333 °C (0 °F to 110 °F)";

    private static readonly double[] Shares = [0, 0.25, 0.5, 0.75, 1];
    private static readonly double[] RestVolts = [11.89, 12.06, 12.24, 12.45, 12.65];

    // How far published tables lie from this one, V, at the same shares.
    private static readonly double[] Spread = [0.15, 0.15, 0.10, 0.08, 0.06];

    /// <summary>Source of the table.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Open-circuit voltage and density of starter batteries at 80 °F",
        Kind = ReferenceKind.Handbook,
        Note = "Two independent copies agree; one credits the Battery Council International. Full-charge density 1.265.",
    };

    /// <summary>Source of the change with temperature.</summary>
    public static Reference TemperatureReference { get; } = new()
    {
        Title = "Temperature coefficient of the lead-acid cell, 0.2 mV/K",
        Kind = ReferenceKind.FromMemory,
        Note = "The copies of the table print 0.024 V for 10 °F instead, which looks like the correction of a hydrometer.",
    };

    internal static double EmptyVolts => RestVolts[0];

    /// <summary>The voltage at rest for a state of charge.</summary>
    /// <param name="stateOfCharge">0 (empty) to 1 (full).</param>
    /// <param name="temperature">Temperature of the battery, −17.8 °C to 43.3 °C.</param>
    /// <returns>The open-circuit voltage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside what the table covers.</exception>
    public static ElectricPotential VoltageAt(double stateOfCharge, Temperature temperature)
    {
        double share = Accept.Within(stateOfCharge, 0, 1, "", nameof(stateOfCharge));
        return ElectricPotential.FromVolts(Between(Shares, RestVolts, share) + Correction(temperature, nameof(temperature)));
    }

    /// <summary>The state of charge for a voltage at rest.</summary>
    /// <param name="voltage">Open-circuit voltage of the six cells, within the table after the correction to 26.7 °C.</param>
    /// <param name="temperature">Temperature of the battery, −17.8 °C to 43.3 °C.</param>
    /// <returns>0 (empty) to 1 (full).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside what the table covers.</exception>
    public static double StateOfChargeAt(ElectricPotential voltage, Temperature temperature)
    {
        double volts = Accept.Volts(voltage, nameof(voltage)) - Correction(temperature, nameof(temperature));
        return Covers(volts)
            ? Between(RestVolts, Shares, Clip(volts))
            : Accept.Refuse(nameof(voltage), voltage.Volts, "V", "11.89 V to 12.65 V after correction to 26.7 °C, which is what the table covers");
    }

    /// <summary>The state of charge for a voltage at rest, where the table covers it.</summary>
    /// <param name="voltage">Open-circuit voltage of the six cells.</param>
    /// <param name="temperature">Temperature of the battery.</param>
    /// <param name="stateOfCharge">0 (empty) to 1 (full); 0 when the answer is false.</param>
    /// <returns>False when the voltage or the temperature is outside the table.</returns>
    public static bool TryStateOfChargeAt(ElectricPotential voltage, Temperature temperature, out double stateOfCharge)
    {
        double celsius = Accept.Raw(temperature), volts = Accept.Raw(voltage) - (VoltsPerKelvin * (celsius - ReferenceCelsius));
        bool covered = CoversTemperature(celsius) && Covers(volts);
        stateOfCharge = covered ? Between(RestVolts, Shares, Clip(volts)) : 0;
        return covered;
    }

    /// <summary>Between which states of charge a voltage at rest lies: both temperature corrections, none, and the spread of the published tables.</summary>
    /// <param name="voltage">Open-circuit voltage of the six cells, within the table after the correction to 26.7 °C by the cell's own coefficient.</param>
    /// <param name="temperature">Temperature of the battery, −17.8 °C to 43.3 °C.</param>
    /// <returns>The band. Its ends are held at empty and full.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside what the table covers.</exception>
    public static ChargeBand BandAt(ElectricPotential voltage, Temperature temperature)
    {
        double likely = StateOfChargeAt(voltage, temperature);
        double measured = Accept.Raw(voltage), kelvins = Accept.Raw(temperature) - ReferenceCelsius;
        double own = measured - (VoltsPerKelvin * kelvins), printed = measured + (PrintedVoltsPerKelvin * kelvins);
        double spread = Between(Shares, Spread, likely);
        double lowest = Math.Min(Math.Min(own, printed), measured) - spread, highest = Math.Max(Math.Max(own, printed), measured) + spread;
        return new ChargeBand(Between(RestVolts, Shares, Clip(lowest)), likely, Between(RestVolts, Shares, Clip(highest)));
    }

    private static double Correction(in Temperature temperature, string name)
    {
        double celsius = Accept.Celsius(temperature, name);
        return CoversTemperature(celsius) ? VoltsPerKelvin * (celsius - ReferenceCelsius) : Accept.Refuse(name, celsius, "°C", Covered);
    }

    // A part in 1e9 of play for the conversion from °F and for the correction's rounding.
    private static bool CoversTemperature(double celsius) => celsius >= LeastCelsius - 1e-9 && celsius <= MostCelsius + 1e-9;

    private static bool Covers(double volts) => volts >= RestVolts[0] - 1e-9 && volts <= RestVolts[4] + 1e-9;

    private static double Clip(double volts) => Math.Min(Math.Max(volts, RestVolts[0]), RestVolts[4]);

    private static double Between(double[] x, double[] y, double at)
    {
        int i = 1;
        while (i < x.Length - 1 && at > x[i])
        {
            i++;
        }

        return y[i - 1] + ((y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]));
    }
}
