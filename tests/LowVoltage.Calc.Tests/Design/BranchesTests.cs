using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Checks;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>How requirements become the branch that the checks ask, and how warm its stretches count in the path that is shown.</summary>
public class BranchesTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(5));

    [Fact]
    public void SharedReturnThroughMetal_DropsByTheOthersToo()
    {
        // 3 mΩ with 6 A of others: 18 mV that the metal always drops.
        CircuitRequirements asked = Circuit(Load, back: ReturnPath.Shared(MilliOhm(3), A(6)), conductors: 1);
        BranchState at = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(10), CheckCase.Table).State();
        Near(0.018, at.FixedSharedVolts, 1e-12);
        Near(0.018, at.SharedVolts, 1e-12);
        Near(CheckCase.Lead + 0.003, at.OwnFixedOhms, 1e-12);
        Assert.Equal(0, CheckCase.Verify(Load, Blade(10)).State().FixedSharedVolts);
    }

    [Fact]
    public void SharedReturnOfWire_DropsByTheOthersInItsHotResistance()
    {
        BranchState at = Shared().State();

        // 2 m of 1.5 mm² at 70 °C. It is no fixed voltage: the wire heats in a fault.
        double ohms = 2 * Plain.PerMeter(12.7, 70);
        Assert.Equal(0, at.FixedSharedVolts);
        Near(6 * ohms, at.SharedVolts, 1e-12);
        Near(CheckCase.Lead, at.OwnFixedOhms, 1e-12);
        Near(CheckCase.Lead + ohms, at.FixedOhms, 1e-12);
        Assert.Equal((0.0, 6.0), (at.Stretches[0].OtherAmperes, at.Stretches[1].OtherAmperes));
    }

    [Fact]
    public void Rated_TheFeedWarmsItself_WhatOthersHeatTooIsAsHotAsItsInsulation()
    {
        CircuitDesign design = Shared();
        CircuitPath path = Branches.Rated(design.Requirements, design.State(), design.Existing!);
        ConductorTemperature feed = path.Feed[0].Temperature!, back = path.Return.Segments[0].Temperature!;
        Assert.True(feed.DependsOnCurrent);
        Assert.Equal(30, feed.AtCurrent(ElectricCurrent.Zero).DegreesCelsius, 1e-9);
        BranchState at = design.State();
        Assert.True(at.IsRated);
        Assert.Equal(70, feed.AtCurrent(A(at.Stretches[0].RatedAmperes)).DegreesCelsius, 1e-9);
        Assert.False(back.DependsOnCurrent);
        Assert.Equal(70, back.AtCurrent(ElectricCurrent.Zero).DegreesCelsius, 1e-9);

        // What is not rated is as hot as its insulation allows.
        CircuitRequirements asked = CheckCase.Asked(Load);
        CircuitDesign odd = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), Blade(10), CheckCase.Table);
        ConductorTemperature unknown = Branches.Rated(asked, odd.State(), odd.Existing!).Feed[0].Temperature!;
        Assert.False(unknown.DependsOnCurrent);
        Assert.Equal(70, unknown.AtCurrent(ElectricCurrent.Zero).DegreesCelsius, 1e-9);
    }

    [Fact]
    public void Rated_EachStretchOutAndBack_WarmsByItsOwnRating()
    {
        CircuitRequirements asked = Circuit(Load, feed: 3, conductors: 1);
        CircuitPath laid = CircuitPath.Create(
            [Segment.Create(RoadVehicle(4), M(1)), Segment.Create(RoadVehicle(2.5), M(2))], ReturnPath.Wire(Segment.Create(RoadVehicle(6), M(2)), Segment.Create(RoadVehicle(1.5), M(1))));
        CircuitDesign design = CircuitDesigner.Verify(asked, laid, Blade(10), CheckCase.Table);
        CircuitPath path = Branches.Rated(asked, design.State(), laid);
        BranchState at = design.State();
        Assert.True(at.IsRated);
        Segment[] all = [.. path.Feed, .. path.Return.Segments];
        Assert.Equal(4, all.Select((_, i) => at.Stretches[i].RatedAmperes).Distinct().Count());
        Assert.All(all.Select((segment, i) => (segment, at.Stretches[i])), pair => Assert.Equal(70, pair.segment.Temperature!.AtCurrent(A(pair.Item2.RatedAmperes)).DegreesCelsius, 1e-9));
    }

    [Fact]
    public void StretchOfItsOwnWire_HasItsOwnWall_ElseTheOneAskedFor()
    {
        CircuitRequirements asked = new(CheckCase.Asked(Load)) { Wall = Length.FromMillimeters(0.9) };
        Segment own = Segment.Create(Wire.Create(RoadVehicle(2.5), InsulationMaterial.CrossLinkedPolyethylene, Length.FromMillimeters(0.5)), M(1));
        Segment moved = Segment.Create(RoadVehicle(2.5), M(1)).WithPlace(new Place { Ambient = C(40), LoadedConductors = 1 });
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(2.5), M(1)), own, moved], asked.Return);
        BranchState at = CircuitDesigner.Verify(asked, path, Blade(10), new DesignRules(CheckCase.Table) { Ampacity = AmpacityBasis.HeatBalance }).State();
        Assert.Equal([0.9, 0.5, 0.9], Enumerable.Range(0, 3).Select(i => Math.Round(at.Stretches[i].Site.WallMillimeters!.Value, 9)));
        Assert.Same(InsulationMaterial.CrossLinkedPolyethylene, at.Stretches[1].Site.Insulation);
        Assert.Equal([30.0, 30.0, 40.0], Enumerable.Range(0, 3).Select(i => at.Stretches[i].Site.AmbientCelsius));
    }

    [Fact]
    public void SupplyLead_TakesFromWhatIsStatedOfIt_WhatItsWireIs()
    {
        // 40 mΩ from the source to the fuse, 1 mΩ of it before the main fuse. The wires warm up on their own; joints and what else there is do not.
        CircuitPath lead = CircuitPath.Create(Segment.Create(RoadVehicle(16), M(4)), ReturnPath.Shared([Segment.Create(RoadVehicle(25), M(3))], A(6)))
            .WithFeedJoints(Joint.Create("lug", MilliOhm(2))).WithReturnJoints(Joint.Create("bolt", MilliOhm(3)));
        BranchState at = Lead(lead);
        Near(0.040 - ((4 * 1.16) + (3 * 0.743)) / 1000, at.OwnFixedOhms, 1e-9);
        Assert.Equal(["supply lead, 4 m of 16 mm² road-vehicle copper", "shared return of the supply lead, 3 m of 25 mm² road-vehicle copper"], at.Stretches.Select(s => s.Name.ToString()));
        Assert.Equal([0.0, 6.0], at.Stretches.Select(s => s.OtherAmperes));
        Assert.Equal(0, at.FixedSharedVolts);

        // A return of its own is called so; metal counts with what is stated of it; without a wire all 40 mΩ are fixed.
        BranchState own = Lead(CircuitPath.Create(Segment.Create(RoadVehicle(16), M(4)), ReturnPath.Wire(Segment.Create(RoadVehicle(25), M(3)))));
        Assert.Equal("return of the supply lead, 3 m of 25 mm² road-vehicle copper", own.Stretches[1].Name.ToString());
        Near(0.040 - (4 * 1.16 / 1000), Lead(CircuitPath.Create(Segment.Create(RoadVehicle(16), M(4)), ReturnPath.Chassis(MilliOhm(5)))).OwnFixedOhms, 1e-9);
        Near(3 * 0.005, Lead(CircuitPath.Create(Segment.Create(RoadVehicle(16), M(4)), ReturnPath.Shared(MilliOhm(5), A(3)))).SharedVolts, 1e-9);
        Assert.Empty(Lead(null).Stretches);
        Near(0.040, Lead(null).OwnFixedOhms, 1e-12);

        // Where the wire alone has more than is stated of the whole, nothing is left beside it but the joints.
        Near(0.001 + 0.002, Lead(CircuitPath.Create(Segment.Create(RoadVehicle(1.5), M(4)), ReturnPath.Wire(M(4))).WithFeedJoints(Joint.Create("lug", MilliOhm(2)))).OwnFixedOhms, 1e-12);
    }

    private static BranchState Lead(CircuitPath? lead)
    {
        UpstreamProtection main = UpstreamProtection.Fuse(Upstream.Mains.Gg(63)).WithUpstream(MilliOhm(1));
        CircuitRequirements asked = CheckCase.Asked(Load, upstreamMilliOhms: 40).WithUpstreamProtection(lead is null ? main : main.WithLead(lead));
        return CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(10), CheckCase.Table).State().Supply[0].At;
    }

    private static CircuitDesign Shared()
    {
        ReturnPath back = ReturnPath.Shared([Segment.Create(RoadVehicle(1.5), M(2))], A(6));
        CircuitRequirements asked = Circuit(Load, feed: 3, back: back, conductors: 1);
        return CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3)), back), Blade(10), CheckCase.Table);
    }
}
