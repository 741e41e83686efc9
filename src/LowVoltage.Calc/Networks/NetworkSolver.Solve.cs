namespace LowVoltage.Calc.Networks;

/// <content>Which loads work, which sources stay; and what comes out.</content>
internal sealed partial class NetworkSolver
{
    private const double LeastShare = 1e-7;

    /// <summary>The share of the power that can be supplied where the end is <see cref="NetworkEnd.PowerOutOfReach"/>; else 1.</summary>
    internal double Share { get; private set; } = 1;

    /// <summary>The load that is hardest off where the end is not <see cref="NetworkEnd.Solved"/>; else −1.</summary>
    internal int Hardest { get; private set; } = -1;

    /// <summary>How many loads had to be taken off, one after the other, for the rest to have an answer.</summary>
    internal int DroppedOut { get; private set; }

    /// <summary>Whether a source has disconnected because its current passed its limit.</summary>
    internal bool IsDisconnected(int element) => disconnected[element];

    /// <summary>Solves. Where the end is not <see cref="NetworkEnd.Solved"/> the numbers are those of the largest share that could be supplied.</summary>
    /// <remarks>
    /// <para>A load below its least voltage even with every load of constant power off is off in every state. With the others on, one that stays below is
    /// taken off, the worst first, until all that are left stand. A source that passes its limit disconnects, the worst first, and all is solved again.</para>
    /// </remarks>
    internal NetworkEnd Solve()
    {
        Array.Clear(disconnected, 0, disconnected.Length);
        Steps = 0;
        while (true)
        {
            NetworkEnd end = SolveOnce();
            int worst = end == NetworkEnd.Solved ? WorstOverLimit() : -1;
            if (worst < 0)
            {
                Report(end == NetworkEnd.Solved);
                ScalePowers(1);
                return end;
            }

            disconnected[worst] = true;
        }
    }

    private NetworkEnd SolveOnce()
    {
        Prepare();
        Array.Clear(Powers, 0, Powers.Length);
        (Share, Hardest, DroppedOut) = (1, -1, 0);
        StartLinear();
        return Newton() && AllStand() ? NetworkEnd.Solved : SolveByTrips();
    }

    private NetworkEnd SolveByTrips()
    {
        if (!SolveWithoutPowers())
        {
            return NetworkEnd.Unsettled;
        }

        while (true)
        {
            StartFrom(highest);
            bool stands = Newton();
            int worst = Lowest(withCutOut: true);
            if (worst >= 0)
            {
                Powers[worst] = PowerState.CutOut;
                DroppedOut++;
                continue;
            }

            if ((!stands || !AllStand()) && !Ramp())
            {
                return NetworkEnd.PowerOutOfReach;
            }

            FindRestartable();
            return NetworkEnd.Solved;
        }
    }

    // All else draws more at more voltage, so here each load sees the most that it can ever see.
    private bool SolveWithoutPowers()
    {
        for (int k = 0; k < Elements.Length; k++)
        {
            Powers[k] = IsPower(k) ? PowerState.CutOut : PowerState.On;
        }

        StartLinear();
        if (!Newton())
        {
            return false;
        }

        Array.Copy(x, highest, x.Length);
        for (int k = 0; k < Elements.Length; k++)
        {
            if (IsPower(k) && Across(k) >= Elements[k].B)
            {
                Powers[k] = PowerState.On;
            }
        }

        return true;
    }

    private void StartFrom(double[] volts)
    {
        Array.Copy(volts, x, x.Length);
        Array.Clear(held, 0, held.Length);
    }

    // Raises the powers that have no least voltage from nothing as far as they can be supplied.
    private bool Ramp()
    {
        double good = 0, size = 1;
        Array.Copy(highest, kept, x.Length);
        while (good < 1 && size > LeastShare)
        {
            double share = Math.Min(1, good + size);
            StartFrom(kept);
            ScalePowers(share);
            bool stands = Newton(near: true) && AllStand();
            if (stands)
            {
                Array.Copy(x, kept, x.Length);
                good = share;
            }

            size = stands ? 2 * size : 0.5 * size;
        }

        Share = good;
        ScalePowers(good);
        if (good < 1)
        {
            Array.Copy(kept, x, x.Length);
            Hardest = Lowest(withCutOut: false);
        }

        return good >= 1;
    }

