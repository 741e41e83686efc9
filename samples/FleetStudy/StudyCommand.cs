using System.CommandLine;
using System.Globalization;
using System.Net;
using LowVoltage.Calc.Samples;

namespace FleetStudy;

/// <summary>The command line.</summary>
internal static class StudyCommand
{
    private const string Join = "join";

    public static RootCommand Create(Func<Options, CancellationToken, Task<int>> run)
    {
        Argument<string> study = new("STUDY")
        {
            Description = $"harness: an invented maker's harness in {HarnessFleet.Count} variants; sheets: a problem sheet for each pupil of a district; join: take part in what is asked on another machine",
            DefaultValueFactory = _ => "harness",
        };
        study.Validators.Add(result =>
        {
            string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "harness";
            if (text != Join && !Study.All.Any(s => s.Name == text))
            {
                result.AddError(text is ['-', ..] ? $"Unknown option {text}." : $"STUDY must be harness, sheets or join; it was '{text}'.");
            }
        });
        Option<long> variants = CommandLine.WholeNumber("--variants", "How many variants; 20000 of the harness, 10000 sheets if left out (0)", 0, 2_000_000_000, 0);
        Option<bool> every = new("--all") { Description = "Every variant there is" };
        Option<long> seed = CommandLine.WholeNumber("--seed", "The draws to make, the sheets to write", 0, 1_000_000, 1);
        Option<long> draws = CommandLine.WholeNumber("--draws", "How many pieces of each variant are drawn within the tolerances of its parts", 0, 1000, 2);
        Option<bool> faults = new("--faults") { Description = "Break each variant of the harness in every place, one at a time" };
        Option<long> piece = CommandLine.WholeNumber("--piece", "How many variants make a piece of work; chosen if left out (0)", 0, 100_000, 0);
        Option<string?> pages = new("--pages") { Description = "Write each sheet and its key as pages to print into this folder; on several machines one that they share", HelpName = "DIR" };
        Option<string> file = new("--file") { Description = "The SQLite file that keeps progress and results", HelpName = "FILE", DefaultValueFactory = _ => "fleet-study.db" };
        Option<long> silos = CommandLine.WholeNumber("--silos", "How many processes on this machine share the work", 1, 16, 1);
        Option<string?> postgres = new("--postgres") { Description = "Keep everything in this PostgreSQL database instead; silos on several machines share it", HelpName = "CONNECTION" };
        Option<string?> redis = new("--redis") { Description = "Keep everything in this Redis server instead; silos on several machines share it", HelpName = "CONNECTION" };
        Option<string> cluster = new("--cluster") { Description = "With --postgres or --redis: silos of the same name work together", HelpName = "NAME", DefaultValueFactory = _ => "fleet-study" };
        Option<string> address = new("--address") { Description = "With --postgres or --redis: the address under which other machines reach this one", HelpName = "IP", DefaultValueFactory = _ => "127.0.0.1" };
        Option<bool> plain = new("--plain") { Description = "The same with Parallel.For, in memory, without a cluster: to compare" };
        Option<long?> show = new("--show") { Description = "Show one variant instead: its options, what fails and why", HelpName = "VARIANT", CustomParser = ReadShow };
        RootCommand command = CommandLine.Create("Studies more variants than a person can: on all cores, in several processes, on several machines; stopped and started at will.", MoreHelp);
        command.Arguments.Add(study);
        foreach (Option option in new Option[] { variants, every, seed, draws, faults, piece, pages, file, silos, postgres, redis, cluster, address, plain, show })
        {
            command.Options.Add(option);
        }

        command.SetAction((parsed, stop) =>
        {
            string name = parsed.GetValue(study)!;
            bool joins = name == Join;
            Study asked = Study.Named(joins ? "harness" : name);
            Database database = OneOf(parsed.GetValue(file)!, parsed.GetValue(postgres), parsed.GetValue(redis), parsed.GetResult(file) is { Implicit: false });
            if (joins && database.Kind == DatabaseKind.Sqlite)
            {
                throw new UsageException("join needs --postgres or --redis: a file is for one machine.");
            }

            if (!IPAddress.TryParse(parsed.GetValue(address), out _))
            {
                throw new UsageException($"--address must be an IP address, such as 10.0.0.5; it was '{parsed.GetValue(address)}'.");
            }

            if (parsed.GetValue(pages) is not null && asked is not SheetStudy)
            {
                throw new UsageException($"--pages '{parsed.GetValue(pages)}' is for the study sheets; the study was {asked.Name}.");
            }

            if (parsed.GetValue(faults) && asked is not HarnessStudy)
            {
                throw new UsageException($"--faults is for the study harness; the study was {asked.Name}.");
            }

            if (parsed.GetValue(show) is { } number && number >= asked.Total)
            {
                throw new UsageException(Accepted("--show", "number of a variant", 0, asked.Total - 1, number));
            }

            return run(
                new Options
                {
                    Spec = Spec(asked, parsed.GetValue(every) ? asked.Total : parsed.GetValue(variants), (int)parsed.GetValue(piece), new StudySpec
                    {
                        Study = asked.Name,
                        Variants = 0,
                        PieceSize = 0,
                        Seed = parsed.GetValue(seed),
                        Draws = asked is HarnessStudy ? (int)parsed.GetValue(draws) : 0,
                        Faults = parsed.GetValue(faults),
                        PagesFolder = parsed.GetValue(pages) is { } folder ? Path.GetFullPath(folder) : null,
                        Build = StudySpec.ThisBuild,
                    }),
                    Database = database,
                    Silos = (int)parsed.GetValue(silos),
                    Cluster = parsed.GetValue(cluster)!,
                    Address = parsed.GetValue(address)!,
                    IsPlain = parsed.GetValue(plain),
                    Joins = joins,
                    Show = parsed.GetValue(show),
                },
                stop);
        });
        return command;
    }

