using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Harnesses;

namespace FleetStudy;

/// <summary>What the study of the harness prints.</summary>
internal sealed class HarnessText(TextWriter output)
{
    public void Report(StudySpec spec, Tally tally)
    {
        Line($"CAUTION: an invented maker's harness with invented options and tolerances. Nothing here is a released part.");
        Line($"");
        Line($"Site van, {spec.Variants} of {HarnessFleet.Count} variants, seed {spec.Seed}{(spec.Draws > 0 ? $", {spec.Draws} pieces of each drawn within the tolerances" : "")}");
        if (spec.Draws > 0)
        {
            Line($"pieces vary by {HarnessStudy.Tolerances}");
        }

        Line($"");
        Line($"as drawn: {tally.Passed} variants pass, {tally.Failed} fail, {tally.Undetermined} are undetermined, {tally.BadCount} could not be studied");
        if (tally.Pieces > 0)
        {
            Line($"as built: {tally.Pieces} pieces, {tally.PiecesFailed} fail ({Percent(tally.PiecesFailed, tally.Pieces)})");
        }

        Line($"");
        Checks(tally);
        Faults(tally);
        Worst(tally);
        OptionTable.Write(tally, output);
        BadList.Write(tally, output);
        Line($"answer {tally.Digest()}");
    }

    public void Show(StudySpec spec, long variant)
    {
        Line($"Variant {variant} of the site van (invented)");
        int[] chosen = HarnessFleet.Options(variant);
        for (int k = 0; k < chosen.Length; k++)
        {
            Line($"  {HarnessFleet.Axes[k].Name}: {HarnessFleet.Axes[k].Values[chosen[k]]}");
        }

        Line($"");
        HarnessVerification verified;
        try
        {
            verified = HarnessDesigner.Verify(HarnessFleet.Build(variant));
        }
        catch (ArgumentException refused)
        {
            Line($"It cannot be studied: {refused.Message.Split('\n')[0]}");
            return;
        }

        Line($"{verified}");
        foreach (HarnessCheck check in verified.Failed.Concat(verified.Undetermined))
        {
            Line($"{(check.Outcome == CheckOutcome.Fail ? "FAIL" : "?   ")} {check}");
            Line($"     → {check.Advice}");
        }

        for (int piece = 0; piece < spec.Draws; piece++)
        {
            HashSet<string> failed = HarnessStudy.FailsOfPiece(spec, verified.Harness, variant, piece, CancellationToken.None);
            Line($"piece {piece + 1}, seed {Seed.Of(spec.Seed, variant, piece)}: {(failed.Count == 0 ? "passes" : $"fails {string.Join(", ", failed.Select(id => CheckKind.Find(id)!.Name).Order(StringComparer.Ordinal))}")}");
        }

        if (spec.Faults)
        {
            Line($"");
            Line($"{FaultAudit.Run(verified.Harness).ToText()}");
        }

        Line($"");
        foreach (string caution in verified.Cautions)
        {
            Line($"Caution: {caution}");
        }
    }

    private void Checks(Tally tally)
    {
        long studied = tally.Variants - tally.BadCount;
        Line($"{"",-44}{"variants",9}{"",9}{"pieces",8}   share of the limit that is left");
        Line($"{"check",-44}{"that fail",9}{"share",9}{"fail",8}{"worst",9}{"1 %",7}{"5 %",7}{"50 %",7}");
        foreach ((string id, CheckTally check) in tally.Checks.Where(c => !IsFault(c.Key)).OrderByDescending(c => c.Value.Failed).ThenByDescending(c => c.Value.PiecesFailed).ThenBy(c => c.Key, StringComparer.Ordinal))
        {
            string worst = check.Worst.Count > 0 ? Share(check.Worst[0].Margin) : "";
            Line($"{NameOf(id),-44}{check.Failed,9}{Percent(check.Failed, studied),9}{check.PiecesFailed,8}{worst,9}{At(check, 1),7}{At(check, 5),7}{At(check, 50),7}");
        }

        Line($"");
        Line($"A share below zero is beyond the limit. Percentiles are rounded down to whole percents; -200 % and 199 % mean so much or more.");
        Line($"");
    }

    private void Faults(Tally tally)
    {
        (string Id, CheckTally Check)[] faults = [.. tally.Checks.Where(c => IsFault(c.Key)).OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => (c.Key, c.Value))];
        if (faults.Length == 0)
        {
            return;
        }

        Line($"{"when one place breaks: variants with a fault that",-53}{"number",9}{"share",9}{"most places",14}   in variant");
        foreach ((string id, CheckTally check) in faults)
        {
            string most = check.Worst.Count > 0 ? N(-check.Worst[0].Margin) : "", variant = check.Worst.Count > 0 ? $"{check.Worst[0].Variant}, {check.Worst[0].Place}" : "";
            Line($"{Words(id),-53}{check.Failed,9}{Percent(check.Failed, check.Asked),9}{most,14}   {variant}");
        }

        Line($"");
    }

    private void Worst(Tally tally)
    {
        output.WriteLine("worst cases (--show VARIANT tells everything about one)");
        foreach ((string id, CheckTally check) in tally.Checks.Where(c => !IsFault(c.Key) && c.Value.Failed > 0).OrderByDescending(c => c.Value.Failed).ThenBy(c => c.Key, StringComparer.Ordinal))
        {
            Line($"  {NameOf(id)}: {string.Join("; ", check.Worst.Select(w => $"variant {w.Variant}, {w.Place}, {Share(w.Margin)}"))}");
        }

        Line($"");
    }

    private static bool IsFault(string id) => id.StartsWith("fault ", StringComparison.Ordinal);

    private static string NameOf(string id) => CheckKind.Find(id)?.Name ?? id;

    private static string Words(string id) => Enum.Parse<FaultRank>(id[(id.IndexOf(':', StringComparison.Ordinal) + 2)..]) switch
    {
        FaultRank.BurnsOn => "leaves a current that overheats a wire",
        FaultRank.NotCleared => "leaves a current that nothing clears",
        FaultRank.WireTooHot => "makes a wire too hot before a fuse opens",
        FaultRank.Undetermined => "could not be told",
        FaultRank.WrongFuseFirst => "opens the wrong fuse first",
        FaultRank.FedBack => "feeds a load back",
        FaultRank.LoadDead => "leaves a load dead",
        _ => "leaves a load dim",
    };

    private static string At(CheckTally check, double percent) => check.Margins.Percentile(percent) is { } share ? Share(share) : "";

    private static string Share(double share) => $"{N(Math.Round(100 * share))} %";

    private static string Percent(long part, long all) => all == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * part / all:0.0} %");

    private static string N(double number) => number.ToString(CultureInfo.InvariantCulture);

    private void Line(FormattableString line) => output.WriteLine(line.ToString(CultureInfo.InvariantCulture).TrimEnd());
}
