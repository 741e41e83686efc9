using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>
/// To rate a wire costs more than all else. A size that is too thin, or that drops too much as cool as the air, is out before it is rated: which sizes those are is worked out here once more
/// (ISO 6722 Ω/km, from memory), from the loads' own laws.
/// </summary>
public class SizesOutWhenCoolTests
{
    private static readonly (double Square, double OhmsPerKilometer)[] Series = [(0.5, 37.1), (0.75, 24.7), (1, 18.5), (1.5, 12.7), (2.5, 7.60), (4, 4.71), (6, 3.14), (10, 1.82), (16, 1.16), (25, 0.743)];

    // The battery of 600 A at its ends: 11.89 V behind 18 mΩ, 14.4 V behind 3.6 mΩ.
    private static readonly (double Volts, double Ohms)[] Ends = [(11.89, 0.018), (14.4, 0.0036)];

    public static TheoryData<string> Loads => ["current", "power", "power out of reach", "current out of reach", "resistance", "shared return", "power and a shared return", "no limit of the drop"];

    [Theory, MemberData(nameof(Loads))]
    public void Design_RatesNoSizeThatDropsTooMuchAsCoolAsTheAir(string which)
    {
        // Each out at one end of the supply only, but for a current: a power draws most at the least voltage, a resistance at the greatest.
        (Load load, Func<double, double, double?> amperes, double feed, double percent) = which switch
        {
            "power" => (Load.ConstantPower(W(60)), Power(60), 3.0, 5.0),
            "power out of reach" => (Load.ConstantPower(W(250)), Power(250), 12, 35),
            "current out of reach" => (Load.ConstantCurrent(A(35)), (v, r) => 35 * r < v ? 35 : null, 10, 60),
            "resistance" => (Load.Resistance(ElectricResistance.FromOhms(2)), (v, r) => v / (2 + r), 4, 6),
            "power and a shared return" => (Load.ConstantPower(W(60)), Power(60), 5, 8),
            "no limit of the drop" => (Load.ConstantCurrent(A(30)), (v, r) => 30 * r < v ? 30 : null, 12, double.PositiveInfinity),
            _ => (Load.ConstantCurrent(A(5)), (Func<double, double, double?>)((v, r) => 5 * r < v ? 5 : null), 4, 4),
        };

        // 6 A of others through 5 mΩ take 30 mV before anything else does, 60 A take 300 mV.
        double others = which == "shared return" ? 6 : which == "power and a shared return" ? 60 : 0;
        bool shared = others > 0, unlimited = double.IsInfinity(percent);
        double fixedOhms = 0.020 + 0.005, volts = others * 0.005, limit = unlimited ? double.PositiveInfinity : percent / 100 * 12;
        bool isOut(double perKilometer) => Array.Exists(Ends, end =>
        {
            double path = fixedOhms + (feed * Plain.PerMeter(perKilometer, 30));
            return amperes(end.Volts - volts, end.Ohms + path) is not { } current || (current * path) + volts > limit;
        });

        Counted rating = new();
        CircuitRequirements asked = Circuit(load, unlimited ? LeadAcid(4) : null, feed, shared ? ReturnPath.Shared(MilliOhm(5), A(others)) : ReturnPath.Chassis(MilliOhm(5)), conductors: 1);
        DesignRules rules = Rules(rating, unlimited ? DropLimit.AircraftTable : DropLimit.Percent(percent));
        CircuitDesign design = CircuitDesigner.Design(asked, rules);

        // Whoever reads why no smaller size serves rates those too.
        double[] rated = [.. rating.Asked.Select(wire => Math.Round(wire.Area.SquareMillimeters, 6)).Distinct().Order()];
        Assert.False(design.IsNearest, design.ToString());
        double[] tried = [.. Series.Where(size => size.Square <= design.Wire.Area.SquareMillimeters + 1e-9).Where(size => unlimited || !isOut(size.OhmsPerKilometer)).Select(size => size.Square)];
        Assert.Equal(tried, rated);
        Assert.True(unlimited || isOut(Series[0].OhmsPerKilometer));
    }

