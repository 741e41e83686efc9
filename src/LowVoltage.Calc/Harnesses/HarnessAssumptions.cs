using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What the verification of a harness assumes.</summary>
internal static class HarnessAssumptions
{
    internal static IReadOnlyList<string> Of(Harness harness)
    {
        List<string> lines = [.. harness.SourceArray.Where(s => s.Source is not null).SelectMany(s => s.Source!.Assumptions.Select(a => $"{s.Id}: {a}"))];
        lines.Add(harness.HasUsualCases
            ? $"No load case was stated. Looked at were everything on, and the start of each load that has one while all others run: {Accept.Text(harness.CaseArray.Length)} cases."
            : $"Load cases as stated: {HarnessName.List(harness.CaseArray.Select(c => c.Name))}; in each of them every load that has a start starts alone, too.");
        lines.Add("In a fault the loads keep drawing their running current: that leaves the least for the fault. A fault before a fuse finds its way back where the returns of other circuits join.");
        lines.Add("In a fuse's zone the currents of loads behind other fuses are counted as if their greatest came together.");
        if (harness.SourceArray.Length > 1)
        {
            lines.Add("A load's drop is counted from the terminals of the source that is nearest to it in resistance.");
            lines.Add("A wire between sources or in a ring is held against the sum of what the fuses and limited supplies at its ends let through continuously; how hot a short circuit makes a way back there is a matter of the fault audit.");
        }

        lines.Add($"Conductors rated by {harness.Rules.Ampacity.Name}; for the drop, the rise of their temperature goes with the square of the current.");
        if (Array.Exists(harness.BranchArray, b => b is HarnessResistance { IsChassis: true }))
        {
            lines.Add("A chassis is a stated resistance: it is not rated and does not warm up.");
        }

        (Circuits.Load Load, Circuits.DutyCycle[] Duties)[] pulsed = [.. harness.LoadArray.SelectMany(l => l.Load.Leaves).Where(leaf => leaf.Duties.Length > 0)];
        if (pulsed.Length > 0)
        {
            lines.Add("Duty cycles heat by their r.m.s. currents, or by the end of a pulse where its length is stated; they are added as if the pulses came together.");
        }

        if (Array.Exists(pulsed, leaf => leaf.Load.Starts && Array.Exists(leaf.Duties, duty => duty.OnSeconds == 0)))
        {
            lines.Add("Of a motor with a share of the time alone, what its starts heat is not known and not counted: state the time on and the period.");
        }

        return lines.AsReadOnly();
    }
}
