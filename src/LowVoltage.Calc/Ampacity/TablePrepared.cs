using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>A published table read at one column, with the factors of one place.</summary>
internal sealed class TablePrepared : PreparedRating
{
    private readonly AmpacityTable table;
    private readonly DeratingFactor[] factors;
    private readonly double product = 1;

    /// <summary>The table at the column of <see cref="PreparedRating.LimitCelsius"/>, times the factors.</summary>
    internal TablePrepared(AmpacityTable table, params DeratingFactor[] factors)
    {
        this.table = table;
        this.factors = factors;
        foreach (DeratingFactor factor in factors)
        {
            // A cool place does not raise the rating: the factor that may exceed one is counted as one.
            product *= Math.Min(factor.Value, 1);
        }
    }

    internal override bool TryAmperes(Conductor conductor, out double amperes)
    {
        amperes = 0;
        if (Gap.Exists || !ConductorKey.TryGet(conductor, out double key)
            || !table.TryDesignAmperes(conductor.System, key, LimitCelsius, out double current))
        {
            return false;
        }

        amperes = current * product;
        return true;
    }

    internal override DeratedAmpacity? Derate(Conductor conductor)
    {
        if (!TryAmperes(conductor, out _))
        {
            return null;
        }

        TableRating rating = table.DesignRating(conductor.Size!.Value, LimitCelsius);
        DeratedAmpacity derated = DeratedAmpacity.From(rating);
        foreach (DeratingFactor factor in factors)
        {
            if (factor.Value < 1)
            {
                derated = factor.RuleSet == table.RuleSet ? derated.With(factor) : derated.WithForeignFactor(factor);
            }
        }

        return derated;
    }

    /// <summary>What else a reader must know of the factors here; may be empty.</summary>
    internal LateText Note { get; init; }

    internal override IEnumerable<string> Remarks(Conductor conductor) => Note.Exists ? [Note.ToString(), .. base.Remarks(conductor)] : base.Remarks(conductor);

    internal override Symbol Write(RatingLetters letters, Conductor conductor, string name) => Derate(conductor)!.Write(letters.Board, name, letters.Mark, RatingLetters.Family(name));
}
