using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <content>The load on the main fuse.</content>
public abstract partial class CheckKind
{
    /// <summary>Is each main fuse large enough for this circuit's load alone, in the air around it? Rating, A, at least.</summary>
    public static CheckKind MainFuseCarriesLoad { get; } = Register(new MainFuseCarriesLoadCheck());
}

internal sealed class MainFuseCarriesLoadCheck() : SupplyCheck(310, nameof(MainFuseCarriesLoad), "main fuse carries this circuit", "A", limitIsLeast: true, ("I_mf", "I_mfl"))
{
    private protected override CheckKind Asked => FuseCarriesLoad;

    private protected override bool NeedsLead => false;

    private protected override bool TryAsk(BranchState at, SupplyStage stage, out CheckResult result)
    {
        result = default;
        if (!at.Duty.Exists)
        {
            return false;
        }

        if (!stage.At.TryRerating(stage.Device, out double factor))
        {
            result = Unknown(stage.Device.Series.Rerating!.Reference, new CheckSubject { About = stage.Device, Number = stage.At.FuseAmbientCelsius, Stretch = NameOf(at, stage) });
            return true;
        }

        result = Judge(
            stage.Device.Amperes, at.LeastFuseAmperes / factor * (1 - BranchState.Rounding), at.Practice.LoadingReference, new CheckSubject { Stretch = NameOf(at, stage), Level = at.StartsHeatMore ? at.Duty.Level : at.Duty.OnLevel });
        return true;
    }

    internal override string Note(in CheckResult result) => result.Outcome == CheckOutcome.Undetermined
        ? $"the re-rating of the {result.About} does not cover {Accept.Short(result.Number)} °C"
        : "this circuit alone; what other circuits take of the main fuse comes on top";

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? "Put the main fuse in a cooler place, or get its re-rating with temperature from its maker."
        : "The main fuse is too small for this circuit: a larger one, and a supply lead that it protects.";
}
