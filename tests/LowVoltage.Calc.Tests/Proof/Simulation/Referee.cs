using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>Rules on every check of one wire and fuse in one circuit. Nothing of the designer is asked.</summary>
internal sealed partial class Referee
{
    private static readonly SupplyLevel[] Levels = [SupplyLevel.Minimum, SupplyLevel.Nominal, SupplyLevel.Maximum];

    private readonly OwnCircuit circuit;
    private readonly CaseGiven given;
    private readonly SortedDictionary<string, Ruling> rulings = new(StringComparer.Ordinal);

    private Referee(OwnCircuit circuit)
    {
        this.circuit = circuit;
        given = circuit.Given;
    }

    public static SortedDictionary<string, Ruling> Rule(OwnCircuit circuit)
    {
        Referee referee = new(circuit);
        referee.All();
        referee.Supply();
        if (!referee.CanClaimPasses)
        {
            foreach (string check in referee.rulings.Where(r => r.Value.Say == Say.MustPass).Select(r => r.Key).ToArray())
            {
                referee.rulings[check] = referee.rulings[check] with { Say = Say.CannotSay };
            }
        }

        return referee.rulings;
    }

    // How a supply at its limit behaves behind a battery, and what an unrated wire starts from, may be read more cautiously than here.
    private bool CanClaimPasses => circuit.IsRated && Array.TrueForAll(circuit.Stretches, s => s.Wire.HasRoom && s.Stated is null) && !(circuit.Source.Holds && given.Source.Type == SourceType.Series);

    private void All()
    {
        rulings["MechanicalMinimum"] = Mechanical();
        LoopPoint[] cool = [.. Levels.Select(level => OwnLoop.Running(circuit, level, false))], warm = [.. Levels.Select(level => OwnLoop.Running(circuit, level, true))];
        rulings["PowerDelivery"] = Delivery(cool, warm);
        if (!Array.TrueForAll(cool, point => point.Exists))
        {
            return;
        }

        bool sure = Array.TrueForAll(warm, point => point.Exists);
        double on = cool.Max(p => p.Amperes), mostOn = sure ? Math.Max(on, warm.Max(p => p.Amperes)) : double.PositiveInfinity;
        double leastOn = sure ? Math.Min(on, warm.Max(p => p.Amperes)) : on;
        double heating = sure ? Math.Min(cool.Max(p => p.Heating), warm.Max(p => p.Heating)) : cool.Max(p => p.Heating);
        double mostHeating = sure ? Math.Max(warm.Max(p => p.Heating), cool.Max(p => circuit.Load.MostHeating(p.Volts))) : double.PositiveInfinity;
        Drop(cool, warm, sure);
        StartVolts();
        Heat(heating, mostHeating);
        CarriesThisCircuit(leastOn, mostOn);
        if (circuit.Fuse is not null)
        {
            Fuse(leastOn, mostOn, heating, cool[(int)SupplyLevel.Maximum].Volts);
        }
        else if (given.Unfused)
        {
            NoFuse();
        }
    }

    private Ruling Mechanical()
    {
        double least = given.Rules.Preset switch
        {
            1 => Awg(16),
            2 => AircraftWireSize.FromNumber(22).Area.SquareMillimeters,
            _ => 0.5,
        };
        double area = circuit.Stretches.Where(s => s.Others == 0).Min(s => s.Wire.Area);
        return Ruling.AtLeast(area, area, least, 1e-6);
    }

    private static double Awg(int number) => Math.PI / 4 * Math.Pow(0.127 * Math.Pow(92, (36 - number) / 39.0), 2);

    private Ruling Delivery(LoopPoint[] cool, LoopPoint[] warm)
    {
        foreach (SupplyLevel level in Levels)
        {
            LoopPoint point = cool[(int)level];
            if (point.Exists ? circuit.Source.Disconnects(level, point.Amperes) : !OwnLoop.Running(circuit, level, false, 0.97).Exists)
            {
                return new(Say.MustFail, point.Amperes, 0, point.Exists ? $"disconnects, {level}" : $"no operating point, {level}");
            }

            // A load that takes just the limit leaves the voltage up; one that would take more lies on the step down from it, found by 48 halvings.
            if (circuit.Source.OnlyHolds(point.Amperes, 1 - 1e-9) && point.Volts + point.Drop < 0.999 * circuit.Source.Volts(level, point.Amperes * (1 - 1e-9)))
            {
                return new(Say.MustFail, point.Amperes, 0, $"the supply only holds its current, {level}");
            }
        }

        bool sure = Levels.All(level => warm[(int)level].Exists && OwnLoop.Running(circuit, level, true, 1.1).Exists && !circuit.Source.AnyTrips(level, warm[(int)level].Amperes, 0.93)
            && !circuit.Source.OnlyHolds(Math.Max(cool[(int)level].Amperes, warm[(int)level].Amperes), 0.93));
        return new(sure ? Say.MustPass : Say.CannotSay, 0, 0);
    }

