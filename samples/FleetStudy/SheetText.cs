using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace FleetStudy;

/// <summary>What the study of the sheets prints.</summary>
internal static class SheetText
{
    public static void Report(StudySpec spec, Tally tally, TextWriter output)
    {
        void Line(FormattableString line) => output.WriteLine(line.ToString(CultureInfo.InvariantCulture).TrimEnd());
        Line($"CAUTION: the problems are invented exercises. What they say of wires and fuses is no installation advice.");
        Line($"");
        Line($"Problem sheets of an invented district: {spec.Variants} sheets of {SheetStudy.Problems} problems, seed {spec.Seed}");
        Line($"");
        Line($"{tally.Passed} sheets pass, {tally.Failed} fail, {tally.BadCount} could not be made");
        Line($"{tally.Pieces} answers graded, the keys and the usual mistakes; {tally.PiecesFailed} not as they should be");
        Line($"");
        Line($"{"check",-44}{"sheets",9}{"fail",9}   the worst");
        foreach (string name in (string[])[SheetStudy.Key, SheetStudy.Mistakes, SheetStudy.Apart])
        {
            if (tally.Checks.TryGetValue(name, out CheckTally? check))
            {
                Line($"{name,-44}{check.Asked,9}{check.Failed,9}   {string.Join("; ", check.Worst.Select(w => FormattableString.Invariant($"sheet {w.Variant}{(w.Place.Length > 0 ? ", " + w.Place : "")}")))}");
            }
        }

        Line($"");
        if (tally.Checks.TryGetValue(SheetStudy.Steps, out CheckTally? steps))
        {
            Line($"{SheetStudy.Steps}: {steps.Margins.Percentile(1)} (1 % of the sheets have at most that), {steps.Margins.Percentile(50)} (half), {steps.Margins.Percentile(99)} (99 %)");
        }

        Line($"");
        OptionTable.Write(tally, output);
        BadList.Write(tally, output);
        Line($"answer {tally.Digest()}");
    }

    public static void Show(StudySpec spec, long number, TextWriter output)
    {
        ProblemSheet sheet = SheetStudy.Sheet(spec, number);
        output.WriteLine(sheet.ToMarkdown(SheetPart.Problems));
        output.WriteLine(sheet.ToMarkdown(SheetPart.Key));
    }
}
