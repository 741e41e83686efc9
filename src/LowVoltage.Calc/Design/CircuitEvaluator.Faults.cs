using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Design;

/// <content>A short circuit: does it open the fuse, and how hot is the wire by then.</content>
internal sealed partial class CircuitEvaluator
{
    private static readonly Reference AdiabaticReference = AdiabaticHeating.Reference;

    private void CheckFault(ref CheckList list, FuseRating fuse, double atFuse)
    {
        double hot = requirements.Insulation.ContinuousCelsius;

        SourceNumbers weakest = Weakest;
        double farEnd = ProspectiveCurrent.LeastAt(weakest, PathOhmsAt(hot));
        FusePractice practice = rules.FusePractice;
        if (atFuse <= WeakestAmperes())
        {
            // The supply cannot push more than the wire carries for ever: nothing has to open.
            list.Add(new CheckResult(
                CheckKind.FaultOpensFuse, 0, practice.FaultSeconds, practice.FaultReference, new CheckNote(NoteKind.SupplyIsWeak, null, atFuse)));
            return;
        }

        if (fuse.Curve is null)
        {
            list.Add(CheckResult.Undetermined(CheckKind.FaultOpensFuse, 0, practice.FaultReference, new CheckNote(NoteKind.NoTimes, fuse)));
            list.Add(CheckResult.Undetermined(CheckKind.ShortCircuitTemperature, 0, AdiabaticReference, new CheckNote(NoteKind.NoTimes, fuse)));
            return;
        }

        Clearing clearing = Clear(fuse.Curve, weakest, hot, farEnd);
        list.Add(clearing.Never == NoteKind.Plain
            ? new CheckResult(CheckKind.FaultOpensFuse, clearing.Seconds, practice.FaultSeconds, practice.FaultReference, new CheckNote(NoteKind.FarEnd, null, farEnd))
            : CheckResult.Never(CheckKind.FaultOpensFuse, practice.FaultSeconds, practice.FaultReference, new CheckNote(clearing.Never, null, farEnd)));
        if (clearing.Never == NoteKind.Plain && clearing.Seconds <= practice.FaultSeconds)
        {
            CheckShort(ref list, fuse, clearing.Amperes, atFuse);
        }
    }

    /// <summary>What a fault at the far end does to the fuse.</summary>
    internal Clearing ClearAtFarEnd(TimeCurrentCurve curve)
    {
        double hot = requirements.Insulation.ContinuousCelsius;
        SourceNumbers weakest = Weakest;
        return Clear(curve, weakest, hot, ProspectiveCurrent.LeastAt(weakest, PathOhmsAt(hot)));
    }

    /// <summary>The latest opening on a fault at the far end, whose current falls as the conductors heat.</summary>
    private Clearing Clear(TimeCurrentCurve curve, in SourceNumbers weakest, double hot, double first)
    {
        if (!curve.TryLongestSeconds(first, out double seconds))
        {
            return new Clearing { Never = NoteKind.FarEndNeverOpens };
        }

        if (seconds > rules.FusePractice.FaultSeconds)
        {
            // Too late already if the current stayed.
            return new Clearing { Seconds = seconds, Amperes = first };
        }

        FaultLink[] heated = new FaultLink[links.Length];
        double conductorOhms = 0;
        for (int i = 0; i < links.Length; i++)
        {
            heated[i] = new FaultLink(links[i].Conductor, links[i].Meters, hot, links[i].Parallel);
            conductorOhms += heated[i].Ohms;
        }

        double fixedPart = weakest.GreatestOhms + fixedOhms;
        FaultKernel fault = new(weakest.MinimumVolts, fixedPart, heated);
        if (first < fault.AmperesAt(0) * (1 - Rounding))
        {
            // The source holds its limit. It still does when the fuse has had its share, or counts as a source of more resistance, which gives less.
            double constant = first * first * seconds;
            if (constant <= fault.MeltingJoules && fault.AmperesAt(constant) >= first)
            {
                return new Clearing { Seconds = seconds, Amperes = first };
            }

            fault = new FaultKernel(weakest.MinimumVolts, (weakest.MinimumVolts / first) - conductorOhms, heated);
        }

        return FaultClearing.Latest(ref fault, curve, out double joules) switch
        {
            FaultOutcome.Opens => new Clearing { Seconds = fault.SecondsTo(joules), Amperes = fault.AmperesAt(joules), Joules = joules },
            FaultOutcome.ConductorMelts => new Clearing { Never = NoteKind.FarEndMelts },
            _ => new Clearing { Never = NoteKind.FarEndFalls },
        };
    }

    // Others keep feeding their current into a shared return: it takes its part of the voltage in a fault too.
    internal SourceNumbers Weakest => source with { MinimumVolts = Math.Max(0, source.MinimumVolts - sharedVolts) };

    /// <summary>How a fault at the far end ends.</summary>
    internal struct Clearing
    {
        /// <summary>Why the fuse does not open; plain when it does.</summary>
        internal NoteKind Never;
        internal double Seconds;

        /// <summary>Current at that moment, the least of the fault.</summary>
        internal double Amperes;

        /// <summary>The Joule integral by then, A²s; zero where the current does not fall.</summary>
        internal double Joules;
    }

    private void CheckShort(ref CheckList list, FuseRating fuse, double least, double greatest)
    {
        Conductors.InsulationMaterial insulation = requirements.Insulation;
        double initialCelsius = StartCelsius;
        double joules = fuse.Curve!.GreatestLongestJouleIntegral(least, Math.Min(greatest, Accept.MostAmperes), out double worstAmperes);
        CheckNote note = !insulation.HasShortCircuitRoom
            ? $"from {Accept.Short(initialCelsius)} °C, worst at {Accept.Short(worstAmperes)} A"
            : new CheckNote(NoteKind.ShortFrom, insulation, worstAmperes);
        CheckResult hottest = ShortOf(links[0], joules, initialCelsius, note);
        foreach (ChainLink[] chain in chains)
        {
            for (int i = 0; i < chain.Length; i++)
            {
                CheckResult check = ShortOf(chain[i], joules, initialCelsius, note);
                hottest = check.Margin < hottest.Margin ? check : hottest;
            }
        }

        list.Add(hottest);
    }

    /// <summary>How hot an overload or a fault finds the wire, °C: as hot as it may be.</summary>
    /// <remarks>
    /// Where the insulation has no short-circuit limit its continuous one stands in for it, which leaves no room above that: then as hot as the load makes it.
    /// </remarks>
    internal double StartCelsius => requirements.Insulation.HasShortCircuitRoom ? requirements.Insulation.ContinuousCelsius : serviceCelsius ?? requirements.Insulation.ContinuousCelsius;

    private CheckResult ShortOf(in ChainLink link, double joules, double initialCelsius, in CheckNote note)
    {
        Conductors.ConductorMaterial metal = link.Conductor.Material;
        double final = AdiabaticKernel.FinalCelsius(
            AdiabaticKernel.ConstantSquared(metal), link.Conductor.EffectiveAreaSquareMillimeters * link.Parallel, joules, initialCelsius, -metal.InferredZeroCelsius);
        return new CheckResult(
            CheckKind.ShortCircuitTemperature,
            Math.Min(final, metal.MeltingPointCelsius),
            requirements.Insulation.ShortCircuitCelsiusFor(link.Conductor.AreaSquareMillimeters),
            AdiabaticReference,
            note);
    }
}
