using LowVoltage.Calc.Conductors;
using D = LowVoltage.Calc.Teaching.AnswerDimension;

namespace LowVoltage.Calc.Teaching;

/// <summary>The units that an answer may be written in, with the spellings that people use.</summary>
internal static class AnswerUnits
{
    private const double Foot = 0.3048;

    private static readonly Dictionary<string, AnswerUnit> Exact = Build();

    // Sloppy capitals: taken only where the spelling has no meaning of its own. "MW" and "mW" keep theirs.
    private static readonly Dictionary<string, AnswerUnit> AnyCase = IgnoringCase();

    internal static bool TryFind(string spelling, out AnswerUnit unit)
    {
        string plain = Plain(spelling);
        int slash = plain.IndexOf('/');
        return slash > 0
            ? TryQuotient(plain.Substring(0, slash), plain.Substring(slash + 1), out unit)
            : Exact.TryGetValue(plain, out unit!) || AnyCase.TryGetValue(plain, out unit!);
    }

    internal static AnswerUnit Find(string spelling) =>
        TryFind(spelling, out AnswerUnit unit) ? unit : throw new ArgumentException($"'{spelling}' is no unit of an answer.", nameof(spelling));

    private static bool TryQuotient(string above, string below, out AnswerUnit unit)
    {
        unit = null!;
        if (!TryFind(above, out AnswerUnit top))
        {
            return false;
        }

        if (top.Dimension == D.Current && below is "mm2" or "sqmm")
        {
            unit = new AnswerUnit(D.CurrentDensity, top.ToBase(1) * 1e6);
            return true;
        }

        if (top.Dimension == D.Section && TryFind(below, out AnswerUnit current) && current.Dimension == D.Current)
        {
            unit = new AnswerUnit(D.SectionPerCurrent, top.ToBase(1) / current.ToBase(1));
            return true;
        }

        double length = below switch
        {
            "1000ft" or "1000feet" or "kft" or "Mft" => 1000 * Foot,
            _ => TryFind(below, out AnswerUnit bottom) && bottom.Dimension == D.Length ? bottom.ToBase(1) : 0,
        };
        if (length <= 0 || top.Dimension != D.Resistance)
        {
            return false;
        }

        unit = new AnswerUnit(D.ResistancePerLength, top.ToBase(1) / length);
        return true;
    }

    // mm², mm^2 and "sq mm" are one; so are A²s and A²·s, and Ω from either code point.
    private static string Plain(string spelling)
    {
        char[] kept = new char[spelling.Length];
        int count = 0;
        foreach (char c in spelling)
        {
            if (c is not (' ' or '^' or '·' or '*' or '.' or '_'))
            {
                kept[count++] = c == '²' ? '2' : c == '³' ? '3' : c;
            }
        }

        return new string(kept, 0, count);
    }

