using System.Globalization;
using LowVoltage.Calc.Heating;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>The story of one short circuit: what flows, how hot the wire gets, and whether the fuse ends it in time.</summary>
internal static class Story
{
    private const int Width = 100;
    private const double SettledKelvins = 0.05;

    private static readonly double[] Fast = [0, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];
    private static readonly double[] Slow = [0, 1, 2, 5, 10, 20, 60, 120, 300, 600, 1200, 1800, 3600];

    internal static Meaning Tell(Scene scene, TextWriter output)
    {
        output.WriteLine(Scene.Caution);
        output.WriteLine();
        output.WriteLine($"{scene.Wire}, {Given(scene.Length.Meters)} m in the loop, starting at {Given(scene.Initial.DegreesCelsius)} °C in still air");
        output.WriteLine($"{Given(scene.Path.Voltage.Volts)} V behind {Given(scene.Path.FixedResistance.Milliohms)} mΩ, {scene.Fuse}");
        output.WriteLine($"Prospective current {Text(scene.Path.ProspectiveCurrent.Amperes)} A");
        output.WriteLine();
        output.WriteLine(scene.Ending.Lasts
            ? "If nothing opened, heat leaving to the air:"
            : "If nothing opened, all heat kept in the wire, which makes it hotter than it really gets:");
        WriteTable(scene, output);
        Answer[] answers = Answer.All(scene);
        foreach (Answer answer in answers)
        {
            output.WriteLine();
            output.WriteLine($"{answer.Question} {answer.Word}");
            Write(new Padder(new Text(answer.Sentence), new Padding(2, 0, 0, 0)), output);
        }

        output.WriteLine();
        Meaning worst = Answer.Worst(answers);
        output.WriteLine("Verdict: " + worst switch { Meaning.Protected => "protected", Meaning.NotProtected => "NOT PROTECTED", _ => "undetermined: not a pass" });
        return worst;
    }

    private static void WriteTable(Scene scene, TextWriter output)
    {
        bool slow = scene.Ending.Lasts;
        Table table = new Table { Border = TableBorder.None }.AddColumns(
            Right(slow ? "time, s" : "time, ms"), Right("current, A"), Right("let-through, A²s"), Right("conductor, °C", last: true));
        FaultState? molten = null;
        foreach (double seconds in slow ? Slow : Fast)
        {
            FaultState state = scene.StateAfter(Duration.FromSeconds(seconds));
            if (state.IsMelting)
            {
                molten = state;
                break;
            }

            table.AddRow(
                Text(slow ? seconds : seconds * 1000),
                Three(state.Current.Amperes),
                Three(state.LetThrough.AmpereSquaredSeconds),
                state.HottestTemperature.DegreesCelsius.ToString("0", CultureInfo.InvariantCulture));
            if (IsSettled(scene, state))
            {
                break;
            }
        }

        Write(new Padder(table, new Padding(2, 0, 0, 0)), output);
        if (molten is not null)
        {
            output.WriteLine($"The wire melts after {Text(molten.Time.Seconds)} s.");
        }
        else if (slow)
        {
            output.WriteLine("Then it stays as it is.");
        }
    }

    private static bool IsSettled(Scene scene, FaultState state) =>
        scene.Ending.Lasts && scene.Cooled.SteadyTemperature is { } steady && Math.Abs(steady.DegreesCelsius - state.HottestTemperature.DegreesCelsius) < SettledKelvins;

    private static TableColumn Right(string title, bool last = false) =>
        new(new Text(title)) { Alignment = Justify.Right, NoWrap = true, Padding = new Padding(0, 0, last ? 0 : 3, 0) };

    // Plain, the same wherever it goes, without the blanks that fill up lines.
    private static void Write(Renderable text, TextWriter output)
    {
        using StringWriter plain = new();
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors, Interactive = InteractionSupport.No, Out = new AnsiConsoleOutput(plain),
        });
        console.Profile.Width = Width;
        console.Write(text);
        foreach (string line in plain.ToString().TrimEnd().Split('\n'))
        {
            output.WriteLine(line.TrimEnd());
        }
    }

    private static string Three(double value) =>
        value.ToString(value switch { 0 or >= 100 => "0", >= 10 => "0.0", _ => "0.00" }, CultureInfo.InvariantCulture);

    // What was asked, with every digit.
    private static string Given(double value) => value.ToString("0.###############", CultureInfo.InvariantCulture);

    /// <summary>A result: four figures, and all of a whole number.</summary>
    internal static string Text(double value) => value.ToString(Math.Abs(value) >= 1000 ? "0" : "G4", CultureInfo.InvariantCulture);
}
