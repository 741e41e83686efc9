using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Tests.Proof.Simulation;
using static LowVoltage.Calc.Tests.Design.Ask;
using static LowVoltage.Calc.Tests.Design.Upstream.Mains;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>A stiff source never takes a thicker wire than a soft one of the same voltage, and with its main fuse stated the circuit passes, or says the one thing that is missing.</summary>
public class StiffSourceTests
{
    private const int Seed = 20_261_129;

    public static TheoryData<string, Func<Load>, double> Five => new()
    {
        { "alarm of 0.3 A", () => Load.ConstantCurrent(A(0.3)), 4 },
        { "lamp of 8 W", () => Load.Lamp(W(8), V(12)), 5 },
        { "fan of 3.2 A", () => Load.ConstantCurrent(A(3.2)), 4.5 },
        { "cooler of 60 W", () => Load.ConstantPower(W(60)), 5.5 },
        { "heater of 7 A", () => Load.Resistance(ElectricResistance.FromOhms(12 / 7.0)), 3 },
    };

    [Theory, MemberData(nameof(Five))]
    public void StiffSource_TakesNoThickerWireThanASoftOne(string name, Func<Load> load, double meters)
    {
        Assert.NotEmpty(name);
        foreach (double lead in new[] { 0.5, 1, 5, 14, 14.3 })
        {
            Compare(Circuit(load(), Pack, feed: meters, upstreamMilliOhms: lead), lead);
        }
    }

    [Fact]
    public void StiffSource_RandomCircuits_NoThickerWireAndAPassWithTheMainFuse()
    {
        Random random = new(Seed);
        int passes = 0, open = 0;
        for (int i = 0; i < 200; i++)
        {
            double amperes = 0.3 * Math.Pow(7 / 0.3, random.NextDouble()), lead = 0.5 * Math.Pow(40, random.NextDouble());
            Load load = random.Next(4) switch
            {
                0 => Load.ConstantCurrent(A(amperes)),
                1 => Load.ConstantPower(W(12 * amperes)),
                2 => Load.Lamp(W(12 * amperes), V(12)),
                _ => Load.Resistance(ElectricResistance.FromOhms(12 / amperes)),
            };
            CircuitRequirements asked = Circuit(load, Pack, feed: 0.5 + (7 * random.NextDouble()), ambient: Math.Round(10 + (35 * random.NextDouble())), upstreamMilliOhms: lead, drop: DropLimit.Percent(5));
            CircuitDesign design = Compare(asked, lead);
            passes += design.Verdict == Verdict.Pass ? 1 : 0;
            open += design.Verdict == Verdict.Pass ? 0 : 1;
        }

        Assert.Equal((200, 0), (passes, open));
    }

    /// <summary>The wire is that of the same circuit without the main fuse, in every random case of the proof; what the wires of its lead lose beyond what was stated is a joint there.</summary>
    [Fact]
    public void MainFuse_Stated_NeverTakesTheWireOutOfTheAnswer()
    {
        int stated = 0, same = 0;
        for (int i = 0; i < 1500; i++)
        {
            CaseGiven given = ProofRun.Case(Seed, i, laid: false);
            if (given.Mains.Length > 0)
            {
                stated++;
                DesignRules rules = Library.Rules(given.Rules);
                CaseGiven plain = given with { Mains = [], JointOhms = given.JointOhms + OwnSupply.LeadOhms(given) - (given.UpstreamOhms ?? 0) };
                CircuitDesign with = CircuitDesigner.Design(Library.Requirements(given), rules), without = CircuitDesigner.Design(Library.Requirements(plain), rules);
                Assert.NotNull(with.Wire);
                Assert.Equal(without.Fuse is null, with.Fuse is null);

                // Where nothing passes, the nearest is the one that fails least, and what a main fuse settles may change that.
                same += with.Wire == without.Wire ? 1 : 0;
                Assert.True(with.Wire == without.Wire || without.IsNearest, $"case {i}: {without.Wire} becomes {with.Wire}");
            }
        }

        Assert.InRange(stated, 400, 700);
        Assert.True(same > 0.9 * stated, $"{same} of {stated}");
    }

    // The same voltages behind 15 mΩ to 30 mΩ, where any blade breaks the current.
    private static CircuitDesign Compare(CircuitRequirements asked, double lead)
    {
        CircuitRequirements soft = asked.WithSource(Source.BehindResistance(V(10), V(12.8), V(14.6), MilliOhm(15), MilliOhm(30)));
        DesignRules own = new(DesignRules.RoadVehicle) { Fuses = HighBreakingBlades };
        CircuitDesign before = CircuitDesigner.Design(soft, DesignRules.RoadVehicle);
        double meters = Math.Min(4, Math.Max(0.1, (lead - 0.3) / (2 * RoadVehicle(35).ResistancePerLength(C(20)).OhmsPerMeter * 1000)));
        UpstreamProtection main = OnTerminal(Gg(63), 35, meters).WithUpstream(MilliOhm(Math.Min(0.3, lead))).WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(9000));
        foreach (CircuitDesign stiff in new[] { CircuitDesigner.Design(asked, DesignRules.RoadVehicle), CircuitDesigner.Design(asked.WithUpstreamProtection(main), DesignRules.RoadVehicle) })
        {
            Assert.True(TakesALargerFuse(stiff, before) || stiff.Wire.Area <= Most(before, asked.Load), $"{asked.Load.Name}: {stiff} behind {lead} mΩ; {before} on a soft source; {string.Join("; ", stiff.Rejected)}");
            Assert.All(stiff.Checks.Where(check => check.Outcome == CheckOutcome.Fail), check => Assert.Same(CheckKind.BreakingCapacity, check.Kind));
        }

        CircuitDesign design = CircuitDesigner.Design(asked.WithUpstreamProtection(main), own);
        Assert.True(design.Verdict == Verdict.Pass, $"{lead} mΩ\n" + string.Join("\n", design.Checks));
        CircuitDesign alike = CircuitDesigner.Design(soft, own);


        Assert.True(TakesALargerFuse(design, alike) || design.Wire.Area <= Most(alike, asked.Load), $"{design.Wire} with {design.Fuse} behind {lead} mΩ, {alike.Wire} with {alike.Fuse} on a soft source");
        return design;
    }

    // A lamp's surge and a resistance's current are larger on the stiff source: where that takes the next fuse, the wire is that fuse's.
    private static bool TakesALargerFuse(CircuitDesign stiff, CircuitDesign soft) =>
        stiff.Requirements.Load.Name is "resistance" or "incandescent lamp" && stiff.Fuse!.Current > soft.Fuse!.Current;

    // A lamp or a resistance draws more at the higher voltage that a stiff source holds, by up to 2 %: that may take the next size of the series.
    private static Area Most(CircuitDesign soft, Load load) =>
        load.Name is "resistance" or "incandescent lamp" ? soft.Rules.Conductors.Conductors.First(size => size.Area > soft.Wire.Area).Area : soft.Wire.Area;
}
