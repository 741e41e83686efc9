using LowVoltage.Calc.Checks;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Two states, or two verifications, of a harness laid side by side: what changed, and by how much.</summary>
/// <remarks>
/// Parts are paired by their names; what only one of the two has is named. Numbers that differ by no more than a share are left out. <b>Accuracy.</b> Solutions agree with themselves to about
/// 1e-12, so the least share that says something is well above that. Immutable.
/// </remarks>
public sealed class HarnessComparison
{
    private const double UsualLeast = 0.001;

    private HarnessComparison(IReadOnlyList<HarnessDifference> differences) => Differences = differences;

    /// <summary>What differs: changed conditions and outcomes first, then numbers by their share.</summary>
    public IReadOnlyList<HarnessDifference> Differences { get; }

    /// <summary>Whether nothing differs.</summary>
    public bool IsSame => Differences.Count == 0;

    /// <summary>Compares two solutions, of one harness or of two; numbers that differ by a thousandth or more are told.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other.</param>
    /// <returns>What differs.</returns>
    /// <exception cref="ArgumentNullException">A solution is null.</exception>
    public static HarnessComparison Between(HarnessSolution before, HarnessSolution after) => Between(before, after, UsualLeast);

    /// <summary>Compares two verifications, of one harness or of two; numbers that differ by a thousandth or more are told.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other.</param>
    /// <returns>What differs: checks that changed their outcome or value, and those that only one of the two has.</returns>
    /// <exception cref="ArgumentNullException">A verification is null.</exception>
    public static HarnessComparison Between(HarnessVerification before, HarnessVerification after) => Between(before, after, UsualLeast);

    /// <summary>Compares two solutions, of one harness or of two.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other.</param>
    /// <param name="least">Share of a number from which on a difference is told, 0 to 1.</param>
    /// <returns>What differs.</returns>
    /// <exception cref="ArgumentNullException">A solution is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public static HarnessComparison Between(HarnessSolution before, HarnessSolution after, double least)
    {
        _ = before ?? throw new ArgumentNullException(nameof(before));
        _ = after ?? throw new ArgumentNullException(nameof(after));
        _ = Quantities.Accept.Within(least, 0, 1, "", nameof(least));
        List<HarnessDifference> found = [];
        if (!before.Exists || !after.Exists)
        {
            if (before.Exists != after.Exists)
            {
                found.Add(new HarnessDifference(after.Harness.Name, "solution", null, null, "", before.Exists ? $"lost: {after.Explanation}" : $"found; before: {before.Explanation}"));
            }

            return new HarnessComparison(found.AsReadOnly());
        }

        (HarnessState a, HarnessState b) = (before.State, after.State);
        Pair(found, Ids(a.Harness.LoadArray, l => l.Id), Ids(b.Harness.LoadArray, l => l.Id), "load", (id, i, j) => LoadPair(found, id, a, i, b, j, least));
        Pair(found, Ids(a.Harness.SourceArray, s => s.Id), Ids(b.Harness.SourceArray, s => s.Id), "source", (id, i, j) => Number(found, id, "current given", a.SourceAmperes[i], b.SourceAmperes[j], "A", least, Most(a)));
        Pair(found, Ids(a.Harness.BranchArray, x => x.Id), Ids(b.Harness.BranchArray, x => x.Id), "branch", (id, i, j) => Number(found, id, "current", a.Amperes[i], b.Amperes[j], "A", least, Most(a)));
        Pair(found, Ids(a.Harness.Parts.Nodes, n => n.Id), Ids(b.Harness.Parts.Nodes, n => n.Id), "node", (id, i, j) => Number(found, id, "voltage", a.Volts[i], b.Volts[j], "V", least, a.Harness.NominalVolts));
        return Sorted(found);
    }

