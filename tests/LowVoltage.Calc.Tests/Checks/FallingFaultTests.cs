using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>How the sheet works out a fault whose current falls: by the supplies and devices that do not go the usual way.</summary>
public class FallingFaultTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(5));

    [Fact]
    public void SupplyAtItsLimit_CountsAsOneOfMoreResistanceOnceTheWireIsHot()
    {
        // 12 V that hold 80 A through 14 m: 81 A would flow at first, with the wire at 70 °C; 12 000 A²s later it lets less than 80 A through.
        CircuitRequirements asked = CheckCase.Asked(Load, Source.CurrentLimited(V(12), A(80)), feed: 14, upstreamMilliOhms: 20);
        CircuitDesign design = CheckCase.Verify(asked, Blade(30));
        double hot = CheckCase.WireOhmsAt(70, 14), first = 12 / (hot + CheckCase.Lead + CheckCase.Chassis);
        Assert.True(first > 80, $"{first}");
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FaultOpensFuse, "t_c ≤ t_lim");
        Near(80, CheckCase.Number(sheet, "I_f"), 1e-12);

        // All that stays cool is what gives 80 A now.
        SolutionStep rest = Assert.Single(sheet.Steps, s => s.Sought == "resistance that stands for the source at its limit");
        Near((12 / 80.0) - hot, rest.Result, 1e-9);
        Assert.Equal(("R_x", "Ω", "It gives the same current at first, and less later."), (rest.Symbol!.Spec, rest.Unit, rest.Reason));
        (double seconds, double last) = Plain.Clear(Plain.BladeLongest, 30, 12, (12 / 80.0) - hot, 14, CheckCase.PerKilometer, 2.5, 70);
        Near(seconds, CheckCase.Number(sheet, "t_c"), 1e-5);
        Near(last, CheckCase.Number(sheet, "I_e"), 1e-5);
    }

    [Fact]
    public void Breaker_TakesTheTimeOfTheCurrentThatFlowsByThen()
    {
        FuseRating breaker = FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = "own list", Kind = "breaker", Reference = Reference.CommonPractice("made up for a test"), Ratings = [A(20)],
            Curves = [TimeCurrentCurve.CreateCircuitBreaker([], [new(29, 3600), new(100, 4), new(400, 0.02)])],
        }).SmallestAtLeast(A(20));
        CircuitDesign design = CheckCase.Verify(Load, breaker);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FaultOpensFuse, "t_c ≤ t_lim");
        Assert.Equal("By iteration: then the time below is what the device needs at the current that flows by then.", sheet.Steps.First(s => s.Symbol?.Spec == "J_e").Reason);
        double last = CheckCase.Number(sheet, "I_e"), joules = CheckCase.Number(sheet, "J_e");
        double needs = Math.Exp(Math.Log(4) + (Math.Log(last / 100) / Math.Log(4) * Math.Log(0.02 / 4)));
        Near(needs, design.Of(CheckKind.FaultOpensFuse).Value, 1e-6);
        Assert.DoesNotContain(sheet.Steps, s => s.Symbol?.Spec == "J_n");

        // The wire by then: 11.89 V over what stays and what the Joule integral has warmed.
        double celsius = Plain.Adiabatic(CheckCase.PerKilometer, 2.5, joules, 70);
        Near(11.89 / (0.018 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(celsius)), last, 1e-6);
        double seconds = 0;
        for (int k = 0; k < 4000; k++)
        {
            double now = Plain.Adiabatic(CheckCase.PerKilometer, 2.5, joules * (k + 0.5) / 4000, 70);
            double amperes = 11.89 / (0.018 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(now));
            seconds += joules / 4000 / (amperes * amperes);
        }

        Near(needs, seconds, 1e-5);
    }

    [Fact]
    public void SharedReturn_IsSaidInWords_WithTheVoltageThatIsLeft()
    {
        // 30 A of others in 1 m of 6 mm² at 70 °C.
        double shared = Plain.PerMeter(3.14, 70);
        CircuitRequirements asked = Circuit(Load, feed: 3, back: ReturnPath.Shared([Segment.Create(RoadVehicle(6), M(1))], A(30)), conductors: 1, drop: DropLimit.Percent(20));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3)), asked.Return), Blade(15), CheckCase.Table);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FaultOpensFuse, "t_c ≤ t_lim");
        Near(11.89 - (30 * shared), CheckCase.Number(sheet, "V_left"), 1e-12);
        Near((11.89 - (30 * shared)) / (0.018 + CheckCase.Lead + shared + CheckCase.WireOhmsAt(70)), CheckCase.Number(sheet, "I_f"), 1e-9);
        Assert.Equal("By iteration.", sheet.Steps.First(s => s.Symbol?.Spec == "J_e").Reason);
        Assert.StartsWith("V less Iₒ·R of the shared stretches, over all resistance", sheet.Steps.First(s => s.Symbol?.Spec == "I_e").Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void BatteryBehindALimitedSupply_SaysByWhichVoltageItIsDriven()
    {
        // 12 V behind 20 mΩ in series with 12 V that holds 60 A, through 15 A.
        Source both = Source.InSeries(Source.BehindResistance(V(12), MilliOhm(20)), Source.CurrentLimited(V(12), A(60)));
        CircuitDesign design = CheckCase.Verify(Load, Blade(15), source: both);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FaultOpensFuse, "t_c ≤ t_lim");
        SolutionStep first = sheet.Steps.First(s => s.Symbol?.Spec == "I_f");
        Assert.StartsWith("Sources in series of which some hold a limit", first.Reason, StringComparison.Ordinal);
        Assert.Equal("A", first.Unit);

        // The battery alone drives more than 60 A through what there is: the supply gives up its voltage.
        Near(Math.Max(Math.Min(60, 24 / (0.020 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(70))), 12 / (0.020 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(70))), first.Result, 1e-9);
        Assert.StartsWith("As at first by the voltage that drives it then", sheet.Steps.First(s => s.Symbol?.Spec == "I_e").Reason, StringComparison.Ordinal);
    }
}
