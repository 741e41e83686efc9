using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Networks;

/// <summary>One element of a <see cref="ResistiveNetwork"/>: its own name, the names of its two nodes, and its number.</summary>
/// <remarks>Made by the factories here. Immutable. Names are compared letter by letter; a node exists because an element names it.</remarks>
public sealed class NetworkElement
{
    private NetworkElement(NetworkElementKind kind, string id, string first, string second, double value, double ohms, string secondName = "second")
    {
        Kind = kind;
        Id = Named(id, nameof(id));
        First = first;
        Second = second;
        Value = value;
        Ohms = ohms;
        if (string.Equals(first, second, StringComparison.Ordinal))
        {
            throw new ArgumentException($"Element {id} runs from node {first} to itself; it needs two different nodes.", secondName);
        }
    }

    /// <summary>What it is.</summary>
    public NetworkElementKind Kind { get; }

    /// <summary>Its name.</summary>
    public string Id { get; }

    /// <summary>The node that its current is counted from: of a voltage source the positive one.</summary>
    public string First { get; }

    /// <summary>The other node.</summary>
    public string Second { get; }

    /// <summary>Ω, V, A or W.</summary>
    internal double Value { get; }

    /// <summary>Resistance behind a voltage, Ω.</summary>
    internal double Ohms { get; }

    internal bool IsTie => Kind switch
    {
        NetworkElementKind.Resistance => Value == 0,
        NetworkElementKind.VoltageSource => Ohms == 0,
        _ => false,
    };

    /// <summary>A resistance.</summary>
    /// <param name="id">Its name; not empty.</param>
    /// <param name="first">Node that its current is counted from.</param>
    /// <param name="second">The other node.</param>
    /// <param name="resistance">Resistance, zero or greater; with zero the two nodes are one.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public static NetworkElement Resistance(string id, string first, string second, ElectricResistance resistance) => new(
        NetworkElementKind.Resistance, id, Named(first, nameof(first)), Named(second, nameof(second)), Given(Accept.OhmsOrZero(resistance, nameof(resistance)), "Ω", nameof(resistance)), 0);

    /// <summary>A voltage without resistance: an ideal source.</summary>
    /// <param name="id">Its name; not empty.</param>
    /// <param name="positive">Node of its positive end.</param>
    /// <param name="negative">Node of its negative end.</param>
    /// <param name="voltage">Voltage of the one over the other, positive.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive or is absurdly large.</exception>
    public static NetworkElement VoltageSource(string id, string positive, string negative, ElectricPotential voltage) => new(
        NetworkElementKind.VoltageSource, id, Named(positive, nameof(positive)), Named(negative, nameof(negative)), Accept.Volts(voltage, nameof(voltage)), 0, nameof(negative));

    /// <summary>A voltage behind a resistance: a battery, which takes current where others push more than it gives.</summary>
    /// <param name="id">Its name; not empty.</param>
    /// <param name="positive">Node of its positive end.</param>
    /// <param name="negative">Node of its negative end.</param>
    /// <param name="voltage">Voltage with no current, positive.</param>
    /// <param name="resistance">Resistance behind it, zero or greater.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static NetworkElement VoltageSource(
        string id, string positive, string negative, ElectricPotential voltage, ElectricResistance resistance) => new(
        NetworkElementKind.VoltageSource,
        id,
        Named(positive, nameof(positive)),
        Named(negative, nameof(negative)),
        Accept.Volts(voltage, nameof(voltage)),
        Given(Accept.OhmsOrZero(resistance, nameof(resistance)), "Ω", nameof(resistance)),
        nameof(negative));

    /// <summary>A stated current from one node to the other: a load that draws it, or a source that drives it.</summary>
    /// <param name="id">Its name; not empty.</param>
    /// <param name="from">Node that it is taken from.</param>
    /// <param name="to">Node that it is brought to.</param>
    /// <param name="current">The current, positive.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is not positive or is absurdly large.</exception>
    public static NetworkElement Current(string id, string from, string to, ElectricCurrent current) => new(
        NetworkElementKind.Current, id, Named(from, nameof(from)), Named(to, nameof(to)), Accept.Amperes(current, nameof(current)), 0, nameof(to));

    /// <summary>A load that draws the same power at any voltage, such as a converter.</summary>
    /// <param name="id">Its name; not empty.</param>
    /// <param name="positive">Node of its positive end.</param>
    /// <param name="negative">Node of its negative end.</param>
    /// <param name="power">The power that it draws, positive.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The power is not positive or is absurdly large.</exception>
    public static NetworkElement ConstantPower(string id, string positive, string negative, Power power) => new(
        NetworkElementKind.ConstantPower, id, Named(positive, nameof(positive)), Named(negative, nameof(negative)), Accept.Watts(power, nameof(power)), 0, nameof(negative));

    /// <inheritdoc/>
    public override string ToString() => Kind switch
    {
        NetworkElementKind.VoltageSource when Ohms > 0 => $"{Id}: {Accept.Text(Value)} V behind {Accept.Text(Ohms)} Ω, {First} over {Second}",
        NetworkElementKind.VoltageSource => $"{Id}: {Accept.Text(Value)} V, {First} over {Second}",
        NetworkElementKind.Current => $"{Id}: {Accept.Text(Value)} A from {First} to {Second}",
        NetworkElementKind.ConstantPower => $"{Id}: {Accept.Text(Value)} W from {First} to {Second}",
        _ => $"{Id}: {Accept.Text(Value)} Ω between {First} and {Second}",
    };

    internal Element ToElement(int first, int second) => Kind switch
    {
        NetworkElementKind.VoltageSource => Element.Battery(first, second, Value, Ohms),
        NetworkElementKind.Current => Element.Drawn(first, second, Value),
        NetworkElementKind.ConstantPower => Element.Power(first, second, Value, 0),
        _ => Element.Resistance(first, second, Value),
    };

    internal Tie ToTie(int first, int second) => new(first, second, Kind == NetworkElementKind.VoltageSource ? Value : 0);

    private static string Named(string name, string parameter)
    {
        _ = name ?? throw new ArgumentNullException(parameter);
        return name.Length > 0 ? name : throw new ArgumentException($"{parameter} must be a name of at least one letter; it was empty.", parameter);
    }

    // Zero is a meaning of its own; next to nothing would only drown the rest in rounding.
    private static double Given(double ohms, string unit, string parameter) =>
        ohms is 0 or >= Accept.Least ? ohms : Accept.Refuse(parameter, ohms, unit, $"0 Ω or at least {Accept.Text(Accept.Least)} Ω");
}
