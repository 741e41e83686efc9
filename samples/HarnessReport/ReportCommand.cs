using System.CommandLine;
using LowVoltage.Calc.Samples;

namespace HarnessReport;

/// <summary>The command line: a harness, and what is asked of it.</summary>
internal static class ReportCommand
{
    public static RootCommand Create(Func<Options, CancellationToken, int> run)
    {
        Argument<string?> file = new("FILE")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "A harness as a JSON document, or a folder with its CSV tables; the invented scenario that ships with the program if left out",
        };
        file.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && result.Tokens[0].Value is ['-', ..] text)
            {
                result.AddError($"Unknown option {text}.");
            }
        });
        Option<bool> size = new("--size") { Description = "Size the wires without a conductor and the fuses without a rating for the least copper" };
        Option<bool> sizeAll = new("--size-all") { Description = "Size every wire and every fuse anew, whatever the file says" };
        Option<bool> faults = new("--faults") { Description = "Break the harness in every place, one at a time, and tell the ten worst" };
        Option<long> samples = CommandLine.WholeNumber("--tolerance", "Sample so many harnesses of a batch: supply ±2 %, lengths ±5 %, resistances ±3 %, joints ±50 %, loads ±10 %, air ±5 K", 1, 1_000_000, 0);
        Option<string?> svg = CommandLine.OutputFile("--svg", "Write a drawing for any browser", ".svg");
        Option<string?> json = CommandLine.OutputFile("--json", "Write the harness, sized, as a JSON document; beside it the same name with .sizing.json (--size) and .faults.json (--faults)", ".json");
        Option<string?> csv = new("--csv") { Description = "Write the tables of the report as CSV files into a folder", HelpName = "DIR" };
        RootCommand command = CommandLine.Create("Checks a whole wiring harness (extra-low-voltage DC, up to 60 V) and reports what was found.", MoreHelp);
        command.Arguments.Add(file);
        foreach (Option option in new Option[] { size, sizeAll, faults, samples, svg, json, csv })
        {
            command.Options.Add(option);
        }

        command.SetAction((parsed, stop) => Task.Run(() => run(
            new Options
            {
                InputPath = parsed.GetValue(file) ?? Options.ShippedScenario,
                Size = parsed.GetValue(size) || parsed.GetValue(sizeAll),
                SizeAll = parsed.GetValue(sizeAll),
                Faults = parsed.GetValue(faults),
                Samples = (int)parsed.GetValue(samples),
                SvgPath = parsed.GetValue(svg),
                JsonPath = parsed.GetValue(json),
                CsvFolder = parsed.GetValue(csv),
            },
            stop), CancellationToken.None));
        return command;
    }

    private static void MoreHelp(TextWriter output) => output.WriteLine("""
        The JSON document is described in the docs, page "Documents". The same as CSV tables in a folder:
          harness.csv    member, value                  rules, place.ambient_C, insulation, name, ...
          nodes.csv      id, kind
          sources.csv    id, positive, negative, source.kind, source.cold_cranking_A, ...
          branches.csv   kind, id, from, to, conductor, length_m, rating_A, resistance_ohm, ...
          loads.csv      id, positive, negative, load.kind, load.power_W, ...
          cases.csv      name, off, starting, closed, open      (names separated by ;)
        A column is a member of the document, inner members after a point; an empty cell leaves it out.

        Exit codes: 0 all pass, 1 something fails, 2 bad input, 3 something is undetermined, 130 stopped.

        A calculation does not replace measuring the installed wiring. Follow the local code and the
        manufacturers' instructions, and leave work that the law reserves for licensed persons to them.
        """);
}
