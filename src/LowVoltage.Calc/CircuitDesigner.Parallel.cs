using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc;

/// <content>Several equal wires side by side, their number to be found.</content>
public static partial class CircuitDesigner
{
    private const int MostWires = 20;

    /// <summary>Designs one circuit of equal wires in parallel behind one fuse, where a single wire does not pass: the fewest of them, then the smallest size, then the smallest fuse.</summary>
    /// <param name="requirements">What the circuit must do and where it runs. A return that is a wire like the feed is of as many wires.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <param name="most">The greatest number of wires each way that are allowed, 1 to 20; 1 asks <see cref="Design"/>.</param>
    /// <returns>
    /// The design, <see cref="Segment.Parallel"/> of whose path says how many; where no number passes, the nearest design of a single wire.
    /// </returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V, or the number is outside its range.</exception>
    /// <remarks>
    /// Every wire counts as a loaded conductor of the bundle, and a fault anywhere along one of them is a check (<see cref="CheckKind.FaultInOneParallelWire"/>): it does not divide over the others.
    /// One fuse does not protect a single wire when its partner opens, which the assumptions say. One larger wire is nearly always the better answer.
    /// </remarks>
    public static CircuitDesign DesignParallel(CircuitRequirements requirements, DesignRules rules, int most)
    {
        int limit = Accept.Count(most, 1, MostWires, nameof(most));
        CircuitDesign single = Design(requirements, rules);
        if (single.Verdict == Verdict.Pass)
        {
            return single;
        }

        for (int wires = 2; wires <= limit; wires++)
        {
            foreach (Conductor conductor in rules.Conductors.Conductors)
            {
                CircuitPath path = CircuitPath.Create(Segment.Create(conductor, requirements.Feed, wires), requirements.Return).WithFeedJoints([.. requirements.Joints]);
                if (SmallestFuse(requirements, path, rules) is { } found)
                {
                    return found;
                }
            }
        }

        return single;
    }

    // What the wires alone fail no fuse mends; a fuse is verified in full only where the checks that a size or rating decides let it through.
    private static CircuitDesign? SmallestFuse(CircuitRequirements requirements, CircuitPath path, DesignRules rules)
    {
        BranchState at = Branches.ForPath(requirements, rules, path);
        CheckTally wires = default;
        if (!wires.WirePasses(at))
        {
            return null;
        }

        foreach (FuseRating fuse in rules.Fuses.Ratings)
        {
            at.SetFuse(fuse);
            CheckTally asked = default;
            if (asked.QuickFusePasses(at) && asked.RestOfFusePasses(at) && Verify(requirements, path, fuse, rules) is { Verdict: Verdict.Pass } found)
            {
                return found;
            }
        }

        return null;
    }
}
