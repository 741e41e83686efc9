namespace LowVoltage.Calc.Circuits;

internal sealed class CombinedLoad : Load
{
    private readonly Load[] parts;

    // The same under the duty cycle of the group.
    private Load[] heated = [];

    internal CombinedLoad(Load[] loads)
        : base(Describe(loads))
    {
        parts = [.. loads];
        SettleHeat();
    }

    internal IReadOnlyList<Load> Parts => parts;

    internal override IEnumerable<(Load Load, DutyCycle[] Duties)> Leaves => heated.SelectMany(part => part.Leaves);

    internal override double? MinimumVolts
    {
        get
        {
            double? most = base.MinimumVolts;
            foreach (Load part in parts)
            {
                most = part.MinimumVolts is { } volts && !(most >= volts) ? volts : most;
            }

            return most;
        }
    }

    internal override IEnumerable<(Working.DiagramSymbol Symbol, string Name)> Drawn => parts.SelectMany(part => part.Drawn);

    internal override bool Starts => Array.Exists(parts, part => part.Starts);

    internal override LoadLaw LawAt(LoadState state)
    {
        LoadLaw law = new(0, 0, 0, true);
        foreach (Load part in parts)
        {
            law = law.Plus(part.LawAt(state));
        }

        return law;
    }

    internal override double SlopeAt(double volts, LoadState state)
    {
        double sum = 0;
        foreach (Load part in parts)
        {
            sum += part.SlopeAt(volts, state);
        }

        return sum;
    }

    internal override string? RemarkAt(double volts, LoadState state)
    {
        foreach (Load part in parts)
        {
            if (part.RemarkAt(volts, state) is { } remark)
            {
                return remark;
            }
        }

        return null;
    }

    internal override void AddInrush(double volts, double ohms, List<Inrush> surges)
    {
        foreach (Load part in parts)
        {
            part.AddInrush(volts, ohms, surges);
        }
    }

    internal override bool HasSurge => Array.Exists(parts, part => part.HasSurge);

    internal override bool CanStall => Array.Exists(parts, part => part.CanStall);

    internal override bool HasThermalCutOut => base.HasThermalCutOut || Array.TrueForAll(parts, part => !part.CanStall || part.HasThermalCutOut);

    internal override void AddStart(LoadStart start)
    {
        foreach (Load part in parts)
        {
            part.AddStart(start);
        }
    }

    private protected override Load ScaledCore(double factor) => new CombinedLoad([.. parts.Select(part => part.Scaled(factor))]);

    private protected override void DescribeCore(LoadSymbols symbols)
    {
        foreach (Load part in parts)
        {
            part.Describe(symbols);
        }
    }

    private protected override double AmperesCore(double volts, LoadState state)
    {
        double sum = 0;
        foreach (Load part in parts)
        {
            sum += part.AmperesAt(volts, state);
        }

        return sum;
    }

    private protected override void SettleHeat()
    {
        DutyCycle[] duties = Duties();
        heated = duties.Length == 0 ? parts : [.. parts.Select(part => part.Under(duties))];
        StartPeriodSeconds = heated.Min(part => part.StartPeriodSeconds);
        HasStatedTimes = Array.Exists(heated, part => part.HasStatedTimes);
    }

    // The r.m.s. of a sum is at most the sum of the r.m.s. values, whatever the loads' timing: the safe reading.
    private protected override double HeatingCore(double volts)
    {
        double sum = 0;
        foreach (Load part in heated)
        {
            sum += part.HeatingAmperesAt(volts, LoadState.Running);
        }

        return sum;
    }

    private protected override double GreatestFactorCore(double mostVolts)
    {
        double most = 0;
        foreach (Load part in heated)
        {
            most = Math.Max(most, part.GreatestHeatFactor(LoadState.Running, mostVolts));
        }

        return most;
    }

    private protected override double HeatFactorCore()
    {
        double? factor = null;
        foreach (Load part in heated)
        {
            if (part is CapacitorInput)
            {
                // It takes no lasting current: nothing to heat.
                continue;
            }

            // A part that is itself made of parts may have no single factor; then neither has the whole.
            double own = part.HeatFactor(LoadState.Running);
            if (double.IsNaN(own) || (factor is { } other && own != other))
            {
                return double.NaN;
            }

            factor = own;
        }

        return factor ?? 1;
    }

    private static string Describe(Load[] loads)
    {
        _ = loads ?? throw new ArgumentNullException(nameof(loads));
        if (loads.Length == 0)
        {
            throw new ArgumentException("At least one load is needed.", nameof(loads));
        }

        foreach (Load load in loads)
        {
            _ = load ?? throw new ArgumentNullException(nameof(loads));
        }

        return string.Join(" + ", loads.Select(load => load.Name));
    }
}
