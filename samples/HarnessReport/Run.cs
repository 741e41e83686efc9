using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Harnesses;
using Spectre.Console;

namespace HarnessReport;

/// <summary>One run: read, size, verify, break, print, write.</summary>
internal sealed class Run(Options options, TextWriter output, TextWriter error, IAnsiConsole? terminal, CancellationToken stop)
{
    private const int Seed = 1;

    private static Tolerances Batch { get; } = Tolerances.None.WithSupply(Ratio.FromPercent(2)).WithLengths(Ratio.FromPercent(5)).WithResistances(Ratio.FromPercent(3)).WithJoints(Ratio.FromPercent(50))
        .WithLoads(Ratio.FromPercent(10)).WithAmbient(TemperatureDelta.FromKelvins(5));

    public int Go()
    {
        Harness harness = HarnessFile.Read(options.InputPath);
        Report report = new(output);
        HarnessVerification verified;
        HarnessDesign? design;
        try
        {
            design = Sized(harness, report);
            verified = design?.Verification ?? HarnessDesigner.Verify(harness, stop);
        }
        catch (Exception refused) when (refused is InvalidOperationException or ArgumentException)
        {
            error.WriteLine(refused is InvalidOperationException ? $"{refused.Message} Try --size." : refused.Message);
            return Program.BadInput;
        }

        Harness sized = verified.Harness;
        report.Verdict(verified, options.InputPath == Options.ShippedScenario);
        report.Loads(verified);
        report.Wires(verified);
        report.Fuses(verified);
        report.Problems(verified);
        FaultAudit? audit = options.Faults ? Slow("breaking the harness", progress => FaultAudit.Run(sized, null, progress, stop)) : null;
        report.Faults(audit);
        if (options.Samples > 0)
        {
            report.Batch(sized, Slow("sampling", progress => ToleranceSample.OfHarness(sized, Batch, options.Samples, Seed, progress: progress, cancellation: stop)));
        }

        report.Totals(verified);
        Write(verified, design, audit);
        return verified.Verdict switch { LowVoltage.Calc.Checks.Verdict.Pass => Program.AllPass, LowVoltage.Calc.Checks.Verdict.Fail => Program.SomethingFails, _ => Program.SomethingUndetermined };
    }

    private HarnessDesign? Sized(Harness harness, Report report)
    {
        if (!options.Size)
        {
            return null;
        }

        Harness asked = options.SizeAll ? Bare(harness) : harness;
        HarnessDesign design = Slow("sizing", _ => HarnessDesigner.Design(asked, null, stop));
        report.Sizing(design, options.SizeAll ? harness : null);
        return design;
    }

    private static Harness Bare(Harness harness)
    {
        HarnessBuilder builder = harness.ToBuilder();
        foreach (HarnessBranch branch in harness.Branches)
        {
            _ = branch switch
            {
                HarnessWire wire => builder.Replace(wire.WithConductor(null)),

                // A fuse of a series of its own, such as a main fuse, is not the rules' to choose.
                HarnessFuse fuse when fuse.Rating is null || ReferenceEquals(fuse.Rating.Series, harness.Rules.Fuses) || fuse.Rating.Series.Name == harness.Rules.Fuses.Name => builder.Replace(fuse.WithRating(null)),
                _ => builder,
            };
        }

        return builder.Build();
    }

    // Progress is for a person who waits: on the error stream, and only where that is a terminal.
    private T Slow<T>(string what, Func<IProgress<double>?, T> work)
    {
        if (terminal is null)
        {
            return work(null);
        }

        T? result = default;
        terminal.Progress().AutoClear(true).Start(context =>
        {
            ProgressTask task = context.AddTask(what, maxValue: 1);
            task.IsIndeterminate = true;
            result = work(new Told(share =>
            {
                task.IsIndeterminate = false;
                task.Value = share;
            }));
        });
        return result!;
    }

    private void Write(HarnessVerification verified, HarnessDesign? design, FaultAudit? audit)
    {
        if (options.SvgPath is { } svg)
        {
            HarnessSolution at = verified.Harness.Solve(SupplyLevel.Minimum, verified.Harness.LoadCases[0]);
            File.WriteAllText(svg, HarnessDrawing.Svg(at, DrawingColour.Temperature, verified.Failed.SelectMany(c => new[] { c.Place, c.Wire ?? c.Place })));
        }

        if (options.JsonPath is { } json)
        {
            File.WriteAllText(json, HarnessDocument.Create(verified.Harness).Write());
            if (design is not null)
            {
                File.WriteAllText(Path.ChangeExtension(json, ".sizing.json"), HarnessDesignDocument.Create(design).Write());
            }

            if (audit is not null)
            {
                File.WriteAllText(Path.ChangeExtension(json, ".faults.json"), FaultAuditDocument.Create(audit).Write());
            }
        }

        if (options.CsvFolder is { } folder)
        {
            ResultTables.Write(folder, verified, audit);
        }
    }

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
