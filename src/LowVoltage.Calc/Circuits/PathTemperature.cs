namespace LowVoltage.Calc.Circuits;

/// <summary>All segments of a path that carry this circuit's current alone, each at its own temperature: their resistance is a straight line of the squared r.m.s. current.</summary>
internal readonly struct PathTemperature
{
    private readonly CircuitPath path;
    private readonly ConductorTemperature common;
    private readonly double frozenAmperes;

    /// <param name="path">The path.</param>
    /// <param name="common">The temperature of segments that state none of their own.</param>
    /// <param name="frozenAmperes">The r.m.s. current that has warmed them already, where what flows now is over too soon to do so; NaN for none.</param>
    internal PathTemperature(CircuitPath path, ConductorTemperature common, double frozenAmperes = double.NaN)
    {
        this.path = path;
        this.common = common;
        this.frozenAmperes = frozenAmperes;
    }

    /// <summary>The current that the temperatures were frozen at, A; NaN where they follow it.</summary>
    internal double FrozenAmperes => frozenAmperes;

    /// <summary>Whether their temperature depends on the current.</summary>
    internal bool DependsOnCurrent
    {
        get
        {
            bool any = false;
            foreach (Segment segment in path.FeedArray)
            {
                any |= Of(segment).DependsOnCurrent;
            }

            foreach (Segment segment in Back)
            {
                any |= Of(segment).DependsOnCurrent;
            }

            return any && double.IsNaN(frozenAmperes);
        }
    }

    /// <summary>Their resistance with no current, Ω.</summary>
    internal double Ohms
    {
        get
        {
            double ohms = 0;
            foreach (Segment segment in path.FeedArray)
            {
                ohms += segment.OhmsAt(CelsiusOf(segment, 0));
            }

            foreach (Segment segment in Back)
            {
                ohms += segment.OhmsAt(CelsiusOf(segment, 0));
            }

            return ohms;
        }
    }

    /// <summary>What each square ampere of r.m.s. current adds to it, Ω/A².</summary>
    internal double OhmsPerSquareAmpere
    {
        get
        {
            double sum = 0;
            if (DependsOnCurrent)
            {
                foreach (Segment segment in path.FeedArray)
                {
                    sum += Slope(segment);
                }

                foreach (Segment segment in Back)
                {
                    sum += Slope(segment);
                }
            }

            return sum;
        }
    }

    private Segment[] Back => path.Return.IsShared ? [] : path.BackArray;

    /// <summary>The temperature of one of them at an r.m.s. current, °C.</summary>
    internal double CelsiusOf(Segment segment, double heatingAmperes) =>
        Of(segment).CelsiusAt((double.IsNaN(frozenAmperes) ? heatingAmperes : frozenAmperes) / segment.Parallel);

    private ConductorTemperature Of(Segment segment) => segment.Temperature ?? common;

    private double Slope(Segment segment)
    {
        ConductorTemperature own = Of(segment);
        double amperes = own.RatedAmperes * segment.Parallel;
        return segment.OhmsAt(20) * segment.Conductor.Material.TemperatureCoefficient * own.RiseKelvins / (amperes * amperes);
    }
}
