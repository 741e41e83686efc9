using System.Globalization;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>What holds for every parser and every text: TryParse never throws, Parse agrees with it and quotes what it refuses, and what was read can be written and read again.</summary>
internal static class ParserRules
{
    public static bool Check(string text, CultureInfo culture)
    {
        bool read = Check<AwgSize>(text, culture, AwgSize.Parse, AwgSize.TryParse);
        read |= Check<KcmilSize>(text, culture, KcmilSize.Parse, KcmilSize.TryParse);
        read |= Check<MetricSize>(text, culture, MetricSize.Parse, MetricSize.TryParse);
        read |= Check<VehicleGaugeSize>(text, culture, VehicleGaugeSize.Parse, VehicleGaugeSize.TryParse);
        read |= Check<AircraftWireSize>(text, culture, AircraftWireSize.Parse, AircraftWireSize.TryParse);
        return read | Check<ConductorSize>(text, culture, ConductorSize.Parse, ConductorSize.TryParse);
    }

    private static bool Check<T>(string text, CultureInfo culture, Parser<T> parse, TryParser<T> tryParse)
        where T : struct, IFormattable
    {
        bool read = tryParse(text.AsSpan(), culture, out T size);
        if (!read)
        {
            Assert.Equal(default, size);
            Assert.Contains(text, Assert.Throws<FormatException>(() => parse(text.AsSpan(), culture)).Message, StringComparison.Ordinal);
            return false;
        }

        Assert.Equal(size, parse(text.AsSpan(), culture));
        foreach (CultureInfo writing in new[] { culture, CultureInfo.InvariantCulture })
        {
            string written = size.ToString(null, writing);
            Assert.Equal(size, parse(written.AsSpan(), writing));
        }

        return true;
    }

    private delegate T Parser<T>(ReadOnlySpan<char> text, IFormatProvider? provider);

    private delegate bool TryParser<T>(ReadOnlySpan<char> text, IFormatProvider? provider, out T result);
}
