using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Checks;

/// <content>What lies before the fuse.</content>
internal sealed partial class BranchState
{
    /// <summary>What protects the supply lead, from the source on; none where none was stated.</summary>
    internal SupplyStage[] Supply { get; init; } = [];

    /// <summary>Whether the circuit has no fuse of its own, and the nearest towards the source protects it.</summary>
    internal bool IsProtectedUpstream { get; private set; }

    /// <summary>How many devices lie before the fuse that protects the wire.</summary>
    internal int StagesBefore => IsProtectedUpstream ? Supply.Length - 1 : Supply.Length;

    /// <summary>Puts in the fuse of existing wiring: its own, or, where it has none, the nearest towards the source.</summary>
    internal void SetFitted(FuseRating? fuse)
    {
        if (fuse is null && Supply.Length > 0)
        {
            SupplyStage nearest = Supply[Supply.Length - 1];
            IsProtectedUpstream = true;
            UpstreamOhms = nearest.At.UpstreamOhms;
            atFuse = double.NaN;
            fuse = nearest.Device;
        }

        SetFuse(fuse);
    }
}
