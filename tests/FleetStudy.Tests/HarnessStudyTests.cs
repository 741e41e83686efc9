using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Harnesses;

namespace FleetStudy.Tests;

/// <summary>What the study of the harness counts, against the library asked one variant at a time.</summary>
public sealed class HarnessStudyTests : TestFolder
{
    private static readonly HarnessStudy Study = new();

    [Fact]
    public void Count_EveryNumber_IsThatOfTheLibrary()
    {
        StudySpec spec = Harness(150, 150);
        Tally tally = Piece.Calculate(spec, 0, default);
        Dictionary<string, int> failed = [];
        Dictionary<string, (double Margin, long Variant)> worst = [];
        (int failing, int bad, int failingPieces) = (0, 0, 0);
        for (int place = 0; place < 150; place++)
        {
            long variant = Study.VariantAt(place);
            int[] options = HarnessFleet.Options(variant);

            // Body 2.4 m, lamps set back by 2.4 m: no lead is left.
            if (options[1] == 0 && options[2] == 5)
            {
                bad++;
                continue;
            }

            HarnessVerification verified = HarnessDesigner.Verify(HarnessFleet.Build(variant));
            failing += verified.Verdict == Verdict.Fail ? 1 : 0;
            foreach (string kind in verified.Failed.Select(c => c.Kind!.Id).Distinct())
            {
                failed[kind] = failed.GetValueOrDefault(kind) + 1;
                double margin = verified.Failed.Where(c => c.Kind!.Id == kind).Min(c => c.Result.Margin ?? -1);
                if (!worst.TryGetValue(kind, out (double Margin, long Variant) before) || (margin, variant).CompareTo(before) < 0)
                {
                    worst[kind] = (margin, variant);
                }
            }

            failingPieces += ToleranceSample.OfHarness(verified.Harness, HarnessStudy.Tolerances, 1, Seed.Of(1, variant, 0)).Whole.Failed;
        }

        Assert.True(failing > 20 && bad > 0 && failed.Count >= 3, $"{failing} {bad} {failed.Count}: the study would prove little.");
        Assert.Equal((150, failing, bad, 150 - bad, failingPieces), (tally.Variants, tally.Failed, tally.BadCount, tally.Pieces, tally.PiecesFailed));
        Assert.Equal(failed.OrderBy(f => f.Key), tally.Checks.Where(c => c.Value.Failed > 0).Select(c => KeyValuePair.Create(c.Key, (int)c.Value.Failed)).OrderBy(f => f.Key));
        Assert.All(worst, w => Assert.Equal(w.Value, (tally.Checks[w.Key].Worst[0].Margin, tally.Checks[w.Key].Worst[0].Variant)));
    }

    [Fact]
    public void Faults_AreThoseOfTheAudit()
    {
        Tally tally = Piece.Calculate(Harness(4, 4, draws: 0, faults: true), 0, default);
        FaultAudit[] audits = [.. Enumerable.Range(0, 4).Select(p => Study.VariantAt(p)).Where(v => HarnessFleet.Options(v) is not [_, 0, 5, ..]).Select(v => FaultAudit.Run(HarnessFleet.Build(v)))];
        Assert.NotEmpty(audits);
        foreach (FaultRank rank in Enum.GetValues<FaultRank>().Where(r => r < FaultRank.Harmless))
        {
            CheckTally check = tally.Checks[HarnessStudy.FaultName(rank)];
            Assert.Equal((audits.Length, audits.Count(a => a.Count(rank) > 0)), (check.Asked, check.Failed));
        }

        Assert.Contains(tally.Checks, c => c.Key.StartsWith("fault ", StringComparison.Ordinal) && c.Value.Failed > 0);
    }

    [Fact]
    public void VariantAt_MeetsEachNumberOnce_AndEveryOptionSoon()
    {
        long[] first = [.. Enumerable.Range(0, 1000).Select(p => Study.VariantAt(p))];
        Assert.Equal(1000, first.Distinct().Count());
        Assert.Equal(first[0], Study.VariantAt(Study.Total));
        Assert.NotEqual(0, Study.VariantAt(Study.Total / 2));
        Assert.NotEqual(0, Study.VariantAt(Study.Total / 3));
        for (int k = 0; k < HarnessFleet.Axes.Count; k++)
        {
            Assert.Equal(HarnessFleet.Axes[k].Values.Length, first.Select(v => HarnessFleet.Options(v)[k]).Distinct().Count());
        }
    }

    [Fact]
    public void Bad_AreNamedWithTheReason_AndTheRestIsStudied()
    {
        Tally tally = Piece.Calculate(Harness(150, 150, draws: 0), 0, default);
        Assert.Equal(150, tally.Passed + tally.Failed + tally.Undetermined + tally.BadCount);
        Assert.All(tally.Bad, b => Assert.Contains("length must be greater than zero", b.Reason, StringComparison.Ordinal));
        using StringWriter output = new();
        Study.Report(Harness(150, 150), tally, output);
        Assert.Contains($"{tally.Bad[0].Variant}: length must be greater than zero", output.ToString(), StringComparison.Ordinal);
        Assert.Contains($"{tally.BadCount} could not be studied", output.ToString(), StringComparison.Ordinal);
    }
}
