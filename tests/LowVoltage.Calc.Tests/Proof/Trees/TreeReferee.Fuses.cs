using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <content>What a fuse carries, breaks and protects.</content>
internal sealed partial class TreeReferee
{
    // How closely the two models agree on the resistance before a fuse.
    private const double ProspectiveTolerance = 0.01;

    private void OfFuses()
    {
        for (int part = 0; part < tree.Fuses.Length; part++)
        {
            if (tree.Fuses[part] is not { } fuse || tree.Behind[part].Length == 0)
            {
                continue;
            }

            string id = given.Parts[part].Id;
            (double on, double mostOn) = On(part);
            (double least, double most) = Shares(part, fuse);
            double loading = given.Rules.Loading;
            Keep("FuseCarriesLoad", id, Ruling.AtLeast(fuse.Amperes * least / (mostOn / loading), fuse.Amperes * most / (on / loading), 1, 0.003, "of what is needed"));
            Keep("FuseVoltage", id, fuse.Volts is { } volts ? Ruling.AtLeast(volts, volts, tree.Source.MostVolts, 1e-6) : new(Say.MustNotPass, 0, tree.Source.MostVolts, "not published"));
            double prospective = Prospective(part);
            Keep("BreakingCapacity", id, prospective >= OwnSource.Unbounded || fuse.Breaks is not { } capacity
                ? new(Say.MustNotPass, prospective, fuse.Breaks ?? 0, "not known")
                : Ruling.AtMost(Prospective(part, given.Parts[part].Ohms), prospective, capacity, ProspectiveTolerance));
            OfDistance(part, id);
        }

        foreach (TreeZone zone in zones)
        {
            if (zone.Fuse >= 0)
            {
                Protects(zone);
            }
            else
            {
                Unfused(zone);
            }
        }
    }

    // Share of the rating that is left in its air: as stated, or that of some wire.
    private (double Least, double Most) Shares(int part, OwnFuse fuse)
    {
        double[] airs = given.Parts[part].FuseAmbient is { } stated ? [stated] : [.. tree.Wires.OfType<OwnStretch>().Select(wire => wire.Ambient), 20];
        return (airs.Min(fuse.ShareAt), airs.Max(fuse.ShareAt));
    }

    // A short right behind it to the other terminal, wires as cool as the air; its own contacts may be counted or not.
    private double Prospective(int fuse, double own = 0) => tree.Source.Into(SupplyLevel.Maximum, own + tree.WayTo(given.Parts[fuse].Before).Sum(part => tree.Ohms(part, 0, false)));

    // 33 CFR 183.455: 7 inches of conductor before the first fuse.
    private void OfDistance(int part, string id)
    {
        if (given.Rules.Preset != 1)
        {
            return;
        }

        int[] before = tree.WayTo(given.Parts[part].Before);
        if (!Array.Exists(before, p => given.Parts[p].IsFuse))
        {
            double meters = before.Sum(p => tree.Wires[p]?.Meters ?? 0);
            Keep("FuseDistance", id, Ruling.AtMost(meters, meters, 7 * 0.0254, 1e-6));
        }
    }

    // Every wire behind the fuse on the way to this end and back, with the current of loads that are not behind the fuse in it.
    private IEnumerable<OwnStretch> Stretches(TreeZone zone)
    {
        foreach (int part in zone.Own.Concat(zone.Back).Where(p => tree.Wires[p] is not null))
        {
            double others = cool.Max(f => tree.Behind[part].Except(tree.Behind[zone.Fuse]).Sum(load => f.Amperes[load]));
            bool pulsed = Array.Exists(tree.Behind[part], load => tree.Loads[load].HasDuty);
            yield return tree.WithOthers(part, pulsed ? 0 : others);
        }
    }

    private static double Weakest(IEnumerable<OwnStretch> wires, bool high) => wires.Select(s => Math.Max(0, ((high ? s.Rating.High : s.Rating.Low) * s.Parallel) - s.Others)).DefaultIfEmpty(double.PositiveInfinity).Min();

    private void Protects(TreeZone zone)
    {
        OwnStretch[] wires = [.. Stretches(zone)];
        OwnFuse fuse = tree.Fuses[zone.Fuse]!;
        string id = given.Parts[zone.Fuse].Id;
        if (wires.Length == 0)
        {
            return;
        }

        if (Array.Exists(wires, wire => !wire.Rating.Known))
        {
            Keep("FuseProtectsWire", id, new(Say.MustNotPass, fuse.Amperes, 0, "not rated"));
            return;
        }

        // IEC 60364-4-43, 433.1: rating at most the wire's current, conventional fusing current at most 1.45 times it.
        double second = given.Rules.Share <= 1 && fuse.HasTimes ? 1.45 * fuse.Amperes / fuse.FusingAmperes : double.PositiveInfinity, factor = Math.Min(given.Rules.Share, second);
        double high = Weakest(wires, true) * factor, low = Weakest(wires, false) * factor;
        bool shared = Array.Exists(wires, wire => wire.Others > 0);
        Keep("FuseProtectsWire", id, new(fuse.Amperes > high * 1.005 ? Say.MustFail : fuse.Amperes < low * 0.95 && !shared ? Say.MustPass : Say.CannotSay, fuse.Amperes, high));
        Overload(zone, fuse, wires, id);
    }

    private void Overload(TreeZone zone, OwnFuse fuse, OwnStretch[] wires, string id)
    {
        double prospective = Prospective(zone.Fuse);
        if (given.Rules.Allowance is not { } allowance || prospective <= Weakest(wires, true) * 1.02)
        {
            return;
        }

        if (!fuse.HasTimes)
        {
            Keep("OverloadTemperature", id, new(Say.MustNotPass, 0, 0, "no times"));
            return;
        }

        foreach (OwnStretch laid in wires)
        {
            // What others' current adds to the heat of a shared wire is left out: what must fail without it must fail.
            OwnStretch wire = laid.Others > 0 ? tree.Wires[Array.FindIndex(tree.Wires, w => ReferenceEquals(w?.Wire, laid.Wire))]! : laid;
            double begin = wire.StartCelsius(0);
            (double excess, double amperes) = new OwnOverload(wire, begin, wire.Ambient, wire.Altitude, true).Worst(fuse, prospective, allowance);
            bool passes = excess < -5 && laid.Others == 0 && new OwnOverload(wire, begin, wire.Ambient, wire.Altitude, false).Worst(fuse, prospective, allowance).Excess < -5;
            Keep("OverloadTemperature", id, new(excess > 5 ? Say.MustFail : passes ? Say.MustPass : Say.CannotSay, excess, 0, $"K beyond the limit at {amperes:G3} A, {wire.Meters} m of {wire.Wire.Conductor}"));
        }
    }

    // Without a fuse nothing ends an overload: the supply must not be able to make one.
    private void Unfused(TreeZone zone)
    {
        int[] wires = [.. zone.Own.Where(p => tree.Wires[p] is not null)];
        foreach (int part in wires)
        {
            OwnStretch wire = tree.Wires[part]!;
            double prospective = tree.Source.Into(SupplyLevel.Maximum, tree.WayTo(given.Parts[part].Before).Sum(p => tree.Ohms(p, 0, false)));
            Keep("OvercurrentProtection", given.Parts[wires[0]].Id, wire.Rating.Known && prospective <= wire.Rating.High * wire.Parallel * 1.01
                ? new(Say.CannotSay, prospective, wire.Rating.High)
                : new(Say.MustNotPass, prospective, wire.Rating.High, "A, no fuse"));
        }
    }
}
