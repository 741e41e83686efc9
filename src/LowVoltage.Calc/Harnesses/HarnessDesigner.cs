using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Verifies a harness: the checks of a circuit, on every wire, fuse and load, over all load cases and supply levels.</summary>
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

    internal static void Refuse(Harness harness)
    {
        double volts = harness.GreatestVolts, most = (double)CircuitDesigner.HighestVoltage.Volts;
        if (volts > most)
        {
            HarnessSource source = Array.Find(harness.SourceArray, s => (s.Source?.Numbers.MaximumVolts ?? s.Panel!.OpenVolts) > most)!;
            throw new ArgumentException($"{source} can reach {Accept.Text(volts)} V; a harness is verified and designed up to {Accept.Text(most)} V d.c. It can still be solved.", nameof(harness));
        }
    }
}
