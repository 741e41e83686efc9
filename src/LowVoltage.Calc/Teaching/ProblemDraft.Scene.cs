using System.Globalization;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <content>Where a problem plays, in words and as a diagram.</content>
internal sealed partial class ProblemDraft
{
    private const int Openings = 3;

    private bool isOnTrailer;

    /// <summary>The place, with its article: a camper van.</summary>
    internal string Place { get; }

    /// <summary>Where something happens: in a camper van, on a small sailing boat.</summary>
    internal string In => World.Preposition + " " + Place;

    internal string InAtStart => Upper(In);

    /// <summary>Where a current comes back through metal, at the beginning of a sentence.</summary>
    internal string ChassisAtStart => World.Site.Chassis.Where is { } where ? string.Format(CultureInfo.InvariantCulture, where, Place) : InAtStart;

    internal string Starter => string.Format(CultureInfo.InvariantCulture, World.Site.Starter, Place);

    /// <summary>Where wires lie together, at the beginning of a sentence.</summary>
    internal string Bundle => isOnTrailer ? "In its conduit the wire is" : World.Site.Bundle;

    /// <summary>Where it is warm, at the beginning of a sentence.</summary>
    internal string Warm => isOnTrailer ? "In the sun it reaches" : World.Site.Warm;

    /// <summary>How the first sentence opens; one of a few ways that mean the same.</summary>
    private int Opening { get; }

    /// <summary>The diagram beside the statement; null where there is no circuit to draw.</summary>
    internal CircuitDiagram? Diagram { get; private set; }

    /// <summary>A load and its place as the subject of the first sentence.</summary>
    internal string Subject(LoadDraw load) => Opening switch
    {
        0 => $"{InAtStart}, {load.One}",
        1 => $"{load.OneAtStart} {In}",
        _ => $"The {load.Name} {In}",
    };

    /// <summary>A load and the wire that feeds it, as the first sentence without its full stop.</summary>
    internal string FedBy(LoadDraw load, string wire) => Opening switch
    {
        0 => $"{InAtStart}, {wire} runs to {load.One}",
        1 => $"{Upper(wire)} runs to {load.One} {In}",
        _ => $"The {load.Name} {In} is fed through {wire}",
    };

    internal static string Upper(string words) => char.ToUpperInvariant(words[0]) + words.Substring(1);

    internal void Sketch(DiagramPart source, IReadOnlyList<DiagramPart> feed, IReadOnlyList<DiagramPart> loads, params DiagramPart[] back) =>
        Diagram = new CircuitDiagram("Circuit of this problem", source, feed, loads, back);

    internal DiagramPart Feeder(params object[] labels) => Part(DiagramSymbol.Supply, [World.Feeder, .. labels]);

    /// <summary>The metal that leads back.</summary>
    internal DiagramPart ChassisPart(params object[] labels) => Part(DiagramSymbol.Chassis, [World.Site.Chassis.Noun, .. labels]);

    internal static DiagramPart Part(DiagramSymbol symbol, params object[] labels) => new(symbol, [.. labels.Select(label => label.ToString() ?? "")]);

    internal static DiagramPart Part(LoadDraw load, params object[] labels) => Part(
        load.Kind switch
        {
            LoadKind.Heater => DiagramSymbol.Heater,
            LoadKind.Lamp => DiagramSymbol.Lamp,
            LoadKind.Motor => DiagramSymbol.Motor,
            _ => DiagramSymbol.Device,
        },
        [load.Name, .. labels]);
}
