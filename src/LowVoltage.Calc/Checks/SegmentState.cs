using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Checks;

/// <summary>One stretch of conductor in the way out and back, on doubles.</summary>
/// <remarks>
/// θ(I) = base + rise·(I/rated)², with the rated current of all parallel wires together; an unrated stretch stays at its base. A stretch whose temperature the caller
/// stated is as warm as stated.
/// </remarks>
internal struct SegmentState
{
    internal Conductor Conductor;
    internal double Meters;
    internal int Parallel;
    internal Site Site;
    internal StretchName Name;

    /// <summary>What the caller stated of its warmth; null where it heats itself.</summary>
    internal ConductorTemperature? Stated;

    /// <summary>Current of other circuits in it, A.</summary>
    internal double OtherAmperes;

    /// <summary>Whether a load with stated times of a duty cycle is behind it.</summary>
    internal bool IsPulsed;

    /// <summary>Whether such a load starts, a motor.</summary>
    internal bool HasPulsedStarts;

    internal double RatedAmperes;
    internal double RiseKelvins;
    internal double BaseCelsius;

    /// <summary>The conductor that the rating is of: a return of its own keeps its rating while candidates for the feed come and go.</summary>
    private Conductor? ratedConductor;

    internal readonly bool IsRated => RatedAmperes > 0;

    /// <summary>What the other circuits leave of its continuous current, A.</summary>
    internal readonly double LeftAmperes => OtherAmperes == 0 ? RatedAmperes : Math.Max(0, RatedAmperes - OtherAmperes);

    /// <summary>What the others leave of its continuous current by the basis that cools it least, A, and that basis.</summary>
    internal readonly (double Amperes, PreparedRating Basis) Cooling()
    {
        PreparedRating basis = Site.Rating.CooledLeast(Conductor);
        double left = ReferenceEquals(basis, Site.Rating) ? LeftAmperes : basis.TryAmperes(Conductor, out double one) ? Math.Max(0, (one * Parallel) - OtherAmperes) : 0;
        return (left, basis);
    }

    internal readonly double Ohms20 => Conductor.OhmsPerMeter20 * Meters / Parallel;

    /// <summary>What is not rated, or is heated by others too, counts as hot as the insulation allows: that overstates its resistance.</summary>
    internal readonly double UnratedCelsius => Math.Max(Site.AmbientCelsius, Site.Insulation.ContinuousCelsius);

    internal readonly double OhmsAt(double celsius) => Conductor.OhmsPerMeterAt(celsius) * Meters / Parallel;

    internal readonly double CelsiusAt(double amperes)
    {
        if (Stated is not null)
        {
            return Stated.CelsiusAt(amperes / Parallel);
        }

        double load = IsRated ? amperes / RatedAmperes : 0;
        return BaseCelsius + (RiseKelvins * load * load);
    }

    /// <summary>Its resistance with no current of its own, Ω, and what each square ampere of r.m.s. current adds, Ω/A².</summary>
    internal readonly (double Ohms, double PerSquareAmpere) Law()
    {
        (double start, double rise, double rated) = Stated is null ? (BaseCelsius, RiseKelvins, RatedAmperes) : (Stated.AmbientCelsius, Stated.RiseKelvins, Stated.RatedAmperes * Parallel);
        double slope = rise > 0 && rated > 0 ? Ohms20 * Conductor.Material.TemperatureCoefficient * rise / (rated * rated) : 0;
        return (OhmsAt(start), slope);
    }

    /// <summary>The r.m.s. current that melts it by that law, A; infinite where it does not warm up.</summary>
    internal readonly double MeltingAmperes()
    {
        (double start, double rise, double rated) = Stated is null ? (BaseCelsius, RiseKelvins, RatedAmperes) : (Stated.AmbientCelsius, Stated.RiseKelvins, Stated.RatedAmperes * Parallel);
        double room = Conductor.Material.MeltingPointCelsius - start;
        return room <= 0 ? 0 : rise > 0 && rated > 0 ? rated * Math.Sqrt(room / rise) : double.PositiveInfinity;
    }

    /// <summary>How warm it is before the current has warmed it, °C.</summary>
    internal readonly double CoolCelsius => Stated?.CelsiusAt(0) ?? Site.AmbientCelsius;

    /// <summary>How hot a fault may find it, °C.</summary>
    internal readonly double HotCelsius(double amperes) => Stated is null ? UnratedCelsius : Math.Max(UnratedCelsius, Stated.CelsiusAt(amperes / Parallel));

    /// <summary>Reads the rating of the conductor that stands in it.</summary>
    internal void Rate()
    {
        if (ReferenceEquals(ratedConductor, Conductor))
        {
            return;
        }

        PreparedRating rating = Site.Rating;
        bool known = rating.TryAmperes(Conductor, out double amperes);
        RatedAmperes = known ? amperes * Parallel : 0;
        RiseKelvins = known ? Math.Max(0, rating.LimitCelsiusFor(Conductor) - rating.RatedAmbientFor(Conductor)) : 0;
        BaseCelsius = known ? Site.AmbientCelsius : UnratedCelsius;
        ratedConductor = Conductor;
    }

    /// <summary>The steady temperature of its conductor at a current of the whole stretch, °C; false where there is none.</summary>
    internal readonly bool TrySteadyCelsius(double amperes, out double celsius)
    {
        bool settles = Site.Rating.TryCelsius(Conductor, amperes / Parallel, RatedAmperes / Parallel, Site.AmbientCelsius, out celsius);
        if (Stated is not null)
        {
            celsius = Math.Max(settles ? celsius : double.NegativeInfinity, Stated.CelsiusAt(amperes / Parallel));
            settles = true;
        }

        return settles;
    }
}
