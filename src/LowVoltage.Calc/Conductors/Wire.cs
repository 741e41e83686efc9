using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>An insulated wire: a conductor in an insulation of a given wall thickness.</summary>
/// <remarks>Immutable and thread-safe; equal by value.</remarks>
public sealed partial class Wire
{
    private Wire(Conductor conductor, InsulationMaterial insulation, double wallMillimeters)
    {
        Conductor = conductor;
        Insulation = insulation;
        WallMillimeters = wallMillimeters;
    }

    /// <summary>The conductor.</summary>
    public Conductor Conductor { get; }

    /// <summary>The insulation.</summary>
    public InsulationMaterial Insulation { get; }

    /// <summary>Thickness of the insulation.</summary>
    public Length Wall => Length.FromMillimeters(WallMillimeters);

    /// <summary>Diameter over the insulation.</summary>
    public Length OuterDiameter => Length.FromMillimeters(OuterDiameterMillimeters);

    internal double WallMillimeters { get; }

    internal double OuterDiameterMillimeters => Conductor.DiameterMillimeters + (2 * WallMillimeters);

    /// <summary>An insulated wire with the usual wall for its conductor, <see cref="InsulationWall.UsualFor"/>.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="insulation">The insulation.</param>
    /// <returns>The wire.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <remarks>The usual wall is that of thin-wall road-vehicle cable: an assumption for heat calculations, and a thin one. Measure it where it counts.</remarks>
    public static Wire Create(Conductor conductor, InsulationMaterial insulation) => new(
        conductor ?? throw new ArgumentNullException(nameof(conductor)),
        insulation ?? throw new ArgumentNullException(nameof(insulation)),
        InsulationWall.UsualMillimeters(conductor.AreaSquareMillimeters));

    /// <summary>An insulated wire with a stated wall.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="insulation">The insulation.</param>
    /// <param name="wall">Wall thickness; zero for a bare wire.</param>
    public static Wire Create(Conductor conductor, InsulationMaterial insulation, Length wall) =>
        new(
            conductor ?? throw new ArgumentNullException(nameof(conductor)),
            insulation ?? throw new ArgumentNullException(nameof(insulation)),
            Accept.MetersOrZero(wall, nameof(wall)) * 1000);

    /// <summary>The same with a wall in mm, without the way by metres.</summary>
    internal static Wire OfMillimeters(Conductor conductor, InsulationMaterial insulation, double wall) => new(conductor, insulation, wall);

    /// <inheritdoc/>
    public override string ToString() => $"{Conductor}, {Insulation}";
}
