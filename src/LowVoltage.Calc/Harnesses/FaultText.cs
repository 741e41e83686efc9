using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Says a fault in a sentence: what, where, what follows, what would help.</summary>
internal static class FaultText
{
    internal static string OfShort(Harness harness, string place, string to, ShortResult result)
    {
        string what = $"Short from {place} to {to}";
        return result.Ending switch
        {
            FaultEnding.NoCurrent => $"{what}: no current flows.",
            FaultEnding.Undetermined => $"{what}: what ends it is undetermined. {result.Reason}",
            FaultEnding.NotCleared => $"{what} is not cleared: {Stays(harness, place, result)}",
            _ => $"{what}: {Opens(result)}",
        };
    }

    internal static string OfOpen(Harness harness, int branch, List<FaultedLoad> loads, string? liveThrough, string reason)
    {
        HarnessBranch at = harness.BranchArray[branch];
        string what = at is HarnessFuse ? $"Fuse {at.Id} pulled or blown" : at is HarnessSwitch ? $"Switch {at.Id} open" : $"{Capital(at.Word)} {at.Id} interrupted";
        if (reason.Length > 0)
        {
            return $"{what}: undetermined. {reason}";
        }

        List<string> parts = [.. loads.Where(l => l.Effect is LoadEffect.Reversed or LoadEffect.FedBack).Select(l => l.ToString())];
        if (liveThrough is not null)
        {
            parts.Add($"its far end stays live through {liveThrough}");
        }

        AddGroup(parts, loads, LoadEffect.Dead, "dead");
        AddGroup(parts, loads, LoadEffect.DropsOut, "dropped out");
        parts.AddRange(loads.Where(l => l.Effect is LoadEffect.Rises or LoadEffect.Dims).OrderByDescending(l => Math.Abs(l.AfterVolts - l.BeforeVolts)).Take(3).Select(l => l.ToString()));
        int more = loads.Count(l => l.Effect is LoadEffect.Rises or LoadEffect.Dims) - 3;
        if (more > 0)
        {
            parts.Add($"{Accept.Text(more)} more loads change by more than 2 %");
        }

        string advice = loads.Exists(l => l.Effect is LoadEffect.Reversed or LoadEffect.FedBack) ? " Give what shares this way grounds or feeds of their own, or accept it knowingly."
            : liveThrough is not null ? " Disconnect the other source as well before working here." : "";
        return parts.Count == 0 ? $"{what}: no load notices." : $"{what}: {string.Join("; ", parts)}.{advice}";
    }

    private static void AddGroup(List<string> parts, List<FaultedLoad> loads, LoadEffect effect, string word)
    {
        string[] ids = [.. loads.Where(l => l.Effect == effect).Select(l => l.Load)];
        if (ids.Length > 0)
        {
            parts.Add($"{HarnessName.List(ids)} {word}");
        }
    }

    private static string Opens(ShortResult result)
    {
        string currents = result is { Least: { } a, Greatest: { } b } ? $" at {Accept.Short(a)} A to {Accept.Short(b)} A" : "";
        string text = result.Openings.Count == 0 ? "it ends by itself" : $"{string.Join(", ", result.Openings)}{currents}";
        FaultedWire? hottest = result.Wires.Count > 0 ? result.Wires[0] : null;
        text += hottest is null ? "." : $"; {hottest}.";
        if (hottest is { IsTooHot: true })
        {
            text += $" Fit a larger wire {hottest.Wire}, or a fuse before it that opens sooner.";
        }

        if (result.WrongFuses.Count > 0)
        {
            string verb = result.SurelyWrong ? "opens before the nearest fuse" : "may open before the nearest fuse has";
            text += $" {HarnessName.List(result.WrongFuses)} {verb}{(result.LostLoads.Count > 0 ? $": {HarnessName.List(result.LostLoads)} would go dead with it" : "")}.";
        }

        return text;
    }

    private static string Stays(Harness harness, string place, ShortResult result)
    {
        string[] fuses = [.. result.Wires.Count == 0 ? [] : result.Openings.Select(o => o.ToString())];
        string before = fuses.Length > 0 ? $"{string.Join(", ", fuses)}, yet " : "";
        string amperes = result.Remaining is { } left ? $"up to {Accept.Short(left)} A" : "current";
        string through = result.Wires.Count > 0 ? $" through {HarnessName.List(result.Wires.Select(w => w.Wire))}" : "";
        string text = $"{before}{amperes} can keep flowing{through}";
        text += result.Wires.Count > 0 && result.Wires[0].IsTooHot ? $"; {result.Wires[0]}: danger of fire." : result.Wires.Count > 0 ? $"; {result.Wires[0]}." : ".";
        text += result.Reason.Length > 0 ? $" {result.Reason}" : "";
        if (harness.SourceArray.Any(s => s.Positive == place))
        {
            return $"{text} No fuse lies between this source and its own terminal: cover it and keep it clear of metal.";
        }

        return result.Holding is { } fuse
            ? $"{text} {Capital(fuse)} need not open at that current: fit a smaller one, or a larger wire so that more current flows."
            : $"{text} Fit a fuse where the current that stays comes from.";
    }

    private static string Capital(string word) => $"{char.ToUpperInvariant(word[0])}{word.Substring(1)}";
}
