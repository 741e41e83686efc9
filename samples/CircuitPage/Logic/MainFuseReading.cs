using System.Globalization;
using LowVoltage.Calc;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace CircuitPage;

/// <summary>The main fuse before the circuit's own, where one is stated.</summary>
internal sealed class MainFuseReading
{
    private MainFuseReading(UpstreamProtection? device) => Device = device;

    public UpstreamProtection? Device { get; }

    public static MainFuseReading Of(PageState state, DesignRules? rules, Func<string, double?> number, Action<string, string> report)
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
            device = number("main_fuse_lead_mOhm") is { } before ? device?.WithUpstream(ElectricResistance.FromMilliohms(before)) : device;
            device = number("main_fuse_melts_A2s") is { } melts ? device?.WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(melts)) : device;
            return new MainFuseReading(rules is not null && Lead(state, rules, number, report) is { } lead ? device?.WithLead(lead) : device);
        }
        catch (ArgumentException refusal)
        {
            report(refusal.ParamName switch { "voltageRating" => "main_fuse_V", "breakingCapacity" => "main_fuse_breaks_A", "upstream" => "main_fuse_lead_mOhm", "oneWay" => "main_lead_m", "squaredSeconds" or "leastMelting" or "value" => "main_fuse_melts_A2s", _ => key }, ProblemWords.Plain(refusal));
            return new MainFuseReading(null);
        }
    }

    // Size and length belong together.
    private static CircuitPath? Lead(PageState state, DesignRules rules, Func<string, double?> number, Action<string, string> report)
    {
        string size = state.Text("main_lead_size").Trim();
        double? meters = number("main_lead_m");
        if (size.Length == 0)
        {
            if (meters is not null)
            {
                report("main_lead_size", "Needed with the length of the lead.");
            }

            return null;
        }

        if (RulesReading.Find(rules, size) is not { } wire)
        {
            report("main_lead_size", RulesReading.Unknown(rules, size));
        }
        else if (meters is null)
        {
            report("main_lead_m", ProblemWords.Missing(Fields.Find("main_lead_m")!, state.Units));
        }
        else
        {
            return CircuitPath.TwoWire(wire, Length.FromMeters(meters.Value));
        }

        return null;
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