    private void ScalePowers(double share)
    {
        for (int k = 0; k < Elements.Length; k++)
        {
            if (IsPower(k) && Elements[k].B == 0)
            {
                Elements[k].A = share * wanted[k];
            }
        }
    }

    private bool IsPower(int k) => Elements[k].Law == ElementLaw.Power && !Elements[k].Off;

    private bool AllStand()
    {
        for (int k = 0; k < Elements.Length; k++)
        {
            if (IsPower(k) && Powers[k] == PowerState.On && !(Across(k) >= (Elements[k].B > 0 ? Elements[k].B : floor)))
            {
                return false;
            }
        }

        return true;
    }

    // With a cut-out: the load farthest below it, or −1. Without: the one that has lost the largest share of its voltage.
    private int Lowest(bool withCutOut)
    {
        int found = -1;
        double least = withCutOut ? 1 : double.PositiveInfinity;
        for (int k = 0; k < Elements.Length; k++)
        {
            if (!IsPower(k) || Powers[k] != PowerState.On || Elements[k].B > 0 != withCutOut)
            {
                continue;
            }

            double most = highest[positive[k]] - highest[negative[k]] + across[k];
            double share = Across(k) / (withCutOut ? Elements[k].B : Math.Max(most, floor));
            (least, found) = share < least ? (share, k) : (least, found);
        }

        return found;
    }

    private void FindRestartable()
    {
        for (int k = 0; k < Elements.Length; k++)
        {
            if (IsPower(k) && Powers[k] == PowerState.CutOut && Across(k) >= Elements[k].B)
            {
                Powers[k] = PowerState.Restartable;
            }
        }
    }

    private int WorstOverLimit()
    {
        // A source that gives just its limit stays; one that is out gives nothing.
        int worst = -1;
        double most = 1 + 1e-9;
        for (int k = 0; k < Elements.Length; k++)
        {
            double share = Math.Abs(Amperes[k]) / Elements[k].Trips;
            (most, worst) = share > most ? (share, k) : (most, worst);
        }

        return worst;
    }

    private void Report(bool solved)
    {
        Evaluate();
        if (solved)
        {
            Refine();
        }

        Balance = Largest(f);
        for (int node = 0; node < Volts.Length; node++)
        {
            Volts[node] = x[shape.Slots[node]] + offset[node];
        }

        if (ties.Length > 0)
        {
            FindTieCurrents();
        }
    }

    // From the leaves of the tied groups inward: what leaves the outer node of a tie through elements comes in through the tie.
    private void FindTieCurrents()
    {
        Array.Clear(outflow, 0, outflow.Length);
        for (int k = 0; k < Elements.Length; k++)
        {
            outflow[Elements[k].Positive] += Amperes[k];
            outflow[Elements[k].Negative] -= Amperes[k];
        }

        IReadOnlyList<int> order = shape.Forest.Order;
        for (int n = order.Count - 1; n >= 0; n--)
        {
            int tie = order[n], outer = shape.Forest.Outer(tie);
            (int plus, int minus, _) = ties[tie];
            TieAmperes[tie] = outer == plus ? -outflow[outer] : outflow[outer];
            outflow[outer == plus ? minus : plus] += outflow[outer];
        }
    }

    /// <summary>What the rest of the network is between two nodes at the last solution: the voltage over the open pair, and the resistance behind it.</summary>
    /// <remarks>Exact where every element is a straight line; else the resistance is that of a small change.</remarks>
    internal (double Volts, double Ohms) Thevenin(int node, int other)
    {
        Evaluate();
        leastSiemens = 0;
        _ = Fill(clipped: false);
        _ = factor.Factor();
        Array.Clear(step, 0, step.Length);
        step[shape.Slots[node]] += 1;
        step[shape.Slots[other]] -= 1;
        step[step.Length - 1] = 0;
        factor.Solve(step);
        return (Volts[node] - Volts[other], step[shape.Slots[node]] - step[shape.Slots[other]]);
    }
}
