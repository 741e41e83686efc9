using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

public class DesignRulesTests
{
    private static readonly InsulationMaterial Xlpe = InsulationMaterial.CrossLinkedPolyethylene;

    [Fact]
    public void RoadVehicleTable_InABundle_ReportsTheForeignGroupingFactor()
    {
        DesignRules rules = new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable };
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(8)), conductors: 6), rules);

        // One cable to a pair: 0.825 (FAA AC 43.13-1B figure 11-5, two wires, 100 %); a pair to three circuits: 0.70 (IEC 60364-5-52 Table B.52.17). 0.825 · 0.70 = 0.5775.
        Assert.Contains(design.Ampacity!.Remarks, line => line.StartsWith("Rules are mixed: the factor 0.5775 ", StringComparison.Ordinal));
        Assert.Contains(design.Assumptions, line => line.Contains("IEC 60364-5-52", StringComparison.Ordinal) && line.StartsWith("Rules are mixed", StringComparison.Ordinal));

        // The preset takes the lower of table and heat balance; it says so although the heat balance decides here, and shows no table it did not use.
        CircuitDesign lower = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(8)), conductors: 6), DesignRules.RoadVehicle);
        Assert.Contains(lower.Assumptions, line => line.StartsWith("Heat balance: 6 equal wires", StringComparison.Ordinal));
        Assert.Null(lower.Ampacity);
        Assert.Equal(ReferenceKind.Paper, lower.Of(CheckKind.ContinuousCurrent).Reference.Kind);
    }

    [Fact]
    public void LowerOf_NamesTheSourceThatDecides()
    {
        // 35 mm², one cable alone at 30 °C, the chassis as the way back: the table's 158 A lies below the heat balance; 2.5 mm²: the heat balance below the table's 32 A.
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(20)), conductors: 1, feed: 1, back: ReturnPath.Chassis(ElectricResistance.FromMilliohms(2)));
        DesignRules rules = DesignRules.RoadVehicle;
        CheckResult thick = CircuitDesigner.Verify(asked, RoadVehicle(35), Blade(25), rules).Of(CheckKind.ContinuousCurrent);
        Assert.Equal(158, thick.Limit);
        Assert.Equal(AmpacityBasis.RoadVehicleTable.Reference, thick.Reference);
        Near(158, rules.Ampacity.Derate(RoadVehicle(35), asked)!.Current.Amperes, 1e-12);
        CheckResult thin = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(25), rules).Of(CheckKind.ContinuousCurrent);
        Assert.InRange(thin.Limit!.Value, 20, 31.9);
        Assert.Equal(AmpacityBasis.HeatBalance.Reference, thin.Reference);

        // 3 mm² is no row of the table: the heat balance alone, and it is named.
        Assert.Equal(AmpacityBasis.HeatBalance.Reference, CircuitDesigner.Verify(asked, RoadVehicle(3), Blade(25), rules).Of(CheckKind.ContinuousCurrent).Reference);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(6)]
    [InlineData(24)]
    public void LowerOf_IsTheLowerAndNeverFallsFromRowToRowOfTheTable(int conductors)
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(1)), conductors: conductors);
        double before = 0;
        foreach (Conductor wire in ConductorSeries.RoadVehicle.Conductors)
        {
            bool table = AmpacityBasis.RoadVehicleTable.TryRate(wire, asked, out ElectricCurrent a);
            Assert.True(AmpacityBasis.HeatBalance.TryRate(wire, asked, out ElectricCurrent b));
            foreach (AmpacityBasis basis in new[]
            {
                AmpacityBasis.LowerOf(AmpacityBasis.RoadVehicleTable, AmpacityBasis.HeatBalance), AmpacityBasis.LowerOf(AmpacityBasis.HeatBalance, AmpacityBasis.RoadVehicleTable),
            })
            {
                Assert.True(basis.TryRate(wire, asked, out ElectricCurrent lower));
                Assert.Equal(table ? Math.Min(a.Amperes, b.Amperes) : b.Amperes, lower.Amperes);
                // Two sizes, 40 mm² and 60 mm², are no rows of the table and have the heat balance alone.
                Assert.True(lower.Amperes >= before || !table, wire.Name);
            }

            before = table ? Math.Min(a.Amperes, b.Amperes) : before;
        }
    }

    [Fact]
    public void SmallCraft_BelowFiftyVolts_ReportsTheCountAsAPractice()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(8)), conductors: 6, insulation: Xlpe, upstreamMilliOhms: 15), DesignRules.SmallCraft);
        Assert.Contains(design.Assumptions, line => line.Contains("applied as a practice", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(30, false, 1)]
    [InlineData(30.1, false, 0.82)]
    [InlineData(50, false, 0.82)]
    [InlineData(20, true, 0.82)]
    public void SmallCraft_AboveThirtyDegreesOrInAnEngineSpace_TakesNoteOne(double ambient, bool engine, double factor)
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(1)), ambient: ambient, engineSpace: engine, insulation: Xlpe);
        Assert.True(AmpacityBasis.SmallCraftTable.TryRate(Awg(12), asked, out ElectricCurrent current));
        Near(40 * factor, current.Amperes, 1e-12);
        Near(current.Amperes, AmpacityBasis.SmallCraftTable.Derate(Awg(12), asked)!.Current.Amperes, 1e-12);
    }

    [Theory]

    // Table 11-9 stands for 33 wires at 20 % of the bundle's capacity (sizes 22 to 10) and for 9 wires (size 8 and larger).
    [InlineData(2, 1.0, true, true)]
    [InlineData(5, 1.0, true, false)]
    [InlineData(8, 1.0, false, false)]
    [InlineData(9, 0.2, true, true)]
    [InlineData(10, 0.2, true, false)]
    [InlineData(20, 0.2, true, false)]
    [InlineData(33, 0.2, true, false)]
    [InlineData(33, 0.1, true, false)]
    [InlineData(34, 0.2, false, false)]
    [InlineData(33, 0.3, false, false)]
    [InlineData(40, 0.2, false, false)]
    public void Aircraft_HoldsForBundlesNoHarderThanTheTables(int wires, double loading, bool small, bool large)
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(1)), ambient: 70, conductors: wires, insulation: InsulationMaterial.Etfe, bundleLoading: loading);
        Assert.Equal(small, AmpacityBasis.AircraftTable.TryRate(Conductor.AircraftWire(AircraftWireSize.FromNumber(10)), asked, out ElectricCurrent ten));
        Assert.Equal(large, AmpacityBasis.AircraftTable.TryRate(Conductor.AircraftWire(AircraftWireSize.FromNumber(8)), asked, out ElectricCurrent eight));
        Assert.Equal(small ? 26 : 0, ten.Amperes);
        Assert.Equal(large ? 57 : 0, eight.Amperes);
    }

    [Fact]
    public void Basis_OfAnotherSystemOrMetal_DoesNotRate()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(1)), insulation: Xlpe);
        Assert.False(AmpacityBasis.SmallCraftTable.TryRate(RoadVehicle(2.5), asked, out _));
        Assert.False(AmpacityBasis.SmallCraftTable.TryRate(Conductor.Stranded(AwgSize.FromNumber(12), ConductorMaterial.Aluminium), asked, out _));
        Assert.False(AmpacityBasis.SmallCraftTable.TryRate(Conductor.OfArea(Area.FromSquareMillimeters(2.5), ConductorMaterial.Copper), asked, out _));
        Assert.False(AmpacityBasis.RoadVehicleTable.TryRate(Awg(12), Circuit(Load.ConstantCurrent(A(1))), out _));
        Assert.False(AmpacityBasis.RoadVehicleTable.TryRate(RoadVehicle(2.5), asked, out _));
        Assert.Null(AmpacityBasis.RoadVehicleTable.Derate(RoadVehicle(2.5), asked));
        Assert.Null(AmpacityBasis.HeatBalance.Derate(RoadVehicle(2.5), asked));
    }

    [Fact]
    public void HeatBalance_InABundle_IsTheBundleModelLessItsMargin()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(1)), conductors: 6, ambient: 40);
        Assert.True(AmpacityBasis.HeatBalance.TryRate(Class5(2.5), asked, out ElectricCurrent current));
        Calc.Heating.WireBundle bundle = Calc.Heating.WireBundle.Create(Wire.Create(Class5(2.5), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.35)), 6, 6);
        Near(0.97 * Calc.Heating.BundleHeat.CurrentFor(bundle, new() { Ambient = C(40), Emissivity = 0.9 }, C(70)).Amperes, current.Amperes, 1e-12);
    }

    [Fact]
    public void Upstream_NotStated_LeavesTheBreakingCapacityUndeterminedOnlyWhereItMatters()
    {
        CircuitDesign big = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(4)), upstreamMilliOhms: null), DesignRules.Bench);
        Assert.Equal(Verdict.Undetermined, big.Verdict);
        CheckResult open = Assert.Single(big.Undetermined);
        Assert.Equal(CheckKind.BreakingCapacity, open.Kind);
        Assert.Contains("up to 4000 A at the source's terminals, the fuse breaks 1000 A", open.Note, StringComparison.Ordinal);
        Assert.StartsWith("Some checks could not be made", big.Cautions[0], StringComparison.Ordinal);
        Assert.Equal(["Choose a fuse with a higher breaking capacity, fit a main fuse that has one at the source, or state the resistance of the supply lead."], big.Advice);

        // 14.4 V over 14.4 mΩ is exactly 1000 A; a battery of 140 A cold cranking gives less: nothing is open.
        CircuitDesign small = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2.4)), Battery.LeadAcid(A(140)), upstreamMilliOhms: null), DesignRules.Bench);
        Assert.Equal(Verdict.Pass, small.Verdict);
        small.Is(CheckKind.BreakingCapacity, 14.4 / (5.4 / 140 / 2.5), 1000);
    }

    [Fact]
    public void StripFuse_WithoutOperatingTimes_IsUndeterminedAndWithThemIsChecked()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(100)), feed: 0.5, conductors: 1, upstreamMilliOhms: 5, drop: DropLimit.Percent(10));
        CircuitDesign open = CircuitDesigner.Design(asked, new DesignRules(DesignRules.RoadVehicle) { Fuses = FuseSeries.RoadVehicleStrip51 });
        Assert.Equal(Verdict.Undetermined, open.Verdict);
        Assert.Equal([CheckKind.FaultOpensFuse, CheckKind.ShortCircuitTemperature, CheckKind.OverloadTemperature], open.Undetermined.Select(check => check.Kind));
        Assert.All(open.Undetermined, check => Assert.Contains("no operating times are published for the 125 A strip fuse", check.Note, StringComparison.Ordinal));
        CircuitDesign known = CircuitDesigner.Design(
            asked, new DesignRules(DesignRules.RoadVehicle) { Fuses = FuseSeries.RoadVehicleStrip51.WithLimits(OperatingTimeLimits.RoadVehicleStrip) });
        Assert.Equal(Verdict.Pass, known.Verdict);
        Assert.Equal(125, known.Fuse!.Current.Amperes);
    }

    [Fact]
    public void Fuse_WithoutDirectCurrentRating_IsUndeterminedOnVoltageAndBreaking()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(2))), Class5(1), FuseSeries.Iec60127Sheet1.SmallestAtLeast(A(4)), DesignRules.Bench);
        Assert.Equal(CheckOutcome.Undetermined, design.Of(CheckKind.FuseVoltage).Outcome);
        Assert.Equal(CheckOutcome.Undetermined, design.Of(CheckKind.BreakingCapacity).Outcome);
        Assert.Equal(Verdict.Undetermined, design.Verdict);
    }

    [Fact]
    public void FuseDistance_OfSmallCraft_SevenInchesOrFortyWhenSheathed()
    {
        CircuitRequirements with(double? meters, bool sheathed) => new()
        {
            Source = LeadAcid(), Load = Load.ConstantCurrent(A(4)), Feed = M(2), Return = ReturnPath.Wire(M(2)), Place = new Place { Ambient = C(25) }, Insulation = Xlpe, Upstream = MilliOhm(15),
            FuseDistance = meters is { } m ? M(m) : null, SheathedToFuse = sheathed,
        };
        CheckOutcome of(double? meters, bool sheathed) => CircuitDesigner.Verify(with(meters, sheathed), Awg(12), Blade(5), DesignRules.SmallCraft).Of(CheckKind.FuseDistance).Outcome;
        Assert.Equal(CheckOutcome.Pass, of(0.1778, false));
        Assert.Equal(CheckOutcome.Fail, of(0.1779, false));
        Assert.Equal(CheckOutcome.Pass, of(1.016, true));
        Assert.Equal(CheckOutcome.Fail, of(1.0161, true));
        Assert.Equal(CheckOutcome.Undetermined, of(null, true));
        Assert.Null(CircuitDesigner.Verify(with(null, false), Class5(1), Blade(5), DesignRules.Bench).Find(CheckKind.FuseDistance));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.75)]
    [InlineData(6)]
    public void MinimumSection_InAnotherUnit_AdmitsItsOwnSize(double squareMillimeters)
    {
        foreach (Area area in new[] { Area.FromSquareMeters(squareMillimeters * 1e-6), Area.FromSquareCentimeters(squareMillimeters / 100), Area.FromSquareInches(squareMillimeters / (25.4 * 25.4)) })
        {
            DesignRules rules = new(DesignRules.Bench) { MinimumSection = area };
            Assert.Equal(squareMillimeters, CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2.4)), feed: 0.1), rules).Wire!.Area.SquareMillimeters);
        }
    }

    [Fact]
    public void FuseDistance_OfZero_FailsWithAMarginThatIsANumber()
    {
        DesignRules rules = new(DesignRules.Bench) { FusePractice = new FusePractice { Distance = SourceDistance.Create("x", Length.Zero, Length.Zero, Reference.CommonPractice("at the source")) } };
        CheckResult check = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4))), Class5(1), Blade(5), rules).Of(CheckKind.FuseDistance);
        Assert.Equal((CheckOutcome.Fail, -1), (check.Outcome, check.Margin));
        CheckResult at = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), fuseDistance: 0), Class5(1), Blade(5), rules).Of(CheckKind.FuseDistance);
        Assert.Equal((CheckOutcome.Pass, 0), (at.Outcome, at.Margin));
    }

    [Theory]
    [InlineData(12, false, 0.5)]
    [InlineData(12.8, true, 1)]
    [InlineData(14, false, 0.5)]
    [InlineData(24, false, 1)]
    [InlineData(28, true, 2)]
    [InlineData(48, false, 0)]
    [InlineData(18, false, 0)]
    public void AircraftDrop_KnowsTwoBuses(double nominal, bool intermittent, double volts)
    {
        Assert.Equal(volts > 0, DropLimit.AircraftTable.TryFor(V(nominal), intermittent, out ElectricPotential most));
        Assert.Equal(volts, most.Volts);
    }

    [Fact]
    public void AircraftDrop_ForAnotherVoltage_IsUndetermined()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(2)), LeadAcid(4), insulation: InsulationMaterial.Etfe, upstreamMilliOhms: 60);
        CheckResult drop = CircuitDesigner.Design(asked, DesignRules.LightAircraft).Of(CheckKind.VoltageDrop);
        Assert.Equal(CheckOutcome.Undetermined, drop.Outcome);
        Assert.Contains("nominal 48 V; state one", drop.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void DropLimit_InWords()
    {
        Assert.Equal("3 %", DropLimit.Percent(3).ToString());
        Assert.Equal("0.4 V", DropLimit.Volts(V(0.4)).ToString());
        Assert.Equal("FAA AC 43.13-1B Table 11-6", DropLimit.AircraftTable.ToString());
    }

    [Fact]
    public void Circuit_WithItsOwnAllowance_IsJudgedByIt()
    {
        // A charging lead is judged in tenths of a volt.
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(8)), drop: DropLimit.Volts(V(0.2))), DesignRules.Bench);
        Assert.Equal(0.2, design.Of(CheckKind.VoltageDrop).Limit);
        Assert.Equal("allowance stated by the caller", design.Of(CheckKind.VoltageDrop).Reference.Title);
    }

    [Fact]
    public void Rules_Copied_KeepEverythingButWhatIsChanged()
    {
        DesignRules copy = new(DesignRules.SmallCraft) { Name = "mine" };
        Assert.Equal("mine", copy.ToString());
        Assert.Same(DesignRules.SmallCraft.Conductors, copy.Conductors);
        Assert.Same(DesignRules.SmallCraft.Fuses, copy.Fuses);
        Assert.Same(DesignRules.SmallCraft.Ampacity, copy.Ampacity);
        Assert.Same(DesignRules.SmallCraft.DropLimit, copy.DropLimit);
        Assert.Same(DesignRules.SmallCraft.FusePractice, copy.FusePractice);
        Assert.Same(DesignRules.SmallCraft.MinimumSectionReference, copy.MinimumSectionReference);
        Assert.Equal(DesignRules.SmallCraft.MinimumSection, copy.MinimumSection);
        Assert.Equal(["road vehicle", "small craft", "light aircraft", "bench", "tinned small craft"], DesignRules.Presets.Select(rules => rules.Name));
    }

    // The boat cable of the preset is tinned, in sizes that shops carry, and never thinner than plain copper would be.
    [Theory]
    [InlineData(2, 5)]
    [InlineData(6, 6)]
    [InlineData(12, 7)]
    [InlineData(15, 3)]
    public void TinnedSmallCraft_IsSmallCraftInTinnedCable(double amperes, double meters)
    {
        DesignRules tinned = DesignRules.SmallCraftTinned;
        Assert.All(tinned.Conductors.Conductors, wire => Assert.Equal(ConductorMaterial.TinnedCopper, wire.Material));
        Assert.Equal([18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3], tinned.Conductors.Conductors.Select(wire => wire.Size!.Value.TryGetAwg(out AwgSize size) ? size.Number : 99));
        Assert.Same(DesignRules.SmallCraft.Ampacity, tinned.Ampacity);
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(amperes)), feed: meters, insulation: InsulationMaterial.Rated("boat cable, 105 °C", C(105)));
        CircuitDesign plain = CircuitDesigner.Design(asked, DesignRules.SmallCraft), own = CircuitDesigner.Design(asked, tinned);
        Assert.Equal(Verdict.Pass, own.Verdict);
        Assert.True(own.Wire.Area >= plain.Wire.Area);
    }

    // A lamp of 0.2 A: nothing is published of blades of 1 A and 2 A. The 3 A above proves its protection, and a builder fits it.
    [Fact]
    public void Fuse_WhoseTimesAreNotPublished_GivesWayToTheNextThatProvesItsProtection()
    {
        CircuitDesign small = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(0.2)), feed: 4), DesignRules.RoadVehicle);
        Assert.Equal((Verdict.Pass, 3.0, 0.5), (small.Verdict, small.Fuse!.Current.Amperes, small.Wire.Area.SquareMillimeters));

        // Of fuses without published times nothing larger settles it: the smallest stays.
        FuseSeries two = FuseSeries.Create(new FuseSeriesDefinition { Name = "two", Kind = "fuse", Reference = References.Reference.CommonPractice("test"), Ratings = [A(1), A(3.5)], VoltageRating = V(32) });
        Assert.Equal(1, CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(0.2)), feed: 4), DesignRules.RoadVehicle.WithFuses(two)).Fuse!.Current.Amperes);
    }

    [Fact]
    public void Insulation_WithoutShortCircuitLimit_IsHeldToItsContinuousLimitFromTheServiceTemperature()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(4)), insulation: InsulationMaterial.Rated("125 °C rated", C(125)));
        CircuitDesign design = CircuitDesigner.Design(asked, DesignRules.Bench);
        Assert.Equal(Verdict.Pass, design.Verdict);
        CheckResult check = design.Of(CheckKind.ShortCircuitTemperature);
        Assert.Equal(125, check.Limit);
        Assert.StartsWith($"from {design.Of(CheckKind.ConductorTemperature).Value!.Value.ToString("G4", System.Globalization.CultureInfo.InvariantCulture)} °C", check.Note, StringComparison.Ordinal);

        // With a limit of its own the fault finds the wire as hot as it may be.
        CircuitRequirements known = Circuit(Load.ConstantCurrent(A(4)), insulation: InsulationMaterial.Rated("125 °C rated", C(125), C(200)));
        Assert.StartsWith("from 125 °C", CircuitDesigner.Design(known, DesignRules.Bench).Of(CheckKind.ShortCircuitTemperature).Note, StringComparison.Ordinal);
    }
}
