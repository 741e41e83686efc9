using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <content>The supply lead before the fuse, and what protects it.</content>
internal sealed partial class Referee
{
    private static readonly (string Circuit, string Lead)[] Names =
    [
        ("FuseProtectsWire", "MainFuseProtectsLead"), ("ConductorTemperature", "LeadTemperature"), ("FaultOpensFuse", "FaultOpensMainFuse"),
        ("ShortCircuitTemperature", "LeadShortCircuitTemperature"), ("FaultInOneParallelWire", "FaultInOneParallelLeadWire"), ("OverloadTemperature", "LeadOverloadTemperature"),
        ("FuseVoltage", "MainFuseVoltage"), ("BreakingCapacity", "MainFuseBreakingCapacity"),
    ];

    private void Supply()
    {
        for (int i = 0; i < given.Mains.Length; i++)
        {
            Referee lead = new(OwnSupply.Lead(given, i));
            lead.AsLead(OwnSupply.NothingBetween(given, i));
            foreach ((string asked, string name) in Names)
            {
                if (lead.rulings.TryGetValue(asked, out Ruling ruling))
                {
                    Ruling own = ruling.Say == Say.MustPass && !lead.CanClaimPasses ? ruling with { Say = Say.CannotSay } : ruling;
                    rulings[name] = rulings.TryGetValue(name, out Ruling known) ? Harder(known, own) : own;
                }
            }
        }

        for (int i = 0; i < given.Mains.Length; i++)
        {
            bool last = i == given.Mains.Length - 1;
            OwnFuse? behind = last ? given.Unfused ? null : circuit.Fuse : new OwnFuse(given.Mains[i + 1].Fuse.Value);
            if (behind is not null)
            {
                double prospective = circuit.Source.Into(SupplyLevel.Maximum, (last ? given.UpstreamOhms : given.Mains[i + 1].Before) ?? 0);
                Ruling own = Selects(new OwnFuse(given.Mains[i].Fuse.Value), behind, given.Mains[i].Melting, prospective);
                rulings["SelectivityOfFuses"] = rulings.TryGetValue("SelectivityOfFuses", out Ruling known) ? Harder(known, own) : own;
            }
        }
    }

    // The checks of a lead with its device, in service at the most that the device may carry.
    private void AsLead(bool nothingBetween)
    {
        OwnFuse fuse = circuit.Fuse!;
        double prospective = circuit.Source.Into(SupplyLevel.Maximum, given.UpstreamOhms ?? 0), service = fuse.Amperes * given.Rules.Loading;
        rulings["FuseVoltage"] = fuse.Volts is { } volts ? Ruling.AtLeast(volts, volts, circuit.Source.MostVolts, 1e-6) : new(Say.MustNotPass, 0, circuit.Source.MostVolts, "not published");
        rulings["BreakingCapacity"] = Breaks(fuse, prospective);
        if (given.Laid.Length == 0)
        {
            // Two devices with the same resistance before them, as stated, have no wire between them.
            if (!nothingBetween)
            {
                rulings["FuseProtectsWire"] = new(Say.MustNotPass, fuse.Amperes, 0, "the lead is not stated");
            }

            return;
        }

        rulings["FuseProtectsWire"] = Protects(fuse, given.Rules);
        Overload(fuse, prospective, service);
        Faults(fuse, prospective, service);
        foreach (OwnStretch s in circuit.Stretches)
        {
            if (s.Ambient > s.Wire.Continuous + 0.5 || s.Stated > s.Wire.Continuous + 0.5)
            {
                rulings["ConductorTemperature"] = new(Say.MustFail, Math.Max(s.Ambient, s.Stated ?? s.Ambient), s.Wire.Continuous, "air, or as hot as stated");
            }
        }
    }

    private void CarriesThisCircuit(double on, double mostOn)
    {
        foreach (MainGiven main in given.Mains)
        {
            OwnFuse fuse = new(main.Fuse.Value);
            double carried = fuse.Amperes * fuse.ShareAt(main.Ambient ?? given.Place.Ambient);
            Ruling own = Ruling.AtLeast(carried / (mostOn / given.Rules.Loading), carried / (on / given.Rules.Loading), 1, 0.002, "of what is needed");
            rulings["MainFuseCarriesLoad"] = rulings.TryGetValue("MainFuseCarriesLoad", out Ruling known) ? Harder(known, own) : own;
        }
    }

    // IEC 60364-4-43, 434.5.1: a device in front breaks it, and what it lets through harms neither the wire nor the fuse behind.
    private Ruling Backed(double capacity, double prospective, MainGiven[] before)
    {
        Ruling none = new(given.AtFuseOhms is null ? Say.MustNotPass : Say.MustFail, prospective, capacity, "nothing in front breaks it");
        foreach (MainGiven main in Enumerable.Reverse(before))
        {
            OwnFuse front = new(main.Fuse.Value);
            if (front.Breaks is null || front.Breaks < prospective * (1 - 1e-6) || front.Volts is null || front.Volts < circuit.Source.MostVolts * (1 - 1e-6))
            {
                none = front.Breaks is null || front.Volts is null ? none with { Say = Say.MustNotPass } : none;
                continue;
            }

            double through = main.LetThrough ?? OwnSupply.MostThrough(front, capacity, prospective);
            double harmless = given.Laid.Length == 0 && given.IsVerification && given.Wire is null ? double.NaN : circuit.Stretches.Min(OwnSupply.Bears);
            return double.IsNaN(through) || main.Withstood is null || double.IsNaN(harmless) ? new(Say.MustNotPass, through, main.Withstood ?? 0, "let-through or what is withstood is not stated")
                : double.IsInfinity(through) || through > harmless * 1.1 || through > main.Withstood * 1.001 ? new(Say.MustNotPass, through, Math.Min(harmless, main.Withstood.Value), "A²s too much")
                : new(Say.CannotSay, through, Math.Min(harmless, main.Withstood.Value));
        }

        return none;
    }

    // At every current from which the fuse behind must open to the prospective one: has it opened by the time that the one in front may first?
    private static Ruling Selects(OwnFuse front, OwnFuse behind, double? melting, double prospective)
    {
        if (prospective <= front.CarriedAmperes)
        {
            return new(Say.CannotSay, prospective, front.CarriedAmperes);
        }

        if (!front.HasTimes || !behind.HasTimes || prospective < behind.FusingAmperes)
        {
            return new(Say.MustNotPass, 0, 0, "no times, or nothing need open");
        }

        const int Steps = 400;
        for (int k = 0; k <= Steps; k++)
        {
            double amperes = behind.FusingAmperes * Math.Pow(Math.Min(prospective, 1e6) / behind.FusingAmperes, k / (double)Steps) * (k < Steps ? 1 + 1e-6 : 1);
            double longest = behind.Longest(amperes);
            bool byJoule = melting is { } least && !behind.IsBreaker && amperes >= behind.Gates.Last() && longest * amperes * amperes < least;
            if (longest >= front.ProvenLeast(amperes) && !byJoule)
            {
                return new(Say.MustNotPass, longest, front.ProvenLeast(amperes), $"at {amperes:G4} A");
            }
        }

        return new(Say.CannotSay, prospective, 0);
    }
}
