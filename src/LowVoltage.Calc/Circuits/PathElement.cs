using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>One part of a path at an operating point: its drop, its heat and, for a conductor, its temperature.</summary>
public sealed class PathElement
{
    internal PathElement()
    {
    }

    internal double Ohms { get; init; }

    internal double Amperes { get; init; }

    internal double OtherAmperes { get; init; }

    internal double? Celsius { get; init; }

    internal double DropVolts => Ohms * (Amperes + OtherAmperes);

    internal double LossWatts => DropVolts * Amperes;

    // Loss per metre in one of the parallel conductors.
    internal double WattsPerMeter
    {
        get
        {
            double total = Amperes + OtherAmperes;
            return Segment is null ? 0 : Ohms * total * total / Segment.Meters / Segment.Parallel;
        }
    }

    /// <summary>What it is: <c>5.5 m of 14 AWG copper</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Which part of the path.</summary>
    public PathElementKind Kind { get; internal init; }

    /// <summary>The segment, when it is one.</summary>
    public Segment? Segment { get; internal init; }

    /// <summary>Its resistance at its temperature.</summary>
    public ElectricResistance Resistance => ElectricResistance.FromOhms(Ohms);

    /// <summary>All the current in it, that of other circuits included.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes + OtherAmperes);

    /// <summary>The voltage dropped in it.</summary>
    public ElectricPotential Drop => ElectricPotential.FromVolts(DropVolts);

    /// <summary>Power that this circuit loses in it: its own current times the drop.</summary>
    public Power Loss => Power.FromWatts(LossWatts);

    /// <summary>Heat made in it while the load is on, by all the current in it.</summary>
    public Power Heat => Power.FromWatts(Ohms * (Amperes + OtherAmperes) * (Amperes + OtherAmperes));

    /// <summary>Conductor temperature; <c>null</c> for a joint, a chassis or a stated resistance.</summary>
    public Temperature? Temperature => Celsius is { } celsius ? UnitsNet.Temperature.FromDegreesCelsius(celsius) : null;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
