using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Ampacity;

/// <summary>An ampacity basis made ready for one place: all that does not depend on the size is worked out once.</summary>
internal abstract class PreparedRating
{
    /// <summary>Why no size at all can be rated here; none when sizes can be.</summary>
    internal LateText Gap { get; init; }

    /// <summary>Whether the gap is the place's doing (too hot, too many wires) and not that the source is silent on this wire.</summary>
    internal bool PlaceIsTooHard { get; init; }

    /// <summary>Conductor temperature that the rating stands for, °C.</summary>
    internal double LimitCelsius { get; init; }

    /// <summary>Ambient temperature that the rating is for, °C: the air itself, or the table's own where that is used for cooler air.</summary>
    internal required double RatedAmbientCelsius { get; init; }

    internal required Reference Reference { get; init; }

    /// <summary>Conductor temperature that the rating of one conductor stands for, °C.</summary>
    internal virtual double LimitCelsiusFor(Conductor conductor) => LimitCelsius;

    /// <summary>Ambient temperature that the rating of one conductor is for, °C.</summary>
    internal virtual double RatedAmbientFor(Conductor conductor) => RatedAmbientCelsius;

    /// <summary>The basis by whose rating a conductor is cooled least: what an overload is counted with.</summary>
    internal virtual PreparedRating CooledLeast(Conductor conductor) => this;

    /// <summary>Continuous current of a conductor here, A; false when the basis says nothing of it.</summary>
    internal abstract bool TryAmperes(Conductor conductor, out double amperes);

    /// <summary>Conductor temperature at a current, °C, from the rating by the square law; a physical basis overrides it.</summary>
    /// <returns>False when there is no steady temperature.</returns>
    internal virtual bool TryCelsius(Conductor conductor, double heatingAmperes, double ratedAmperes, double ambientCelsius, out double celsius)
    {
        double load = heatingAmperes / ratedAmperes;
        celsius = ambientCelsius + ((LimitCelsius - RatedAmbientCelsius) * load * load);
        return true;
    }

    /// <summary>The source that the rating of this conductor comes from.</summary>
    internal virtual Reference ReferenceFor(Conductor conductor) => Reference;

    /// <summary>The steps from the table to the rating, where the basis is a table.</summary>
    internal virtual DeratedAmpacity? Derate(Conductor conductor) => null;

    /// <summary>Writes the steps to the continuous current of one conductor that is rated.</summary>
    /// <param name="letters">Where to.</param>
    /// <param name="conductor">The conductor.</param>
    /// <param name="name">The letter of the result.</param>
    internal abstract Symbol Write(RatingLetters letters, Conductor conductor, string name);

    /// <summary>Writes the steps to the temperature of one conductor at a current, as <see cref="TryCelsius"/> has it; null when there is none.</summary>
    /// <param name="letters">Where to.</param>
    /// <param name="conductor">The conductor.</param>
    /// <param name="heating">The r.m.s. current of one conductor.</param>
    /// <param name="rated">Its continuous current.</param>
    /// <param name="name">The letter of the result.</param>
    internal virtual Symbol? WriteCelsius(RatingLetters letters, Conductor conductor, Symbol heating, Symbol rated, string name)
    {
        Symbol limit = letters.Rated(letters.Named("θ_zt" + RatingLetters.Family(name)), LimitCelsius, "the table", Reference);
        Symbol cool = letters.AmbientOfRating("θ_za" + RatingLetters.Family(name), RatedAmbientCelsius, Reference);
        TryCelsius(conductor, heating.Value, rated.Value, letters.Ambient.Value, out double celsius);
        return letters.Board.Step(
            "conductor temperature by the table", name, letters.Ambient + ((limit - cool) * Formula.Square(heating / rated)), celsius, "°C", Circuits.ConductorTemperature.Reference,
            "The rise goes with the square of the current; the rating fixes it.");
    }

    /// <summary>What a reader must know of this basis here.</summary>
    internal virtual IEnumerable<string> Remarks(Conductor conductor) => Derate(conductor)?.Remarks ?? [];
}
