using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc;

/// <summary>The main job: from what a circuit must do to its wire size (gauge) and fuse size; the same checks on existing wiring; how far given wiring can be pushed.</summary>
/// <remarks>
/// <para>The designer walks the series of wires upward and takes the first that does its duty: mechanical minimum, operating point at minimum, nominal and
/// maximum supply voltage, drop, volts at the load, current and temperature where it runs. Then the fuse: the smallest that carries the load, holds at its start and protects
/// the wire in an overload and in a short circuit. What no wire size cures (a breaking capacity that is too small, operating times that are not published)
/// stands as a failed or undetermined check on that wire and fuse, and says what would settle it. Where nothing passes the nearest wire and fuse are the answer, with what fails.</para>
/// <para>Circuits whose source can exceed 60 V are refused: they are no extra-low-voltage DC and have rules of their own.</para>
/// <para>Calls share nothing and may run in parallel. The same input gives the same answer to the last bit.</para>
/// </remarks>
public static partial class CircuitDesigner
{
    private const double HighestVolts = 60;

    /// <summary>The highest voltage that the designer accepts, 60 V d.c.</summary>
    /// <remarks>
    /// Up to it, in dry everyday conditions, IEC 60364-4-41 clause 414.4.5 asks for no protection against touching live parts (from memory). Above it rules apply that this
    /// library does not know.
    /// </remarks>
    public static ElectricPotential HighestVoltage { get; } = ElectricPotential.FromVolts(HighestVolts);

    /// <summary>Designs one circuit.</summary>
    /// <param name="requirements">What the circuit must do and where it runs.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>
    /// Wire, fuse and checks; where nothing passes, the nearest of them with what fails. Where the number of parallel wires is to be found, the fewest that serve, or
    /// else the nearest of the least number; the design's requirements then state it.
    /// </returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A main fuse is stated beyond the end of the supply lead.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static CircuitDesign Design(CircuitRequirements requirements, DesignRules rules)
    {
        Refuse(requirements, rules);
        return requirements.ParallelWires.IsRange ? FewestWires(requirements, rules) : DesignOf(requirements, rules);
    }

    // Another wire beside the first cures what more copper cures. The first number that leaves nothing of that is the answer, even where something else fails.
    private static CircuitDesign FewestWires(CircuitRequirements requirements, DesignRules rules)
    {
        CircuitDesign? fewest = null;
        for (int wires = requirements.ParallelWires.Least; wires <= requirements.ParallelWires.Most; wires++)
        {
            CircuitDesign found = DesignOf(requirements.WithParallelWires(ParallelWires.Exactly(wires)), rules);
            if (!found.IsNearest)
            {
                return found;
            }

            fewest ??= found;
        }

        return fewest!;
    }

    private static CircuitDesign DesignOf(CircuitRequirements requirements, DesignRules rules)
    {
        BranchState at = Branches.ForCandidate(requirements, rules);
        IReadOnlyList<Conductor> sizes = rules.Conductors.Conductors;
        CircuitSearch.Choice found = new CircuitSearch(at, sizes, rules.Fuses.RatingsArray).Find();
        Conductor wire = sizes[found.Size];
        at.SetCandidate(wire);
        at.SetFuse(found.Fuse);
        return new CircuitDesign(requirements, rules, wire, found.Fuse, AskAll(at, unfused: false)) { Tried = found.Size, IsNearest = found.IsNearest };
    }

    /// <summary>Checks one wire size and fuse, feed and wire return alike, as the designer would.</summary>
    /// <param name="requirements">What the circuit must do and where it runs.</param>
    /// <param name="wire">The conductor of the feed, and of the return where that is a wire like it.</param>
    /// <param name="fuse">The fuse; <c>null</c> where there is none.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>Every check that could be made.</returns>
    /// <exception cref="ArgumentNullException">The requirements, the wire or the rules are null.</exception>
    /// <exception cref="ArgumentException">A main fuse is stated beyond the end of the supply lead.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static CircuitDesign Verify(CircuitRequirements requirements, Conductor wire, FuseRating? fuse, DesignRules rules)
    {
        Refuse(requirements, rules);
        _ = wire ?? throw new ArgumentNullException(nameof(wire));
        BranchState at = Branches.ForCandidate(requirements, rules);
        at.SetCandidate(wire);
        at.SetFitted(fuse);
        return new CircuitDesign(requirements, rules, wire, fuse, AskAll(at, unfused: fuse is null)) { IsVerified = true };
    }

