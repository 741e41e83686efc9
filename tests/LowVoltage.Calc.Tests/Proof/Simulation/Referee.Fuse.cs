using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <content>The checks of the fuse.</content>
internal sealed partial class Referee
{
    // Some three starts a day for ten years.
    private const int UsualStarts = 10_000;

    private static readonly double[] Shares = [0, 0.1, 0.3, 0.6, 1];

    // Without a fuse nothing ends an overload: the supply must not be able to make one.
    private void NoFuse()
    {
        double prospective = circuit.Source.Into(SupplyLevel.Maximum, given.AtFuseOhms ?? 0), high = circuit.Weakest(true), low = circuit.Weakest(false);
        rulings["OvercurrentProtection"] = !circuit.IsRated ? new(Say.MustNotPass, prospective, 0, "not rated")
            : new(prospective > high * 1.01 ? Say.MustFail : prospective < low * 0.95 ? Say.MustPass : Say.CannotSay, prospective, high);
    }

    private void Fuse(double on, double mostOn, double heating, double runningVolts)
    {
        OwnFuse fuse = circuit.Fuse!;
        RulesGiven rules = given.Rules;
        double share = fuse.ShareAt(circuit.FuseAmbient);
        rulings["FuseCarriesLoad"] = Ruling.AtLeast(fuse.Amperes * share / (mostOn / rules.Loading), fuse.Amperes * share / (on / rules.Loading), 1, 0.002, "of what is needed");
        rulings["FuseProtectsWire"] = Protects(fuse, rules);
        rulings["FuseVoltage"] = fuse.Volts is { } volts ? Ruling.AtLeast(volts, volts, circuit.Source.MostVolts, 1e-6) : new(Say.MustNotPass, 0, circuit.Source.MostVolts, "not published");
        double prospective = circuit.Source.Into(SupplyLevel.Maximum, given.AtFuseOhms ?? 0);
        rulings["BreakingCapacity"] = Breaks(fuse, prospective);
        Distance();
        Starts(fuse, runningVolts, mostOn);
        Stall(fuse);
        Overload(fuse, prospective, heating);
        Faults(fuse, prospective, heating);
    }

    private Ruling Protects(OwnFuse fuse, RulesGiven rules)
    {
        if (!circuit.IsRated)
        {
            return new(Say.MustNotPass, fuse.Amperes, 0, "not rated");
        }

        // IEC 60364-4-43, 433.1: rating at most the wire's current, conventional fusing current at most 1.45 times it.
        double second = rules.Share <= 1 && fuse.HasTimes ? 1.45 * fuse.Amperes / fuse.FusingAmperes : double.PositiveInfinity;
        double high = circuit.Weakest(true) * Math.Min(rules.Share, second), low = circuit.Weakest(false) * Math.Min(rules.Share, second);
        return new(fuse.Amperes > high * 1.005 ? Say.MustFail : fuse.Amperes < low * 0.95 ? Say.MustPass : Say.CannotSay, fuse.Amperes, high);
    }

    private Ruling Breaks(OwnFuse fuse, double prospective)
    {
        if (prospective >= OwnSource.Unbounded || fuse.Breaks is not { } capacity)
        {
            return new(Say.MustNotPass, prospective, fuse.Breaks ?? 0, "not known");
        }

        MainGiven[] before = given.Unfused ? [.. given.Mains.Take(given.Mains.Length - 1)] : given.Mains;
        if (prospective > capacity * (1 + 1e-6) && before.Length > 0)
        {
            return Backed(capacity, prospective, before);
        }

        return given.AtFuseOhms is null && prospective > capacity
            ? new(Say.MustNotPass, prospective, capacity, "at the terminals")
            : Ruling.AtMost(prospective, prospective, capacity, 1e-3);
    }

    // 33 CFR 183.455: 7 inches, in a sheath 40.
    private void Distance()
    {
        if (given.Rules.Preset == 1)
        {
            // Behind a main fuse the conductor is protected: what lies before that counts.
            bool sheathed = given.Mains.Length > 0 ? given.Mains[0].Sheathed : given.Sheathed;
            double most = (sheathed ? 40 : 7) * 0.0254;
            rulings["FuseDistance"] = (given.Mains.Length > 0 ? given.Mains[0].Meters : given.FuseMeters) is { } meters ? Ruling.AtMost(meters, meters, most, 1e-6) : new(Say.MustNotPass, 0, most, "not stated");
        }
    }

    private void Starts(OwnFuse fuse, double runningVolts, double running)
    {
        rulings["InrushHeld"] = Start(fuse, runningVolts, running);
        foreach (MainGiven main in given.Mains)
        {
            Ruling own = Start(new OwnFuse(main.Fuse.Value), runningVolts, running);
            rulings["MainFuseHoldsStart"] = rulings.TryGetValue("MainFuseHoldsStart", out Ruling known) ? Harder(known, own) : own;
        }
    }

    private Ruling Start(OwnFuse fuse, double runningVolts, double running)
    {
        if (!fuse.HasLeastTimes)
        {
            // Only what exceeds the current that it carries for hours matters.
            double worst = OwnLoop.Cold(circuit, SupplyLevel.Maximum, u => circuit.Load.Starting(u, 1e-3, runningVolts, cold => circuit.Source.Flow(SupplyLevel.Maximum, circuit.Ohms(0, false) + cold, 0))).Amperes;
            return worst > fuse.CarriedAmperes * 1.05 ? new(Say.MustNotPass, worst, fuse.CarriedAmperes, "no least times") : new(Say.CannotSay, worst, 0);
        }

        (double melted, double peak, double joule) = OwnStart.Melted(circuit, fuse, SupplyLevel.Maximum, runningVolts);
        double often = peak > fuse.Amperes ? joule / (PulseWithstand.ShareFor(given.Starts ?? UsualStarts) * fuse.LeastJoule(peak)) : 0;
        Say say = melted > 1.1 || often > 1.3 ? Say.MustFail : running < fuse.Amperes * 0.95 && (peak < fuse.Amperes * 0.95 || (melted < 0.1 && often < 0.5)) ? Say.MustPass : Say.CannotSay;
        return new(say, melted, 1, $"of the fuse melted by one start; {often:G3} of what it stands as often as it starts");
    }

