using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Design;

/// <summary>Runs the checks of one circuit on candidate wires and fuses. One instance per call of the designer; not shared between threads.</summary>
/// <remarks>Works on doubles; what does not depend on the candidate is worked out once, in the constructor.</remarks>
internal sealed partial class CircuitEvaluator
{
    private static readonly Reference OhmsLawReference = Reference.CommonPractice("Ohm's law; the worst of minimum, nominal and maximum supply voltage");

    private readonly CircuitRequirements requirements;
    private readonly Installation at;
    private readonly DesignRules rules;
    private readonly Load load;
    private readonly SourceNumbers source;
    private readonly PreparedRating rating;
    private readonly ChainLink[] links;
    private readonly ChainLink[] shared;
    private readonly ChainLink[][] chains;
    private readonly double fixedOhms;
    private readonly double sharedVolts;
    private readonly double othersAmperes;
    private readonly DropLimit dropLimit;
    private readonly CheckResult[] scratch = CheckList.Scratch();

    // The hottest conductor at the load's own current, °C; known once the wire has been checked and is rated.
    private double? serviceCelsius;

    /// <summary>For a design: the first link is the candidate, feed and wire return together; a return of its own follows.</summary>
    internal CircuitEvaluator(CircuitRequirements requirements, DesignRules rules, in Installation at)
        : this(requirements, rules, at, requirements.Load)
    {
    }

    /// <summary>For a candidate wire with another load than the one required.</summary>
    internal CircuitEvaluator(CircuitRequirements requirements, DesignRules rules, in Installation at, Load load)
        : this(requirements, rules, at, load, CandidateLinks(requirements), OhmsOf(requirements.Joints), requirements.Return)
    {
        if (requirements.Return.Kind == ReturnKind.SameConductor)
        {
            links[0].Meters += requirements.Return.Meters;
        }
    }

    /// <summary>For wiring that exists.</summary>
    internal CircuitEvaluator(CircuitRequirements requirements, DesignRules rules, in Installation at, CircuitPath path)
        : this(requirements, rules, at, requirements.Load, PathLinks(path), OhmsOf(path.FeedJoints) + OhmsOf(path.ReturnJoints), path.Return)
    {
    }

    private CircuitEvaluator(
        CircuitRequirements requirements, DesignRules rules, in Installation at, Load load, ChainLink[] links, double jointOhms, ReturnPath back)
    {
        this.load = load;
        this.requirements = requirements;
        this.at = at;
        this.rules = rules;
        this.links = links;
        source = requirements.Source.Numbers;
        rating = rules.Ampacity.Prepare(at);
        Ambient = at.AmbientCelsius;
        dropLimit = requirements.DropLimit ?? rules.DropLimit;
        double sharedOhms = SharedOhms(back, UnratedCelsius);
        shared = back.Kind == ReturnKind.SharedSegments ? [.. back.Segments.Select(Link)] : [];
        othersAmperes = back.OtherAmperes;
        sharedVolts = sharedOhms * othersAmperes;
        fixedOhms = jointOhms + (requirements.UpstreamOhms ?? 0) + (back.Kind == ReturnKind.Chassis ? back.Ohms : 0) + sharedOhms;
        chains = [links, shared];
    }

    internal double Ambient { get; }

    /// <summary>Puts a candidate wire into the first link.</summary>
    internal void Try(Conductor conductor)
    {
        links[0].Conductor = conductor;
        serviceCelsius = null;
        surged = false;
    }

