using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace FleetStudy;

/// <summary>What a piece, or a whole study, has found: whole counts, histograms of whole counts, and the worst by a rule without ties. Tallies add up to the same sum in any order.</summary>
[GenerateSerializer, Alias("FleetStudy.Tally")]
internal sealed class Tally
{
    /// <summary>So many bad variants are named, those of the lowest numbers.</summary>
    public const int BadKept = 10;

    [Id(0)]
    private readonly Dictionary<string, CheckTally> checks = [];

    [Id(1)]
    private readonly Dictionary<string, OptionTally> options = [];

    [Id(2)]
    private readonly List<BadVariant> bad = [];

    /// <summary>How many were studied, the bad ones among them.</summary>
    [Id(3)]
    public long Variants { get; private set; }

    [Id(4)]
    public long Failed { get; private set; }

    [Id(5)]
    public long Undetermined { get; private set; }

    [Id(6)]
    public long BadCount { get; private set; }

    /// <summary>Drawn within the tolerances.</summary>
    [Id(7)]
    public long Pieces { get; set; }

    [Id(8)]
    public long PiecesFailed { get; set; }

    public long Passed => Variants - Failed - Undetermined - BadCount;

    public IReadOnlyDictionary<string, CheckTally> Checks => checks;

    public IReadOnlyDictionary<string, OptionTally> Options => options;

    /// <summary>The bad variants of the lowest numbers.</summary>
    public IReadOnlyList<BadVariant> Bad => bad;

    public CheckTally Check(string name, double low, double step)
    {
        if (!checks.TryGetValue(name, out CheckTally? check))
        {
            checks.Add(name, check = new CheckTally(low, step));
        }

        return check;
    }

    public void CountVariant(bool fails, bool isUndetermined, IEnumerable<string> having)
    {
        Variants++;
        Failed += fails ? 1 : 0;
        Undetermined += isUndetermined && !fails ? 1 : 0;
        foreach (string option in having)
        {
            OptionTally one = Option(option);
            one.Variants++;
            one.Failed += fails ? 1 : 0;
        }
    }

    public void CountBad(long variant, string reason)
    {
        Variants++;
        BadCount++;
        Keep(new BadVariant(variant, reason));
    }

    public void Merge(Tally other)
    {
        Variants += other.Variants;
        Failed += other.Failed;
        Undetermined += other.Undetermined;
        BadCount += other.BadCount;
        Pieces += other.Pieces;
        PiecesFailed += other.PiecesFailed;
        foreach ((string name, CheckTally check) in other.checks)
        {
            if (checks.TryGetValue(name, out CheckTally? here))
            {
                here.Merge(check);
            }
            else
            {
                checks.Add(name, check.Copy());
            }
        }

        foreach ((string name, OptionTally option) in other.options)
        {
            OptionTally here = Option(name);
            here.Variants += option.Variants;
            here.Failed += option.Failed;
        }

        other.bad.ForEach(Keep);
    }

    public Tally Copy()
    {
        Tally copy = new();
        copy.Merge(this);
        return copy;
    }

    /// <summary>A hash of everything that was counted: two runs with the same one have the same answer to the last digit.</summary>
    public string Digest()
    {
        StringBuilder text = new();
        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"{Variants} {Failed} {Undetermined} {BadCount} {Pieces} {PiecesFailed}");
        foreach ((string name, CheckTally check) in checks.OrderBy(c => c.Key, StringComparer.Ordinal))
        {
            Line($"{name} {check.Asked} {check.Failed} {check.Undetermined} {check.PiecesFailed} {string.Join(',', check.Margins.Counts)}");
            foreach (WorstCase worst in check.Worst)
            {
                Line($"{worst.Margin:R} {worst.Variant} {worst.Place}");
            }
        }

        foreach ((string name, OptionTally option) in options.OrderBy(o => o.Key, StringComparer.Ordinal))
        {
            Line($"{name} {option.Variants} {option.Failed}");
        }

        bad.ForEach(b => Line($"{b.Variant} {b.Reason}"));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..16];
    }

    private OptionTally Option(string name)
    {
        if (!options.TryGetValue(name, out OptionTally? option))
        {
            options.Add(name, option = new OptionTally());
        }

        return option;
    }

    private void Keep(BadVariant one)
    {
        int at = bad.FindIndex(b => b.Variant >= one.Variant);
        if (at >= 0 && bad[at].Variant == one.Variant)
        {
            return;
        }

        bad.Insert(at < 0 ? bad.Count : at, one);
        bad.RemoveRange(Math.Min(BadKept, bad.Count), Math.Max(0, bad.Count - BadKept));
    }
}
