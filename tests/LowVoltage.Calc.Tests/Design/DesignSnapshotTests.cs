using System.Globalization;
using System.Text;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>What designs say, feasible and not, of every kind of source, load, return and rules: answer, checks, reasons, advice, assumptions, cautions, as text that a person reads.</summary>
/// <remarks>
/// The first design stands whole; of the others the lines that none before has, and a digest. Whether the numbers are right is tested elsewhere: by trying all sizes and fuses anew, by
/// hand, by time integration. To renew after a change that is meant: <c>bash .ci/approve</c>, read the difference, commit it, and note it in the changelog under "Results changed".
/// </remarks>
public class DesignSnapshotTests
{
    private const int Cases = 24;

    // Prime to the lengths of all the counters below, so that each kind meets others in every case.
    private const int Stride = 13;

    private static readonly Lazy<Dictionary<string, string>> Written = new(Write);

    public static TheoryData<string> Names => [.. Written.Value.Keys];

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

    [Theory, MemberData(nameof(Names))]
    public void Design_IsTheOneThatWasReviewed(string name) => ApprovedText.Check($"design-{name}.txt", Written.Value[name]);

    /// <summary>No text depends on what was asked before. A run of mutants, in one process, notices a changed text by this.</summary>
    [Fact]
    public void Designs_WrittenAgain_AreTheSame() => Assert.Equal(Written.Value, Write());

    private static Dictionary<string, string> Write()
    {
        News news = new();
        Dictionary<string, string> all = Enumerable.Range(0, Cases).Select(k => k * Stride).ToDictionary(i => i.ToString("000", CultureInfo.InvariantCulture), i => news.WithDigest(Text(i)));
        foreach ((string name, CircuitDesign design) in OfTheirOwn())
        {
            StringBuilder text = new();
            Write(text, name, design);
            all[name] = news.WithDigest(text.ToString());
        }

        return all;
    }

    // What the counters never meet: a protected lead of two wires, no fuse at all, a source too weak for its load, a motor that starts slowly.
    private static IEnumerable<(string Name, CircuitDesign Design)> OfTheirOwn()
    {
        Conductor cable = Conductor.Iso6722(MetricSize.FromSquareMillimeters(10));
        Segment lead = Segment.Create(cable, Length.FromMeters(4), 2);
        UpstreamProtection main = UpstreamProtection.Fuse(FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(A(40)))
            .WithUpstream(Ohm(0)).WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(3000)).WithLead(CircuitPath.Create(lead, ReturnPath.Wire(lead)));
        CircuitRequirements lamp = Asked(0);
        DesignRules rules = DesignRules.RoadVehicle;
        Load motor = Load.Motor(A(4.2), A(60), A(60), Duration.FromSeconds(0.2)).WithThermalCutOut();
        yield return ("main-fuse", CircuitDesigner.Design(new CircuitRequirements(lamp) { Load = motor, Upstream = Ohm(0.012), UpstreamProtection = [main] }, rules));
        yield return ("no-fuse", CircuitDesigner.Verify(lamp, CircuitPath.Create(Segment.Create(cable, lamp.Feed), ReturnPath.Wire(Segment.Create(cable, lamp.Feed))), null, rules));
        yield return ("no-power", CircuitDesigner.Design(new CircuitRequirements(lamp) { Source = Source.BehindResistance(V(12), Ohm(2)), Load = Load.ConstantPower(Power.FromWatts(60)) }, rules));
        yield return ("slow-start", CircuitDesigner.Design(new CircuitRequirements(lamp) { Load = Load.Motor(A(4.2), A(17), A(21), Duration.FromSeconds(0.2), V(12)).WithThermalCutOut().WithMinimumVoltage(V(10)) }, rules));
    }

    /// <summary>The same designs, to be explained step by step.</summary>
    internal static IEnumerable<(string Name, CircuitDesign Design)> Designs() =>
        [.. Enumerable.Range(0, Cases).Select(k => k * Stride).Select(i => (i.ToString("000", CultureInfo.InvariantCulture), CircuitDesigner.Design(Asked(i), Rules(i)))), .. OfTheirOwn()];

    private static DesignRules Rules(int i) => DesignRules.Presets[i % 4];

    private static string Text(int i)
    {
        StringBuilder text = new();
        CircuitRequirements asked = Asked(i);
        DesignRules rules = Rules(i);
        CircuitDesign design = CircuitDesigner.Design(asked, rules);
        Write(text, "designed", design);
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

        return text.ToString();
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
            .Append("governed by: ").Append(design.Governing.Kind).Append('\n');
        foreach (CheckResult check in design.Checks)
        {
            // Place, level and note on lines of their own: each is read once, not with every check that it may stand beside.
            all.Append("- ").Append(check.Where.Length > 0 ? check.ToString().Replace(", " + check.Where, "", StringComparison.Ordinal) : check.ToString()).Append('\n')
                .Append("  ").Append(check.Where).Append("\n  ").Append(check.Level).Append("\n  ").Append(check.Note).Append('\n');
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

        all.Append("metal ").Append(design.ConductorMass.Kilograms.ToString("G4", CultureInfo.InvariantCulture)).Append(" kg\n\n");
    }

    private static ElectricPotential V(double value) => ElectricPotential.FromVolts(value);

    private static ElectricCurrent A(double value) => ElectricCurrent.FromAmperes(value);

    private static ElectricResistance Ohm(double value) => ElectricResistance.FromOhms(value);
}
