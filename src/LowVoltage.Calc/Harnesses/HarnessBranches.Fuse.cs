using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <content>A fuse without a wire of its own.</content>
internal sealed partial class HarnessBranches
{
    /// <summary>A fuse that no wire's checks are asked with: beside a busbar, between sources, in a ring, in the way back. Its own current, and the most that it may have to break.</summary>
    internal BranchState OfDevice(int branch)
    {
        HarnessFuse fuse = (HarnessFuse)Harness.BranchArray[branch];
        Site site = SiteBeside(branch);
        WireDuty of = duty.DutyOfBranch(branch, default);
        BranchState at = New(
            AnySource() with { MaximumVolts = feeding.GreatestVolts }, AnyLoad, site, [], 0, new SolvedDuty { Duty = of, Heating = [] },
            fuseAmbient: fuse.AmbientCelsius ?? site.AmbientCelsius, letThrough: feeding.ShortThrough(branch));
        at.SetFuse(fuse.Rating);
        return at;
    }

    // Of the nearest wire behind it: with no air stated it sits in that one's.
    private Site SiteBeside(int branch)
    {
        foreach (int[] way in ways)
        {
            int at = Array.IndexOf(way, branch);
            int wire = at < 0 ? -1 : Array.FindLastIndex(way, at, IsWire);
            if (wire >= 0)
            {
                return duty.WireOf(way[wire]).Site;
            }
        }

        return AnySite();
    }
}
