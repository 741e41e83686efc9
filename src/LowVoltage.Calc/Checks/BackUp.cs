using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Checks;

/// <summary>A device that breaks less than the prospective current behind one that breaks it (IEC 60364-4-43, 434.5.1).</summary>
/// <remarks>
/// The rule, from memory: the one in front has the necessary breaking capacity, and the energy that it lets through does no harm to the device and the wire behind. Each part is
/// answered by what is stated or published; what is missing is named.
/// </remarks>
internal sealed class BackUp
{
    private BackUp(CheckOutcome outcome, string words, double? amperes = null)
    {
        Outcome = outcome;
        Words = words;
        Amperes = amperes;
    }

    internal static Reference Reference { get; } = new()
    {
        Title = "IEC 60364-4-43", Edition = Editions.Iec60364Part443, Locator = "434.5.1", Kind = ReferenceKind.FromMemory,
        Note = "A device may break less than the prospective current behind one that breaks it, where the energy let through harms neither the device nor the wire behind.",
    };

    internal CheckOutcome Outcome { get; }

    internal string Words { get; }

    /// <summary>The breaking capacity of the device in front, A, where that decides.</summary>
    internal double? Amperes { get; }

    /// <summary>A device in front that breaks the current and harms nothing; else what the nearest says that leaves it undetermined, or fails; else why none breaks it.</summary>
    /// <param name="at">The branch with the fuse that breaks less.</param>
    /// <param name="fuse">That fuse.</param>
    /// <param name="capacity">What it breaks, A.</param>
    /// <param name="prospective">Greatest prospective current where it sits, A.</param>
    internal static BackUp Of(BranchState at, FuseRating fuse, double capacity, double prospective)
    {
        BackUp? unknown = null, fails = null;
        double most = 0;
        for (int i = at.StagesBefore - 1; i >= 0; i--)
        {
            SupplyStage stage = at.Supply[i];
            if (stage.Device.BreakingAmperes is not double breaks || stage.Device.BreakingCapacityBasis != RatingBasis.DirectCurrent)
            {
                unknown ??= new BackUp(CheckOutcome.Undetermined, $"no d.c. breaking capacity is known for the {stage.Device} before it");
            }
            else if (breaks * (1 + BranchState.Rounding) >= prospective && !FuseVoltageCheck.IsBelow(at, stage.Device))
            {
                // What one of them does not hold back the one before it may.
                BackUp found = Behind(at, stage, fuse, capacity, prospective, breaks);
                if (found.Outcome == CheckOutcome.Pass)
                {
                    return found;
                }

                unknown ??= found.Outcome == CheckOutcome.Undetermined ? found : null;
                fails ??= found.Outcome == CheckOutcome.Fail ? found : null;
            }
            else
            {
                most = Math.Max(most, breaks);
            }
        }

        return unknown ?? fails ?? new BackUp(CheckOutcome.Fail, $"no device before it breaks that current at {Accept.Short(at.Source.MaximumVolts)} V, the best one {Accept.Short(most)} A");
    }

    private static BackUp Behind(BranchState at, SupplyStage stage, FuseRating fuse, double capacity, double prospective, double breaks)
    {
        string behind = $"behind the {stage.Device}";
        double joules;
        if (stage.LetThrough is { } stated)
        {
            joules = stated;
        }
        else if (stage.Device.Curve is not { } curve)
        {
            return new BackUp(CheckOutcome.Undetermined, $"{behind}, which breaks it: state the Joule integral that this lets through (UpstreamProtection.WithLetThrough)");
        }
        else if (curve.FusingAmperes > capacity)
        {
            return new BackUp(CheckOutcome.Fail, $"{behind}, which need not open below {Accept.Short(curve.FusingAmperes)} A");
        }
        else
        {
            joules = curve.GreatestLongestJouleIntegral(capacity, prospective, out double _);
        }

        string through = $"{behind}, which breaks it and lets {Accept.Short(joules)} A²s through";
        if (WireIsHarmed(at, joules, out string? harm))
        {
            return new BackUp(harm is null ? CheckOutcome.Undetermined : CheckOutcome.Fail, $"{through}: {harm ?? "the wire behind is not rated here, or not stated"}");
        }

        return stage.WithstandBehind is not { } withstood
            ? new BackUp(CheckOutcome.Undetermined, $"{through}: state the Joule integral that the {fuse} withstands behind it, by its maker (UpstreamProtection.WithLetThrough)")
            : joules <= withstood * (1 + BranchState.Rounding)
                ? new BackUp(CheckOutcome.Pass, $"{through}; the fuse withstands {Accept.Short(withstood)} A²s there", breaks)
                : new BackUp(CheckOutcome.Fail, $"{through}; the fuse withstands {Accept.Short(withstood)} A²s there");
    }

    // By the same adiabatic heating as in any short circuit. Words are null where it cannot be told.
    private static bool WireIsHarmed(BranchState at, double joules, out string? harm)
    {
        harm = null;
        if (at.Stretches.Length == 0 || (!at.IsRated && Array.Exists(at.Stretches, s => !s.Site.Insulation.HasShortCircuitRoom)))
        {
            return true;
        }

        for (int i = 0; i < at.Stretches.Length; i++)
        {
            double celsius = ShortCircuitTemperatureCheck.After(at, i, joules), limit = at.Stretches[i].Site.Insulation.ShortCircuitCelsiusFor(at.Stretches[i].Conductor.AreaSquareMillimeters);
            if (celsius > limit)
            {
                harm = $"that takes the wire to {Accept.Short(Math.Min(celsius, at.Stretches[i].Conductor.Material.MeltingPointCelsius))} °C, at most {Accept.Short(limit)} °C are allowed";
                return true;
            }
        }

        return false;
    }
}
