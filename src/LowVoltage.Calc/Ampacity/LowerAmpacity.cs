using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Ampacity;

/// <summary>The lower of two bases; a size that one of them does not cover takes the other.</summary>
internal sealed class LowerAmpacity : AmpacityBasis
{
    private readonly AmpacityBasis first;
    private readonly AmpacityBasis second;

    internal LowerAmpacity(AmpacityBasis first, AmpacityBasis second)
        : base($"the lower of {first.Name} and {second.Name}", first.Reference)
    {
        this.first = first;
        this.second = second;
    }

    internal AmpacityBasis First => first;

    internal AmpacityBasis Second => second;

    internal override bool KnowsEngineSpaces => first.KnowsEngineSpaces || second.KnowsEngineSpaces;

    internal override PreparedRating Prepare(Site at)
    {
        PreparedRating one = first.Prepare(at), other = second.Prepare(at);

        // A place that is too hard for one source is not made easier by asking the other; a source that is silent on this wire leaves it to the other.
        if (one.PlaceIsTooHard || (one.Gap.Exists && !other.PlaceIsTooHard))
        {
            return one.PlaceIsTooHard ? one : other;
        }

        return other.Gap.Exists ? (other.PlaceIsTooHard ? other : one) : new LowerPrepared(one, other)
        {
            Reference = one.Reference,
            RatedAmbientCelsius = Math.Max(one.RatedAmbientCelsius, other.RatedAmbientCelsius),
            LimitCelsius = Math.Min(one.LimitCelsius, other.LimitCelsius),
        };
    }
}

/// <summary>Two prepared bases, the lower of which counts. Remembers the last conductor asked: one instance serves one call of the designer, or one wire of a harness, whose conductor several threads may ask for.</summary>
internal sealed class LowerPrepared(PreparedRating first, PreparedRating second) : PreparedRating
{
    private Conductor? last;
    private double one;
    private double other;

    // A rating of zero means that the basis does not cover the conductor.
    private bool FirstCounts => one > 0 && (other == 0 || one <= other);

    internal override bool TryAmperes(Conductor conductor, out double amperes)
    {
        Ask(conductor);
        amperes = FirstCounts ? one : other;
        return amperes > 0;
    }

    internal override bool TryCelsius(Conductor conductor, double heatingAmperes, double ratedAmperes, double ambientCelsius, out double celsius)
    {
        // Each basis by its own rating: the table by its square law, the heat balance by physics. The hotter answer counts.
        Ask(conductor);
        double a = double.NegativeInfinity, b = double.NegativeInfinity;
        bool settled = (one == 0 || first.TryCelsius(conductor, heatingAmperes, one, ambientCelsius, out a))
            && (other == 0 || second.TryCelsius(conductor, heatingAmperes, other, ambientCelsius, out b));
        celsius = Math.Max(a, b);
        return settled && (one > 0 || other > 0);
    }

    internal override double LimitCelsiusFor(Conductor conductor) => Deciding(conductor).LimitCelsiusFor(conductor);

    internal override double RatedAmbientFor(Conductor conductor) => Deciding(conductor).RatedAmbientFor(conductor);

    // The lower current is not always the worse cooling: it may stand for warmer air, or for a cooler conductor.
    internal override PreparedRating CooledLeast(Conductor conductor)
    {
        Ask(conductor);
        return one == 0 || other == 0 ? Deciding(conductor) : Conductance(first, one, conductor) <= Conductance(second, other, conductor) ? first : second;
    }

    internal override Reference ReferenceFor(Conductor conductor) => Deciding(conductor).ReferenceFor(conductor);

    internal override DeratedAmpacity? Derate(Conductor conductor) => Deciding(conductor).Derate(conductor);

    /// <summary>The symbol of the rating by one of the two, once <see cref="Write"/> has written both.</summary>
    internal Symbol? SymbolOf(PreparedRating basis, RatingLetters letters) => letters.Board.Find(letters.Named(ReferenceEquals(basis, first) ? "I_za" : "I_zb"));

    internal override Symbol Write(RatingLetters letters, Conductor conductor, string name)
    {
        Ask(conductor);
        if (one == 0 || other == 0)
        {
            letters.Board.State($"rating of {conductor} by {(one == 0 ? first : second).Reference.Title}", "None: the source does not cover it. The other basis counts alone.");
            return Deciding(conductor).Write(letters, conductor, name);
        }

        Symbol a = first.Write(letters, conductor, letters.Named("I_za")), b = second.Write(letters, conductor, letters.Named("I_zb"));
        return letters.Board.Step(RatingLetters.Sought(conductor), name, Formula.Least(a, b), FirstCounts ? one : other, "A", ReferenceFor(conductor), "The lower of the two.");
    }

    internal override Symbol? WriteCelsius(RatingLetters letters, Conductor conductor, Symbol heating, Symbol rated, string name)
    {
        Ask(conductor);
        if (one == 0 || other == 0)
        {
            return Deciding(conductor).WriteCelsius(letters, conductor, heating, rated, name);
        }

        Symbol? a = first.WriteCelsius(letters, conductor, heating, letters.Board.Find(letters.Named("I_za"))!, letters.Named("θ_ha"));
        Symbol? b = second.WriteCelsius(letters, conductor, heating, letters.Board.Find(letters.Named("I_zb"))!, letters.Named("θ_hb"));
        return a is null || b is null ? null
            : letters.Board.Step("conductor temperature in service", name, Formula.Greatest(a, b), Math.Max(a.Value, b.Value), "°C", null, "The hotter of the two.");
    }

    internal override IEnumerable<string> Remarks(Conductor conductor) => first.Remarks(conductor).Concat(second.Remarks(conductor));

    // W/K per metre that a rating stands for.
    private static double Conductance(PreparedRating basis, double amperes, Conductor conductor)
    {
        double limit = basis.LimitCelsiusFor(conductor);
        return amperes * amperes * conductor.OhmsPerMeterAt(limit) / (limit - basis.RatedAmbientFor(conductor));
    }

    private PreparedRating Deciding(Conductor conductor)
    {
        Ask(conductor);
        return FirstCounts ? first : second;
    }

    private void Ask(Conductor conductor)
    {
        if (ReferenceEquals(conductor, Volatile.Read(ref last)))
        {
            return;
        }

        one = first.TryAmperes(conductor, out double a) ? a : 0;
        other = second.TryAmperes(conductor, out double b) ? b : 0;
        Volatile.Write(ref last, conductor);
    }
}
