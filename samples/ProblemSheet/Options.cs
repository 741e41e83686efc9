using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Samples.ProblemSheet;

/// <summary>The command line.</summary>
public sealed class Options
{
    public long Seed { get; private set; } = 1;

    public int Count { get; private set; } = 10;

    public IReadOnlyList<ProblemTopic> Topics { get; private set; } = [];

    /// <summary>Null: each difficulty in turn.</summary>
    public Difficulty? Difficulty { get; private set; } = Teaching.Difficulty.SeveralSteps;

    public ProblemUnits Units { get; private set; }

    /// <summary>Null: each form in turn.</summary>
    public ProblemForm? Form { get; private set; } = ProblemForm.Numeric;

    public string? Folder { get; private set; }

    public string? AnswersFile { get; private set; }

    public CultureInfo Culture { get; private set; } = CultureInfo.InvariantCulture;

    public static Options Parse(IReadOnlyList<string> args)
    {
        Options options = new();
        for (int i = 0; i < args.Count; i += 2)
        {
            string value = i + 1 < args.Count ? args[i + 1] : throw new UsageException($"{args[i]} needs a value.");
            options.Set(args[i], value);
        }

        return options;
    }

    private void Set(string name, string value)
    {
        switch (name)
        {
            case "--seed":
                Seed = long.TryParse(value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long seed)
                    ? seed : throw new UsageException($"--seed takes a whole number of at most 18 digits, not '{value}'.");
                break;
            case "--count":
                Count = int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= 1000
                    ? count : throw new UsageException($"--count takes a number from 1 to 1000, not '{value}'.");
                break;
            case "--topics":
                Topics = [.. value.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(word => Word<ProblemTopic>(name, word)!.Value)];
                break;
            case "--difficulty":
                Difficulty = Word<Difficulty>(name, value, "Mixed");
                break;
            case "--units":
                Units = Word<ProblemUnits>(name, value)!.Value;
                break;
            case "--form":
                Form = Word<ProblemForm>(name, value, "Mixed");
                break;
            case "--out":
                Folder = value;
                break;
            case "--grade":
                AnswersFile = value;
                break;
            case "--culture":
                Culture = CultureInfo.GetCultures(CultureTypes.AllCultures).FirstOrDefault(known => string.Equals(known.Name, value, StringComparison.OrdinalIgnoreCase))
                    ?? throw new UsageException($"--culture does not know '{value}'; de-DE is one.");
                break;
            default:
                throw new UsageException($"Unknown option {name}.");
        }
    }

    /// <summary>A value by its name, in any case and with or without hyphens; null for the word that stands for all in turn.</summary>
    private static T? Word<T>(string name, string value, string? forAll = null)
        where T : struct, Enum
    {
        string plain = value.Replace("-", "", StringComparison.Ordinal);
        if (plain.Equals(forAll, StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        string[] names = forAll is null ? Enum.GetNames<T>() : [.. Enum.GetNames<T>(), forAll];
        return Enum.GetValues<T>().Cast<T?>().FirstOrDefault(known => plain.Equals(known.ToString(), StringComparison.OrdinalIgnoreCase))
            ?? throw new UsageException($"{name} does not know '{value}'. It takes {string.Join(", ", names)}.");
    }
}

/// <summary>The command line cannot be understood.</summary>
public sealed class UsageException(string problem) : Exception(problem + " Try --help.");