    /// <summary>Checks existing wiring: a path of any stretches, and its fuse.</summary>
    /// <param name="requirements">What the circuit must do and where it runs. Its feed, return and joints are replaced by the path's.</param>
    /// <param name="path">The way out and back as it is, joints included.</param>
    /// <param name="fuse">The fuse; <c>null</c> where there is none.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>Every check that could be made; each on the stretch with the least to spare, which it names.</returns>
    /// <exception cref="ArgumentNullException">The requirements, the path or the rules are null.</exception>
    /// <exception cref="ArgumentException">A main fuse is stated beyond the end of the supply lead, or the path is a resistance without wires.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static CircuitDesign Verify(CircuitRequirements requirements, CircuitPath path, FuseRating? fuse, DesignRules rules)
    {
        Refuse(requirements, rules);
        _ = (path ?? throw new ArgumentNullException(nameof(path))).OfWires(nameof(path));
        BranchState at = Branches.ForPath(requirements, rules, path);
        at.SetFitted(fuse);
        return new CircuitDesign(requirements, rules, path.FeedArray[0].Conductor, fuse, AskAll(at, unfused: fuse is null)) { IsVerified = true, Existing = path };
    }

    /// <summary>Everything is asked: a failed check does not hide the others, only what it makes impossible to answer.</summary>
    private static ArraySegment<CheckResult> AskAll(BranchState at, bool unfused)
    {
        CheckRun run = CheckRun.Keeping();
        run.AskWire(at);
        if (unfused || (at.Fuse is not null && at.Duty.Exists))
        {
            run.AskFuse(at);
        }

        run.AskSupply(at);
        return run.Results;
    }

    /// <summary>What stopped a size below the one chosen: the search did not stop to write it down.</summary>
    internal static RejectedSize[] Rejected(CircuitDesign design)
    {
        IReadOnlyList<Conductor> sizes = design.Rules.Conductors.Conductors;
        RejectedSize[] rejected = new RejectedSize[design.Tried];
        BranchState at = Branches.ForCandidate(design.Requirements, design.Rules);
        for (int i = 0; i < rejected.Length; i++)
        {
            rejected[i] = new RejectedSize(sizes[i], Stop(at, design.Rules, sizes[i]));
        }

        return rejected;
    }

    /// <summary>The check that stopped the largest of the sizes below the one chosen; a size that the rating's source does not know is passed over.</summary>
    internal static CheckResult? LargestStop(CircuitDesign design)
    {
        BranchState at = Branches.ForCandidate(design.Requirements, design.Rules);
        for (int i = design.Tried - 1; i >= 0; i--)
        {
            CheckResult check = Stop(at, design.Rules, design.Rules.Conductors.Conductors[i]);
            if (check.Outcome == CheckOutcome.Fail)
            {
                return check;
            }
        }

        return null;
    }

    // The worst failure of the wire, else that of the fuse that came nearest on it, else what is undetermined.
    private static CheckResult Stop(BranchState at, DesignRules rules, Conductor size)
    {
        CircuitSearch search = new(at, [size], rules.Fuses.RatingsArray);
        return search.WhyNot(size);
    }

    private static void Refuse(CircuitRequirements requirements, DesignRules rules)
    {
        _ = requirements ?? throw new ArgumentNullException(nameof(requirements));
        _ = rules ?? throw new ArgumentNullException(nameof(rules));
        double volts = requirements.Source.Numbers.MaximumVolts;
        if (!(volts <= HighestVolts))
        {
            throw new ArgumentOutOfRangeException(
                nameof(requirements),
                volts,
                $"{nameof(requirements)}: the source can reach {volts.ToString("R", CultureInfo.InvariantCulture)} V; accepted is a source of at most {Accept.Text(HighestVolts)} V. "
                + "This is a library for extra-low-voltage DC: above that voltage other rules apply, and they are not in it.");
        }

        if (requirements.ProtectionArray is { Length: > 0 } row && row[row.Length - 1].UpstreamOhms > requirements.UpstreamOhms)
        {
            throw new ArgumentException(
                $"{nameof(requirements)}: the {row[row.Length - 1]} is stated after {Accept.Text(1000 * row[row.Length - 1].UpstreamOhms!.Value)} mΩ of supply lead, "
                + $"beyond the whole lead of {Accept.Text(1000 * requirements.UpstreamOhms!.Value)} mΩ; accepted is a place on the lead.",
                nameof(requirements));
        }
    }
}
