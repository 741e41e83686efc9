using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>One circuit out of a batch: every part as a draw makes it.</summary>
internal static class DrawnCircuit
{
    private const int Feed = 0;
    private const int Back = 1;
    private const int Lead = 2;

    internal static CircuitRequirements Of(CircuitRequirements asked, in ToleranceDraw draw)
    {
        ToleranceDraw its = draw;
        return new CircuitRequirements(asked)
        {
            Source = asked.Source.Scaled(draw.Factor(DrawKind.Supply, 0, draw.Tolerances.SupplyShare)),
            Load = asked.Load.Scaled(draw.Factor(DrawKind.Load, 0, draw.Tolerances.LoadShare)),
            Feed = Length.FromMeters(asked.FeedMeters * DrawnHarness.WireFactor(Feed, draw)),
            Return = Returning(asked.Return, draw),
            Joints = [.. asked.JointsArray.Select((joint, k) => DrawnHarness.JointOf(joint, k, its))],
            Upstream = asked.UpstreamOhms is { } ohms ? ElectricResistance.FromOhms(ohms * draw.Factor(DrawKind.Joint, -Lead, draw.Tolerances.JointShare)) : null,
            Place = DrawnHarness.Air(asked.Place, 0, draw),
        };
    }

    private static ReturnPath Returning(ReturnPath back, in ToleranceDraw draw) => back.Kind switch
    {
        ReturnKind.SameConductor => ReturnPath.Wire(Length.FromMeters(back.Meters * DrawnHarness.WireFactor(Back, draw))),
        ReturnKind.Chassis => ReturnPath.Chassis(ElectricResistance.FromOhms(back.Ohms * draw.Factor(DrawKind.Joint, -Back, draw.Tolerances.JointShare))),
        _ => back,
    };
}