    /// <summary>Compares two verifications, of one harness or of two.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other.</param>
    /// <param name="least">Share of a number from which on a difference is told, 0 to 1.</param>
    /// <returns>What differs: checks that changed their outcome or value, and those that only one of the two has.</returns>
    /// <exception cref="ArgumentNullException">A verification is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public static HarnessComparison Between(HarnessVerification before, HarnessVerification after, double least)
    {
        _ = before ?? throw new ArgumentNullException(nameof(before));
        _ = after ?? throw new ArgumentNullException(nameof(after));
        _ = Quantities.Accept.Within(least, 0, 1, "", nameof(least));
        List<HarnessDifference> found = [];
        Dictionary<(string, string, string?), HarnessCheck> others = [];
        foreach (HarnessCheck check in after.Checks)
        {
            others[(check.Kind!.Id, check.Place, check.Wire)] = check;
        }

        foreach (HarnessCheck check in before.Checks)
        {
            (string, string, string?) key = (check.Kind!.Id, check.Place, check.Wire);
            if (!others.TryGetValue(key, out HarnessCheck other))
            {
                found.Add(new HarnessDifference(check.Place, check.Kind.Name, check.Result.Value, null, check.Kind.Unit, "is not asked any more"));
                continue;
            }

            _ = others.Remove(key);
            if (other.Outcome != check.Outcome)
            {
                found.Add(new HarnessDifference(check.Place, check.Kind.Name, null, null, "", $"was {Word(check.Outcome)}, is {Word(other.Outcome)}"));
            }
            else if (check.Result.Value is { } x && other.Result.Value is { } y)
            {
                Number(found, check.Place, check.Kind.Name, x, y, check.Kind.Unit, least, 0);
            }
        }

        found.AddRange(others.Values.Select(check => new HarnessDifference(check.Place, check.Kind!.Name, null, check.Result.Value, check.Kind.Unit, $"is new: {Word(check.Outcome)}")));
        return Sorted(found);
    }

    /// <summary>What differs, one line each.</summary>
    public override string ToString() => IsSame ? "nothing differs" : string.Join("\n", Differences);

    private static void LoadPair(List<HarnessDifference> found, string id, HarnessState a, int i, HarnessState b, int j, double least)
    {
        (LoadCondition was, LoadCondition now) = (a.ConditionOf(i), b.ConditionOf(j));
        if (was != now)
        {
            found.Add(new HarnessDifference(id, "condition", null, null, "", $"was {was}, is {now}"));
        }

        Number(found, id, "voltage across it", a.VoltsAcross(i), b.VoltsAcross(j), "V", least, a.Harness.NominalVolts);
        Number(found, id, "current", a.LoadAmperes[i], b.LoadAmperes[j], "A", least, Most(a));
    }

    // What is small beside all others counts on their scale: rounding is no difference.
    private static void Number(List<HarnessDifference> found, string id, string what, double a, double b, string unit, double least, double scale)
    {
        double most = Math.Max(Math.Abs(a), Math.Abs(b));
        if (Math.Abs(a - b) > Math.Max(least * most, 1e-9 * scale))
        {
            found.Add(new HarnessDifference(id, what, a, b, unit, ""));
        }
    }

    private static void Pair(List<HarnessDifference> found, Dictionary<string, int> one, Dictionary<string, int> other, string what, Action<string, int, int> compare)
    {
        foreach (KeyValuePair<string, int> part in one)
        {
            if (other.TryGetValue(part.Key, out int index))
            {
                compare(part.Key, part.Value, index);
            }
            else
            {
                found.Add(new HarnessDifference(part.Key, what, null, null, "", "is gone"));
            }
        }

        found.AddRange(other.Keys.Where(id => !one.ContainsKey(id)).Select(id => new HarnessDifference(id, what, null, null, "", "is new")));
    }

    private static HarnessComparison Sorted(List<HarnessDifference> found) =>
        new(Array.AsReadOnly([.. found.OrderBy(d => d.Before is null ? 0 : 1).ThenByDescending(d => d.Share)]));

    private static Dictionary<string, int> Ids<T>(T[] parts, Func<T, string> id)
    {
        Dictionary<string, int> ids = new(StringComparer.Ordinal);
        for (int k = 0; k < parts.Length; k++)
        {
            ids[id(parts[k])] = k;
        }

        return ids;
    }

    private static double Most(HarnessState state) => state.Amperes.Length == 0 ? 0 : state.Amperes.Max(Math.Abs);

    private static string Word(CheckOutcome outcome) => outcome switch { CheckOutcome.Pass => "pass", CheckOutcome.Fail => "fail", _ => "undetermined" };
}
