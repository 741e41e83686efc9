using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Tests.Working;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>The plainest circuit to ask one check on, whose numbers anyone can follow, and what is read of an answer.</summary>
/// <remarks>
/// A 600 A lead-acid block: 11.89, 12, 14.4 V behind 18, 9, 3.6 mΩ. Supply lead 20 mΩ. 3 m of 2.5 mm² road-vehicle cable, 7.60 mΩ/m (ISO 6722, from memory), alone in air of
/// 30 °C: 32 A by the road-vehicle table (handbook, PVC 70 °C). Back through a chassis of 1 mΩ.
/// </remarks>
internal static class CheckCase
{
    public const double Rated = 32;
    public const double Lead = 0.020;
    public const double Chassis = 0.001;
    public const double Meters = 3;
    public const double PerKilometer = 7.60;
    public const string TypeC = "blade fuse (ISO 8820-3 type C)";

    /// <summary>A fuse of which nothing is published but its rating.</summary>
    public static FuseRating Nameless { get; } = FuseSeries.Create(new FuseSeriesDefinition
    {
        Name = "own list", Kind = "fuse", Reference = Reference.CommonPractice("made up for a test"), Ratings = [A(10), A(15), A(30), A(40)],
    }).SmallestAtLeast(A(10));

    /// <summary>The road-vehicle table and the rule on currents alone.</summary>
    public static DesignRules Table { get; } = new(DesignRules.RoadVehicle)
    {
        Ampacity = AmpacityBasis.RoadVehicleTable, FusePractice = new FusePractice { Overload = null },
    };

    /// <summary>The same with the fuse held against the wire at every current.</summary>
    public static DesignRules Overloads { get; } = new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable };

    public static CircuitRequirements Asked(Load load, Source? source = null, double feed = Meters, double ambient = 30, InsulationMaterial? insulation = null, double? upstreamMilliOhms = 1000 * Lead) =>
        Circuit(load, source, feed, ReturnPath.Chassis(MilliOhm(1000 * Chassis)), ambient, conductors: 1, insulation, upstreamMilliOhms);

    public static CircuitDesign Verify(Load load, FuseRating? fuse, DesignRules? rules = null, Source? source = null, double squareMillimeters = 2.5) =>
        Verify(Asked(load, source), fuse, rules, squareMillimeters);

    public static CircuitDesign Verify(CircuitRequirements asked, FuseRating? fuse, DesignRules? rules = null, double squareMillimeters = 2.5) =>
        CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(squareMillimeters), asked.Feed), asked.Return), fuse, rules ?? Table);

    /// <summary>The wire's resistance in service with an r.m.s. current, Ω: the rise goes with the square of the current.</summary>
    public static double WireOhms(double amperes, double meters = Meters) => meters * Plain.PerMeter(PerKilometer, Plain.Warm(30, 70, amperes, Rated));

    /// <summary>The wire's resistance at a temperature, Ω.</summary>
    public static double WireOhmsAt(double celsius, double meters = Meters) => meters * Plain.PerMeter(PerKilometer, celsius);

    /// <summary>Four digits, as the notes have them.</summary>
    public static string Short(double value) => value.ToString("G4", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The one advice of a check, whatever it answered.</summary>
    public static string AdviceOf(CircuitDesign design, CheckKind kind) => ((Check)kind).Advice(design.Of(kind), design.State());

    public static bool IsCured(CircuitDesign design, CheckKind kind) => ((Check)kind).IsCuredBySize(design.State());

    public static void Answers(CircuitDesign design, CheckKind kind, CheckOutcome outcome, string where, string note)
    {
        CheckResult result = design.Of(kind);
        Assert.Equal((outcome, where, note), (result.Outcome, result.Where, result.Note));
        if (outcome == CheckOutcome.Undetermined)
        {
            Assert.Equal((null, null, null), (result.Limit, result.Margin, result.LimitQuantity));
            Assert.Contains(kind, design.Undetermined.Select(check => check.Kind));
            Assert.NotEqual(Verdict.Pass, design.Verdict);
        }
        else if (outcome == CheckOutcome.Fail)
        {
            Assert.Equal(Verdict.Fail, design.Verdict);
            Assert.Contains(AdviceOf(design, kind), string.Join('\n', design.Advice), StringComparison.Ordinal);
        }
    }

    /// <summary>The sheet compares the very numbers of the check, each by the letter of the step that gave it; every line can be worked out by a reader.</summary>
    /// <returns>The sheet.</returns>
    public static WorkedSolution Steps(CircuitDesign design, CheckKind kind, string compared)
    {
        CheckResult result = design.Of(kind);
        WorkedSolution sheet = design.Explain();
        SolutionStep step = Assert.Single(sheet.Steps, s => s.Sought == "check: " + kind.Name);
        Assert.Equal(compared, $"{step.Symbol!.Spec} {(step.Relation == Relation.AtMost ? "≤" : "≥")} {step.Limit!.Spec}");
        Near(result.Value, step.Symbol.Value, 1e-9, "compared value");
        Near(result.Limit, step.Limit.Value, 2e-9, "compared limit");
        Assert.Equal(result.Outcome == CheckOutcome.Pass, step.Holds);
        Assert.Equal(result.Reference, step.Source);
        ExplanationProperties.AssertEvaluates(sheet, kind.Name);
        ExplanationProperties.AssertReadsBack(sheet, kind.Name, engineering: true);
        ExplanationProperties.AssertOneMeaning(sheet, kind.Name);
        return sheet;
    }

    /// <summary>A number of the sheet by its letter.</summary>
    public static double Number(WorkedSolution sheet, string letter) => sheet.Steps.First(s => s.Symbol?.Spec == letter && s.Kind != StepKind.Comparison).Result!.Value;

    /// <summary>Where a check has no two numbers, the sheet says it in words.</summary>
    public static void Stated(CircuitDesign design, CheckKind kind)
    {
        SolutionStep step = Assert.Single(design.Explain().Steps, s => s.Sought == "check: " + kind.Name);
        Assert.Equal((StepKind.Statement, design.Of(kind).ToString() + "."), (step.Kind, step.Reason));
    }
}
