using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Design;

/// <summary>Lays out what protects the supply lead: each device with the lead behind it as a branch of its own.</summary>
internal static class SupplyStages
{
    internal static SupplyStage[] Of(CircuitRequirements asked, DesignRules rules)
    {
        UpstreamProtection[] row = asked.ProtectionArray;
        if (row.Length == 0)
        {
            return [];
        }

        SupplyStage[] stages = new SupplyStage[row.Length];
        for (int i = 0; i < row.Length; i++)
        {
            double? end = i + 1 < row.Length ? row[i + 1].UpstreamOhms : asked.UpstreamOhms;

            // What is stated before a device by its resistance or by the wires of the leads before it, if those have more.
            double start = UpstreamProtection.CountedOhms(row[i].UpstreamOhms, row.AsSpan(0, i), asked.Insulation);
            stages[i] = Stage(asked, rules, row[i], start, end, stages.AsSpan(0, i).ToArray());
        }

        return stages;
    }

    private static SupplyStage Stage(CircuitRequirements asked, DesignRules rules, UpstreamProtection device, double startOhms, double? endOhms, SupplyStage[] before)
    {
        // The most that the device may carry continuously is what the lead carries in service, whatever hangs on it; or the most that the source gives, if that is less.
        double most = Math.Min(device.Rating.Amperes * rules.FusePractice.Loading, ProspectiveCurrent.GreatestAt(asked.Source.Numbers, device.UpstreamOhms ?? 0));
        CircuitRequirements lead = new(asked)
        {
            Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(most)),
            Upstream = device.Upstream,
            UpstreamProtection = [],
            FuseAmbient = device.Ambient,
        };

        // What is stated of the lead beyond its wire, holders and joints say, counts; it warms up with nothing.
        double known = startOhms + (device.Lead?.OhmsAt(UpstreamProtection.StatedCelsius) ?? 0), other = startOhms - (device.UpstreamOhms ?? 0) + Math.Max(0, (endOhms ?? 0) - known);
        BranchState at = Branches.ForLead(lead, rules, device.Lead, most, other, before);
        at.SetFuse(device.Rating);
        return new SupplyStage
        {
            Device = device.Rating,
            At = at,
            IsWithoutLead = device.Lead is null && endOhms is { } end && device.UpstreamOhms is { } start && end <= start,
            DistanceMeters = device.DistanceMeters,
            Sheathed = device.Sheathed,
            LetThrough = device.LetThrough?.AmpereSquaredSeconds,
            WithstandBehind = device.WithstandBehind?.AmpereSquaredSeconds,
            LeastMelting = device.LeastMelting?.AmpereSquaredSeconds,
        };
    }
}
