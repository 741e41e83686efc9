using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc;

/// <summary>The main job: from what a circuit must do to its wire and fuse; the same checks on wiring that exists; how far given wiring can be pushed.</summary>
/// <remarks>
/// <para>The designer walks the series of wires upward. For each size: mechanical minimum, rating where it runs, operating point at minimum, nominal and
/// maximum supply voltage, drop, volts at the load, current, temperature; then the fuses that carry the load and protect the wire: voltage rating, breaking capacity, start,
/// a fault at the far end, the conductor's temperature when the fuse opens. The first size with a fuse that fails nothing is taken.</para>
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
    /// <returns>Wire, fuse and checks, or why nothing fits.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static CircuitDesign Design(CircuitRequirements requirements, DesignRules rules)
    {
        Refuse(requirements, rules);
        CircuitEvaluator evaluator = new(requirements, rules, new Installation(requirements));
        IReadOnlyList<Conductor> sizes = rules.Conductors.Conductors;
        for (int i = 0; i < sizes.Count; i++)
        {
            CheckList list = evaluator.NewList();
            evaluator.Try(sizes[i]);
            if (!evaluator.IsOutWhenCool()
                && evaluator.CheckWire(ref list, out WireDuty duty, askAll: false, decide: true) && evaluator.FirstFuse(ref list, duty) is { } fuse)
            {
                return new CircuitDesign(requirements, rules, sizes[i], fuse, list.ToArray()) { Tried = i };
            }
        }

        return new CircuitDesign(requirements, rules, null, null, AskLargest(evaluator, sizes).ToArray()) { Tried = sizes.Count };
    }

    /// <summary>Why the sizes below the one chosen were not taken: the search did not stop to write it down.</summary>
    internal static RejectedSize[] Rejected(CircuitRequirements requirements, DesignRules rules, int tried)
    {
        RejectedSize[] rejected = new RejectedSize[tried];
        CircuitEvaluator evaluator = new(requirements, rules, new Installation(requirements));
        for (int i = 0; i < tried; i++)
        {
            rejected[i] = Reject(evaluator, rules.Conductors.Conductors[i]);
        }

        return rejected;
    }

    /// <summary>The check that stopped the largest of the sizes below the one chosen; a size that the rating's source does not know is passed over.</summary>
    internal static CheckResult? LargestStop(CircuitRequirements requirements, DesignRules rules, int tried)
    {
        CircuitEvaluator evaluator = new(requirements, rules, new Installation(requirements));
        for (int i = tried - 1; i >= 0; i--)
        {
            CheckResult check = Reject(evaluator, rules.Conductors.Conductors[i]).Check;
            if (check.Outcome == CheckOutcome.Fail)
            {
                return check;
            }
        }

        return null;
    }

    private static RejectedSize Reject(CircuitEvaluator evaluator, Conductor size)
    {
        CheckList list = Ask(evaluator, size);
        return new RejectedSize(size, list.Failed > 0 ? list.Worst : list.Last);
    }

    // What stopped the largest size that the rating's source knows; where it knows none, what it says of the largest.
    private static CheckList AskLargest(CircuitEvaluator evaluator, IReadOnlyList<Conductor> sizes)
    {
        CheckList list = evaluator.NewList();
        _ = AskLargest(evaluator, sizes, ref list);
        return list;
    }

    private static (Conductor Size, FuseRating? Fuse) AskLargest(CircuitEvaluator evaluator, IReadOnlyList<Conductor> sizes, ref CheckList list)
    {
        CheckList empty = list;
        for (int i = sizes.Count - 1; i >= 0; i--)
        {
            list.Rewind(empty);
            FuseRating? fuse = Ask(evaluator, sizes[i], ref list);
            if (list.Failed > 0 && list.Worst.Kind != CheckKind.MechanicalMinimum)
            {
                return (sizes[i], fuse);
            }
        }

        Conductor largest = sizes[sizes.Count - 1];
        list.Rewind(empty);
        return (largest, Ask(evaluator, largest, ref list));
    }

    /// <summary>Where nothing fits: the size whose checks the design holds, and the fuse that came nearest on it.</summary>
    internal static (Conductor Size, FuseRating? Fuse) LargestTried(CircuitRequirements requirements, DesignRules rules)
    {
        CircuitEvaluator evaluator = new(requirements, rules, new Installation(requirements));
        CheckList list = evaluator.NewList();
        return AskLargest(evaluator, rules.Conductors.Conductors, ref list);
    }

    /// <summary>Where nothing fits: the least fuse that the load needs and the largest that the largest wire allows, A, and the next fuse there is; null when the wire itself is out.</summary>
    internal static (double Least, double Most, FuseRating? Next)? FuseSpan(CircuitRequirements requirements, DesignRules rules)
    {
        CircuitEvaluator evaluator = new(requirements, rules, new Installation(requirements));
        _ = AskLargest(evaluator, rules.Conductors.Conductors);
        CheckList list = evaluator.NewList();
        return evaluator.CheckWire(ref list, out WireDuty duty, askAll: false) ? (evaluator.LeastFuseAmperes(duty), evaluator.MostFuseAmperes(), evaluator.NextFuse(duty)) : null;
    }

    private static CheckList Ask(CircuitEvaluator evaluator, Conductor size)
    {
        CheckList list = evaluator.NewList();
        _ = Ask(evaluator, size, ref list);
        return list;
    }

    // All that is to be said of a size that does not pass.
    private static FuseRating? Ask(CircuitEvaluator evaluator, Conductor size, ref CheckList list)
    {
        evaluator.Try(size);
        return evaluator.CheckWire(ref list, out WireDuty duty, askAll: false) ? evaluator.AskFuses(ref list, duty) : null;
    }

    /// <summary>Checks one wire size and fuse, feed and wire return alike, as the designer would.</summary>
    /// <param name="requirements">What the circuit must do and where it runs.</param>
    /// <param name="wire">The conductor of the feed, and of the return where that is a wire like it.</param>
    /// <param name="fuse">The fuse.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>Every check that could be made.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static CircuitDesign Verify(CircuitRequirements requirements, Conductor wire, FuseRating fuse, DesignRules rules)
    {
        Refuse(requirements, rules);
        _ = wire ?? throw new ArgumentNullException(nameof(wire));
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return Verify(requirements, rules, new Installation(requirements), requirements.Load, wire, fuse);
    }

    /// <summary>Checks wiring that exists: a path of any stretches, and its fuse.</summary>
    /// <param name="requirements">What the circuit must do and where it runs. Its feed, return and joints are replaced by the path's.</param>
    /// <param name="path">The way out and back as it is, joints included.</param>
    /// <param name="fuse">The fuse.</param>
    /// <param name="rules">The practice to follow.</param>
    /// <returns>Every check that could be made; each on the weakest stretch.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public static CircuitDesign Verify(CircuitRequirements requirements, CircuitPath path, FuseRating fuse, DesignRules rules)
    {
        Refuse(requirements, rules);
        _ = path ?? throw new ArgumentNullException(nameof(path));
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        CircuitEvaluator evaluator = new(requirements, rules, new Installation(requirements, path), path);
        CheckList list = Run(evaluator, fuse);
        return new CircuitDesign(requirements, rules, path.FeedArray[0].Conductor, fuse, list.ToArray()) { Existing = path };
    }

    private static CircuitDesign Verify(
        CircuitRequirements requirements, DesignRules rules, in Installation at, Load load, Conductor wire, FuseRating fuse)
    {
        CircuitEvaluator evaluator = new(requirements, rules, at, load);
        evaluator.Try(wire);
        CheckList list = Run(evaluator, fuse);
        return new CircuitDesign(requirements, rules, wire, fuse, list.ToArray());
    }

    // Existing wiring is asked everything: a failed check does not hide the others, only what it makes impossible to answer.
    private static CheckList Run(CircuitEvaluator evaluator, FuseRating fuse)
    {
        CheckList list = evaluator.NewList();
        evaluator.CheckWire(ref list, out WireDuty duty, askAll: true);
        if (duty.Exists)
        {
            evaluator.CheckFuse(ref list, duty, fuse);
        }

        return list;
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
    }
}
