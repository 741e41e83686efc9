using System.Globalization;
using LowVoltage.Calc;
using LowVoltage.Calc.Protection;

namespace CircuitPage;

/// <summary>The main fuse before the circuit's own, where one is stated.</summary>
internal sealed class MainFuseReading
{
    private MainFuseReading(UpstreamProtection? device) => Device = device;

    public UpstreamProtection? Device { get; }

    public static MainFuseReading Of(PageState state, Func<string, double?> number, Action<string, string> report)
    {
        string kind = state.Choice("main_fuse");
        if (kind == UpstreamFields.None)
        {
            return new MainFuseReading(null);
        }

        string key = "main_fuse_A";
        if (number(key) is not { } amperes)
        {
            if (state.Text(key).Trim().Length == 0)
            {
                report(key, ProblemWords.Missing(Fields.Find(key)!, state.Units));
            }

            return new MainFuseReading(null);
        }

        try
        {
            UpstreamProtection? device = kind == UpstreamFields.Marked ? Marked(amperes, number) : OfSeries(Stock.Fuse(kind), amperes, report);
            return new MainFuseReading(number("main_fuse_lead_mOhm") is { } lead ? device?.WithUpstream(ElectricResistance.FromMilliohms(lead)) : device);
        }
        catch (ArgumentException refusal)
        {
            report(refusal.ParamName switch { "voltageRating" => "main_fuse_V", "breakingCapacity" => "main_fuse_breaks_A", "upstream" => "main_fuse_lead_mOhm", _ => key }, ProblemWords.Plain(refusal));
            return new MainFuseReading(null);
        }
    }

    private static UpstreamProtection Marked(double amperes, Func<string, double?> number) => UpstreamProtection.Device(
        "main fuse",
        ElectricCurrent.FromAmperes(amperes),
        number("main_fuse_V") is { } volts ? ElectricPotential.FromVolts(volts) : null,
        number("main_fuse_breaks_A") is { } breaks ? ElectricCurrent.FromAmperes(breaks) : null);

    private static UpstreamProtection? OfSeries(FuseSeries series, double amperes, Action<string, string> report)
    {
        if (series.Ratings.FirstOrDefault(rating => rating.Current.Amperes == amperes) is { } found)
        {
            return UpstreamProtection.Fuse(found);
        }

        string known = string.Join(", ", series.Ratings.Select(rating => rating.Current.Amperes.ToString("G6", CultureInfo.InvariantCulture)));
        report("main_fuse_A", $"{series.Name} has {known} A; it was {amperes.ToString("G6", CultureInfo.InvariantCulture)} A.");
        return null;
    }
}
