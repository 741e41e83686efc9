using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>The heat balance of equal wires that lie together (alone, a pair, three, a round bundle), all at the same current, in still air; less its stated margin.</summary>
internal sealed class HeatBalanceAmpacity : AmpacityBasis
{
    internal HeatBalanceAmpacity()
        : base("heat balance in still air", Heating.HeatBalance.References[0])
    {
    }

    internal override PreparedRating Prepare(Site at)
    {
        double limit = at.Insulation.ContinuousCelsius;
        if (at.AmbientCelsius >= limit || at.AmbientCelsius < Surroundings.LeastCelsius)
        {
            return new HeatBalancePrepared(at, null)
            {
                Reference = Reference,
                RatedAmbientCelsius = at.AmbientCelsius,
                LimitCelsius = limit,
                PlaceIsTooHard = true,
                Gap = new LateText("the air at {0} °C is not below the insulation's limit of {1} °C", at.AmbientCelsius, limit),
            };
        }

        return new HeatBalancePrepared(at, at.StillAir()) { Reference = Reference, RatedAmbientCelsius = at.AmbientCelsius, LimitCelsius = limit };
    }
}

/// <summary>The heat balance in one place. Remembers the last conductor asked: one instance serves one call of the designer, or one wire of a harness, whose conductor several threads may ask for.</summary>
internal sealed class HeatBalancePrepared(Site at, Surroundings? air) : PreparedRating
{
    private const double Margin = 1 - Heating.HeatBalance.Margin;

    private Conductor? last;
    private HeatBalanceKernel kernel;

    internal override bool TryAmperes(Conductor conductor, out double amperes)
    {
        amperes = Gap.Exists ? 0 : Margin * Kernel(conductor).AmperesFor(LimitCelsius);
        return amperes > 0;
    }

    internal override bool TryCelsius(Conductor conductor, double heatingAmperes, double ratedAmperes, double ambientCelsius, out double celsius)
    {
        celsius = 0;
        return !Gap.Exists && Heating.HeatBalance.TrySteady(Kernel(conductor), heatingAmperes / Margin, out _, out celsius);
    }

    internal override Symbol Write(RatingLetters letters, Conductor conductor, string name)
    {
        Symbol limit = letters.Limit;
        Symbol hot = conductor.ExplainPerMeter(letters.Board, limit, "R′_" + letters.Mark + "hot", letters.Mark);
        return HeatBalanceSteps.Write(letters.Board, Kernel(conductor), Together(conductor), air!, letters.Ambient, limit, hot, letters.Mark, name);
    }

    internal override Symbol? WriteCelsius(RatingLetters letters, Conductor conductor, Symbol heating, Symbol rated, string name) =>
        TryCelsius(conductor, heating.Value, rated.Value, letters.Ambient.Value, out double celsius)
            ? letters.Board.LookUp(
                "conductor temperature by the heat balance", name, celsius, "°C", Heating.HeatBalance.References[0], $"By iteration of the balance above, at {heating.Name}/0.97: the margin of 3 % is counted here too.")
            : null;

    internal override IEnumerable<string> Remarks(Conductor conductor)
    {
        yield return $"Heat balance: {Lying(at.LoadedConductors)} in still air at {Accept.Text(at.AmbientCelsius)} °C, "
            + $"wall {Accept.Text(at.WallOf(conductor))} mm{(at.WallMillimeters is null ? " (assumed)" : "")}, current lowered by its margin of 3 %.";
    }

    private static string Lying(int loaded) => loaded switch
    {
        1 => "one wire alone",
        2 => "two equal wires at the same current, touching,",
        3 => "three equal wires at the same current, touching each other,",
        _ => $"{Accept.Text(loaded)} equal wires at the same current in a round bundle",
    };

    private ref readonly HeatBalanceKernel Kernel(Conductor conductor)
    {
        if (!ReferenceEquals(conductor, Volatile.Read(ref last)))
        {
            kernel = Make(conductor);
            Volatile.Write(ref last, conductor);
        }

        return ref kernel;
    }

    private HeatBalanceKernel Make(Conductor conductor) => BundleHeat.Kernel(Together(conductor), air!);

    private WireBundle Together(Conductor conductor) => WireBundle.Create(at.WireOf(conductor), at.LoadedConductors, at.LoadedConductors);
}
