using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Design;

/// <summary>What a caller stated of a device before the circuit's fuse, in one line.</summary>
internal static class SupplyWords
{
    internal static string Of(UpstreamProtection device)
    {
        FuseRating rating = device.Rating;
        List<string> parts = [rating.ToString()];
        if (rating.Series.Volts is { } volts)
        {
            parts.Add($"{Accept.Text(volts)} V");
        }

        if (rating.BreakingAmperes is { } breaks)
        {
            parts.Add($"breaks {Accept.Text(breaks)} A");
        }

        parts.Add(device.UpstreamOhms is { } ohms ? $"after {Accept.Text(1000 * ohms)} mΩ of supply lead" : "place on the supply lead not stated");
        if (device.DistanceMeters is { } meters)
        {
            parts.Add($"{Accept.Text(meters)} m from the source, {(device.Sheathed ? "sheathed" : "not sheathed")}");
        }

        if (device.LetThrough is { } through)
        {
            parts.Add($"lets {Accept.Text(through.AmpereSquaredSeconds)} A²s through");
        }

        if (device.WithstandBehind is { } withstood)
        {
            parts.Add($"{Accept.Text(withstood.AmpereSquaredSeconds)} A²s are withstood behind it");
        }

        if (device.LeastMelting is { } melting)
        {
            parts.Add($"melts at {Accept.Text(melting.AmpereSquaredSeconds)} A²s at least");
        }

        parts.Add(device.Lead is { } lead
            ? "lead behind it " + string.Join(", ", lead.FeedArray.Concat(lead.BackArray).Select(s => $"{Accept.Short(s.Meters)} m of {(s.Parallel > 1 ? $"{s.Parallel} × " : "")}{s.Conductor}"))
            : "lead behind it not stated");
        return string.Join(", ", parts);
    }
}
