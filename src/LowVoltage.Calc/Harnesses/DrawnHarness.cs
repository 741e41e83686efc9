using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>One harness out of a batch: every part as a draw makes it.</summary>
internal static class DrawnHarness
{
    // Beyond what a place may be, the draw is cut there: never past the range in which anything is rated.
    private const double Coldest = -60;
    private const double Hottest = 250;

    internal static Harness Of(Harness harness, in ToleranceDraw draw)
    {
        ToleranceDraw its = draw;
        return new Harness(harness.Parts with
        {
            Branches = [.. harness.BranchArray.Select((branch, k) => Branch(branch, k, its))],
            Sources = [.. harness.SourceArray.Select((source, k) => source.Source is { } given
                ? HarnessSource.Create(source.Id, source.Positive, source.Negative, given.Scaled(its.Factor(DrawKind.Supply, k, its.Tolerances.SupplyShare)))
                : source)],
            Loads = [.. harness.LoadArray.Select((load, k) => load.WithLoad(load.Load.Scaled(its.Factor(DrawKind.Load, k, its.Tolerances.LoadShare))))],
            Cases = harness.CaseArray,
        });
    }

    internal static Place Air(Place place, int part, in ToleranceDraw draw)
    {
        double shift = draw.Shift(DrawKind.Ambient, draw.Tolerances.CommonAmbient ? -1 : part, draw.Tolerances.AmbientKelvins);
        return shift == 0 ? place : place.WithAmbient(Temperature.FromDegreesCelsius(Math.Min(Hottest, Math.Max(Coldest, place.AmbientCelsius + shift))));
    }

    internal static double WireFactor(int part, in ToleranceDraw draw) =>
        draw.Factor(DrawKind.Length, part, draw.Tolerances.LengthShare) * draw.Factor(DrawKind.Resistance, draw.Tolerances.CommonResistance ? -1 : part, draw.Tolerances.ResistanceShare);

    internal static Joint JointOf(Joint joint, int part, in ToleranceDraw draw) =>
        Joint.Create(joint.Name, ElectricResistance.FromOhms(joint.Ohms * draw.Factor(DrawKind.Joint, part, draw.Tolerances.JointShare)));

    private static HarnessBranch Branch(HarnessBranch branch, int part, ToleranceDraw draw)
    {
        double joint = draw.Factor(DrawKind.Joint, part, draw.Tolerances.JointShare);
        ElectricResistance ohms = ElectricResistance.FromOhms(branch.FixedOhms * joint);
        return branch switch
        {
            HarnessWire wire => wire.WithMeters(wire.Meters * WireFactor(part, draw)).WithPlace(Air(wire.Place, part, draw)).WithJoints([.. wire.Joints.Select(j => JointOf(j, part, draw))]),
            HarnessFuse fuse => fuse.WithResistance(ohms),
            HarnessSwitch contact => HarnessSwitch.Create(contact.Id, contact.From, contact.To, ohms, contact.IsClosed),
            HarnessResistance { IsChassis: true } chassis => HarnessResistance.Chassis(chassis.Id, chassis.From, chassis.To, ohms),
            HarnessResistance other => HarnessResistance.Create(other.Id, other.From, other.To, ohms),
            _ => throw new InvalidOperationException($"{branch} has no tolerance here."),
        };
    }
}
