using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Resistances joined in series and in parallel, dividers, and the part that is missing from a total.</summary>
/// <remarks>
/// <code>series R = ΣRk    parallel 1/R = Σ1/Rk    divider Vk = V·Rk/ΣR    branch Ik = I·(R/Rk)</code>
/// <para><b>Source.</b> Kirchhoff's laws; Lessons in Electric Circuits, Volume I - DC, chapters 5 to 7.</para>
/// <para><b>Accuracy.</b> Rounding of a double.</para>
/// </remarks>
public static partial class ResistorNetwork
{
    /// <summary>Resistances one after another: their sum.</summary>
    /// <param name="resistances">At least one; each zero or greater.</param>
    /// <returns>The resistance of the chain.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="resistances"/> is null.</exception>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">One is negative or absurdly large.</exception>
    public static ElectricResistance Series(params ElectricResistance[] resistances)
    {
        Require(resistances, nameof(resistances));
        return ElectricResistance.FromOhms(Sum(resistances, nameof(resistances)));
    }

    /// <summary>Resistances side by side: the reciprocal of the sum of reciprocals.</summary>
    /// <param name="resistances">At least one; each positive.</param>
    /// <returns>The resistance of the group.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="resistances"/> is null.</exception>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">One is not positive or is absurdly large.</exception>
    public static ElectricResistance Parallel(params ElectricResistance[] resistances)
    {
        Require(resistances, nameof(resistances));
        return ElectricResistance.FromOhms(ParallelOhms(resistances, nameof(resistances)));
    }

    /// <summary>The voltage across one part of a chain, V·R/(R + rest).</summary>
    /// <param name="voltage">Voltage across the whole chain, zero or greater.</param>
    /// <param name="part">The part asked for, positive.</param>
    /// <param name="others">The rest of the chain, each zero or greater.</param>
    /// <returns>The part's share of the voltage.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="others"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricPotential DividedVoltage(ElectricPotential voltage, ElectricResistance part, params ElectricResistance[] others)
    {
        _ = others ?? throw new ArgumentNullException(nameof(others));
        double v = Accept.VoltsOrZero(voltage, nameof(voltage)), r = Accept.Ohms(part, nameof(part));
        return ElectricPotential.FromVolts(v * (r / (r + Sum(others, nameof(others)))));
    }

    /// <summary>The current in one of several branches that share a current, I·(R/Rk) with R the resistance of them all in parallel.</summary>
    /// <param name="total">Current into the group, zero or greater.</param>
    /// <param name="branch">The branch asked for, positive.</param>
    /// <param name="others">The other branches, each positive.</param>
    /// <returns>The branch's share of the current.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="others"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricCurrent DividedCurrent(ElectricCurrent total, ElectricResistance branch, params ElectricResistance[] others)
    {
        _ = others ?? throw new ArgumentNullException(nameof(others));
        double i = Accept.AmperesOrZero(total, nameof(total)), r = Accept.Ohms(branch, nameof(branch));
        double siemens = 1 / r;
        foreach (ElectricResistance other in others)
        {
            siemens += 1 / Accept.Ohms(other, nameof(others));
        }

        return ElectricCurrent.FromAmperes(i / (r * siemens));
    }

    /// <summary>What is missing from a chain: the total less the known parts.</summary>
    /// <param name="total">Resistance of the whole chain, positive.</param>
    /// <param name="known">The known parts, each zero or greater; together at most the total.</param>
    /// <returns>The unknown part.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="known"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The known parts are more than the total, or an argument is outside its range.</exception>
    public static ElectricResistance UnknownSeriesPart(ElectricResistance total, params ElectricResistance[] known)
    {
        _ = known ?? throw new ArgumentNullException(nameof(known));
        double all = Accept.Ohms(total, nameof(total)), sum = Sum(known, nameof(known));
        return ElectricResistance.FromOhms(all - Accept.Within(sum, 0, all, "Ω", nameof(known)));
    }

    /// <summary>The shunt that widens the range of a current meter: Rs = Im·Rm/(I − Im).</summary>
    /// <param name="meter">Resistance of the movement, Rm, positive.</param>
    /// <param name="fullScale">Current of the movement at full scale, Im, positive.</param>
    /// <param name="range">Current to be read at full scale, I, above <paramref name="fullScale"/>.</param>
    /// <returns>The resistance to put across the movement.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance Shunt(ElectricResistance meter, ElectricCurrent fullScale, ElectricCurrent range)
    {
        double r = Accept.Ohms(meter, nameof(meter)), im = Accept.Amperes(fullScale, nameof(fullScale)), i = Accept.Amperes(range, nameof(range));
        return i > im
            ? ElectricResistance.FromOhms(r * (im / (i - im)))
            : ElectricResistance.FromOhms(Accept.Refuse(nameof(range), i, "A", $"above the full-scale current of the movement, {Accept.Text(im)} A"));
    }

    private static void Require(ElectricResistance[] resistances, string name)
    {
        _ = resistances ?? throw new ArgumentNullException(name);
        if (resistances.Length == 0)
        {
            throw new ArgumentException("At least one resistance is needed.", name);
        }
    }

    private static double Sum(ElectricResistance[] resistances, string name)
    {
        double sum = 0;
        foreach (ElectricResistance resistance in resistances)
        {
            sum += Accept.OhmsOrZero(resistance, name);
        }

        return sum;
    }

    private static double ParallelOhms(ElectricResistance[] resistances, string name)
    {
        double siemens = 0;
        foreach (ElectricResistance resistance in resistances)
        {
            siemens += 1 / Accept.Ohms(resistance, name);
        }

        return 1 / siemens;
    }
}