    private static StudySpec Spec(Study asked, long variants, int piece, StudySpec rest)
    {
        long many = variants == 0 ? asked.Usual : variants;
        return many > asked.Total
            ? throw new UsageException(Accepted("--variants", "whole number", 1, asked.Total, many))
            : rest with { Variants = many, PieceSize = piece == 0 ? asked.UsualPiece : piece };
    }

    private static Database OneOf(string file, string? postgres, string? redis, bool fileIsGiven) => (postgres, redis, fileIsGiven) switch
    {
        (not null, not null, _) => throw new UsageException("Give --postgres or --redis, not both."),
        (not null, _, true) or (_, not null, true) => throw new UsageException($"--file '{file}' is for one machine: leave it out with --postgres or --redis."),
        (not null, _, _) => new Database(DatabaseKind.Postgres, postgres),
        (_, not null, _) => new Database(DatabaseKind.Redis, redis),
        _ => new Database(DatabaseKind.Sqlite, Path.GetFullPath(file.Length > 0 ? file : throw new UsageException("--file needs the name of a file; it was ''."))),
    };

    private static long? ReadShow(System.CommandLine.Parsing.ArgumentResult result)
    {
        string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (!long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number))
        {
            result.AddError($"--show must be the number of a variant, from 0; it was '{text}'.");
        }

        return number;
    }

    private static string Accepted(string option, string what, long least, long most, long value) => string.Create(CultureInfo.InvariantCulture, $"{option} must be a {what} from {least} to {most}; it was '{value}'.");

    private static void MoreHelp(TextWriter output) => output.WriteLine("""
        A study that was stopped, or whose machine went down, goes on where it was when it is asked for again with
        the same options and the same file (or database); one that is finished is printed at once.

        Exit codes: 0 all pass, 1 something fails, 2 bad input, 3 something is undetermined or could not be studied,
        4 the study could not be finished (what is done is kept), 130 stopped (what is done is kept).

        The fleet is invented. A calculation does not replace measuring the installed wiring. Follow the local code
        and the manufacturers' instructions, and leave work that the law reserves for licensed persons to them.
        """);
}
