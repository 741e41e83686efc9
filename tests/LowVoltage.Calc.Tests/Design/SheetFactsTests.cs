using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Tests.Checks;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>The words of page 1: of the circuit as it was asked for, of the answer, and what the verdict rests on.</summary>
public class SheetFactsTests
{
    [Fact]
    public void Circuit_OfASupplyThatHoldsItsLimit_IsWhatWasStated()
    {
        CircuitRequirements asked = new(CheckCase.Asked(Load.ConstantCurrent(A(2)).WithMinimumVoltage(V(9)), Source.CurrentLimited(V(24), A(30)))) { Name = "Deck lamp" };
        (string, string)[] rows = Plain(new SheetFacts(CheckCase.Verify(asked, Blade(5))).Circuit);
        Assert.Equal(["Circuit", "Source", "Load", "Way", "Place", "Rules"], rows.Select(row => row.Item1));
        Assert.Equal(("Circuit", "Deck lamp"), rows[0]);
        Assert.Equal(("Source", "Current-limited supply: 24 V, holds a limit of 30 A"), rows[1]);
        Assert.StartsWith("Constant current: ", rows[2].Item2, StringComparison.Ordinal);
        Assert.EndsWith(" 2 A; works from 9 V", rows[2].Item2, StringComparison.Ordinal);
        Assert.Equal(("Way", "Feed 3 m one way; return through a chassis of 1 mΩ"), rows[3]);
        Assert.Contains("30 °C", rows[4].Item2, StringComparison.Ordinal);
        Assert.Equal(("Rules", SolutionText.Sentence(CheckCase.Table.Name)), rows[5]);
    }

    [Fact]
    public void Circuit_WithoutAName_SaysSo_AndRangesAreFromTo()
    {
        Source supply = Source.BehindResistance(V(22), V(24), V(28), MilliOhm(20), MilliOhm(60));
        (string, string)[] rows = Plain(new SheetFacts(CheckCase.Verify(CheckCase.Asked(Load.ConstantCurrent(A(2)), supply), Blade(5))).Circuit);
        Assert.Equal(("Circuit", "not named"), rows[0]);
        Assert.Equal(("Source", "Voltage behind a resistance: 22 V to 28 V, 20 mΩ to 60 mΩ inside"), rows[1]);
        Assert.DoesNotContain("works from", rows[2].Item2, StringComparison.Ordinal);

        // One value has no range, and a source without resistance says nothing of it.
        Assert.Equal(("Source", "Ideal voltage: 24 V"), Plain(new SheetFacts(CheckCase.Verify(CheckCase.Asked(Load.ConstantCurrent(A(2)), Source.Ideal(V(24))), Blade(5))).Circuit)[1]);
    }