    /// <summary>Runs all checks of the wire that stands in the links.</summary>
    /// <param name="askAll">Go on after a failure, and without a rating, as far as anything can be answered; else stop where the size is out.</param>
    /// <param name="decide">Stop at the first failure: nobody will read why. What passes has every check all the same.</param>
    /// <returns>Whether the wire is rated and nothing fails.</returns>
    internal bool CheckWire(ref CheckList list, out WireDuty duty, bool askAll, bool decide = false)
    {
        duty = default;
        CheckMechanical(ref list);
        bool rated = Rate(ref list);
        if (!askAll && (list.Failed > 0 || !rated))
        {
            return false;
        }

        duty = DutyOf(new ChainTemperature(links));
        if (!duty.Exists)
        {
            list.Add(new CheckResult(
                CheckKind.PowerDelivery, duty.LargestWatts, duty.WantedWatts, OhmsLawReference, WhyNoPoint(duty.Reason)));
            return false;
        }

        CheckDrop(ref list, duty);
        CheckStartVoltage(ref list, duty);
        if (decide && (list.Failed > 0 || duty.HeatingAmperes > WeakestAmperes()))
        {
            return false;
        }

        if (rated)
        {
            CheckHeat(ref list, duty);
        }
        else
        {
            list.Add(CheckResult.Undetermined(CheckKind.ConductorTemperature, 0, rating.Reference, "the wire is not rated here"));
        }

        return rated && list.Failed == 0;
    }

    /// <summary>The path with a candidate wire, as rated by the last check.</summary>
    internal CircuitPath PathWith(Conductor wire)
    {
        Segment feed = Segment.Create(wire, Length.FromMeters(requirements.FeedMeters));
        return Rated(CircuitPath.Create(feed, requirements.Return).WithFeedJoints([.. requirements.Joints]));
    }

    /// <summary>The same path with the supply lead, every stretch with the temperature model that its rating gives: the circuit that the checks are about.</summary>
    internal CircuitPath Rated(CircuitPath path)
    {
        if (requirements.UpstreamOhms is > 0 and double ohms)
        {
            path = path.WithFeedJoints(Joint.Create("supply lead", ElectricResistance.FromOhms(ohms)));
        }

        Segment[] feed = [.. path.FeedArray.Select(Warm)];
        ReturnPath back = path.Return.Kind switch
        {
            ReturnKind.SameConductor or ReturnKind.Segments => ReturnPath.Wire([.. path.BackArray.Select(Warm)]),
            ReturnKind.SharedSegments => ReturnPath.Shared([.. path.BackArray.Select(AsHotAsAllowed)], path.Return.OtherCurrent),
            _ => path.Return,
        };
        return CircuitPath.Create(feed, back).WithFeedJoints([.. path.FeedJoints]).WithReturnJoints([.. path.ReturnJoints]);
    }

    private Segment Warm(Segment segment) => rating.TryAmperes(segment.Conductor, out double amperes) && rating.LimitCelsiusFor(segment.Conductor) > Ambient
        ? segment.WithTemperature(ConductorTemperature.SelfHeated(
            Temperature.FromDegreesCelsius(Ambient), ElectricCurrent.FromAmperes(amperes), Temperature.FromDegreesCelsius(rating.LimitCelsiusFor(segment.Conductor))))
        : AsHotAsAllowed(segment);

    private Segment AsHotAsAllowed(Segment segment) =>
        segment.WithTemperature(ConductorTemperature.At(Temperature.FromDegreesCelsius(UnratedCelsius)));

    // What is not rated, or is heated by others too, counts as hot as the insulation allows: that overstates its resistance.
    private double UnratedCelsius => Math.Max(Ambient, requirements.Insulation.ContinuousCelsius);

    internal CheckList NewList() => new(scratch);

    /// <summary>Resistance of the whole path at one conductor temperature, Ω; no source.</summary>
    internal double PathOhmsAt(double celsius)
    {
        double ohms = fixedOhms;
        for (int i = 0; i < links.Length; i++)
        {
            ohms += links[i].OhmsAt(celsius);
        }

        return ohms;
    }