    // A stalled motor whose current the fuse need not interrupt burns: something else must end it.
    private void Stall(OwnFuse fuse)
    {
        if (!circuit.Load.Stalls || given.Rules.Allowance is null)
        {
            return;
        }

        double least = double.PositiveInfinity;
        foreach (SupplyLevel level in Levels)
        {
            LoopPoint point = OwnLoop.Cold(circuit, level, circuit.Load.Stalled);
            least = Math.Min(least, point.Exists ? point.Amperes : circuit.Source.Into(level, circuit.Ohms(0, false)));
        }

        bool opens = fuse.HasTimes && least >= fuse.FusingAmperes * (1 - 1e-9);
        rulings["StalledMotor"] = opens ? new(Say.CannotSay, least, fuse.FusingAmperes) : new(Say.MustNotPass, least, fuse.HasTimes ? fuse.FusingAmperes : 0, "the fuse need not open");
    }

    private void Overload(OwnFuse fuse, double prospective, double heating)
    {
        if (given.Rules.Allowance is not { } allowance || prospective <= circuit.Weakest(true))
        {
            return;
        }

        if (!fuse.HasTimes || !circuit.IsRated)
        {
            rulings["OverloadTemperature"] = new(prospective > circuit.Weakest(true) * 1.05 ? Say.MustNotPass : Say.CannotSay, 0, 0, "no times or no rating");
            return;
        }

        Ruling worst = new(Say.CannotSay, double.NegativeInfinity, 0);
        bool unsure = false;
        foreach (OwnStretch s in circuit.Stretches)
        {
            double begin = s.StartCelsius(heating), altitude = s.Altitude;
            (double excess, double amperes) = new OwnOverload(s, begin, s.Ambient, altitude, true).Worst(fuse, prospective, allowance);
            bool passes = excess < -5 && new OwnOverload(s, begin, s.Ambient, altitude, false).Worst(fuse, prospective, allowance).Excess < -5;
            Ruling own = new(excess > 5 ? Say.MustFail : passes ? Say.MustPass : Say.CannotSay, excess, 0, $"K beyond the limit at {amperes:G3} A");
            unsure |= own.Say == Say.CannotSay;
            worst = own.Value > worst.Value ? own : worst;
        }

        rulings["OverloadTemperature"] = unsure && worst.Say == Say.MustPass ? worst with { Say = Say.CannotSay } : worst;
    }

    private void Faults(OwnFuse fuse, double prospective, double heating)
    {
        double weakest = circuit.Weakest(true);
        if (prospective <= weakest * 1.02)
        {
            // Nothing has to open: the wire carries all that the supply gives.
            rulings["FaultOpensFuse"] = new(Say.CannotSay, prospective, weakest);
            return;
        }

        if (!fuse.HasTimes)
        {
            rulings["FaultOpensFuse"] = rulings["ShortCircuitTemperature"] = new(Say.MustNotPass, 0, 0, "no times");
            return;
        }

        int last = circuit.FeedCount - 1;
        FaultEnd far = OwnFault.At(circuit, SupplyLevel.Minimum, last, 1, heating);
        rulings["FaultOpensFuse"] = Ruling.AtMost(far.Seconds, far.Seconds, given.Rules.FaultSeconds, 0.03, $"s, {far.First:G4} A");
        double excess = far.Excess, one = double.NegativeInfinity, place = 1;
        for (int k = 0; k <= last; k++)
        {
            foreach (double share in Shares)
            {
                Take(OwnFault.At(circuit, SupplyLevel.Minimum, k, share, heating).Excess, k + share, ref excess, ref place);
                Take(OwnFault.At(circuit, SupplyLevel.Maximum, k, share, heating).Excess, k + share, ref excess, ref place);
                if (circuit.Stretches[k].Parallel > 1 && share < 1)
                {
                    one = Math.Max(one, OwnFault.InOneOf(circuit, SupplyLevel.Minimum, k, share, heating).Excess);
                    one = Math.Max(one, OwnFault.InOneOf(circuit, SupplyLevel.Maximum, k, share, heating).Excess);
                }
            }
        }

        // Where the fault does not open the fuse in time, that check says so and this one has nothing to add.
        bool late = far.Seconds > given.Rules.FaultSeconds * 0.97;
        rulings["ShortCircuitTemperature"] = new(late ? Say.CannotSay : excess > 5 ? Say.MustFail : excess < -10 ? Say.MustPass : Say.CannotSay, excess, 0, $"K beyond the limit, place {place}");
        // A supply that one of the wires carries continuously burns none of them, whether the fuse opens or not.
        if (!double.IsNegativeInfinity(one) && prospective > circuit.Stretches.Where(s => s.Parallel > 1).Min(s => s.Rating.Known ? s.Rating.High : 0))
        {
            rulings["FaultInOneParallelWire"] = new(one > 5 ? Say.MustFail : one < -10 ? Say.MustPass : Say.CannotSay, one, 0, "K beyond the limit");
        }
    }

    private static void Take(double excess, double at, ref double worst, ref double place) => (worst, place) = excess > worst ? (excess, at) : (worst, place);
}
