using System.Text;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>What designs say, feasible and not, of every kind of source, load, return and rules: answer, checks, reasons, advice, assumptions, cautions, as text that a person reads.</summary>
/// <remarks>
/// Whether the numbers are right is tested elsewhere: by trying all sizes and fuses anew, by hand, by time integration. To renew after a change that is meant: run with the
/// environment variable <c>APPROVE_DESIGNS</c> set to 1, read the difference, commit it, and note it in the changelog under "Results changed".
/// </remarks>
public class DesignSnapshotTests
{
    private const int Cases = 24;

    // Prime to the lengths of all the counters below, so that each kind meets others in every case.
    private const int Stride = 13;

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Cases).Select(k => k * Stride)];

    private static readonly Source[] Sources =
    [
        Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)), Source.BehindResistance(V(21), V(24), V(28.8), Ohm(0.002), Ohm(0.008)),
        Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), A(100)), Source.CurrentLimited(V(12), A(20)), Source.Ideal(V(11), V(12), V(14.4)),
        Battery.LithiumIronPhosphate(16, ElectricCharge.FromAmpereHours(100)), Source.Alternator(V(14.2), A(60)),
    ];

    private static Load LoadOf(int kind, double amperes) => kind switch
    {
        0 => Load.ConstantCurrent(A(amperes)),
        1 => Load.ConstantPower(Power.FromWatts(12 * amperes), 0.9, V(10.5)),
        2 => Load.Lamp(Power.FromWatts(12 * amperes), V(12)),
        3 => Load.Motor(A(amperes), A(3 * amperes), A(4 * amperes), Duration.FromSeconds(0.3), V(12)),
        4 => Load.ConstantCurrent(A(amperes)).WithInputCapacitor(ElectricCapacitance.FromMillifarads(amperes)),
        5 => Load.ConstantCurrent(A(2 * amperes)).WithDutyCycle(DutyCycle.FromFraction(0.2)),
        6 => Load.Together(Load.Lamp(Power.FromWatts(6 * amperes), V(12)), Load.ConstantPower(Power.FromWatts(6 * amperes))),
        7 => Load.Resistance(Ohm(12 / amperes)),
        _ => Load.ConstantCurrent(A(amperes)).WithMinimumVoltage(V(11.5)),
    };

    [Theory, MemberData(nameof(Numbers))]
    public void Design_IsTheOneThatWasReviewed(int i)
    {
        StringBuilder text = new();
        CircuitRequirements asked = Asked(i);
        DesignRules rules = DesignRules.Presets[i % 4];
        CircuitDesign design = CircuitDesigner.Design(asked, rules);
        Write(text, "designed", design);
        if (i is 0 or 6 * Stride)
        {
            text.Append(design.Explain().ToText().TrimEnd()).Append("\n\n");
        }

        IReadOnlyList<Conductor> sizes = rules.Conductors.Conductors;
        FuseRating fuse = design.Fuse ?? rules.Fuses.Ratings[i % rules.Fuses.Ratings.Count];
        if (i % 3 == 0)
        {
            CircuitPath path = CircuitPath.Create(
                [Segment.Create(design.Wire, asked.Feed, 1 + (i % 2)), Segment.Create(sizes[sizes.Count - 1 - (i % 4)], Length.FromMeters(1))],
                ReturnPath.Wire(Segment.Create(design.Wire, asked.Feed)));
            Write(text, "verified", CircuitDesigner.Verify(asked, path, rules.Fuses.Ratings[(i / 3) % rules.Fuses.Ratings.Count], rules));
        }
        else if (i % 3 == 1)
        {
            text.Append("limits: ").Append(CircuitDesigner.LongestRun(asked, design.Wire, fuse, rules)).Append('\n').Append(CircuitDesigner.LargestCurrent(asked, design.Wire, fuse, rules))
                .Append('\n').Append(CircuitDesigner.LargestPower(asked, design.Wire, fuse, rules)).Append('\n').Append(CircuitDesigner.HottestAmbient(asked, design.Wire, fuse, rules))
                .Append('\n').Append(CircuitDesigner.MostLoadedConductors(asked, design.Wire, fuse, rules)).Append('\n');
        }

        ApprovedText.Check($"design-{i:000}.txt", text.ToString(), "APPROVE_DESIGNS");
    }

    // Counters of different lengths, so that each meets each in time.
    private static CircuitRequirements Asked(int i) => new()
    {
        Name = i % 4 == 0 ? "" : $"invented circuit {i}",
        Source = Sources[i % Sources.Length],
        Load = LoadOf(i % 9, 0.5 * Math.Pow(1.6, i % 11)),
        Feed = Length.FromMeters(0.4 * Math.Pow(1.9, i % 8)),
        Return = (i % 5) switch
        {
            0 => ReturnPath.Wire(Length.FromMeters(0.4 * Math.Pow(1.9, i % 8))),
            1 => ReturnPath.Chassis(Ohm(0.005)),
            2 => ReturnPath.Shared(Ohm(0.004), A(6)),
            3 => ReturnPath.Shared([Segment.Create(Conductor.Iec60228(MetricSize.FromSquareMillimeters(16), Iec60228Class.Flexible), Length.FromMeters(2), 1 + (i % 2))], A(20)),
            _ => ReturnPath.Wire(Segment.Create(Conductor.Iec60228(MetricSize.FromSquareMillimeters(6), Iec60228Class.Flexible), Length.FromMeters(3))),
        },
        Joints = i % 3 == 0 ? [] : [Joint.Create("fuse holder", Ohm(0.003)), Joint.Create("crimps", Ohm(0.002))],
        Upstream = i % 4 == 1 ? null : Ohm(0.01 + (0.006 * (i % 6))),
        FuseDistance = i % 6 == 2 ? null : Length.FromMeters(0.1 + (0.3 * (i % 3))),
        SheathedToFuse = i % 2 == 0,
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(20 + (10 * (i % 6))), LoadedConductors = 1 + (i % 7), BundleLoading = i % 4 == 3 ? 0.5 : 1, Altitude = Length.FromMeters(i % 10 == 7 ? 3000 : 0), EngineSpace = i % 12 == 5 },
        Insulation = (i % 6) switch
        {
            0 => InsulationMaterial.PolyvinylChloride,
            1 => InsulationMaterial.CrossLinkedPolyethylene,
            2 => InsulationMaterial.Etfe,
            3 => InsulationMaterial.SiliconeRubber,
            4 => InsulationMaterial.Rated("insulation of the caller", Temperature.FromDegreesCelsius(105)),
            _ => InsulationMaterial.HeatResistantPolyvinylChloride,
        },
        Intermittent = i % 8 == 6,
    };

    private static void Write(StringBuilder all, string title, CircuitDesign design)
    {
        all.Append(title).Append(": ").Append(design).Append('\n')
            .Append("asked: ").Append(design.Requirements.Source).Append("; ").Append(design.Requirements.Load.Name).Append("; ").Append(design.Rules).Append('\n')
            .Append("governed by: ").Append(design.Governing).Append('\n');
        foreach (CheckResult check in design.Checks)
        {
            all.Append("- ").Append(check).Append(" | ").Append(check.Where).Append(' ').Append(check.Level).Append(check.Outcome == CheckOutcome.Undetermined ? "" : " | " + check.Note).Append('\n');
        }

        // What holds for every circuit is read elsewhere.
        foreach ((string name, IEnumerable<object> texts) in new (string, IEnumerable<object>)[]
        {
            ("not taken", design.Rejected.Skip(design.Rejected.Count - 2)), ("advice", design.Advice), ("assumed", design.Assumptions), ("caution", design.Cautions.Except(Cautions.General)),
        })
        {
            foreach (object text in texts)
            {
                all.Append(name).Append(": ").Append(text).Append('\n');
            }
        }

        all.Append("metal ").Append(design.ConductorMass.Kilograms.ToString("G4", System.Globalization.CultureInfo.InvariantCulture)).Append(" kg\n\n");
    }

    private static ElectricPotential V(double value) => ElectricPotential.FromVolts(value);

    private static ElectricCurrent A(double value) => ElectricCurrent.FromAmperes(value);

    private static ElectricResistance Ohm(double value) => ElectricResistance.FromOhms(value);
}
