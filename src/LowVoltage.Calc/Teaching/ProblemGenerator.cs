namespace LowVoltage.Calc.Teaching;

/// <summary>Makes problems from a number: the same number gives the same problem, on every platform.</summary>
/// <remarks>
/// <para>Every draw is integer arithmetic (SplitMix64) on decimal grids; the answer is worked out from the values as they are printed, through the public calculations
/// of this library. A draw that is not plausible, or whose mistakes cannot be told apart, is thrown away and the next one taken from the same stream.</para>
/// <para>The form (number, choice, find the mistake) does not change the numbers. What a seed gives may change with the version of the library; a change is noted in the changelog.</para>
/// </remarks>
public static class ProblemGenerator
{
    // Far more than any recipe needs; the tests count how many are used.
    internal const int MostAttempts = 5000;

    private const int WrongAnswerCount = 3;

    /// <summary>A problem in metric units that asks for a number.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="topic">What it is about.</param>
    /// <param name="difficulty">How much it asks for.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An enum is none of its values.</exception>
    public static Problem Create(long seed, ProblemTopic topic, Difficulty difficulty) =>
        Create(seed, topic, difficulty, ProblemUnits.Metric, ProblemForm.Numeric);

    /// <summary>A problem that asks for a number.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="topic">What it is about.</param>
    /// <param name="difficulty">How much it asks for.</param>
    /// <param name="units">The units it uses.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An enum is none of its values.</exception>
    public static Problem Create(long seed, ProblemTopic topic, Difficulty difficulty, ProblemUnits units) =>
        Create(seed, topic, difficulty, units, ProblemForm.Numeric);

    /// <summary>A problem in a world that is drawn.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="topic">What it is about.</param>
    /// <param name="difficulty">How much it asks for.</param>
    /// <param name="units">The units it uses.</param>
    /// <param name="form">How it is to be answered.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An enum is none of its values.</exception>
    public static Problem Create(long seed, ProblemTopic topic, Difficulty difficulty, ProblemUnits units, ProblemForm form) =>
        Create(new ProblemRequest(seed, Known(topic), Known(difficulty), Known(units), Known(form), null));

    /// <summary>A problem in a world of choice.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="topic">What it is about.</param>
    /// <param name="difficulty">How much it asks for.</param>
    /// <param name="units">The units it uses.</param>
    /// <param name="form">How it is to be answered.</param>
    /// <param name="setting">The world that it plays in.</param>
    /// <returns>The problem.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An enum is none of its values.</exception>
    public static Problem Create(long seed, ProblemTopic topic, Difficulty difficulty, ProblemUnits units, ProblemForm form, ProblemSetting setting) =>
        Create(new ProblemRequest(seed, Known(topic), Known(difficulty), Known(units), Known(form), Known(setting)));

    internal static Problem Create(ProblemRequest request) => Create(request, out _);

    internal static Problem Create(ProblemRequest request, out int attempts)
    {
        DeterministicRandom random = new(DeterministicRandom.Mix(
            unchecked((ulong)request.Seed), (ulong)request.Topic, (ulong)request.Difficulty, (ulong)request.Units));
        Func<ProblemDraft, bool> recipe = ProblemRecipes.For(request.Topic, request.Difficulty);
        for (attempts = 1; attempts <= MostAttempts; attempts++)
        {
            ProblemDraft draft = new(request, random);
            if (recipe(draft) && Wrongs(draft) is { } wrongs)
            {
                return new Problem(request, draft, wrongs, Choices(request, draft, wrongs));
            }
        }

        throw new InvalidOperationException($"No plausible problem was found for seed {request.Seed}, {request.Topic}, {request.Difficulty}, {request.Units}.");
    }

    // Three of the possible mistakes, in an order that is drawn, all of them apart from the right answer and from each other.
    private static List<WrongAnswer>? Wrongs(ProblemDraft draft)
    {
        ProblemAnswer answer = draft.Answer;
        AnswerMeasure measure = new(answer);
        List<WrongAnswer> chosen = [];
        foreach ((Mistake mistake, double value) in draft.Random.Shuffle(draft.Wrongs))
        {
            if (IsUsable(value) && measure.AreApart(value, answer.Value) && chosen.TrueForAll(other => other.Mistake != mistake && measure.AreApart(value, other.Value)))
            {
                chosen.Add(new WrongAnswer(mistake, value, answer.Unit, answer.SignificantFigures));
            }
        }

        return chosen.Count < WrongAnswerCount ? null : chosen.GetRange(0, WrongAnswerCount);
    }

    /// <summary>Every mistake of a draft that gives a number apart from the right one.</summary>
    internal static IReadOnlyList<WrongAnswer> KnownMistakes(ProblemDraft draft)
    {
        ProblemAnswer answer = draft.Answer;
        AnswerMeasure measure = new(answer);
        return Array.AsReadOnly<WrongAnswer>([.. draft.Wrongs
            .Where(wrong => IsUsable(wrong.Value) && measure.AreApart(wrong.Value, answer.Value))
            .Distinct()
            .Select(wrong => new WrongAnswer(wrong.Mistake, wrong.Value, answer.Unit, answer.SignificantFigures))]);
    }

    private static bool IsUsable(double value) => !double.IsNaN(value) && Math.Abs(value) is > 1e-9 and < 1e9;

    private static List<ProblemChoice> Choices(ProblemRequest request, ProblemDraft draft, List<WrongAnswer> wrongs)
    {
        // Drawn for every form, so that a form that is added later changes nothing here.
        List<int> order = draft.Random.Shuffle(Enumerable.Range(0, WrongAnswerCount + 1));
        return request.Form switch
        {
            ProblemForm.Numeric => [],
            ProblemForm.MultipleChoice => [.. order.Select((which, place) => which == 0
                ? new ProblemChoice(Letter(place), draft.Answer.Text, true, null)
                : new ProblemChoice(Letter(place), wrongs[which - 1].Text, false, wrongs[which - 1].Mistake))],
            _ => [.. order.Select((which, place) => which == WrongAnswerCount
                ? new ProblemChoice(Letter(place), "none: the answer is right", false, null)
                : new ProblemChoice(Letter(place), wrongs[which].Mistake.Name, which == 0, wrongs[which].Mistake))],
        };
    }

    private static char Letter(int place) => (char)('A' + place);

    private static ProblemTopic Known(ProblemTopic topic) => topic is >= ProblemTopic.OhmsLaw and <= ProblemTopic.LampVoltage ? topic : throw Unknown(nameof(topic), topic);

    private static Difficulty Known(Difficulty difficulty) =>
        difficulty is >= Difficulty.OneStep and <= Difficulty.Design ? difficulty : throw Unknown(nameof(difficulty), difficulty);

    private static ProblemUnits Known(ProblemUnits units) => units is >= ProblemUnits.Metric and <= ProblemUnits.Mixed ? units : throw Unknown(nameof(units), units);

    private static ProblemForm Known(ProblemForm form) => form is >= ProblemForm.Numeric and <= ProblemForm.FindTheMistake ? form : throw Unknown(nameof(form), form);

    private static ProblemSetting Known(ProblemSetting setting) =>
        setting is >= ProblemSetting.Van and <= ProblemSetting.FoodWagon ? setting : throw Unknown(nameof(setting), setting);

    private static ArgumentOutOfRangeException Unknown(string name, object value) => new(name, value, $"{name} must be one of its named values; it was {value}.");
}
