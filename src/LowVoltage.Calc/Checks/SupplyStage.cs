using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Checks;

/// <summary>One device before the circuit's fuse, and the part of the supply lead behind it as a branch of its own.</summary>
internal sealed class SupplyStage
{
    internal required FuseRating Device { get; init; }

    /// <summary>The lead behind the device, with the device as its fuse and its rating as its load; without stretches where the wire was not stated.</summary>
    internal required BranchState At { get; init; }

    /// <summary>What the part behind it is called where there are several: by the device.</summary>
    internal StretchName Name => field ??= StretchName.Of($"behind the {Device}");

    /// <summary>Whether the wire behind it is stated.</summary>
    internal bool HasLead => At.Stretches.Length > 0;

    /// <summary>Whether there is no wire behind it: the next device sits beside it.</summary>
    internal required bool IsWithoutLead { get; init; }

    internal double? DistanceMeters { get; init; }

    internal bool Sheathed { get; init; }

    /// <summary>Greatest Joule integral let through, A²s, where stated.</summary>
    internal double? LetThrough { get; init; }

    /// <summary>What a device behind it withstands beyond its breaking capacity, A²s, where stated.</summary>
    internal double? WithstandBehind { get; init; }

    /// <summary>Least Joule integral that opens it at any current, A²s, where stated.</summary>
    internal double? LeastMelting { get; init; }
}
