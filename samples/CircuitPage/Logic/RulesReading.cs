using LowVoltage.Calc;
using LowVoltage.Calc.Conductors;

namespace CircuitPage;

/// <summary>The practice, with the wires and fuses that are in stock instead of its own where they are stated.</summary>
internal sealed class RulesReading
{
    private static readonly char[] Between = [',', ';'];

    private RulesReading(DesignRules? rules) => Rules = rules;

    public DesignRules? Rules { get; }

    public static RulesReading Of(PageState state, DesignRules? practice, Action<string, string> report)
    {
        if (practice is null)
        {
            return new RulesReading(null);
        }

        DesignRules rules = practice;
        if (state.Choice("wires") is var wires && wires != RulesFields.OfPractice)
        {
            rules = rules.WithConductors(Stock.Wire(wires));
        }

        if (state.Text("sizes").Trim() is { Length: > 0 } sizes)
        {
            rules = Only(rules, sizes, report);
        }

        return new RulesReading(state.Choice("fuses") is var fuses && fuses != RulesFields.OfPractice ? rules.WithFuses(Stock.Fuse(fuses)) : rules);
    }

    private static DesignRules Only(DesignRules rules, string text, Action<string, string> report)
    {
        List<ConductorSize> kept = [];
        foreach (string word in text.Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (Find(rules, word)?.Size is { } size)
            {
                kept.Add(size);
            }
            else
            {
                report("sizes", $"{Unknown(rules, word)} Write a decimal point, and a comma or semicolon between sizes.");
                return rules;
            }
        }

        return kept.Count == 0 ? rules : rules.WithConductors(rules.Conductors.Only($"{rules.Conductors.Name}, sizes in stock", [.. kept]));
    }

    /// <summary>The wire that a person means by a size; null where the series has none.</summary>
    internal static Conductor? Find(DesignRules rules, string word) => rules.Conductors.Conductors.FirstOrDefault(wire => Means(wire, word));

    internal static string Unknown(DesignRules rules, string word) =>
        $"'{word}' is not a size of {rules.Conductors.Name}: {string.Join("; ", rules.Conductors.Conductors.Select(wire => wire.Size?.ToString()))}.";

    // With its unit or without: 2.5 mm², 2.5; 1/0 AWG, 1/0; size 22, 22.
    private static bool Means(Conductor wire, string word)
    {
        string name = wire.Size?.ToString() ?? "", given = word.Replace("mm2", "mm²", StringComparison.OrdinalIgnoreCase);
        return Same(name, given) || name.Split(' ').Any(part => part.Length > 0 && char.IsAsciiDigit(part[0]) && Same(part, given));
    }

    private static bool Same(string one, string other) =>
        string.Equals(one.Replace(" ", "", StringComparison.Ordinal), other.Replace(" ", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
}
