using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using static LowVoltage.Calc.Tests.Design.Ask;
using static LowVoltage.Calc.Tests.Design.Upstream.Mains;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>Sixty everyday circuits on panels fed through 1 to 20 mΩ, with a main fuse stated: each has its verdict, with a wire that handbook tables would give too.</summary>
/// <remarks>
/// The handbook size: the smallest of the series of which the road-vehicle single-core table at 30 °C (handbook, after ISO 6722-3 and DIN VDE 0298-4; one cable) carries the fuse, a rating of
/// at least 1.25 times the load, and which drops at most 3 % of 12 V by its resistance at 20 °C. A pair carries less than one cable and warm copper drops more: that is where a step or two go.
/// A step is one of the table's own rows (1.5, 2.5, 4, 6 …, below it 0.75 and 0.5); below 1 mm² the row of 1 mm² counts in proportion to the section.
/// </remarks>
public class EverydayCircuitsTests
{
    private const double DropVolts = 0.03 * 12;

    private static readonly double[] Steps = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120];

    public static TheoryData<string> Names => [.. Everyday.Rows.Select(row => row.Name)];

    [Fact]
    public void Rows_AreSixtyOfTheirOwn()
    {
        Assert.Equal(60, Everyday.Rows.Length);
        Assert.Equal(60, Everyday.Rows.Select(row => row.Name).Distinct().Count());
        Assert.Equal((1, 20), (Everyday.Rows.Min(row => row.MilliOhms), Everyday.Rows.Max(row => row.MilliOhms)));
    }

    /// <summary>Fuses of which the caller knows that they break 20 kA: nothing is left open.</summary>
    [Theory, MemberData(nameof(Names))]
    public void Circuit_BehindAMainFuse_PassesWithAWireOfTheTables(string name)
    {
        Everyday.Row row = Everyday.Rows.Single(r => r.Name == name);
        CircuitDesign design = Designed(row);
        Assert.True(design.Verdict == Verdict.Pass, string.Join("\n", design.Checks));
        AssertWireOfTheTables(row, design);
    }

    /// <summary>With blades of 1000 A no thicker wire, and no other open point than what the fuse breaks.</summary>
    [Theory, MemberData(nameof(Names))]
    public void Circuit_WithBladesOfTheStandard_NoThickerAndOnlyTheBreakingCapacityOpen(string name)
    {
        Everyday.Row row = Everyday.Rows.Single(r => r.Name == name);
        CircuitDesign high = Designed(row);
        CircuitDesign blades = CircuitDesigner.Design(Asked(row), DesignRules.RoadVehicle);

        // The preset has slower fuses beside the blades, which stand a start with less rating.
        Assert.True(blades.Wire.Area <= high.Wire.Area, $"{blades.Wire} with {blades.Fuse}, {high.Wire} with {high.Fuse}");

        // 14.4 V over 3.6 mΩ and the lead: at most 1000 A from 10.8 mΩ on.
        Assert.Equal(row.MilliOhms >= 10.8, blades.Of(CheckKind.BreakingCapacity).Outcome == CheckOutcome.Pass);
        CheckKind[] open = [.. blades.Checks.Where(check => check.Outcome != CheckOutcome.Pass).Select(check => check.Kind!).Except([CheckKind.BreakingCapacity])];
        if (blades.Fuse!.Curve is not null)
        {
            Assert.Empty(open);
        }

        Assert.DoesNotContain(blades.Checks, check => check.Outcome == CheckOutcome.Fail && check.Kind != CheckKind.BreakingCapacity);
    }

    /// <summary>A blade of 1000 A in front of which only a main fuse of published times stands: the thin wires would be harmed by what that lets through, for the thick ones the maker must say what the blade withstands.</summary>
    [Fact]
    public void Circuits_WithBladesOfTheStandard_AreCounted()
    {
        CircuitDesign[] designs = [.. Everyday.Rows.Select(row => CircuitDesigner.Design(Asked(row), DesignRules.RoadVehicle))];
        int soft = Everyday.Rows.Count(row => row.MilliOhms >= 10.8), harmed = designs.Count(d => d.Of(CheckKind.BreakingCapacity).Note.Contains("that takes the wire to", StringComparison.Ordinal));
        int missing = designs.Count(d => d.Of(CheckKind.BreakingCapacity).Note.Contains("withstands behind it, by its maker", StringComparison.Ordinal));
        Assert.Equal(60, soft + harmed + missing);
        Assert.Equal(harmed, designs.Count(d => d.Verdict == Verdict.Fail));
        Assert.Equal(Everyday.Rows.Where((row, i) => row.MilliOhms >= 10.8 && designs[i].Fuse!.Curve is not null).Count(), designs.Count(d => d.Verdict == Verdict.Pass));
        Assert.True(soft >= 25 && harmed > 0, $"{soft} pass by themselves, {harmed} harmed, {missing} to be stated");
    }

    internal static CircuitDesign Designed(Everyday.Row row) =>
        CircuitDesigner.Design(Asked(row), new DesignRules(DesignRules.RoadVehicle) { Fuses = HighBreakingBlades });

    internal static void AssertWireOfTheTables(Everyday.Row row, CircuitDesign design)
    {
        Conductor allowed = design.Rules.Conductors.Conductors.First(size => Drop(size, row) <= DropVolts && Carries(size) >= row.Amperes);
        int handbook = Array.FindIndex(Steps, section => Drop(RoadVehicle(section), row) <= DropVolts && Carries(RoadVehicle(section)) >= design.Fuse!.Current.Amperes);
        Assert.True(design.Wire.Area >= allowed.Area, $"{design.Wire} is thinner than the tables allow: {allowed}");
        Assert.True(design.Wire.Area.SquareMillimeters <= Steps[Math.Min(handbook + 2, Steps.Length - 1)] * 1.001, $"{design.Wire} is more than two steps above {Steps[handbook]} mm²; {design.Governing}");
    }

    /// <summary>Whether the thickest wire of the series keeps the drop, by its resistance at 20 °C.</summary>
    internal static bool AnySizeDropsLittle(Everyday.Row row) =>
        Drop(DesignRules.RoadVehicle.Conductors.Conductors.MaxBy(size => size.Area.SquareMillimeters)!, row) <= DropVolts;

    private static CircuitRequirements Asked(Everyday.Row row)
    {
        // No more than 4 m each way: the rest of the lead's resistance is holders, switches and lugs.
        double meters = Math.Min(4, row.MilliOhms / (2 * RoadVehicle(35).ResistancePerLength(C(20)).OhmsPerMeter * 1000));

        // What a cold, aged battery drives through 20 mΩ opens no more than 40 A of gG soon enough. The melting integrals are those that the standard asks at 0.01 s.
        UpstreamProtection main = OnTerminal(Gg(row.MilliOhms > 15 ? 40 : 63), 35, meters).WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(row.MilliOhms > 15 ? 3000 : 9000));
        return Circuit(LoadOf(row), feed: row.Meters, upstreamMilliOhms: row.MilliOhms).WithUpstreamProtection(main);
    }

    private static Load LoadOf(Everyday.Row row) => row.Kind switch
    {
        "lamp" => Load.Lamp(W(12 * row.Amperes), V(12)),
        "power" => Load.ConstantPower(W(12 * row.Amperes)),
        "motor" => Load.Motor(A(row.Amperes), A(2 * row.Amperes), A(4 * row.Amperes), Duration.FromSeconds(0.1)).WithThermalCutOut(),
        "resistance" => Load.Resistance(ElectricResistance.FromOhms(12 / row.Amperes)),
        _ => Load.ConstantCurrent(A(row.Amperes)),
    };

    // The lead of the panel is not in the circuit's own wire, but in its drop.
    private static double Drop(Conductor size, Everyday.Row row) =>
        row.Amperes * ((2 * row.Meters * size.ResistancePerLength(C(20)).OhmsPerMeter) + (row.MilliOhms / 1000));

    private static double Carries(Conductor size)
    {
        double area = size.Area.SquareMillimeters, below = 0;
        foreach (Conductor known in DesignRules.RoadVehicle.Conductors.Conductors.Where(c => c.Area.SquareMillimeters <= area * 1.001))
        {
            below = RoadVehicleSingleCore.Ambient30.TryRating(known.Size!.Value, C(70), out TableRating? rating) ? rating.Current.Amperes : below;
        }

        return below > 0 ? below : 19 * area;
    }
}
