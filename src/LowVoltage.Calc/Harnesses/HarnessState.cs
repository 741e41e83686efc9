using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A solved harness on doubles: V, A, by the indices of the harness.</summary>
internal sealed class HarnessState(Harness harness, LoadCase used, SegmentState[] wires)
{
    // A load below this share of the voltage about is dead; a current below this share of what it asks for starves it.
    private const double DeadShare = 0.01;
    private const double StarvedShare = 0.999;

    // From here on a current that does not depend on the voltage is whole to 1e-4.
    private const double BentVolts = 5 * Element.Knee;

    internal Harness Harness { get; } = harness;

    internal LoadCase Case { get; } = used;

    internal SegmentState[] Wires { get; } = wires;

    internal required SupplyLevel Level { get; init; }

    internal required NetworkEnd End { get; init; }

    internal required double[] Volts { get; init; }

    /// <summary>The node that the island of each node is counted from.</summary>
    internal required int[] Grounds { get; init; }

    internal required double[] Amperes { get; init; }

    internal double[] HeatAmperes { get; set; } = [];

    /// <summary>What each source gives; less than nothing for one that is charged.</summary>
    internal required double[] SourceAmperes { get; init; }

    internal required bool[] Disconnected { get; init; }

    internal required double[] LoadAmperes { get; init; }

    internal required PowerState[] LoadPowers { get; init; }

    internal double ShortAmperes { get; init; }

    internal double Balance { get; init; }

    internal double Share { get; init; }

    internal int DroppedOut { get; init; }

    /// <summary>The load that is hardest off where there is no solution, or −1.</summary>
    internal int Hardest { get; init; }

    internal int Steps { get; init; }

    /// <summary>Whether every source that gives anything is at the limit that it holds: nobody is left to give more.</summary>
    internal bool IsAtLimit
    {
        get
        {
            bool any = false;
            for (int k = 0; k < Harness.SourceArray.Length; k++)
            {
                if (Harness.SourceArray[k].Source is { } source && SourceAmperes[k] > 0)
                {
                    any = true;
                    if (SourceAmperes[k] < source.Numbers.HeldAmperes * (1 - 1e-9))
                    {
                        return false;
                    }
                }
            }

            return any;
        }
    }

    internal bool Exists => End == NetworkEnd.Solved;

    internal double VoltsAcross(int load) =>
        Volts[Harness.NodeIndex(Harness.LoadArray[load].Positive)] - Volts[Harness.NodeIndex(Harness.LoadArray[load].Negative)];

    internal double VoltsOfSource(int source) =>
        Volts[Harness.NodeIndex(Harness.SourceArray[source].Positive)] - Volts[Harness.NodeIndex(Harness.SourceArray[source].Negative)];

    internal LoadCondition ConditionOf(int load)
    {
        if (!Exists)
        {
            return LoadCondition.Undetermined;
        }

        HarnessLoad at = Harness.LoadArray[load];
        LoadUse use = Case.UseOf(at.Id);
        double volts = VoltsAcross(load), about = Harness.NominalVolts;
        if (use == LoadUse.Off)
        {
            return LoadCondition.Off;
        }

        if (volts < -DeadShare * about)
        {
            return LoadCondition.Reversed;
        }

        if (LoadPowers[load] != PowerState.On)
        {
            return LoadPowers[load] == PowerState.Restartable ? LoadCondition.Restartable : Math.Abs(volts) < DeadShare * about ? LoadCondition.Dead : LoadCondition.CutOut;
        }

        LoadState state = use == LoadUse.Starting ? LoadState.Peak : use == LoadUse.Stalled ? LoadState.LockedRotor : LoadState.Running;
        double wanted = at.Load.LawAt(state).Amperes;


        // What draws the same at any voltage and gets less is starved: its voltage has fallen to where the bend of its law begins.
        bool starved = wanted > 0 && volts < Math.Max(DeadShare * about, BentVolts) && LoadAmperes[load] > 1e-6 * wanted && LoadAmperes[load] < StarvedShare * Math.Max(wanted, LoadAmperes[load]);
        return starved ? LoadCondition.Starved : Math.Abs(volts) < DeadShare * about ? LoadCondition.Dead : LoadCondition.Running;
    }
}
