using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Working;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>What an inspector asks of a sheet: the caller's numbers in the givens, each step derived, the same number everywhere, the stretch that a check is about.</summary>
public class CalculationSheetTests
{
    private static readonly CircuitPath Mixed = CircuitPath.Create(
        [Segment.Create(RoadVehicle(2.5), M(4)), Segment.Create(RoadVehicle(0.75), M(0.4))], ReturnPath.Chassis(MilliOhm(3))).WithFeedJoints(Joint.Create("fuse and plug", MilliOhm(9)));

    public static TheoryData<string, string[]> Loads => new()
    {
        { "power", ["P_out = 60 W", "η_L = 0.9", "U_min = 9 V"] },
        { "lamp", ["P_r = 21 W", "U_r = 12 V", "k_c = 14"] },
        { "motor", ["I_run = 3 A", "I_pk = 8 A", "I_lock = 9 A", "t_run = 0.4 s", "U_mot = 12 V"] },
        { "capacitor", ["I_L = 2 A", "C = 1500 µF"] },
        { "duty", ["R_L = 6 Ω", "D = 0.25"] },
        { "together", ["I_L = 1 A", "I_L2 = 2 A", "R_L = 10 Ω"] },
    };

    [Theory, MemberData(nameof(Loads))]
    public void Givens_HoldWhatTheCallerStatedOfTheLoad(string which, string[] expected)
    {
        Load load = which switch
        {
            "power" => Load.ConstantPower(W(60), 0.9, V(9)),
            "lamp" => Load.Lamp(W(21), V(12)),
            "motor" => Load.Motor(A(3), A(8), A(9), Duration.FromSeconds(0.4), V(12)),
            "capacitor" => Load.ConstantCurrent(A(2)).WithInputCapacitor(ElectricCapacitance.FromMicrofarads(1500)),
            "duty" => Load.Resistance(ElectricResistance.FromOhms(6)).WithDutyCycle(DutyCycle.FromFraction(0.25)),
            _ => Load.Together(Load.ConstantCurrent(A(1)), Load.ConstantCurrent(A(2)), Load.Resistance(ElectricResistance.FromOhms(10))),
        };
        AssertGiven(CircuitDesigner.Design(Circuit(load, feed: 3.5, joints: Joint.Create("crimps", MilliOhm(7))), DesignRules.RoadVehicle), [.. expected, "L_1 = 3.5 m", "R_2 = 7 mΩ", "R_3 = 20 mΩ", "I_cc = 600 A", "p_max = 3 %"]);
    }