    private void Drop(LoopPoint[] cool, LoopPoint[] warm, bool sure)
    {
        double nominal = circuit.Source.NominalVolts;
        double? limit = given.DropVolts ?? given.DropPercent * nominal / 100 ?? (given.Rules.Preset == 2 ? Aircraft(nominal, given.Intermittent) : 0.03 * nominal);
        double least = cool.Max(p => p.Drop), most = sure ? warm.Max(p => p.Drop) : double.PositiveInfinity;
        rulings["VoltageDrop"] = limit is { } volts ? Ruling.AtMost(Math.Min(least, most), Math.Max(least, most), volts, 0.005) : new(Say.MustNotPass, least, 0, "no allowance for this voltage");
        if (circuit.Load.LeastVolts > 0)
        {
            double seen = cool.Min(p => p.Volts), cautious = sure ? warm.Min(p => p.Volts) : 0;
            rulings["LoadVoltage"] = Ruling.AtLeast(Math.Min(seen, cautious), Math.Max(seen, cautious), circuit.Load.LeastVolts, 0.002);
        }
    }

    // FAA AC 43.13-1B table 11-6: half a volt on 14 V, one on 28 V, twice that for intermittent loads.
    private static double? Aircraft(double nominal, bool intermittent) => nominal switch
    {
        >= 11 and <= 14.5 => intermittent ? 1 : 0.5,
        >= 22 and <= 29 => intermittent ? 2 : 1,
        _ => null,
    };

    private void StartVolts()
    {
        if (!circuit.Load.Starts)
        {
            return;
        }

        double lowest = double.PositiveInfinity;
        foreach (SupplyLevel level in Levels)
        {
            LoopPoint point = OwnLoop.Cold(circuit, level, circuit.Load.AtStart);
            if (!point.Exists || circuit.Source.Disconnects(level, point.Amperes))
            {
                rulings["StartVoltage"] = new(circuit.Source.Holds ? Say.MustNotPass : Say.MustFail, 0, circuit.Load.LeastVolts, $"no start, {level}");
                return;
            }

            lowest = Math.Min(lowest, point.Volts);
        }

        if (circuit.Load.LeastVolts > 0)
        {
            // Warm wire and lamps still cold take more: no pass is claimed.
            Ruling start = Ruling.AtLeast(0, lowest, circuit.Load.LeastVolts, 0.002);
            rulings["StartVoltage"] = circuit.Source.Holds && start.Say == Say.MustFail ? start with { Say = Say.MustNotPass } : start;
        }
    }

    private void Heat(double heating, double mostHeating)
    {
        Ruling current = new(Say.MustPass, 0, 0), hot = new(Say.MustPass, 0, 0);
        foreach (OwnStretch s in circuit.Stretches)
        {
            double low = (heating + s.Others) / s.Parallel, high = (mostHeating + s.Others) / s.Parallel, continuous = s.Wire.Continuous;
            current = Harder(current, s.Rating.Known
                ? new(low > s.Rating.High * 1.005 ? Say.MustFail : high < s.Rating.Low * 0.95 ? Say.MustPass : Say.CannotSay, low, s.Rating.High)
                : new(Say.MustNotPass, low, 0, "not rated"));
            bool air = s.Ambient > continuous + 0.5;
            hot = Harder(hot, s.Stated is { } stated ? Ruling.AtMost(stated, stated, continuous, 0.005, "stated")
                : air ? new(Say.MustFail, s.Ambient, continuous, "air")
                : low > s.Physics ? new(Say.MustFail, low, s.Physics, "A, by physics")
                : new(s.Rating.Known && high < 0.95 * s.Rating.Low && high < 0.7 * s.Physics && s.Ambient < continuous ? Say.MustPass : Say.CannotSay, low, s.Physics, "A, by physics"));
        }

        rulings["ContinuousCurrent"] = current;
        rulings["ConductorTemperature"] = hot;
    }

    private static Ruling Harder(in Ruling one, in Ruling other) => Rank(other.Say) > Rank(one.Say) ? other : one;

    private static int Rank(Say say) => say switch { Say.MustFail => 3, Say.MustNotPass => 2, Say.CannotSay => 1, _ => 0 };
}
