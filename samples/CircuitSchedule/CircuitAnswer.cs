using LowVoltage.Calc;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace CircuitSchedule;

/// <summary>What the schedule shows of a design, each read from the library once, and the words only where they are shown: nothing else asks it.</summary>
internal sealed class CircuitAnswer
{
    private readonly CircuitDesign design;

    private CircuitAnswer(CircuitDesign design)
    {
        (Practice, GovernedBy) = (design.Rules.Name, design.Governing.Name);
        Verdict = design.Verdict;
        (Wire, IsNearest, SectionSquareMillimeters) = (design.Wire.Name, design.IsNearest, design.Wire.Area.SquareMillimeters);
        RatingAmperes = design.Find(CheckKind.ContinuousCurrent)?.Limit;
        ConductorCelsius = design.Find(CheckKind.ConductorTemperature)?.Value;

        if (design.Fuse is { } fuse)
        {
            (Fuse, FuseKind, FuseAmperes) = (fuse.ToString(), fuse.Series.Kind, fuse.Current.Amperes);
            FuseSeries = fuse.Series.Name;
        }

        if (design.SupplyRange is { MostCurrent: not null } range)
        {
            (MinimumAmperes, NominalAmperes, MaximumAmperes) = (range.Minimum.Current.Amperes, range.Nominal.Current.Amperes, range.Maximum.Current.Amperes);
            (DropVolts, DropPercent) = (range.MostDrop?.Drop.Volts, range.MostDrop?.DropOfNominal.Percent);
            LowestLoadVolts = range.LeastVoltageAtLoad?.VoltageAtLoad.Volts;
        }

        this.design = design;
        Undetermined = [.. design.Undetermined.Select(check => check.ToString())];
        Advice = design.Advice;
        OwnCautions = Verdict == Verdict.Pass ? [] : [.. design.Cautions.Except(Cautions.General)];
    }

    public string Practice { get; }

    public string GovernedBy { get; }

    public Verdict Verdict { get; }

    public string Wire { get; }

    /// <summary>Whether nothing serves, and wire and fuse are those that come nearest.</summary>
    public bool IsNearest { get; }

    public double SectionSquareMillimeters { get; }

    public double? RatingAmperes { get; }

    public double? ConductorCelsius { get; }

    /// <summary>The fuse as the library names it: rating, kind and series.</summary>
    public string? Fuse { get; }

    public string? FuseKind { get; }

    public string? FuseSeries { get; }

    public double? FuseAmperes { get; }

    public double? MinimumAmperes { get; }

    public double? NominalAmperes { get; }

    public double? MaximumAmperes { get; }

    public double? DropVolts { get; }

    public double? DropPercent { get; }

    public double? LowestLoadVolts { get; }

    /// <summary>The design in one line, with the reason where it fails.</summary>
    public string InWords => field ??= design.ToString();

    /// <summary>The checks that could not be made, each with what would settle it.</summary>
    public IReadOnlyList<string> Undetermined { get; }

    /// <summary>What would help a circuit that does not pass.</summary>
    public IReadOnlyList<string> Advice { get; }

    /// <summary>The cautions of a circuit that does not pass, beyond those that hold for all.</summary>
    public IReadOnlyList<string> OwnCautions { get; }

    /// <summary>The calculation to hand over and to sign.</summary>
    public CalculationSheet Sheet(SheetDetails details) => CalculationSheet.Create(design, details);

    public static CircuitAnswer Of(CircuitDesign design) => new(design);
}
