namespace LowVoltage.Calc.Working;

/// <summary>One part of a circuit diagram: its symbol and what is written beside it.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class DiagramPart
{
    private const int MostLabels = 4;
    private const int LongestLabel = 60;

    /// <summary>A part.</summary>
    /// <param name="symbol">How it is drawn.</param>
    /// <param name="labels">What is written beside it, a line each; up to four lines of up to 60 characters. Empty lines are left out.</param>
    /// <exception cref="ArgumentNullException">The labels, or one of them, are null.</exception>
    /// <exception cref="ArgumentException">There are more than four labels, or one is longer than 60 characters or holds a control character.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The symbol is none of its values.</exception>
    public DiagramPart(DiagramSymbol symbol, params string[] labels)
    {
        _ = labels ?? throw new ArgumentNullException(nameof(labels));
        Symbol = symbol is >= DiagramSymbol.Wire and <= DiagramSymbol.Earth
            ? symbol
            : throw new ArgumentOutOfRangeException(nameof(symbol), symbol, $"symbol must be one of its named values; it was {symbol}.");
        string[] kept = [.. labels.Select(label => label ?? throw new ArgumentNullException(nameof(labels))).Where(label => label.Length > 0)];
        Labels = kept.Length <= MostLabels && kept.All(label => label.Length <= LongestLabel && !label.Any(char.IsControl))
            ? Array.AsReadOnly(kept)
            : throw new ArgumentException($"labels must be at most {MostLabels} lines of at most {LongestLabel} characters without control characters.", nameof(labels));
    }

    /// <summary>How it is drawn.</summary>
    public DiagramSymbol Symbol { get; }

    /// <summary>What is written beside it, a line each.</summary>
    public IReadOnlyList<string> Labels { get; }

    /// <summary>What it is, in words: <c>fuse (10 A)</c>.</summary>
    public override string ToString() => Labels.Where(label => label != Words(Symbol)).ToArray() is { Length: > 0 } labels ? $"{Words(Symbol)} ({string.Join(", ", labels)})" : Words(Symbol);

    private static string Words(DiagramSymbol symbol) => symbol switch
    {
        DiagramSymbol.Wire => "wire",
        DiagramSymbol.SharedWire => "shared wire",
        DiagramSymbol.Joint => "joint",
        DiagramSymbol.Battery => "battery",
        DiagramSymbol.Cell => "cell",
        DiagramSymbol.Supply => "supply",
        DiagramSymbol.Fuse => "fuse",
        DiagramSymbol.Switch => "switch",
        DiagramSymbol.Resistor => "resistance",
        DiagramSymbol.Heater => "heating element",
        DiagramSymbol.Lamp => "lamp",
        DiagramSymbol.Motor => "motor",
        DiagramSymbol.Device => "device",
        DiagramSymbol.Fault => "short circuit",
        DiagramSymbol.Chassis => "chassis",
        _ => "earth",
    };
}
