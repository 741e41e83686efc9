using System.Globalization;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>What the answer to a question means for the wire.</summary>
internal enum Meaning
{
    Undetermined,
    Protected,
    NotProtected,
}

/// <summary>One question about the short circuit, answered in a sentence.</summary>
internal sealed record Answer(string Question, Meaning Meaning, string Sentence)
{
    /// <summary>The answer in one word.</summary>
    internal string Word => Meaning switch { Meaning.Protected => "Yes.", Meaning.NotProtected => "NO.", _ => "Undetermined." };

    internal static Answer[] All(Scene scene) => [Opens(scene), Wire(scene), Breaks(scene), Voltage(scene)];

    /// <summary>The worst of all: one no is a no, and what is not known is no yes.</summary>
    internal static Meaning Worst(IReadOnlyCollection<Answer> answers) =>
        answers.Any(answer => answer.Meaning == Meaning.NotProtected) ? Meaning.NotProtected
        : answers.All(answer => answer.Meaning == Meaning.Protected) ? Meaning.Protected
        : Meaning.Undetermined;

    private static Answer Opens(Scene scene)
    {
        const string Question = "Does the fuse open?";
        Ending ending = scene.Ending;
        string soonest = ending.Soonest is { } least ? $"no sooner than after {Seconds(least)} and " : "";
        if (!ending.IsKnown)
        {
            return new Answer(Question, Meaning.Undetermined, $"No operating times are published for the {scene.Fuse}.");
        }

        if (ending.Latest is not { } latest)
        {
            return new Answer(Question, Meaning.NotProtected, ending.Melts ? Melting(scene) : Lasting(scene));
        }

        FaultState state = scene.StateAfter(latest);
        return new Answer(
            Question,
            state.IsMelting ? Meaning.NotProtected : Meaning.Protected,
            state.IsMelting ? Melting(scene) : $"It opens {soonest}no later than after {Seconds(latest)}; then the wire is at {Celsius(state.HottestTemperature)}.");
    }

    private static string Melting(Scene scene)
    {
        FaultState end = scene.StateAfter(scene.Ending.Lasts ? Duration.FromHours(1000) : AdiabaticHeating.LongestDuration);
        return $"Not in time: the wire can melt, after {Seconds(end.Time)}, before the fuse has opened for sure.";
    }

    private static string Lasting(Scene scene)
    {
        string fusing = $"the {Amperes(scene.Fuse.Curve!.FusingCurrent)} at which it must";
        string why = scene.Path.ProspectiveCurrent < scene.Fuse.Curve.FusingCurrent
            ? $"{Amperes(scene.Path.ProspectiveCurrent)} is less than {fusing}"
            : $"as the wire warms, the current falls to {Amperes(scene.Ending.SettledCurrent!.Value)}, less than {fusing}";
        return $"It need not: {why}. The short circuit can stay: the wire settles with {Amperes(scene.Ending.SettledCurrent!.Value)} at {Celsius(scene.Cooled.SteadyTemperature!.Value)} "
            + $"(continuous limit of its insulation {Celsius(scene.Wire.Insulation.ContinuousLimit)}), and the place of the fault gets hot too.";
    }

    private static Answer Wire(Scene scene) => new(
        "Does the fuse protect the wire at every current up to this one?",
        scene.Protection.Verdict switch
        {
            ProtectionVerdict.Protected => Meaning.Protected,
            ProtectionVerdict.NotProtected => Meaning.NotProtected,
            _ => Meaning.Undetermined,
        },
        scene.Protection.Reason);

    private static Answer Breaks(Scene scene) =>
        Of("Can the fuse break this current?", FuseRatingChecks.BreakingCapacity(scene.Fuse, scene.Path.ProspectiveCurrent));

    private static Answer Voltage(Scene scene) => Of("Is the fuse made for this voltage?", FuseRatingChecks.Voltage(scene.Fuse, scene.Path.Voltage));

    private static Answer Of(string question, RatingCheck check) => new(
        question,
        check.Verdict switch
        {
            RatingVerdict.Within => Meaning.Protected,
            RatingVerdict.Exceeded => Meaning.NotProtected,
            _ => Meaning.Undetermined,
        },
        check.Reason);

    private static string Seconds(Duration time) => time.Seconds < 1 ? $"{Figures(time.Milliseconds)} ms" : $"{Figures(time.Seconds)} s";

    private static string Amperes(ElectricCurrent current) => $"{Story.Text(current.Amperes)} A";

    private static string Celsius(Temperature temperature) => $"{temperature.DegreesCelsius.ToString("0", CultureInfo.InvariantCulture)} °C";

    private static string Figures(double value) => value.ToString(Math.Abs(value) >= 1000 ? "0" : "G3", CultureInfo.InvariantCulture);
}
