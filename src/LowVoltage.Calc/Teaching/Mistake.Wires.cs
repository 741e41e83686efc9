namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about the geometry of a wire and the choice of its size.</content>
public sealed partial class Mistake
{
    internal static Mistake DiameterForArea { get; } = new("diameter for area",
        "The diameter stands where the area belongs. The area of a round wire is π·d²/4.");

    internal static Mistake DiameterForCircularMils { get; } = new("diameter for circular mils",
        "The diameter in mils stands where circular mils belong, which are its square.");

    internal static Mistake AreaForDiameter { get; } = new("area taken for a diameter",
        "The number given is already an area; there is no need for π·d²/4.");

    internal static Mistake RadiusForDiameter { get; } = new("diameter used as a radius",
        "π·r² takes the radius, half the diameter; with the diameter it is π·d²/4.");

    internal static Mistake PiForgotten { get; } = new("π/4 forgotten",
        "d² alone is the area of a square; a round wire has π/4 of it.");

    internal static Mistake PiAdded { get; } = new("π/4 where none belongs",
        "A circular mil is the area of a circle one mil across, so circular mils are d² in mils, without π/4.");

    internal static Mistake PiForCircularMils { get; } = new("π where none belongs",
        "Circular mils are d² in mils; no π multiplies them.");

    internal static Mistake DiameterNotSquared { get; } = new("diameter not squared",
        "An area grows with the square of the diameter.");

    internal static Mistake StrandsForgotten { get; } = new("one strand only",
        "The cross-section of a stranded wire is that of one strand times their number.");

    internal static Mistake StrandsSquared { get; } = new("number of strands squared",
        "The number of strands multiplies the area once; only the diameter is squared.");

    internal static Mistake SectionNotSquared { get; } = new("cross-section not squared",
        "The cross-section is squared, as the current is.");

    internal static Mistake RoundedDown { get; } = new("rounded down to a standard value",
        "Between two standard values take the next larger one; the smaller one does not meet the condition.");

    internal static Mistake TooThick { get; } = new("one size larger than needed",
        "A smaller size already meets every condition.");

    internal static Mistake AmpacityForgotten { get; } = new("only the drop considered",
        "The wire keeps the drop small but would not carry what the fuse lets pass. Both conditions must hold.");

    internal static Mistake DropForgotten { get; } = new("only the current considered",
        "The wire carries the current but loses too many volts. Both conditions must hold.");

    private static Mistake[] OfWires =>
    [
        DiameterForArea, DiameterForCircularMils, AreaForDiameter, RadiusForDiameter, PiForgotten, PiAdded, PiForCircularMils, DiameterNotSquared,
        StrandsForgotten, StrandsSquared, SectionNotSquared, RoundedDown, TooThick, AmpacityForgotten, DropForgotten,
    ];
}
