using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace LowVoltage.Calc.Samples.ProblemSheet;

/// <summary>Options whose values are words or numbers, and what is said when they are not.</summary>
internal static class Words
{
    /// <summary>A value by its name, in any case and with or without hyphens; without one for the word that stands for all in turn.</summary>
    internal static Option<Choice<T>> One<T>(string name, string helpName, string description, string whenAbsent, string? forAll = null, params (string Word, T Value)[] aliases)
        where T : struct, Enum => new(name)
    {
        HelpName = helpName,
        Description = description,
        DefaultValueFactory = result => Read(result, name, forAll, aliases, whenAbsent),
        CustomParser = result => Read(result, name, forAll, aliases, Text(result)),
    };

    /// <summary>Values by their names, with commas between.</summary>
    internal static Option<T[]> Several<T>(string name, string helpName, string description)
        where T : struct, Enum => new(name)
    {
        HelpName = helpName,
        Description = description,
        DefaultValueFactory = _ => [],
        CustomParser = result =>
            [.. Text(result).Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(word => Read<T>(result, name, null, [], word).Value ?? default)],
    };

    /// <summary>A whole number between two bounds.</summary>
    internal static Option<long> Number(string name, string helpName, string description, long? whenAbsent, long least, long most) => new(name)
    {
        HelpName = helpName,
        Description = description,
        DefaultValueFactory = whenAbsent is { } absent ? _ => absent : null,
        CustomParser = result =>
        {
            if (!long.TryParse(Text(result), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long number) || number < least || number > most)
            {
                result.AddError($"{name} takes a whole number from {least} to {most}, not '{Text(result)}'.");
            }

            return number;
        },
    };

    internal static Option<string?> File(string name, string helpName, string description) => new(name) { HelpName = helpName, Description = description };

    internal static Option<bool> Flag(string name, string description) => new(name) { Description = description };

    internal static string Text(ArgumentResult result) => result.Tokens.Count > 0 ? result.Tokens[0].Value : "";

    private static Choice<T> Read<T>(ArgumentResult result, string name, string? forAll, (string Word, T Value)[] aliases, string word)
        where T : struct, Enum
    {
        string plain = word.Replace("-", "", StringComparison.Ordinal);
        if (plain.Equals(forAll, StringComparison.OrdinalIgnoreCase))
        {
            return new Choice<T>(null, word);
        }

        foreach ((string alias, T value) in aliases.Concat(Enum.GetValues<T>().Select(known => (known.ToString(), known))))
        {
            if (plain.Equals(alias, StringComparison.OrdinalIgnoreCase))
            {
                return new Choice<T>(value, alias);
            }
        }

        string[] names = aliases.Length > 0 ? [.. aliases.Select(alias => alias.Word)] : Enum.GetNames<T>();
        result.AddError($"{name} does not know '{word}'. It takes {string.Join(", ", forAll is null ? names : [.. names, forAll])}.");
        return new Choice<T>(null, word);
    }
}

/// <summary>What a word stands for; nothing for the word that stands for all in turn.</summary>
internal sealed record Choice<T>(T? Value, string Word)
    where T : struct
{
    public override string ToString() => Word;
}