    /// <summary>The continuous current of the weakest stretch, A, in a shared one what the others leave of it; zero when a stretch is not rated or the others fill it.</summary>
    internal double WeakestAmperes()
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < links.Length; i++)
        {
            least = Math.Min(least, links[i].RatedAmperes);
        }

        for (int i = 0; i < shared.Length; i++)
        {
            least = Math.Min(least, Math.Max(0, shared[i].RatedAmperes - othersAmperes));
        }

        return least;
    }

    private bool IsRated => Array.TrueForAll(links, link => link.IsRated) && Array.TrueForAll(shared, link => link.IsRated);

    private void CheckMechanical(ref CheckList list)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < links.Length; i++)
        {
            least = Math.Min(least, links[i].Conductor.AreaSquareMillimeters);
        }

        list.Add(new CheckResult(CheckKind.MechanicalMinimum, least, rules.MinimumSquareMillimeters * (1 - Rounding), rules.MinimumSectionReference));
    }

    private bool Rate(ref CheckList list)
    {
        bool rated = true;
        foreach (ChainLink[] chain in chains)
        {
            for (int i = 0; i < chain.Length; i++)
            {
                rated &= Rate(ref list, ref chain[i], rated);
            }
        }

        return rated;
    }

    private bool Rate(ref CheckList list, ref ChainLink link, bool first)
    {
        if (!ReferenceEquals(link.RatedConductor, link.Conductor))
        {
            bool known = rating.TryAmperes(link.Conductor, out double amperes);
            link.RatedAmperes = known ? amperes * link.Parallel : 0;
            link.RiseKelvins = known ? Math.Max(0, rating.LimitCelsiusFor(link.Conductor) - Ambient) : 0;
            link.BaseCelsius = known ? Ambient : UnratedCelsius;
            link.RatedConductor = link.Conductor;
        }

        bool rated = link.IsRated;
        if (!rated && first)
        {
            string why = rating.Gap.Length > 0 ? rating.Gap : $"{rules.Ampacity.Name} does not cover {link.Conductor} under these conditions";
            list.Add(CheckResult.Undetermined(CheckKind.ContinuousCurrent, 0, rating.Reference, why));
        }

        return rated;
    }

    private string WhyNoPoint(NoOperatingPoint reason) => reason switch
    {
        NoOperatingPoint.SourceDisconnects => $"the source disconnects above {Quantities.Accept.Text(source.LimitAmperes)} A",
        NoOperatingPoint.SourceLimit => $"the load takes more than the source's limit of {Quantities.Accept.Text(source.LimitAmperes)} A",
        NoOperatingPoint.CurrentOutOfReach => "the current would drop more than the whole voltage in this wire, or melt it",
        _ => "more power than can come through this wire",
    };

    private WireDuty DutyOf(in ChainTemperature temperature)
    {
        WireDuty duty = new() { Exists = true, LeastLoadVolts = double.PositiveInfinity };
        double conductorOhms = 0;
        for (int i = 0; i < links.Length; i++)
        {
            conductorOhms += links[i].Ohms20;
        }

        for (SupplyLevel level = SupplyLevel.Minimum; level <= SupplyLevel.Maximum && duty.Exists; level++)
        {
            double sourceOhms = source.OhmsAt(level), volts = source.VoltsAt(level);
            KernelPoint point = OperatingPointKernel.Solve(
                volts - sharedVolts, sourceOhms + fixedOhms, conductorOhms, temperature, load, LoadState.Running, source.HeldAmperes);
            bool disconnects = source.Action == LimitAction.Disconnects && point.Exists && point.Amperes > source.LimitAmperes;
            if (!point.Exists || disconnects)
            {
                duty.Exists = false;
                duty.Reason = disconnects ? NoOperatingPoint.SourceDisconnects : point.Reason;
                duty.LargestWatts = disconnects ? source.LimitAmperes * point.Volts : point.LargestWatts;
                duty.WantedWatts = Math.Max(load.AmperesAt(volts, LoadState.Running) * volts, duty.LargestWatts * (1 + 1e-9));
                return duty;
            }

            duty.OnAmperes = Math.Max(duty.OnAmperes, point.Amperes);
            duty.HeatingAmperes = Math.Max(duty.HeatingAmperes, point.HeatingAmperes);
            duty.DropVolts = Math.Max(duty.DropVolts, (point.Amperes * (point.Ohms - sourceOhms)) + sharedVolts);
            duty.LeastLoadVolts = Math.Min(duty.LeastLoadVolts, point.Volts);
        }

        return duty;
    }
}
