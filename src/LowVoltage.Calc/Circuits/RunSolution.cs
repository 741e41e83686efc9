using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Voltages, currents and losses of a run that feeds loads along its length.</summary>
public sealed class RunSolution
{
    internal RunSolution()
    {
    }

    internal double NearAmperes { get; init; }

    internal double FarAmperes { get; init; }

    internal double LossWatts { get; init; }

    internal double HighestFeedVolts { get; init; }

    /// <summary>Whether every load has a voltage above zero. When false the loads' currents cannot flow in this run, whatever the other members say.</summary>
    public bool Exists => Lowest.Volts > 0;

    /// <summary>The taps, from the near end to the far end; for an even load its two ends.</summary>
    public required IReadOnlyList<RunPoint> Points { get; init; }

    /// <summary>The point with the lowest voltage. On an even load it may lie anywhere; on a tapped run it is a tap or an end.</summary>
    public RunPoint Lowest { get; internal init; }

    /// <summary>Current from the near feed; negative when the far feed pushes current into it.</summary>
    public ElectricCurrent NearFeed => ElectricCurrent.FromAmperes(NearAmperes);

    /// <summary>Current from the far feed; zero when there is none, negative when the near feed pushes current into it.</summary>
    public ElectricCurrent FarFeed => ElectricCurrent.FromAmperes(FarAmperes);

    /// <summary>Power lost in the run.</summary>
    public Power Loss => Power.FromWatts(LossWatts);

    /// <summary>The largest drop: the higher feed less the lowest point.</summary>
    public ElectricPotential GreatestDrop => ElectricPotential.FromVolts(HighestFeedVolts - Lowest.Volts);
}
