using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A switch or relay contact between two nodes; a load case may open or close it.</summary>
public sealed class HarnessSwitch : HarnessBranch
{
    private HarnessSwitch(string id, string from, string to, double ohms, bool isClosed)
        : base(id, from, to)
    {
        FixedOhms = ohms;
        IsClosed = isClosed;
    }

    /// <summary>Resistance of the closed contact.</summary>
    public ElectricResistance Resistance => ElectricResistance.FromOhms(FixedOhms);

    /// <summary>Whether it is closed where a load case does not say otherwise.</summary>
    public bool IsClosed { get; }

    internal override double FixedOhms { get; }

    internal override string Word => "switch";

    /// <summary>A switch.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node that its current is counted from.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="resistance">Resistance of the closed contact, zero or greater.</param>
    /// <param name="isClosed">Whether it is closed where a load case does not say otherwise.</param>
    /// <returns>The switch.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public static HarnessSwitch Create(string id, string from, string to, ElectricResistance resistance, bool isClosed = true) =>
        new(id, from, to, Accept.OhmsOrZero(resistance, nameof(resistance)), isClosed);
}
