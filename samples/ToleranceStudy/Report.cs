using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>The checks that have a number, with their percentiles; then how often anything fails.</summary>
internal static class Report
{
    private static readonly double[] Percents = [1, 5, 50, 95, 99];

    internal static void Write(CircuitDesign design, ToleranceSample sample, TextWriter output)
    {
        output.WriteLine(Circuit.Caution.ReplaceLineEndings(output.NewLine));
        output.WriteLine();
        output.WriteLine($"{design}, as drawn");
        output.WriteLine($"varies by {sample.Tolerances}");
        output.WriteLine();
        output.WriteLine(Invariant($"{sample.Count} circuits, seed {sample.Seed}"));
        output.WriteLine($"{"percentile",-38}{string.Concat(Percents.Select(percent => Invariant($"{percent,9:0} %")))}");
        foreach (SampledCheck check in sample.Checks.Where(c => c.Percentile(1) < c.Percentile(99)))
        {
            string values = string.Concat(Percents.Select(percent => Invariant($"{check.Percentile(percent),11:G4}")));
            output.WriteLine($"{check.Name + ", " + check.Unit,-38}{values}");
        }

        output.WriteLine();
        output.WriteLine($"{"fails",-38}{"circuits",10}{"share",11}   of the batch, 95 % confidence");
        foreach (SampledCheck check in sample.Checks.Where(c => c.Failed > 0).Append(sample.Whole))
        {
            output.WriteLine(Invariant($"{check.Name,-38}{check.Failed,10}{check.FailedShare.Percent,9:0.00} %   at most {check.AtMost().Percent:0.00} %"));
        }
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
