using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Networks;

/// <summary>What one of several sources side by side gives or takes.</summary>
public sealed class SourceShare
{
    internal SourceShare(Source source, double amperes, double terminalVolts, double openVolts)
    {
        Source = source;
        Amperes = amperes;
        TerminalVolts = terminalVolts;
        OpenVolts = openVolts;
    }

    /// <summary>The source.</summary>
    public Source Source { get; }

    /// <summary>Current that it gives; negative when the others charge it.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Power at its terminals; negative when it is charged.</summary>
    public Power Power => Power.FromWatts(TerminalVolts * Amperes);

    /// <summary>Power turned into heat inside it; at a held limit what the regulator takes off is in it.</summary>
    public Power Lost => Power.FromWatts((OpenVolts - TerminalVolts) * Amperes);

    /// <summary>Whether current flows into it.</summary>
    public bool IsCharged => Amperes < 0;

    /// <summary>Whether it holds its current limit.</summary>
    public bool AtLimit { get; internal init; }

    /// <summary>Whether it has disconnected because its current passed its limit; it then gives nothing.</summary>
    public bool IsDisconnected { get; internal init; }

    internal double Amperes { get; }

    private double TerminalVolts { get; }

    private double OpenVolts { get; }
}
