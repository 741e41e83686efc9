using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A harness with each of its parts at one end of its tolerance.</summary>
internal static class ToleranceCorner
{
    public static Harness Of(Harness harness, Tolerances tolerances, Random random)
    {
        double end(Ratio share) => 1 + ((random.Next(2) == 0 ? -1 : 1) * share.DecimalFractions);
        double kelvins = tolerances.Ambient.Kelvins;
        HarnessBuilder builder = harness.ToBuilder();
        foreach (HarnessBranch branch in harness.Branches)
        {
            double joint = end(tolerances.Joints);
            ElectricResistance ohms = ElectricResistance.FromOhms(branch.FixedOhms * joint);
            _ = branch switch
            {
                HarnessWire wire => builder.Replace(wire.WithMeters(wire.Meters * end(tolerances.Lengths) * end(tolerances.Resistances))
                    .WithPlace(wire.Place.WithAmbient(Temperature.FromDegreesCelsius(wire.Place.Ambient.DegreesCelsius + (random.Next(2) == 0 ? -kelvins : kelvins))))
                    .WithJoints([.. wire.Joints.Select(j => Joint.Create(j.Name, ElectricResistance.FromOhms(j.Ohms * joint)))])),
                HarnessFuse fuse => builder.Replace(fuse.WithResistance(ohms)),
                HarnessSwitch contact => builder.Replace(HarnessSwitch.Create(contact.Id, contact.From, contact.To, ohms, contact.IsClosed)),
                HarnessResistance chassis => builder.Replace(HarnessResistance.Chassis(chassis.Id, chassis.From, chassis.To, ohms)),
                _ => builder,
            };
        }

        Harness branches = builder.Build();
        return new Harness(branches.Parts with
        {
            Loads = [.. branches.LoadArray.Select(l => l.WithLoad(l.Load.Scaled(end(tolerances.Loads))))],
            Sources = [.. branches.SourceArray.Select(s => s.Source is { } source ? HarnessSource.Create(s.Id, s.Positive, s.Negative, source.Scaled(end(tolerances.Supply))) : s)],
        });
    }
}
