using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Harnesses;

namespace FleetStudy;

/// <summary>Which variants of the maker's harness fail which check: as drawn, within the tolerances of its parts, and when something breaks.</summary>
internal sealed class HarnessStudy : Study
{
    // Shares of a limit from −2 (three times the most allowed) to 2, in steps of one percent.
    public const double LeastShare = -2, ShareStep = 0.01;

    /// <summary>The name under which a fault of the connections is counted.</summary>
    public const string Connection = "how it is connected";

    // Near the golden section of the number of variants and without a common factor: places next to each other differ in nearly all options.
    private static readonly long Stride = Enumerable.Range((int)(HarnessFleet.Count * 0.618), 1000).First(s => Gcd(s, HarnessFleet.Count) == 1);

    private static readonly Dictionary<string, CheckKind> ByName = CheckKind.All.ToDictionary(k => k.Name);

    /// <summary>What varies from piece to piece.</summary>
    public static Tolerances Tolerances { get; } = LowVoltage.Calc.Harnesses.Tolerances.None.WithSupply(Ratio.FromPercent(2)).WithLengths(Ratio.FromPercent(5)).WithResistances(Ratio.FromPercent(3))
        .WithJoints(Ratio.FromPercent(50)).WithLoads(Ratio.FromPercent(10)).WithAmbient(TemperatureDelta.FromKelvins(5));

    public override string Name => "harness";

    public override long Total => HarnessFleet.Count;

    public override long Usual => 20_000;

    public override int UsualPiece => 1000;

    public override long VariantAt(long place) => (long)((Int128)place * Stride % Total);

    public override void Count(StudySpec spec, long variant, Tally tally, CancellationToken stop)
    {
        // Everything that can be refused comes first: a variant is counted as a whole or as bad.
        HarnessVerification verified = HarnessDesigner.Verify(HarnessFleet.Build(variant), stop);
        List<HashSet<string>> drawn = [.. Enumerable.Range(0, spec.Draws).Select(k => FailsOfPiece(spec, verified.Harness, variant, k, stop))];
        FaultAudit? audit = spec.Faults ? FaultAudit.Run(verified.Harness, cancellation: stop) : null;

        foreach (IGrouping<CheckKind, HarnessCheck> group in verified.Checks.GroupBy(c => c.Kind!))
        {
            HarnessCheck least = group.MinBy(c => (c.Outcome != CheckOutcome.Fail, Share(c.Result) ?? double.PositiveInfinity, c.Place));
            bool fails = least.Outcome == CheckOutcome.Fail;
            tally.Check(group.Key.Id, LeastShare, ShareStep)
                .Count(fails, group.Any(c => c.Outcome == CheckOutcome.Undetermined), Share(least.Result), variant, least.Place);
        }

        HarnessFinding? broken = verified.Findings.FirstOrDefault(f => f.Severity == FindingSeverity.Fail);
        tally.Check(Connection, LeastShare, ShareStep).Count(broken is not null, verified.Findings.Any(f => f.Severity == FindingSeverity.Undetermined), null, variant, broken?.Text ?? "");
        foreach (HashSet<string> failed in drawn)
        {
            tally.Pieces++;
            tally.PiecesFailed += failed.Count > 0 ? 1 : 0;
            foreach (string kind in failed)
            {
                tally.Check(kind, LeastShare, ShareStep).PiecesFailed++;
            }
        }

        CountFaults(audit, variant, tally);
        int[] chosen = HarnessFleet.Options(variant);
        tally.CountVariant(verified.Verdict == Verdict.Fail, verified.Verdict == Verdict.Undetermined, HarnessFleet.Axes.Select((axis, k) => string.Create(CultureInfo.InvariantCulture, $"{k:00}.{chosen[k]:00} {axis.Name}: {axis.Values[chosen[k]]}")));
    }

    public override void Show(StudySpec spec, long variant, TextWriter output) => new HarnessText(output).Show(spec, variant);

    public override void Report(StudySpec spec, Tally tally, TextWriter output) => new HarnessText(output).Report(spec, tally);

    /// <summary>The checks that fail in one piece, drawn within the tolerances.</summary>
    public static HashSet<string> FailsOfPiece(StudySpec spec, Harness harness, long variant, int piece, CancellationToken stop)
    {
        ToleranceSample sample = ToleranceSample.OfHarness(harness, Tolerances, count: 1, Seed.Of(spec.Seed, variant, piece), threads: 1, cancellation: stop);
        return [.. sample.Checks.Where(c => c.Failed > 0).Select(c => ByName[c.Name].Id)];
    }

    /// <summary>The name under which faults of a rank are counted.</summary>
    public static string FaultName(FaultRank rank) => $"fault {(int)rank}: {rank}";

    private static void CountFaults(FaultAudit? audit, long variant, Tally tally)
    {
        if (audit is null)
        {
            return;
        }

        foreach (FaultRank rank in Enum.GetValues<FaultRank>().Where(r => r < FaultRank.Harmless))
        {
            // The margin is the number of places, below zero: most places first. The histogram counts places.
            int places = audit.Count(rank);
            tally.Check(FaultName(rank), -200, 1).Count(places > 0, false, -places, variant, audit.Faults.FirstOrDefault(f => f.Rank == rank)?.Place ?? "");
        }
    }

    // What failed without a number, a fuse that never opens, is as far beyond its limit as can be told.
    private static double? Share(in CheckResult result) => result.Margin ?? (result.Outcome == CheckOutcome.Fail ? -1 : null);

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