    [Fact]
    public void Circuit_OfABattery_HasItsDataAndWhereItDisconnects()
    {
        string lead = Plain(new SheetFacts(CheckCase.Verify(Load.ConstantCurrent(A(2)), Blade(5))).Circuit)[1].Item2;
        Assert.StartsWith("Lead-acid battery: ", lead, StringComparison.Ordinal);
        Assert.Contains(" 600 A, ", lead, StringComparison.Ordinal);
        Assert.EndsWith(", 11.89 V to 14.4 V, 3.6 mΩ to 18 mΩ inside", lead, StringComparison.Ordinal);
        string pack = Plain(new SheetFacts(CheckCase.Verify(Load.ConstantCurrent(A(2)), Blade(5), source: Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), A(80)))).Circuit)[1].Item2;
        Assert.EndsWith(" inside, disconnects at 80 A", pack, StringComparison.Ordinal);
        Assert.Contains(" 100 Ah, ", pack, StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_HoldsWireFuseCurrentAndVoltage()
    {
        // 2 A whatever the voltage; at the load 11.89 V behind 18 mΩ to 14.4 V behind 3.6 mΩ, less the path.
        double path = CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhms(2);
        Assert.Equal(
            [
                ("Wire", "2.5 mm² road-vehicle copper, PVC (70 °C)"),
                ("Fuse", $"5 A {CheckCase.TypeC}, up to 32 V, breaks up to 1000 A"),
                ("Current", "2 A"),
                ("At the load", $"{CheckCase.Short(11.89 - (2 * (0.018 + path)))} V to {CheckCase.Short(14.4 - (2 * (0.0036 + path)))} V"),
            ],
            Plain(new SheetFacts(CircuitDesigner.Verify(CheckCase.Asked(Load.ConstantCurrent(A(2))), RoadVehicle(2.5), Blade(5), CheckCase.Table)).Answer));
    }

    [Fact]
    public void Answer_OfSeveralStretchesWithoutAFuse_ListsThem()
    {
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(2)));
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(2.5), M(2)), Segment.Create(RoadVehicle(1.5), M(1), 2)], asked.Return);
        (string, string)[] rows = Plain(new SheetFacts(CircuitDesigner.Verify(asked, path, null, CheckCase.Table)).Answer);
        Assert.Equal(("Wire", string.Join("; ", path.Feed.Select(segment => segment.ToString()))), rows[0]);
        Assert.Equal(("Fuse", "none"), rows[1]);
        Assert.Equal(4, rows.Length);
    }

    [Fact]
    public void Answer_OfAFuseOfWhichLittleIsPublished_ClaimsNothing() =>
        Assert.Equal(("Fuse", "10 A fuse (own list)"), Plain(new SheetFacts(CheckCase.Verify(Load.ConstantCurrent(A(2)), CheckCase.Nameless)).Answer)[1]);

    [Fact]
    public void Answer_WhereNothingPasses_IsTheNearest_WithoutNumbersThatDoNotExist()
    {
        (string Label, string Value)[] rows = Plain(new SheetFacts(CircuitDesigner.Design(Circuit(Load.ConstantPower(W(5000)), feed: 200), DesignRules.RoadVehicle)).Answer);
        Assert.Equal(["Wire", "Fuse"], rows.Select(row => row.Label));
        Assert.EndsWith(", the nearest: none passes", rows[0].Value, StringComparison.Ordinal);

        // No load, no fuse for it.
        Assert.Equal("none", rows[1].Value);
    }

    [Fact]
    public void Because_CountsInTheRightNumber()
    {
        CircuitDesign one = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), upstreamMilliOhms: null), DesignRules.RoadVehicle);
        Assert.Equal(
            ("Undetermined", $"No check fails, 1 of {one.Checks.Count} checks is undetermined: {one.Undetermined[0].Name}. To be settled before building."),
            (new SheetFacts(one).Verdict, new SheetFacts(one).Because));
        CircuitDesign several = CheckCase.Verify(Load.ConstantCurrent(A(2)), CheckCase.Nameless);
        Assert.True(several.Undetermined.Count > 1);
        Assert.Equal(
            $"No check fails, {several.Undetermined.Count} of {several.Checks.Count} checks are undetermined: {string.Join(", ", several.Undetermined.Select(check => check.Name).Distinct())}. To be settled before building.",
            new SheetFacts(several).Because);

        // 9 A through a 10 A fuse, which may carry 8 A continuously, on a wire that carries 32 A: one failure.
        CircuitDesign fails = CheckCase.Verify(CheckCase.Asked(Load.ConstantCurrent(A(9)), feed: 1), Blade(10));
        Assert.Equal(("Fail", $"1 of {fails.Checks.Count} checks fails: fuse carries the load. Do not build it as it stands."), (new SheetFacts(fails).Verdict, new SheetFacts(fails).Because));
    }

    [Fact]
    public void Circuit_OfALamp_ListsWhatWasStatedOfIt()
    {
        string load = Plain(new SheetFacts(CheckCase.Verify(Load.Lamp(W(24), V(12)), Blade(5))).Circuit)[2].Item2;
        Assert.Equal("Incandescent lamp: rated power of the lamp 24 W, rated voltage of the lamp 12 V, resistance of the lamp hot over cold 14", load);
    }

    /// <summary>A small value stands in a smaller unit where it meets its limit, and beside a limit that it exceeds in that of the limit.</summary>
    [Fact]
    public void Row_OfASmallValue_ChangesItsUnitOnlyBelowTheLimit()
    {
        string[] Cells(double feed)
        {
            CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(2)), feed: feed), RoadVehicle(2.5), Blade(5), DesignRules.Bench);
            return [.. SheetFacts.Row(design.Of(CheckKind.VoltageDrop)).Cells.Select(cell => cell.Replace(NumberText.Thin, ' '))];
        }

        string[] near = Cells(1), far = Cells(20);
        Assert.EndsWith(" mV", near[1], StringComparison.Ordinal);
        Assert.Equal(("≤ 0.36 V", "pass"), (near[2], near[5]));
        Assert.EndsWith(" V", far[1], StringComparison.Ordinal);
        Assert.DoesNotContain("mV", far[1], StringComparison.Ordinal);
        Assert.Equal("FAIL", far[5]);
    }

    [Fact]
    public void Answer_OfOneStretchOfExistingWiring_IsItsWireAndInsulation() =>
        Assert.Equal(
            ("Wire", "2.5 mm² road-vehicle copper, PVC (70 °C)"),
            Plain(new SheetFacts(CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(2))), RoadVehicle(2.5), Blade(5), DesignRules.Bench)).Answer)[0]);

    [Fact]
    public void Row_OfALevel_SaysWhichSupplyVoltage()
    {
        // A motor while it starts gets least at the least voltage; a resistance drops most at the greatest.
        CircuitDesign motor = CheckCase.Verify(Load.Motor(A(3), A(20), A(20), Duration.FromSeconds(0.5)).WithMinimumVoltage(V(9)), Blade(15));
        Assert.Equal("load, least supply voltage", SheetFacts.Row(motor.Of(CheckKind.StartVoltage)).Cells[4]);
        CircuitDesign heater = CheckCase.Verify(Load.Resistance(ElectricResistance.FromOhms(4)), Blade(10));
        CheckResult drop = heater.Of(CheckKind.VoltageDrop);
        Assert.Equal($"{drop.Where}, greatest supply voltage", SheetFacts.Row(drop).Cells[4]);
        CheckResult steady = CheckCase.Verify(Load.ConstantCurrent(A(5)), Blade(10), source: Source.BehindResistance(V(24), MilliOhm(20))).Of(CheckKind.ContinuousCurrent);
        Assert.Equal(steady.Level is null ? steady.Where : $"{steady.Where}, {(steady.Level == SupplyLevel.Nominal ? "nominal" : "least")} supply voltage", SheetFacts.Row(steady).Cells[4]);
    }

    [Fact]
    public void Row_WithoutNumbers_SaysNoneAndWhy()
    {
        CheckResult unknown = CheckCase.Verify(Load.ConstantCurrent(A(2)), CheckCase.Nameless).Of(CheckKind.FaultOpensFuse);
        (string[] cells, string note) = SheetFacts.Row(unknown);
        Assert.Equal(("none", "none", "none", "undetermined"), (cells[1], cells[2], cells[3], cells[5]));
        Assert.Equal(SolutionText.Sentence(unknown.Note), note);
        CheckResult known = CheckCase.Verify(Load.ConstantCurrent(A(2)), Blade(10)).Of(CheckKind.FuseCarriesLoad);
        Assert.Equal(("10\u00A0A", "≥\u00A02.5\u00A0A", "pass", ""), (SheetFacts.Row(known).Cells[1], SheetFacts.Row(known).Cells[2], SheetFacts.Row(known).Cells[5], SheetFacts.Row(known).Note));
    }

    [Fact]
    public void StepOf_ACheckThatTheWorkingDoesNotMake_IsNone()
    {
        WorkedSolution working = CheckCase.Verify(Load.ConstantCurrent(A(2)), Blade(10)).Explain();
        CheckResult other = CheckCase.Verify(Load.Motor(A(3), A(20), A(20), Duration.FromSeconds(0.5)).WithMinimumVoltage(V(9)), Blade(15)).Of(CheckKind.StartVoltage);
        Assert.Null(SheetWords.StepOf(working, other));
    }

    private static (string, string)[] Plain(IEnumerable<(string Label, string Value)> rows) => [.. rows.Select(row => (row.Label, row.Value.Replace('\u00A0', ' ')))];
}