    private static Dictionary<string, AnswerUnit> Build()
    {
        Dictionary<string, AnswerUnit> units = new(StringComparer.Ordinal);
        Prefixed(units, D.Voltage, 1, "V", ["volt", "volts"]);
        Prefixed(units, D.Current, 1, "A", ["ampere", "amperes", "amp", "amps", "ampère", "ampères"]);
        Prefixed(units, D.Resistance, 1, "Ω", ["ohm", "ohms"]);
        Prefixed(units, D.Power, 1, "W", ["watt", "watts"]);
        Prefixed(units, D.Time, 1, "s", ["second", "seconds", "sec", "secs", "sek", "Sek"]);
        Prefixed(units, D.Charge, 3600, "Ah", ["amperehour", "amperehours", "amphour", "amphours", "ampere-hours", "amp-hours"]);
        Prefixed(units, D.Charge, 1, "As", ["coulomb", "coulombs", "ampereseconds", "amperesecond"]);
        Prefixed(units, D.Energy, 3600, "Wh", ["watthour", "watthours", "watt-hours"]);
        Prefixed(units, D.Energy, 1, "J", ["joule", "joules"]);
        Prefixed(units, D.Length, 1, "m", ["meter", "meters", "metre", "metres"]);
        Add(units, D.Voltage, 1, "VDC", "Vdc");
        Add(units, D.Current, 1, "ADC", "Adc");
        Add(units, D.Resistance, 1, "ohm", "ohms");
        Add(units, D.Resistance, 1e-3, "mohm", "mohms");
        Add(units, D.Resistance, 1e-6, "µohm", "uohm");
        Add(units, D.Resistance, 1e3, "kohm", "kohms");
        Add(units, D.Length, 0.01, "cm");
        Add(units, D.Length, Foot, "ft", "foot", "feet");
        Add(units, D.Length, Foot / 12, "in", "inch", "inches");
        Add(units, D.Length, Foot / 12000, "mil", "mils");
        Add(units, D.Time, 60, "min", "minute", "minutes");
        Add(units, D.Time, 3600, "h", "hr", "hrs", "hour", "hours");
        Add(units, D.Section, 1, "mm2", "sqmm", "mmsq", "squaremillimeters", "squaremillimetres", "squaremillimeter", "squaremillimetre", "squaremm", "mmsquared", "qmm");
        Add(units, D.Section, 100, "cm2");
        Add(units, D.Section, 1e6, "m2");
        Add(units, D.Section, CircularMil.SquareMillimeters, "cmil", "cmils", "CM", "circularmil", "circularmils", "circmils");
        Add(units, D.Section, CircularMil.SquareMillimeters * 1000, "kcmil", "MCM");
        Add(units, D.Temperature, 1, "°C", "C", "degC", "℃", "celsius", "degreescelsius", "degreecelsius", "º" + "C");
        units["K"] = units["kelvin"] = units["kelvins"] = new AnswerUnit(D.Temperature, 1, -273.15);
        units["°F"] = units["F"] = units["degF"] = units["℉"] = units["fahrenheit"] = units["degreesfahrenheit"] = new AnswerUnit(D.Temperature, 5 / 9.0, -32);
        Add(units, D.JouleIntegral, 1, "A2s", "A2sec");
        Add(units, D.JouleIntegral, 1e6, "kA2s");
        Add(units, D.None, 0.01, "%", "percent", "percents", "prozent", "pourcent");
        Add(units, D.None, 1, "");
        units[AnswerUnit.Gauge] = new AnswerUnit(D.Section, 1, 0, isGauge: true);
        return units;
    }

    private static void Prefixed(Dictionary<string, AnswerUnit> units, D dimension, double factor, string symbol, string[] words)
    {
        AnswerUnit unit = new(dimension, factor);
        (string Symbol, string Word, double Factor)[] prefixes =
            [("", "", 1), ("m", "milli", 1e-3), ("µ", "micro", 1e-6), ("u", "micro", 1e-6), ("n", "nano", 1e-9), ("k", "kilo", 1e3), ("M", "mega", 1e6)];
        foreach ((string prefix, string word, double size) in prefixes)
        {
            units[prefix + symbol] = unit.Times(size);
            foreach (string name in words)
            {
                units[word + name] = unit.Times(size);
            }
        }
    }

    private static void Add(Dictionary<string, AnswerUnit> units, D dimension, double factor, params string[] spellings)
    {
        foreach (string spelling in spellings)
        {
            units[spelling] = new AnswerUnit(dimension, factor);
        }
    }

    private static Dictionary<string, AnswerUnit> IgnoringCase()
    {
        Dictionary<string, AnswerUnit> units = new(StringComparer.OrdinalIgnoreCase);
        HashSet<string> clashes = new(StringComparer.OrdinalIgnoreCase);
        foreach (KeyValuePair<string, AnswerUnit> entry in Exact)
        {
            if (!clashes.Contains(entry.Key))
            {
                if (units.ContainsKey(entry.Key))
                {
                    clashes.Add(entry.Key);
                    units.Remove(entry.Key);
                }
                else
                {
                    units[entry.Key] = entry.Value;
                }
            }
        }

        // Two readings that everybody takes in one way.
        units["ma"] = Exact["mA"];
        units["mv"] = Exact["mV"];
        units["mah"] = Exact["mAh"];
        return units;
    }
}
