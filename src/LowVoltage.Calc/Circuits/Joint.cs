using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>A crimp, connector, switch, relay contact, or fuse and holder: a resistance that does not follow the conductor's temperature, and that makes heat in one spot.</summary>
public sealed class Joint
{
    private Joint(string name, double ohms)
    {
        Name = name;
        Ohms = ohms;
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Its resistance.</summary>
    public ElectricResistance Resistance => ElectricResistance.FromOhms(Ohms);

    internal double Ohms { get; }

    /// <summary>A joint.</summary>
    /// <param name="name">What it is: <c>fuse and holder</c>.</param>
    /// <param name="resistance">Its resistance, zero or greater; usually a few milliohms.</param>
    /// <returns>The joint.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public static Joint Create(string name, ElectricResistance resistance) =>
        new(name ?? throw new ArgumentNullException(nameof(name)), Accept.OhmsOrZero(resistance, nameof(resistance)));

    /// <inheritdoc/>
    public override string ToString() => $"{Name}, {Accept.Text(Ohms * 1000)} mΩ";
}
