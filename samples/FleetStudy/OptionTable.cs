using System.Globalization;

namespace FleetStudy;

/// <summary>How often the variants with each value of an option fail.</summary>
internal static class OptionTable
{
    public static void Write(Tally tally, TextWriter output)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"what each option does",-64}{"variants",9}{"fail",9}{"share",9}"));
        foreach ((string name, OptionTally option) in tally.Options.OrderBy(o => o.Key, StringComparer.Ordinal))
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {name[6..],-62}{option.Variants,9}{option.Failed,9}{100.0 * option.Failed / option.Variants,7:0.0} %"));
        }

        output.WriteLine();
    }
}