    [Fact]
    public void Givens_HoldTheDataOfABattery_AndOfASupply()
    {
        AssertGiven(CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)), Battery.LithiumIronPhosphate(8, ElectricCharge.FromAmpereHours(100)), upstreamMilliOhms: 90), DesignRules.Bench), ["n_s = 8", "C_b = 100 Ah"]);
        AssertGiven(CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)), Source.CurrentLimited(V(24), A(30))), DesignRules.Bench), ["V_s = 24 V", "R_s = 0 Ω", "I_lim = 30 A"]);
        AssertGiven(
            CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)), Source.BehindResistance(V(22), V(24), V(28), MilliOhm(20), MilliOhm(60))), DesignRules.Bench),
            ["V_min = 22 V", "V_nom = 24 V", "V_max = 28 V", "R_max = 60 mΩ", "R_nom = 40 mΩ", "R_min = 20 mΩ"]);
    }

    [Fact]
    public void Supply_IsNotCalledEmptyOrCold()
    {
        string supply = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)), Source.BehindResistance(V(22), V(24), V(28), MilliOhm(20), MilliOhm(60))), DesignRules.Bench).Explain().ToText();
        Assert.All((string[])["empty", "aged", "battery empty"], word => Assert.DoesNotContain(word, supply[..supply.IndexOf("\nVerdict\n", StringComparison.Ordinal)], StringComparison.Ordinal));
        Assert.Contains("empty, aged and cold", CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2))), DesignRules.Bench).Explain().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void SupplyThatDoesNotChange_HasOneOperatingPoint()
    {
        WorkedSolution sheet = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(4)), Source.BehindResistance(V(24), MilliOhm(20))), DesignRules.Bench).Explain();
        Assert.Single(sheet.Steps.Select(s => s.Section).Where(s => s.StartsWith("Operating point", StringComparison.Ordinal)).Distinct());
        Assert.Single(sheet.Steps, s => s.Symbol?.Name == "U");
    }

    [Fact]
    public void EqualLevels_AreNotRepeated()
    {
        Source flat = Source.BehindResistance(V(24), V(24), V(28), MilliOhm(30), MilliOhm(30));
        WorkedSolution sheet = CircuitDesigner.Design(Circuit(Load.ConstantPower(W(50)), flat), DesignRules.Bench).Explain();
        Assert.Single(sheet.Steps, s => s.Reason == "The same as at the least supply voltage, number for number.");
    }

    [Fact]
    public void MixedPath_RatesEachConductorByBothBases_AndSaysWhichStretchTheCheckUses()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), feed: 4.4, back: Mixed.Return, ambient: 45, conductors: 4), Mixed, Blade(5), DesignRules.RoadVehicle);
        WorkedSolution sheet = design.Explain();
        SolutionStep lower = Assert.Single(sheet.Steps, s => s.Symbol?.Name == "I_z");
        Assert.Equal("I_z = min(I_za; I_zb)", lower.InSymbols);
        Assert.Contains(sheet.Steps, s => s.Symbol?.Name == "I_z2" && s.Section.Contains("0.75 mm²", StringComparison.Ordinal));
        Assert.Contains(sheet.Steps, s => s.Sought == "stretch where the least current is left" && s.Reason.Contains("0.4 m of 0.75 mm²", StringComparison.Ordinal));
        SolutionStep check = Assert.Single(sheet.Steps, s => s.Sought == "check: continuous current");
        Assert.Equal("I_L ≤ I_z2", check.InSymbols);
        Assert.Equal(design.Of(CheckKind.ContinuousCurrent).Limit, sheet.Steps.First(s => s.Symbol?.Name == "I_z2").Result);
    }

    // The heat balance of the overload is straight in θ on both sides: its solutions are written out here once more.
    [Theory]
    [InlineData(4, 5, 45)]
    [InlineData(3, 5, 30)]
    public void Overload_TimeAndTemperature_AgreeWithTheClosedForm(double load, double fuse, double celsius)
    {
        WorkedSolution sheet = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(load)), feed: 4.4, back: Mixed.Return, ambient: celsius, conductors: 4), Mixed, Blade(fuse), DesignRules.RoadVehicle).Explain();
        double value(string name) => sheet.Steps.First(s => s.Symbol?.Name == name).Result!.Value;
        double cold = value("R′_20,2"), alpha = 0.00393, g = value("G"), limit = 70;
        double rated = value("I_z2"), hot = cold * (1 + (alpha * (limit - 20)));
        Near(rated * rated * hot / (limit - celsius), g, 1e-12, "G");
        double current = 1.35 * fuse, slope = g - (current * current * cold * alpha);
        double settled = celsius + (current * current * cold * (1 + (alpha * (celsius - 20))) / slope);
        if (slope > 0 && settled < 1000)
        {
            Near(settled, value("θₛₜ"), 1e-9, "settled");
        }

        // C′·dθ/dt = I²·R′(θ) − G·(θ − θa) from the continuous limit on: an exponential.
        double i = value("Iₜ"), time = value("tₒ"), heat = value("Cₘ"), rate = ((i * i * cold * alpha) - g) / heat;
        double start = ((i * i * hot) - (g * (limit - celsius))) / heat;
        Near(limit + (start * (Math.Exp(rate * time) - 1) / rate), value("θₒ"), 1e-7, "reached");
        if (sheet.Steps.FirstOrDefault(s => s.Symbol?.Name == "t_w") is { } race)
        {
            double end = sheet.Steps.First(s => s.Symbol?.Name is "θₒₚ" or "θ_sc" && race.Sought.Contains(s.Symbol.Name, StringComparison.Ordinal)).Result!.Value;
            Near(Math.Log(1 + (rate * (end - limit) / start)) / rate, race.Result!.Value, 1e-6, "time of the wire");
        }
    }

    // The current of the far-end fault falls as the conductors heat: the time by stepping through it, apart from the closed form that the library uses.
    [Fact]
    public void FarEnd_ClearingTime_AgreesWithSteppingThroughTheFault()
    {
        WorkedSolution sheet = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), feed: 4.4, back: Mixed.Return, ambient: 45, conductors: 4), Mixed, Blade(20), DesignRules.RoadVehicle).Explain();
        double value(string name) => sheet.Steps.First(s => s.Symbol?.Name == name).Result!.Value;
        double joules = value("Jₑ"), seconds = 0, fixedOhms = 0.018 + 0.009 + 0.02 + 0.003;
        double first = 0.0076 * (1 + (0.00393 * 50)) * 4, second = 0.0247 * (1 + (0.00393 * 50)) * 0.4;
        const int Steps = 20_000;
        for (int i = 0; i < Steps; i++)
        {
            double share = (i + 0.5) / Steps;
            double amperes = 11.89 / (fixedOhms + (first * Math.Exp(value("xₑ") * share)) + (second * Math.Exp(value("xₑ₂") * share)));
            seconds += joules / Steps / (amperes * amperes);
        }

        Near(seconds, value("t_c"), 2e-4, "time");
        Assert.InRange(value("t_c"), joules / (value("I_f") * value("I_f")), joules / (value("Iₑ") * value("Iₑ")));
        Near(joules, value("Jₙ"), 1e-9, "what the fuse needs");
    }

    [Theory]
    [InlineData(nameof(CheckKind.ConductorTemperature), "K.")]
    [InlineData(nameof(CheckKind.ShortCircuitTemperature), "K.")]
    [InlineData(nameof(CheckKind.VoltageDrop), "%.")]
    public void Margin_OfATemperature_IsInKelvins(string id, string unit)
    {
        CheckKind kind = CheckKind.Find(id)!;
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5))), DesignRules.RoadVehicle);
        CheckResult check = design.Of(kind);
        string reason = design.Explain().Steps.Single(s => s.Sought == "check: " + check.Name).Reason;
        Assert.Equal(unit, reason.Split(' ')[2]);
        double shown = double.Parse(reason.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
        Near(unit == "K." ? check.Limit - check.Value : 100 * check.Margin, shown, 5e-3, "margin");
    }

    [Fact]
    public void Margin_BeyondTenTimes_IsInWords()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantPower(W(300), 0.9, V(10.5)), feed: 150), DesignRules.RoadVehicle);
        WorkedSolution sheet = design.Explain();
        Assert.StartsWith("More than ten times what is needed.", sheet.Steps.Single(s => s.Sought == "check: mechanical minimum").Reason, StringComparison.Ordinal);
        double beyond = double.Parse(sheet.Steps.Single(s => s.Sought == "check: voltage drop").Reason.Split(' ')[4], System.Globalization.CultureInfo.InvariantCulture);
        Near(-100 * design.Of(CheckKind.VoltageDrop).Margin, beyond, 5e-3, "beyond");
        Assert.StartsWith("Beyond the limit by ", sheet.Steps.Single(s => s.Sought == "check: voltage drop").Reason, StringComparison.Ordinal);
        Assert.All(sheet.Steps, s => Assert.DoesNotContain("E+", s.Reason, StringComparison.Ordinal));
    }

    [Fact]
    public void NothingFits_TheLargestSizeIsWorkedOut_UpToTheCheckThatFails()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantPower(W(300), 0.9, V(10.5)), feed: 150), DesignRules.RoadVehicle);
        Assert.True(design.IsNearest);
        Assert.Equal("120 mm² road-vehicle copper", design.Wire.Name);
        WorkedSolution sheet = design.Explain();
        SolutionStep worst = sheet.Steps.First(s => s.Symbol?.Name == "ΔV_b");
        Near(design.Of(CheckKind.VoltageDrop).Value, worst.Result!.Value, 1e-14, "drop");
        SolutionStep failed = Assert.Single(sheet.Steps, s => s.Sought == "check: voltage drop");
        Assert.Equal("ΔV_b ≤ ΔVₘₐₓ", failed.InSymbols);
        Assert.Contains(sheet.Steps, s => s.Symbol?.Name == "Iₙ" && s.Result!.Value.Equals(design.Fuse!.Current.Amperes));
        ExplanationProperties.AssertReadsBack(sheet, "nothing fits", engineering: true);
        ExplanationProperties.AssertOneMeaning(sheet, "nothing fits");
    }

    [Fact]
    public void NoFuseFits_TheOneThatComesNearestIsWorkedOut()
    {
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(Load.ConstantPower(W(1000), 0.88), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(200)), feed: 1.2, ambient: 40, upstreamMilliOhms: 0.5), DesignRules.RoadVehicle);
        Assert.Equal(CheckKind.BreakingCapacity, design.Governing.Kind);
        WorkedSolution sheet = design.Explain();
        Assert.Contains(sheet.Steps, s => s.Symbol?.Name == "Iₖ" && s.Kind == StepKind.Calculation && s.Result!.Value.Equals(design.Governing.Value));
        Assert.Equal("Iₖ ≤ I_c", Assert.Single(sheet.Steps, s => s.Sought == "check: breaking capacity").InSymbols);
    }

    [Fact]
    public void PowerOutOfReach_ShowsWhatCouldComeThrough()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantPower(W(5000)), feed: 200), DesignRules.RoadVehicle);
        SolutionStep bound = Assert.Single(design.Explain().Steps, s => s.Symbol?.Name == "P_cap");
        double wire = Plain.PerMeter(OhmsPerKilometer(design.Wire), 30) * 400;
        Near(11.89 * 11.89 / (4 * (0.018 + 0.02 + wire)), bound.Result!.Value, 1e-9, "bound");
        Assert.True(design.Governing.Value < bound.Result && design.Governing.Value > 0.98 * bound.Result);
    }

    [Fact]
    public void Start_OfALamp_IsDerivedFromItsColdFilament()
    {
        WorkedSolution sheet = CircuitDesigner.Design(Circuit(Load.Lamp(W(21), V(12)), feed: 4), DesignRules.RoadVehicle).Explain();
        double cold = 12 / (21.0 / 12) / 14, ohms = sheet.Steps.First(s => s.Symbol?.Name == "Rₛₜ").Result!.Value;
        Near(14.4 / (cold + ohms), sheet.Steps.First(s => s.Symbol?.Name == "Iₛ").Result!.Value, 1e-12, "peak");
        Assert.StartsWith("sᵢ ≤ ", Assert.Single(sheet.Steps, s => s.Sought == "check: fuse holds at start, share of what it withstands").InSymbols, StringComparison.Ordinal);
    }

    [Fact]
    public void Sections_FollowTheOrderOfReading()
    {
        string[] sections = [.. CircuitDesigner.Design(Circuit(Load.Lamp(W(21), V(12)), feed: 4), DesignRules.RoadVehicle).Explain().Steps.Select(s => s.Section).Distinct()];
        Assert.Equal(
            [
                "The source", "The wire", "What the wire carries continuously", "Operating point at the least supply voltage", "Operating point at the nominal supply voltage",
                "Operating point at the greatest supply voltage", "Voltage", "Current and temperature of the wire in service", "The fuse", "The fuse while the load starts",
                "Short circuit at the fuse", "Short circuit at the far end", "Overload", "Verdict",
            ],
            sections);
    }

    // ISO 6722-1: the thinnest cable of the series that is laid singly, and the thickest.
    private static double OhmsPerKilometer(Conductor wire) => wire.Name switch
    {
        "0.5 mm² road-vehicle copper" => 37.1,
        "120 mm² road-vehicle copper" => 0.153,
        _ => throw new InvalidOperationException("another wire: " + wire),
    };

    private static void AssertGiven(CircuitDesign design, string[] expected)
    {
        string[] given = [.. design.Explain().Givens.Where(g => g.Symbol is not null).Select(g => $"{g.Symbol!.Latex} = {g.Value}".Replace('\u00A0', ' '))];
        Assert.All(expected, line => Assert.Contains(given, one => one == Latex(line)));
    }

    private static string Latex(string line)
    {
        string[] parts = line.Split(" = ");
        return $"{new Symbol(parts[0], 1, "", "").Latex} = {parts[1]}";
    }
}
