using System.Globalization;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>What the simulator says of one check.</summary>
internal enum Say
{
    /// <summary>Too near to the limit, or the models differ by more than the margin.</summary>
    CannotSay,

    /// <summary>At least a twentieth to spare.</summary>
    MustPass,

    /// <summary>Beyond the limit by more than the simulator's own tolerance.</summary>
    MustFail,

    /// <summary>What would decide it is not published or not stated: it may fail or stay undetermined, but not pass.</summary>
    MustNotPass,
}

/// <summary>One ruling with the numbers behind it.</summary>
internal readonly record struct Ruling(Say Say, double Value, double Limit, string Why = "")
{
    /// <summary>A value that must not exceed a limit, known within bounds.</summary>
    /// <param name="least">The least that it can be.</param>
    /// <param name="most">The most that it can be.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="tolerance">Of the limit, by which the least must exceed it.</param>
    /// <param name="why">Words.</param>
    public static Ruling AtMost(double least, double most, double limit, double tolerance, string why = "") =>
        new(least > limit * (1 + tolerance) ? Say.MustFail : most < limit * 0.95 ? Say.MustPass : Say.CannotSay, least, limit, why);

    /// <summary>A value that must reach a limit.</summary>
    public static Ruling AtLeast(double least, double most, double limit, double tolerance, string why = "") =>
        new(most < limit * (1 - tolerance) ? Say.MustFail : least > limit * 1.05 ? Say.MustPass : Say.CannotSay, most, limit, why);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Say}, {Value:G4} against {Limit:G4} {Why}");
}
