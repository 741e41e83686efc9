using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Design;

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

    internal override PreparedRating Prepare(in Installation at)
    {
        PreparedRating one = first.Prepare(at), other = second.Prepare(at);

        // A place that is too hard for one source is not made easier by asking the other; a source that is silent on this wire leaves it to the other.
        if (one.PlaceIsTooHard || (one.Gap.Length > 0 && !other.PlaceIsTooHard))
        {
            return one.PlaceIsTooHard ? one : other;
        }

        return other.Gap.Length > 0 ? (other.PlaceIsTooHard ? other : one) : new LowerPrepared(one, other)
        {
            Reference = one.Reference,
            LimitCelsius = Math.Min(one.LimitCelsius, other.LimitCelsius),
        };
    }
}

/// <summary>Two prepared bases, the lower of which counts.</summary>
internal sealed class LowerPrepared(PreparedRating first, PreparedRating second) : PreparedRating
{
    internal override bool TryAmperes(Conductor conductor, out double amperes)
    {
        bool one = first.TryAmperes(conductor, out double a), other = second.TryAmperes(conductor, out double b);
        amperes = one && other ? Math.Min(a, b) : one ? a : b;
        return one || other;
    }

    internal override bool TryCelsius(Conductor conductor, double heatingAmperes, double ratedAmperes, double ambientCelsius, out double celsius)
    {
        // Each basis by its own rating: the table by its square law, the heat balance by physics. The hotter answer counts.
        bool rated = first.TryAmperes(conductor, out double one), otherRated = second.TryAmperes(conductor, out double other);
        double a = double.NegativeInfinity, b = double.NegativeInfinity;
        bool settled = (!rated || first.TryCelsius(conductor, heatingAmperes, one, ambientCelsius, out a))
            && (!otherRated || second.TryCelsius(conductor, heatingAmperes, other, ambientCelsius, out b));
        celsius = Math.Max(a, b);
        return settled && (rated || otherRated);
    }

    internal override DeratedAmpacity? Derate(Conductor conductor) => first.Derate(conductor) ?? second.Derate(conductor);

    internal override IEnumerable<string> Remarks(Conductor conductor) => first.Remarks(conductor).Concat(second.Remarks(conductor));
}
