using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Circuits;

/// <summary>A conductor at one temperature.</summary>
internal readonly struct FixedConductorTemperature(double celsius, double ratio) : IConductorTemperature
{
    public bool DependsOnCurrent => false;

    internal static FixedConductorTemperature Of(Conductor conductor, double celsius) =>
        new(celsius, conductor.OhmsPerMeterAt(celsius) / conductor.OhmsPerMeterAt(20));

    public double CelsiusAt(double heatingAmperes) => celsius;

    public double RatioAt(double heatingAmperes) => ratio;

    public double RatioPerSquareAmpere => 0;

    public double MeltingAmperes => double.PositiveInfinity;
}

/// <summary>A conductor that heats itself: θ = θa + (θr − θa)·(I/Ir)².</summary>
internal readonly struct SelfHeatedConductorTemperature : IConductorTemperature
{
    private readonly Conductor conductor;
    private readonly double ambient;
    private readonly double risePerSquareAmpere;
    private readonly double perOhm20;

    internal SelfHeatedConductorTemperature(Conductor conductor, double ambientCelsius, double ratedAmperes, double ratedCelsius)
    {
        this.conductor = conductor;
        ambient = ambientCelsius;
        risePerSquareAmpere = (ratedCelsius - ambientCelsius) / (ratedAmperes * ratedAmperes);
        perOhm20 = 1 / conductor.OhmsPerMeterAt(20);
    }

    public bool DependsOnCurrent => risePerSquareAmpere != 0;

    public double CelsiusAt(double heatingAmperes) => ambient + (risePerSquareAmpere * heatingAmperes * heatingAmperes);

    public double RatioAt(double heatingAmperes) => conductor.OhmsPerMeterAt(CelsiusAt(heatingAmperes)) * perOhm20;

    public double RatioPerSquareAmpere => conductor.Material.TemperatureCoefficient * risePerSquareAmpere;

    public double MeltingAmperes => double.PositiveInfinity;
}

/// <summary>All segments of a path that carry this circuit's current alone, each at its own temperature.</summary>
internal readonly struct PathTemperature : IConductorTemperature
{
    private readonly CircuitPath path;
    private readonly ConductorTemperature common;
    private readonly double frozenAmperes;

    internal PathTemperature(CircuitPath path, ConductorTemperature common, double frozenAmperes = double.NaN)
    {
        this.path = path;
        this.common = common;
        this.frozenAmperes = frozenAmperes;
        Ohms20 = Sum(0, fixedAt20: true);
        DependsOnCurrent = double.IsNaN(frozenAmperes) && AnyDepends();
    }

    /// <summary>Resistance of those segments at 20 °C, Ω.</summary>
    internal double Ohms20 { get; }

    /// <summary>The current that the temperatures were frozen at, A; NaN where they follow it.</summary>
    internal double FrozenAmperes => frozenAmperes;

    public bool DependsOnCurrent { get; }

    public double CelsiusAt(double heatingAmperes)
    {
        double hottest = double.NegativeInfinity;
        foreach (Segment segment in path.FeedArray)
        {
            hottest = Math.Max(hottest, CelsiusOf(segment, heatingAmperes));
        }

        foreach (Segment segment in Back)
        {
            hottest = Math.Max(hottest, CelsiusOf(segment, heatingAmperes));
        }

        return hottest;
    }

    public double RatioAt(double heatingAmperes) => Sum(heatingAmperes, fixedAt20: false) / Ohms20;

    public double RatioPerSquareAmpere
    {
        get
        {
            if (!DependsOnCurrent)
            {
                return 0;
            }

            double sum = 0;
            foreach (Segment segment in path.FeedArray)
            {
                sum += OhmsPerSquareAmpere(segment);
            }

            foreach (Segment segment in Back)
            {
                sum += OhmsPerSquareAmpere(segment);
            }

            return sum / Ohms20;
        }
    }

    /// <summary>Asked segment by segment where the answer is taken apart.</summary>
    public double MeltingAmperes => double.PositiveInfinity;

    internal double CelsiusOf(Segment segment, double heatingAmperes)
    {
        double amperes = double.IsNaN(frozenAmperes) ? heatingAmperes : frozenAmperes;
        return (segment.Temperature ?? common).CelsiusAt(amperes / segment.Parallel);
    }

    private double OhmsPerSquareAmpere(Segment segment)
    {
        ConductorTemperature own = segment.Temperature ?? common;
        double amperes = own.RatedAmperes * segment.Parallel;
        return segment.OhmsAt(20) * segment.Conductor.Material.TemperatureCoefficient * own.RiseKelvins / (amperes * amperes);
    }

    private Segment[] Back => path.Return.IsShared ? [] : path.BackArray;

    private double Sum(double amperes, bool fixedAt20)
    {
        double ohms = 0;
        foreach (Segment segment in path.FeedArray)
        {
            ohms += segment.OhmsAt(fixedAt20 ? 20 : CelsiusOf(segment, amperes));
        }

        foreach (Segment segment in Back)
        {
            ohms += segment.OhmsAt(fixedAt20 ? 20 : CelsiusOf(segment, amperes));
        }

        return ohms;
    }

    private bool AnyDepends()
    {
        foreach (Segment segment in path.FeedArray)
        {
            if ((segment.Temperature ?? common).DependsOnCurrent)
            {
                return true;
            }
        }

        foreach (Segment segment in Back)
        {
            if ((segment.Temperature ?? common).DependsOnCurrent)
            {
                return true;
            }
        }

        return false;
    }
}
