using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Working;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>What a reader is told beside each letter of the rarer circuits: what is sought, in which unit, and why.</summary>
public class SheetLetterTests
{
    // Two wires side by side on 40 A, started and stalled.
    private static readonly Lazy<WorkedSolution> Parallel = new(() => Sheet(Motor(30, 40), Segment.Create(RoadVehicle(2.5), M(8), 2), null, 40));

    // Pulses, on a supply whose voltage changes.
    private static readonly Lazy<WorkedSolution> Pulsed = new(() => Sheet(
        Load.Resistance(ElectricResistance.FromOhms(2)).WithDutyCycle(DutyCycle.FromFraction(0.25)), Segment.Create(RoadVehicle(2.5), M(3)), null, 10));

    // 6 A of other circuits in the return.
    private static readonly Lazy<WorkedSolution> Shared = new(() => Sheet(
        Load.ConstantCurrent(A(5)), Segment.Create(RoadVehicle(2.5), M(1)), ReturnPath.Shared([Segment.Create(RoadVehicle(1), M(1))], A(6)), 10));

    // Three sections in a row.
    private static readonly Lazy<WorkedSolution> Row = new(() =>
    {
        CircuitRequirements asked = Circuit(Motor(3, 16).WithThermalCutOut(), feed: 3, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 12, drop: DropLimit.Percent(20));
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(4), M(1)), Segment.Create(RoadVehicle(2.5), M(1)), Segment.Create(RoadVehicle(6), M(1), 2)], asked.Return);
        return CircuitDesigner.Verify(asked, path, Blade(15), CheckCase.Overloads).Explain();
    });

    // More power than comes through.
    private static readonly Lazy<WorkedSolution> TooMuch = new(() => CheckCase.Verify(CheckCase.Asked(Load.ConstantPower(W(5000)), feed: 30), Blade(10)).Explain());

    // Feed of one section, back through two others.
    private static readonly Lazy<WorkedSolution> Back = new(() =>
    {
        ReturnPath back = ReturnPath.Wire([Segment.Create(RoadVehicle(4), M(2)), Segment.Create(RoadVehicle(1.5), M(1))]);
        return Sheet(Load.ConstantPower(W(40)), Segment.Create(RoadVehicle(2.5), M(3)), back, 10);
    });

    // No fuse, on a supply that cannot overload the wire.
    private static readonly Lazy<WorkedSolution> Bare = new(() => CheckCase.Verify(Load.ConstantCurrent(A(5)), null, source: Source.CurrentLimited(V(12), A(20))).Explain());

    private static readonly Dictionary<string, Lazy<WorkedSolution>> Sheets = new()
    {
        [nameof(Parallel)] = Parallel, [nameof(Pulsed)] = Pulsed, [nameof(Shared)] = Shared, [nameof(Row)] = Row, [nameof(TooMuch)] = TooMuch, [nameof(Back)] = Back, [nameof(Bare)] = Bare,
    };

    [Theory]
    [InlineData(nameof(Parallel))]
    [InlineData(nameof(Pulsed))]
    [InlineData(nameof(Shared))]
    [InlineData(nameof(Row))]
    [InlineData(nameof(TooMuch))]
    [InlineData(nameof(Back))]
    [InlineData(nameof(Bare))]
    public void EveryStep_CanBeWorkedOut(string circuit)
    {
        WorkedSolution sheet = Sheets[circuit].Value;
        ExplanationProperties.AssertEvaluates(sheet, circuit);
        ExplanationProperties.AssertReadsBack(sheet, circuit, engineering: true);
        ExplanationProperties.AssertOneMeaning(sheet, circuit);
    }

    /// <summary>The number beside each letter has its unit, and its reason in words.</summary>
    [Theory]
    [InlineData(nameof(Parallel), "I_zn1", "A", "current that the 2 conductors of the stretch of 8 m of 2 × 2.5 mm² road-vehicle copper carry", "Side by side they share the current, an equal part each.")]
    [InlineData(nameof(Parallel), "I_1", "A", "r.m.s. current of one of the parallel conductors", "They share it equally.")]
    [InlineData(nameof(Parallel), "J_e", "A²·s", "Joule integral that has passed when the fuse has opened for sure", "By iteration: it is what the fuse needs at a constant current as small as the one that flows by then; the steps below check it.")]
    [InlineData(nameof(Parallel), "S", "mm²", "effective section of 2.5 mm² road-vehicle copper", "That of a solid bar of its resistance.")]
    [InlineData(nameof(Parallel), "x_n1", "", "exponent by which the resistance of 2.5 mm² road-vehicle copper grows", "In so short a time the heat stays in the metal: dθ = R′·dJ/(σ·S), and dR′ = α·R′₂₀·dθ.")]
    [InlineData(nameof(Parallel), "I_e", "A", "short-circuit current by then", "The wire heats during the fault and its resistance rises: the current falls.")]
    [InlineData(nameof(Parallel), "J_n", "A²·s", "Joule integral that the fuse needs at that current", "The same as Jₑ: more current before that only opens it sooner.")]
    [InlineData(nameof(Parallel), "t_e", "s", "longest time of the fuse at Iₑ", "")]
    [InlineData(nameof(Parallel), "S_n", "mm²", "effective section of all of them", "")]
    [InlineData(nameof(Parallel), "θ_sc", "°C", "limit of the insulation in a short circuit", "For at most 5 s.")]
    [InlineData(nameof(Parallel), "s_w", "", "share of the fault's current in the hotter part of that wire, the fault at 0 % of its length", "Kirchhoff: the near part carries (1 − x + c)/(1 + c), the far part x/(1 + c), c = 1/(n − 1); at most, as the wires heat.")]
    [InlineData(nameof(Parallel), "I²t_w", "A²·s", "greatest Joule integral that the fuse lets through there", "From its longest times, over all currents that may flow.")]
    [InlineData(nameof(Parallel), "I²t_1", "A²·s", "Joule integral in that wire", "")]
    [InlineData(nameof(Parallel), "I_2", "A", "conventional fusing current", "The fuse need not open below it: no longest time is stated there.")]
    [InlineData(nameof(Parallel), "I_w", "A", "largest fuse that the wire allows", "Both halves of the rule: the rating against the wire's current, and the conventional fusing current against 1.45 times that.")]
    [InlineData(nameof(Parallel), "I_min", "A", "least rating of the fuse", "")]
    [InlineData(nameof(Parallel), "I_n", "A", "rating of the fuse", "40 A blade fuse (ISO 8820-3 type C): the one that was verified.")]
    [InlineData(nameof(Pulsed), "I_b", "A", "largest current while the load is on", "The largest of the operating points.")]
    [InlineData(nameof(Pulsed), "I_heat", "A", "largest r.m.s. current", "The largest of the operating points.")]
    [InlineData(nameof(Shared), "I_sh", "A", "current in the shared return", "The other circuits' current heats it too.")]
    [InlineData(nameof(Shared), "I_left", "A", "what the other circuits leave of the stretch of 1 m of 1 mm² road-vehicle copper", "")]
    [InlineData(nameof(Shared), "V_left", "V", "voltage that is left for the fault", "The other circuits keep feeding their current into the shared return: what they drop there is taken off.")]
    [InlineData(nameof(Shared), "J_e", "A²·s", "Joule integral that has passed when the fuse has opened for sure", "By iteration.")]
    [InlineData(nameof(Shared), "I_e", "A", "short-circuit current by then", "V less Iₒ·R of the shared stretches, over all resistance, each conductor as warm as the Joule integral makes it; a shared one is heated by (I + Iₒ)², counted as I²·(1 + Iₒ/I)² with the least I that still opens the fuse.")]
    [InlineData(nameof(Shared), "t_e", "s", "longest time of the fuse at Iₑ", "Beyond the last stated point the Joule integral I²·t stays.")]
    [InlineData(nameof(Shared), "t_c", "s", "time by then", "t = ∫ dJ/I² from 0 to Jₑ, with the current at every J as above.")]
    [InlineData(nameof(Shared), "I_low", "A", "least current of the fault", "")]
    [InlineData(nameof(Row), "S_2", "mm²", "effective section of 2.5 mm² road-vehicle copper", "That of a solid bar of its resistance.")]
    [InlineData(nameof(Row), "x_e", "", "exponent by which the resistance of 4 mm² road-vehicle copper grows", "In so short a time the heat stays in the metal: dθ = R′·dJ/(σ·S), and dR′ = α·R′₂₀·dθ.")]
    [InlineData(nameof(Row), "x_e2", "", "exponent by which the resistance of 2.5 mm² road-vehicle copper grows", "In so short a time the heat stays in the metal: dθ = R′·dJ/(σ·S), and dR′ = α·R′₂₀·dθ.")]
    [InlineData(nameof(Row), "I_lr", "A", "least current of the stalled motor", "The least that the supply range brings, the path as warm as in running.")]
    [InlineData(nameof(Row), "I_lrg", "A", "greatest current of the stalled motor", "At the highest supply voltage, the path as cool as the air.")]
    [InlineData(nameof(Row), "θ_sv", "°C", "temperature that the wire reaches there", "By the balance and the quadrature of the overload below, at the current where the fuse is nearest to failing the wire.")]
    [InlineData(nameof(Row), "θ_sl", "°C", "limit at that current", "")]
    [InlineData(nameof(Bare), "I_k", "A", "greatest current that the supply can drive", "Supply lead 20 mΩ.")]
    [InlineData(nameof(TooMuch), "P_cap", "W", "most power that could reach any load through wire as cool as the air", "A load takes the most when it drops half the voltage. The current warms the wire, so that less comes through than this.")]
    public void Letter_HasItsMeaningItsUnitAndItsReason(string circuit, string letter, string unit, string sought, string reason)
    {
        SolutionStep step = Sheets[circuit].Value.Steps.First(s => s.Symbol?.Spec == letter && s.Kind != StepKind.Comparison);
        Assert.Equal((sought, unit, reason), (step.Sought, step.Unit, step.Reason));
    }

    /// <summary>Where there are several stretches the sheet says which one each question is about: the thin one, but for the two that lie side by side.</summary>
    [Theory]
    [InlineData("stretch where the least current is left", "The stretch of 1 m of 2.5 mm² road-vehicle copper.")]
    [InlineData("stretch where the conductor is hottest", "The stretch of 1 m of 2.5 mm² road-vehicle copper.")]
    [InlineData("stretch that the fuse is held against", "The stretch of 1 m of 2.5 mm² road-vehicle copper.")]
    [InlineData("stretch that a short circuit is hardest on", "The stretch of 1 m of 2.5 mm² road-vehicle copper.")]
    [InlineData("stretch that a stalled motor is hardest on", "The stretch of 1 m of 2.5 mm² road-vehicle copper.")]
    [InlineData("stretch that an overload is hardest on", "The stretch of 1 m of 2.5 mm² road-vehicle copper.")]
    [InlineData("stretch whose wires lie in parallel", "The stretch of 1 m of 2 × 6 mm² road-vehicle copper.")]
    public void SeveralStretches_TheSheetNamesTheOneThatDecides(string which, string named) =>
        Assert.Equal(named, Assert.Single(Row.Value.Steps, s => s.Sought == which).Reason);

    /// <summary>The stretches of the way back stand with their own ratings: each is as warm as its own current makes it.</summary>
    [Fact]
    public void WayBackOfTwoSections_EachHasItsOwnRating()
    {
        // Out and back together in air of 30 °C: 70 °C with 0.825 of the table's current of each, 32, 42 and 24 A for 2.5, 4 and 1.5 mm².
        foreach ((string section, double rated) in new[] { ("2.5", 32.0), ("4", 42), ("1.5", 24) })
        {
            SolutionStep warm = Back.Value.Steps.First(s => s.Sought.StartsWith($"temperature of {section} mm² road-vehicle copper", StringComparison.Ordinal) && s.Kind == StepKind.Calculation);
            double amperes = Back.Value.Steps.First(s => s.Symbol?.Spec == "I_lo" && s.Kind == StepKind.Calculation).Result!.Value;
            Near(30 + (40 * amperes * amperes / (0.825 * 0.825 * rated * rated)), warm.Result, 1e-6, section);
        }
    }

    private static Load Motor(double running, double stalled) => Load.Motor(A(running), A(stalled), A(stalled), Duration.FromSeconds(0.1));

    private static WorkedSolution Sheet(Load load, Segment feed, ReturnPath? back, double fuse)
    {
        CircuitRequirements asked = Circuit(load, feed: feed.Length.Meters, back: back ?? ReturnPath.Chassis(MilliOhm(1)), conductors: 1, drop: DropLimit.Percent(20));
        return CircuitDesigner.Verify(asked, CircuitPath.Create(feed, asked.Return), Blade(fuse), CheckCase.Overloads).Explain();
    }
}
