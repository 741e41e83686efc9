using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Proof.Simulation;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>A shared return heats in a fault as one of its own does, by the fault's current and the others'.</summary>
public class SharedReturnInFaultTests
{
    [Fact]
    public void Verify_ThinReturnSharedWithNoCurrent_OpensAsOneOfItsOwn()
    {
        Segment thin = Segment.Create(RoadVehicle(0.75), M(12.5));
        double own = Seconds(ReturnPath.Wire(thin)), shared = Seconds(ReturnPath.Shared([thin], A(0)));
        Near(own, shared, 1e-6);
    }

    [Fact]
    public void Verify_ThinReturnSharedWithALittleCurrent_OpensAsByTimeSteps()
    {
        Named<Conductor> feed = new("", RoadVehicle(2.5)), thin = new("", RoadVehicle(0.75));
        CaseGiven given = new(
            new(SourceType.LeadAcid, 600, 1, 1), new(LoadType.Current, 2), 8, new(BackType.SharedSegments, Others: 0.1, Stretches: [new(thin, 12.5)]),
            new("", InsulationMaterial.PolyvinylChloride), new RulesGiven(0))
        {
            UpstreamOhms = 0.020, DropPercent = 20, Laid = [new(feed, 8)], Fitted = new("", Blade(10)),
        };
        FaultEnd stepped = OwnFault.At(new OwnCircuit(given, RoadVehicle(2.5), Blade(10)), SupplyLevel.Minimum, 0, 1, 2);
        Near(stepped.Seconds, Seconds(ReturnPath.Shared([Segment.Create(RoadVehicle(0.75), M(12.5))], A(0.1))), 0.01, "stepped in time");
    }

    private static double Seconds(ReturnPath back)
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(2)), feed: 8, back: back, drop: DropLimit.Percent(20));
        CircuitPath path = CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(8)), back);
        return CircuitDesigner.Verify(asked, path, Blade(10), DesignRules.RoadVehicle).Of(CheckKind.FaultOpensFuse).Value!.Value;
    }
}
