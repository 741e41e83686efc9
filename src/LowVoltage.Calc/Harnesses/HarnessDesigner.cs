using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Verifies a harness, or sizes it: the checks of a circuit, on every wire, fuse and load, over all load cases and supply levels.</summary>
public static class HarnessDesigner
{
    /// <summary>Checks a harness as it stands.</summary>
    /// <param name="harness">The harness; every wire with its conductor, every fuse with its rating.</param>
    /// <param name="cancellation">Ends a long call.</param>
    /// <returns>Every check that could be made, the findings of its structure, and the verdict.</returns>
    /// <exception cref="ArgumentNullException">The harness is null.</exception>
    /// <exception cref="ArgumentException">A source can exceed 60 V.</exception>
    /// <exception cref="InvalidOperationException">A wire has no conductor, or a fuse no rating.</exception>
    /// <exception cref="OperationCanceledException">The call was ended.</exception>
    public static HarnessVerification Verify(Harness harness, CancellationToken cancellation = default)
    {
        _ = harness ?? throw new ArgumentNullException(nameof(harness));
        Refuse(harness);
        harness.RequireSized();
        harness.RequireFused();
        HarnessVerifier verifier = new(harness);
        List<HarnessCheck> checks = verifier.Run(cancellation);
        return new HarnessVerification(harness, [.. checks], HarnessFindings.Of(harness, verifier), SelectivityPair.Of(harness));
    }

    /// <summary>Sizes a harness: every wire without a conductor, every fuse without a rating, at the least mass of metal or cost such that every check passes in every load case.</summary>
    /// <param name="harness">The harness. What has a conductor or a rating keeps it.</param>
    /// <param name="pricePerMeter">Price of a metre of a conductor, never negative; <c>null</c> for the mass of metal in kg.</param>
    /// <param name="cancellation">Ends a long call.</param>
    /// <returns>The sized harness with its verification; where not everything can pass, the nearest with what fails.</returns>
    /// <exception cref="ArgumentNullException">The harness is null.</exception>
    /// <exception cref="ArgumentException">A source can exceed 60 V, or there is no load.</exception>
    /// <exception cref="OperationCanceledException">The call was ended.</exception>
    public static HarnessDesign Design(Harness harness, Func<Conductors.Conductor, double>? pricePerMeter = null, CancellationToken cancellation = default)
    {
        _ = harness ?? throw new ArgumentNullException(nameof(harness));
        Refuse(harness);
        if (harness.LoadArray.Length == 0)
        {
            throw new ArgumentException("There is no load to size the wires for.", nameof(harness));
        }

        Sizing.HarnessSizer sizer = new(harness, pricePerMeter is null ? c => c.KilogramsPerMeter : c => Price(pricePerMeter(c)));
        HarnessVerification verified = sizer.Run(cancellation);
        double kilograms = verified.Harness.BranchArray.OfType<HarnessWire>().Sum(w => w.Conductor!.KilogramsPerMeter * w.Meters * w.Parallel);
        return new HarnessDesign(verified, sizer, kilograms);
    }

    private static double Price(double price) => price >= 0 && !double.IsInfinity(price)
        ? price
        : throw new ArgumentException($"A price must be zero or greater; it was {Accept.Text(price)}.", nameof(price));

    internal static void Refuse(Harness harness)
    {
        double volts = harness.GreatestVolts, most = (double)CircuitDesigner.HighestVoltage.Volts;
        if (volts > most)
        {
            HarnessSource source = Array.Find(harness.SourceArray, s => (s.Source?.Numbers.MaximumVolts ?? s.Panel!.OpenVolts) > most)!;
            throw new ArgumentException($"{source} can reach {Accept.Text(volts)} V; a harness is verified and designed up to {Accept.Text(most)} V d.c. It can still be solved.", nameof(harness));
        }

        double together = OpenVoltage.Of(harness);
        if (together > most * (1 + Checks.BranchState.Rounding))
        {
            throw new ArgumentException(
                $"The sources on top of one another can reach {Accept.Short(together)} V between two nodes; a harness is verified and designed up to {Accept.Text(most)} V d.c. It can still be solved.", nameof(harness));
        }
    }
}
