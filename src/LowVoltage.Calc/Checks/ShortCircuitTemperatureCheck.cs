using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The wire in a short circuit.</content>
public abstract partial class CheckKind
{
    /// <summary>Does the conductor survive a short until the fuse opens? °C, at most; the stretch nearest to its limit.</summary>
    public static CheckKind ShortCircuitTemperature { get; } = Register(new ShortCircuitTemperatureCheck());
}

internal sealed class ShortCircuitTemperatureCheck()
    : Check(160, nameof(ShortCircuitTemperature), "short-circuit temperature", "°C", limitIsLeast: false, SheetSection.FarEnd, ("θ_f", "θ_fl"))
{
    private const byte NotRated = 1;

    internal override string Where => "wire";

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse || at.SupplyIsWeak)
        {
            return false;
        }

        if (fuse.FaultCurve is null)
        {
            result = Unknown(AdiabaticHeating.Reference, CheckSubject.Of(0, fuse.Untimed));
            return true;
        }

        ref readonly FarEndFault fault = ref at.FarEnd;
        if (fault.Ending != FarEndEnding.Opens || fault.Seconds > at.Practice.FaultSeconds)
        {
            return false;
        }

        if (!at.IsRated && Array.Exists(at.Stretches, s => !s.Site.Insulation.HasShortCircuitRoom))
        {
            // How hot the fault finds the wire is not known, and no room above its continuous limit is published.
            result = Unknown(AdiabaticHeating.Reference, CheckSubject.Of(NotRated));
            return true;
        }

        Finding found = Find(at, fuse.FaultCurve);
        ref readonly SegmentState s = ref at.Stretches[found.Stretch];
        result = Judge(
            Math.Min(found.Celsius, s.Conductor.Material.MeltingPointCelsius), found.Limit, AdiabaticHeating.Reference,
            new CheckSubject { About = StartOf(at, found.Stretch), Number = found.WorstAmperes, Stretch = at.NameOf(found.Stretch) });
        return true;
    }

    internal override string Note(in CheckResult result) => result.NoteKind == NotRated ? "the wire is not rated here"
        : result.Outcome == CheckOutcome.Undetermined ? $"no operating times are published for the {result.About}"
        : $"from {Accept.Short(result.About is InsulationMaterial insulation ? insulation.ContinuousCelsius : (double)result.About!)} °C, worst at {Accept.Short(result.Number)} A";

    internal override string Advice(in CheckResult result, BranchState at) => result.NoteKind == NotRated ? Unrated.Advice
        : result.Outcome == CheckOutcome.Undetermined ? FuseData.Missing
        : "The wire overheats before the fuse opens: a larger wire, a faster fuse, or insulation with a higher short-circuit limit.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (!result.HasNumbers)
        {
            return;
        }

        BranchState at = sheet.At;
        Finding found = Find(at, at.Fuse!.FaultCurve!);
        SegmentState s = at.Stretches[found.Stretch];
        sheet.Tell(found.Stretch, "stretch that a short circuit is hardest on");
        Symbol energy = sheet.Board.LookUp(
            $"greatest Joule integral that the fuse lets through, at {Accept.Short(found.WorstAmperes)} A", "I²t", found.Joules, "A²·s", null,
            "From its longest times, at every current between the far end's and the one at the fuse.");
        Symbol from = sheet.FaultStart(found.Stretch);
        Symbol one = sheet.EffectiveSection(s.Conductor);
        Symbol section = s.Parallel == 1 ? one : sheet.Board.Step("effective section of all of them", "S_n", (double)s.Parallel * one, one.Value * s.Parallel, "mm²", null);
        if (s.OtherAmperes > 0)
        {
            Symbol others = sheet.Board.Find("I_o")!, lowest = sheet.Board.LookUp("least current of the fault", "I_low", at.LeastFaultAmperes, "A", null);
            double more = 1 + (s.OtherAmperes / at.LeastFaultAmperes);
            energy = sheet.Board.Step(
                "the same with the other circuits' current at most", "I²t_o", energy * Formula.Square(1 + (others / lowest)), found.Joules * more * more, "A²·s", null, "(I + Iₒ)² is at most I²·(1 + Iₒ/I)² with the least I.");
        }

        sheet.Value(this, AdiabaticHeating.WriteFinal(sheet.Board, s.Conductor.Material, section, energy, from, Math.Min(found.Celsius, s.Conductor.Material.MeltingPointCelsius)));
        sheet.Limit(this, sheet.Board.LookUp("limit of the insulation in a short circuit", "θ_sc", found.Limit, "°C", s.Site.Insulation.Reference, "For at most 5 s."));
    }

    // The stretch with the least margin, at the most that the fuse lets through of any current between the far end's and the one at the fuse.
    private static Finding Find(BranchState at, TimeCurrentCurve curve)
    {
        Finding found = default;
        found.Joules = curve.GreatestLongestJouleIntegral(at.LeastFaultAmperes, at.BoundedAtFuseAmperes, out found.WorstAmperes);
        double least = double.PositiveInfinity;
        for (int i = 0; i < at.Stretches.Length; i++)
        {
            ref readonly SegmentState s = ref at.Stretches[i];
            double celsius = After(at, i, found.Joules), limit = s.Site.Insulation.ShortCircuitCelsiusFor(s.Conductor.AreaSquareMillimeters);
            double margin = (limit - Math.Min(celsius, s.Conductor.Material.MeltingPointCelsius)) / Math.Abs(limit);
            if (margin < least)
            {
                least = margin;
                (found.Stretch, found.Celsius, found.Limit) = (i, celsius, limit);
            }
        }

        return found;
    }

    /// <summary>What a Joule integral heats a stretch to, °C, from where a fault finds it. In a shared stretch the others' current adds its heat: (I + Io)² is at most I²·(1 + Io/I)² with the least I.</summary>
    internal static double After(BranchState at, int stretch, double joules)
    {
        ref readonly SegmentState s = ref at.Stretches[stretch];
        double startCelsius = at.FaultStartCelsius(stretch);
        ConductorMaterial metal = s.Conductor.Material;
        double more = s.OtherAmperes > 0 ? 1 + (s.OtherAmperes / at.LeastFaultAmperes) : 1;
        return AdiabaticKernel.FinalCelsius(
            AdiabaticKernel.ConstantSquared(metal), s.Conductor.EffectiveAreaSquareMillimeters * s.Parallel, joules * more * more, startCelsius, -metal.InferredZeroCelsius);
    }

    // The insulation stands for its continuous limit, where a fault finds most wires; another temperature is kept as it is.
    private static object StartOf(BranchState at, int stretch)
    {
        Conductors.InsulationMaterial insulation = at.Stretches[stretch].Site.Insulation;
        double celsius = at.FaultStartCelsius(stretch);
        return celsius.Equals(insulation.ContinuousCelsius) ? insulation : celsius;
    }

    private struct Finding
    {
        internal int Stretch;
        internal double Celsius;
        internal double Limit;
        internal double Joules;
        internal double WorstAmperes;
    }
}
