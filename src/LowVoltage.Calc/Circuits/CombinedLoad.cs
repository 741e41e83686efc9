namespace LowVoltage.Calc.Circuits;

internal sealed class CombinedLoad : Load
{
    private readonly Load[] parts;

    internal CombinedLoad(Load[] loads)
        : base(Describe(loads)) => parts = [.. loads];

    internal IReadOnlyList<Load> Parts => parts;

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

    // The r.m.s. of a sum is at most the sum of the r.m.s. values, whatever the loads' timing: the safe reading.
    private protected override double HeatingCore(double volts, LoadState state)
    {
        double sum = 0;
        foreach (Load part in parts)
        {
            sum += part.HeatingAmperesAt(volts, state);
        }

        return sum;
    }

    private protected override double HeatFactorCore(LoadState state)
    {
        double? factor = null;
        foreach (Load part in parts)
        {
            if (part is CapacitorInput)
            {
                // It takes no lasting current: nothing to heat.
                continue;
            }

            // A part that is itself made of parts may have no single factor; then neither has the whole.
            double own = part.HeatFactor(state);
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
