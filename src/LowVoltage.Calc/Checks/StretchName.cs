using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <summary>What a stretch of the circuit is called; the words are put together when somebody reads them.</summary>
internal sealed class StretchName
{
    private readonly string part;
    private readonly double meters;
    private readonly int parallel;
    private readonly Conductor? conductor;

    private StretchName(string part, double meters, int parallel, Conductor? conductor)
    {
        this.part = part;
        this.meters = meters;
        this.parallel = parallel;
        this.conductor = conductor;
    }

    /// <summary>The feed, or feed and return alike, of a circuit whose return is something else.</summary>
    internal static StretchName Feed { get; } = new("feed", 0, 1, null);

    /// <summary>The return alone, of wires in parallel like the feed.</summary>
    internal static StretchName Return { get; } = new("return", 0, 1, null);

    /// <summary>The part of the circuit, or the name of the wire.</summary>
    internal string Part => part;

    internal static StretchName Of(string part, Segment segment) => new(part, segment.Meters, segment.Parallel, segment.Conductor);

    internal static StretchName Of(string part, double meters, int parallel, Conductor conductor) => new(part, meters, parallel, conductor);

    /// <summary>A part that is told from others by what it is called.</summary>
    internal static StretchName Of(string part) => new(part, 0, 1, null);

    /// <inheritdoc/>
    public override string ToString() => conductor is null ? part : $"{part}, {Text(meters, parallel, conductor)}";

    internal static string Text(double meters, int parallel, Conductor conductor) =>
        $"{Accept.Short(meters)} m of {(parallel == 1 ? "" : $"{Accept.Text(parallel)} × ")}{conductor}";
}
