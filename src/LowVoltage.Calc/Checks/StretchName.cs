using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <summary>What a stretch of the circuit is called; the words are put together when somebody reads them.</summary>
internal sealed class StretchName
{
    private readonly string part;
    private readonly Segment? segment;

    private StretchName(string part, Segment? segment)
    {
        this.part = part;
        this.segment = segment;
    }

    /// <summary>The one wire of a circuit that has no other.</summary>
    internal static StretchName Only { get; } = new("wire", null);

    /// <summary>The feed, or feed and return alike, of a circuit whose return is something else.</summary>
    internal static StretchName Feed { get; } = new("feed", null);

    /// <summary>Whether it tells one stretch from others.</summary>
    internal bool IsOneOfSeveral => !ReferenceEquals(this, Only);

    internal static StretchName Of(string part, Segment segment) => new(part, segment);

    /// <inheritdoc/>
    public override string ToString() => segment is null ? part : $"{part}, {Text(segment.Meters, segment.Parallel, segment.Conductor)}";

    internal static string Text(double meters, int parallel, Conductor conductor) =>
        $"{Accept.Short(meters)} m of {(parallel == 1 ? "" : $"{Accept.Text(parallel)} × ")}{conductor}";
}
