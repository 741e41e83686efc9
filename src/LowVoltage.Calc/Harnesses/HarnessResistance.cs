using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A way for current whose resistance is stated: a chassis, a bar, a shunt. It does not warm up here and has no rating.</summary>
public sealed class HarnessResistance : HarnessBranch
{
    private HarnessResistance(string id, string from, string to, double ohms, bool isChassis, double? meters = null)
        : base(id, from, to)
    {
        FixedOhms = ohms;
        IsChassis = isChassis;
        Meters = meters;
    }

    /// <summary>How much conductor it stands for; <c>null</c> where that was not stated.</summary>
    public Length? Length => Meters is { } meters ? UnitsNet.Length.FromMeters(meters) : null;

    /// <summary>Its resistance.</summary>
    public ElectricResistance Resistance => ElectricResistance.FromOhms(FixedOhms);

    /// <summary>Whether it is a chassis, hull or other metal structure.</summary>
    public bool IsChassis { get; }

    internal double? Meters { get; }

    internal override double FixedOhms { get; }

    internal override string Word => IsChassis ? "chassis" : "resistance";

    /// <summary>A stated resistance, such as a bar or a shunt.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node that its current is counted from.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="resistance">Its resistance, zero or greater; with zero the two nodes are one.</param>
    /// <returns>The resistance.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public static HarnessResistance Create(string id, string from, string to, ElectricResistance resistance) =>
        new(id, from, to, Accept.OhmsOrZero(resistance, nameof(resistance)), false);

    /// <summary>A chassis between two of its points.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node that its current is counted from.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="resistance">Its resistance, the joints at both ends included, zero or greater.</param>
    /// <returns>The chassis.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public static HarnessResistance Chassis(string id, string from, string to, ElectricResistance resistance) =>
        new(id, from, to, Accept.OhmsOrZero(resistance, nameof(resistance)), true);

    /// <summary>The same with a stated length: counted where a rule limits the conductor between a source and its fuse, which is undetermined without it.</summary>
    /// <param name="length">How much conductor it stands for, zero to 100 km; <c>null</c> where that is not known.</param>
    /// <returns>The resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or absurdly large.</exception>
    public HarnessResistance WithLength(Length? length) =>
        new(Id, From, To, FixedOhms, IsChassis, length is { } stated ? Accept.MetersOrZero(stated, nameof(length)) : null);
}
