namespace LowVoltage.Calc.Harnesses;

/// <content>The matrix of the middle and how node voltages follow currents and stated voltages.</content>
internal sealed partial class EnclosureSystem
{
    private bool TryFactor(Func<EnclosureElement, double> slope)
    {
        factor.Clear();
        foreach (EnclosureElement e in Elements)
        {
            int a = shape.Slots[e.Positive], b = shape.Slots[e.Negative];
            double siemens = slope(e);
            if (a == b || double.IsNaN(siemens) || double.IsInfinity(siemens))
            {
                if (a != b)
                {
                    return false;
                }

                continue;
            }

            factor.Diagonal[a] += siemens;
            factor.Diagonal[b] += siemens;
            if (a != shape.Pattern.Count && b != shape.Pattern.Count)
            {
                factor.Lower[shape.Pattern.EntryOf(a, b)] -= siemens;
            }
        }

        return factor.Factor() < 0 && !Enumerable.Range(0, shape.Pattern.Count).Any(factor.IsLoose);
    }

    // How the node voltages follow a current that each element draws beside its straight line.
    private void Column(int column, Func<int, double> drawn)
    {
        double[] x = Solve(drawn);
        for (int node = 0; node < nodes; node++)
        {
            steps[node][column] = -x[shape.Slots[node]];
        }
    }

    private double[] Solve(Func<int, double> drawn)
    {
        double[] x = new double[shape.Pattern.Count + 1];
        for (int e = 0; e < Elements.Length; e++)
        {
            double amperes = drawn(e);
            x[shape.Slots[Elements[e].Positive]] += amperes;
            x[shape.Slots[Elements[e].Negative]] -= amperes;
        }

        x[x.Length - 1] = 0;
        factor.Solve(x);
        return x;
    }

    private void Tied(int t)
    {
        if (tieRadius[t] == 0)
        {
            return;
        }

        double[] lifted = new double[nodes];
        foreach (int tie in shape.Forest.Order)
        {
            (int plus, int minus, _) = ties[tie];
            int outer = shape.Forest.Outer(tie);
            double volts = tie == t ? 1 : 0;
            lifted[outer] = outer == plus ? lifted[minus] + volts : lifted[plus] - volts;
        }

        int column = Elements.Length + t;
        Column(column, e => Elements[e].Siemens0 * (lifted[Elements[e].Positive] - lifted[Elements[e].Negative]));
        for (int node = 0; node < nodes; node++)
        {
            steps[node][column] += lifted[node];
        }
    }

    // The middle as it was solved leaves a little at its nodes, and its elements lie a little beside their straight lines: put right here.
    private void Centre()
    {
        double[] x = Solve(e => Elements[e].Amperes0 + (Elements[e].Siemens0 * (Volts[Elements[e].Positive] - Volts[Elements[e].Negative] - Elements[e].Volts0)));
        for (int node = 0; node < nodes; node++)
        {
            shift[node] = -x[shape.Slots[node]];
        }
    }
}
