using System.Globalization;

namespace LowVoltage.Calc.Circuits;

/// <summary>Between which states of charge a battery lies that was only measured with a voltmeter.</summary>
/// <remarks>Made by <see cref="LeadAcidCharge.BandAt"/>; 0 is empty, 1 is full. Immutable.</remarks>
public sealed class ChargeBand
{
    internal ChargeBand(double least, double likely, double greatest)
    {
        Least = least;
        Likely = likely;
        Greatest = greatest;
    }

    /// <summary>The least that the reading allows: what to count on.</summary>
    public double Least { get; }

    /// <summary>By the table and the cell's own temperature coefficient.</summary>
    public double Likely { get; }

    /// <summary>The most that the reading allows.</summary>
    public double Greatest { get; }

    /// <summary>The band in per cent: <c>82 % (42 % to 91 %)</c>.</summary>
    public override string ToString() => $"{Percent(Likely)} ({Percent(Least)} to {Percent(Greatest)})";

    private static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";
}
