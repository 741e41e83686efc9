using System.Globalization;
using LowVoltage.Calc;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;

namespace CircuitPage;

/// <summary>What the page shows of a design, each in words.</summary>
internal sealed class Answer
{
    private readonly CircuitDesign design;
    private readonly PageUnits units;

    public Answer(CircuitDesign design, PageUnits units)
    {
        (this.design, this.units) = (design, units);
        Checks = [.. design.Checks.Select(check => new CheckRow(check, units))];
    }

    public CircuitDesign Design => design;

    public IReadOnlyList<CheckRow> Checks { get; }

    /// <summary>One word: an undetermined circuit is never called passed.</summary>
    public string Verdict => design.Verdict switch { LowVoltage.Calc.Checks.Verdict.Pass => "Pass", LowVoltage.Calc.Checks.Verdict.Fail => "Fail", _ => "Undetermined" };

    /// <summary>What the word rests on.</summary>
    public string Because
    {
        get
        {
            int all = Checks.Count, failed = Checks.Count(check => check.Outcome == CheckOutcome.Fail), unknown = Checks.Count(check => check.Outcome == CheckOutcome.Undetermined);
            return failed > 0 ? $"{Of(failed, all)} {(failed == 1 ? "fails" : "fail")}: {Names(CheckOutcome.Fail)}. Do not build it as it stands."
                : unknown > 0 ? $"No check fails, {Of(unknown, all)} {(unknown == 1 ? "is" : "are")} undetermined: {Names(CheckOutcome.Undetermined)}. To be settled before building."
                : $"All {Text(all)} checks pass.";
        }
    }

    public string Wire => $"{design.Wire}, {design.Requirements.Insulation.Name}{Nearest}";

    public string Fuse => design.Fuse is { } fuse ? fuse + Nearest : "none";

    public string GovernedBy => Sentences.Capital(design.Governing.Name);

    /// <summary>Least and most over the supply range; empty where the load has no operating point.</summary>
    public string Current => design.SupplyRange is { MostCurrent: not null } range ? Span(range, point => point.Current.Amperes, "A") : "";

    public string VoltageAtLoad => design.SupplyRange is { MostCurrent: not null } range ? Span(range, point => point.VoltageAtLoad.Volts, "V") : "";

    /// <summary>The answer in one sentence, to be read out.</summary>
    public string Spoken => $"{Verdict}: {(design.IsNearest ? "nothing passes; nearest " : "")}{design.Wire}, {(design.Fuse is { } fuse ? fuse.ToString() : "no fuse")}.";

    /// <summary>The same for a narrow line.</summary>
    public string Brief => $"{design.Wire.Size?.ToString() ?? design.Wire.Name}, {(design.Fuse is { } fuse ? Text(fuse.Current.Amperes) + " A" : "no fuse")}";

    public PageUnits Units => units;

    /// <summary>Whether existing wiring of stretches was checked: how far it can be pushed is then not asked.</summary>
    public bool IsOfStretches { get; init; }

    private string Nearest => design.IsNearest ? ", the nearest: none passes" : "";

    private static string Span(SupplyRange range, Func<OperatingPoint, double> of, string unit)
    {
        double[] all = [of(range.Minimum), of(range.Nominal), of(range.Maximum)];
        string least = NumberWords.Short(all.Min()), most = NumberWords.Short(all.Max());
        return (least == most ? least : $"{least}{NumberWords.Thin}{unit} to {most}") + NumberWords.Thin + unit;
    }

    private static string Of(int some, int all) => $"{Text(some)} of {Text(all)} checks";

    private string Names(CheckOutcome outcome) => string.Join(", ", design.Checks.Where(check => check.Outcome == outcome).Select(check => check.Name).Distinct());

    private static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