    [Fact]
    public void Design_ReturnStatedColderThanTheAir_CountsAsColdAsStated()
    {
        // 5 A, 60 m of 2.5 mm² at −40 °C and 1 m of the feed in air of 60 °C: 25 mΩ and 60·7.60·0.7642/1000 = 348 mΩ drop 1.87 V; as warm as the air the return alone would drop 2.64 V.
        Segment cold = Segment.Create(RoadVehicle(2.5), M(60)).WithTemperature(ConductorTemperature.At(C(-40)));
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(5)), feed: 1, back: ReturnPath.Wire(cold), ambient: 60, upstreamMilliOhms: 25, insulation: InsulationMaterial.CrossLinkedPolyethylene, fuseDistance: 0.1);
        double back = 60 * Plain.PerMeter(7.60, -40);
        Assert.InRange(5 * (0.025 + back), 1.86, 1.88);
        CircuitDesign design = CircuitDesigner.Design(asked, Rules(AmpacityBasis.HeatBalance, DropLimit.Volts(V(2.1))));
        Assert.False(design.IsNearest);
        Assert.InRange(design.Of(CheckKind.VoltageDrop).Value!.Value, 5 * (0.025 + back), 2.1);
    }

    [Fact]
    public void Design_RatesNoSizeBelowTheMechanicalMinimum()
    {
        Counted rating = new();
        DesignRules rules = new(Rules(rating, DropLimit.Percent(5))) { MinimumSection = Area.FromSquareMillimeters(2.5) };
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(0.5)), back: ReturnPath.Chassis(MilliOhm(5)), conductors: 1), rules);
        Assert.Equal(RoadVehicle(2.5), design.Wire);
        Assert.Equal([design.Wire], rating.Asked.Distinct());
    }

    [Fact]
    public void Design_WhereNoSizeCanBeRated_AsksForEachOnce()
    {
        // PVC in air of 75 °C. Once for the nearest, and once more for the one that is answered with.
        Counted rating = new();
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)), ambient: 75), Rules(rating, DropLimit.Percent(50)));
        Assert.True(design.IsNearest);
        Assert.Equal(CheckOutcome.Undetermined, design.Of(CheckKind.ContinuousCurrent).Outcome);
        Assert.InRange(rating.Asked.Count, Series.Length, Series.Length + 2);
    }

    private static Func<double, double, double?> Power(double watts) => (v, r) => v * v > 4 * r * watts ? (v - Math.Sqrt((v * v) - (4 * r * watts))) / (2 * r) : null;

    private static DesignRules Rules(AmpacityBasis rating, DropLimit drop) => new(DesignRules.RoadVehicle)
    {
        Ampacity = rating, DropLimit = drop, Conductors = ConductorSeries.RoadVehicle.Only("ten sizes", [.. Series.Select(size => ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(size.Square)))]),
    };

    /// <summary>The road-vehicle preset's basis, which notes what it is asked.</summary>
    private sealed class Counted() : AmpacityBasis("counted", DesignRules.RoadVehicle.Ampacity.Reference)
    {
        internal List<Conductor> Asked { get; } = [];

        internal override PreparedRating Prepare(Site at) => Prepared.Of(HeatBalance.Prepare(at), Asked);

        private sealed class Prepared(PreparedRating inner, List<Conductor> asked) : PreparedRating
        {
            internal static Prepared Of(PreparedRating inner, List<Conductor> asked) =>
                new(inner, asked) { Gap = inner.Gap, LimitCelsius = inner.LimitCelsius, RatedAmbientCelsius = inner.RatedAmbientCelsius, Reference = inner.Reference };

            internal override bool TryAmperes(Conductor conductor, out double amperes)
            {
                asked.Add(conductor);
                return inner.TryAmperes(conductor, out amperes);
            }

            internal override Symbol Write(RatingLetters letters, Conductor conductor, string name) => inner.Write(letters, conductor, name);
        }
    }
}
