using System.Globalization;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Conductors;

public class SizeTextTests
{
    [Theory]
    [InlineData("14 AWG", 14)]
    [InlineData("AWG 14", 14)]
    [InlineData("14", 14)]
    [InlineData("  14awg ", 14)]
    [InlineData("aWg14", 14)]
    [InlineData("#14", 14)]
    [InlineData("# 14 AWG", 14)]
    [InlineData("AWG #14", 14)]
    [InlineData("No. 14", 14)]
    [InlineData("no 14 awg", 14)]
    [InlineData("AWG No. 14", 14)]
    [InlineData("14\u00a0AWG", 14)]
    [InlineData("40", 40)]
    [InlineData("1 AWG", 1)]
    [InlineData("0", 0)]
    [InlineData("1/0", 0)]
    [InlineData("00", -1)]
    [InlineData("2/0 AWG", -1)]
    [InlineData("000", -2)]
    [InlineData("AWG 3/0", -2)]
    [InlineData("0000", -3)]
    [InlineData("4/0 AWG", -3)]
    [InlineData("4 / 0", -3)]
    [InlineData("AWG 4/0", -3)]
    public void AwgParse_TradeSpelling_IsRead(string text, int number)
    {
        Assert.Equal(number, AwgSize.Parse(text).Number);
        Assert.True(AwgSize.TryParse(text, out AwgSize size));
        Assert.Equal(number, size.Number);
        Assert.Equal(size, AwgSize.Parse(text.AsSpan(), CultureInfo.GetCultureInfo("tr-TR")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("41")]
    [InlineData("99 AWG")]
    [InlineData("014")]
    [InlineData("00000")]
    [InlineData("5/0")]
    [InlineData("0/0")]
    [InlineData("4/1")]
    [InlineData("44/0")]
    [InlineData("-1")]
    [InlineData("+14")]
    [InlineData("1.4")]
    [InlineData("14 SAE")]
    [InlineData("14 AWG AWG")]
    [InlineData("AWG 14 AWG")]
    [InlineData("##14")]
    [InlineData("AWG")]
    [InlineData("١٤ AWG")]
    [InlineData("14 mm²")]
    [InlineData("140")]
    public void AwgParse_OtherText_IsRefusedAndQuoted(string text)
    {
        Assert.False(AwgSize.TryParse(text, out AwgSize size));
        Assert.Equal(default, size);
        FormatException refusal = Assert.Throws<FormatException>(() => AwgSize.Parse(text));
        Assert.Contains($"\"{text}\"", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("4/0 to 40", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2.5 mm²", 2.5)]
    [InlineData("2.5mm2", 2.5)]
    [InlineData("2.5 MM2", 2.5)]
    [InlineData("2.5 mm^2", 2.5)]
    [InlineData("2.5 sqmm", 2.5)]
    [InlineData("2.5 sq mm", 2.5)]
    [InlineData("2.5sq. mm", 2.5)]
    [InlineData(" 120 mm² ", 120)]
    [InlineData(".5 mm²", 0.5)]
    [InlineData("1.5", 1.5)]
    [InlineData(" 10 ", 10)]
    public void MetricParse_Spelling_IsRead(string text, double expected) =>
        Assert.Equal(expected, MetricSize.Parse(text).NominalArea.SquareMillimeters);

    [Theory]
    [InlineData("2,5 mm²")]
    [InlineData("2.5 mm")]
    [InlineData("mm²")]
    [InlineData("0 mm²")]
    [InlineData("-2.5 mm²")]
    [InlineData("1e3 mm²")]
    [InlineData("1,000 mm²")]
    [InlineData("1.2.3 mm²")]
    [InlineData(". mm²")]
    [InlineData("2.5\0 mm²")]
    [InlineData("1000001 mm²")]
    [InlineData("NaN mm²")]
    public void MetricParse_OtherText_IsRefusedAndQuoted(string text)
    {
        Assert.False(MetricSize.TryParse(text, out _));
        Assert.Contains(text, Assert.Throws<FormatException>(() => MetricSize.Parse(text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void MetricParse_CommaCulture_ReadsItsOwnSeparatorOnly()
    {
        CultureInfo german = CultureInfo.GetCultureInfo("de-DE");
        Assert.Equal(2.5, MetricSize.Parse("2,5 mm²", german).NominalArea.SquareMillimeters);
        Assert.False(MetricSize.TryParse("2.5 mm²", german, out _)); // a thousands separator there, never 25
        Assert.Equal("2,5 mm²", MetricSize.FromSquareMillimeters(2.5).ToString(null, german));
        Assert.Equal("2,50 mm²", MetricSize.FromSquareMillimeters(2.5).ToString("F2", german));
        Assert.Equal("2.5 mm²", MetricSize.FromSquareMillimeters(2.5).ToString());
        Assert.Equal(262.5, KcmilSize.Parse("262,5 MCM", german).Kcmil);
        Assert.Equal(2.5, ConductorSize.Parse("2,5 mm²", german).NominalArea.SquareMillimeters);
        Assert.Equal("2,5 mm²", ConductorSize.Parse("2,5 mm²", german).ToString("G", german));
    }

    [Theory]
    [InlineData("de-DE", "2,5 mm²")]
    [InlineData("", "2.5 mm²")]
    public void Parse_Refused_ShowsWhatThisCultureAccepts(string culture, string shown)
    {
        CultureInfo provider = CultureInfo.GetCultureInfo(culture);
        string other = culture.Length == 0 ? "2,5 mm²" : "2.5 mm²";
        string metric = Assert.Throws<FormatException>(() => MetricSize.Parse(other, provider)).Message;
        Assert.Contains($"Accepted: {shown}", metric, StringComparison.Ordinal);
        Assert.Contains(shown, Assert.Throws<FormatException>(() => ConductorSize.Parse(other, provider)).Message, StringComparison.Ordinal);
        Assert.Equal(culture.Length > 0, metric.Contains("decimal separator of this culture is \",\"", StringComparison.Ordinal));
        Assert.Contains(shown.Replace("2", "211").Replace("5 mm²", "6"), Assert.Throws<FormatException>(() => KcmilSize.Parse("x", provider)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Parse_UnderAnotherCurrentCulture_StaysInvariant(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(2.5, MetricSize.Parse("2.5 mm²").NominalArea.SquareMillimeters);
            Assert.False(MetricSize.TryParse("2,5 mm²", out _));
            Assert.Equal("2.5 mm²", MetricSize.FromSquareMillimeters(2.5).ToString());
            Assert.Equal(250, KcmilSize.Parse("250 KCMIL").Kcmil);
            Assert.Equal("250 kcmil", KcmilSize.FromKcmil(250).ToString());
            Assert.Equal(20, AircraftWireSize.Parse("20 AIRCRAFT").Number); // I without a dot
            Assert.Equal("14 AWG", AwgSize.Parse("14 awg").ToString());
            Assert.Equal("2.5 mm² class 5 copper", Conductor.Iec60228(MetricSize.Parse("2.5 mm²"), Iec60228Class.Flexible).Name);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("250 kcmil", 250)]
    [InlineData("250 MCM", 250)]
    [InlineData("250", 250)]
    [InlineData("1000kcmil", 1000)]
    [InlineData("211.7 kcmil", 211.7)]
    public void KcmilParse_Spelling_IsRead(string text, double expected) => Assert.Equal(expected, KcmilSize.Parse(text).Kcmil);

    [Theory]
    [InlineData("211.6 kcmil")]
    [InlineData("211.6")]
    [InlineData("250 cmil")]
    [InlineData("1000001 kcmil")]
    public void KcmilParse_OtherText_IsRefused(string text) => Assert.False(KcmilSize.TryParse(text, out _));

    [Theory]
    [InlineData("14 SAE", 14)]
    [InlineData("sae 14", 14)]
    [InlineData("4/0 SAE", -3)]
    [InlineData("SAE 1/0", 0)]
    [InlineData("14", 14)]
    [InlineData("4/0", -3)]
    public void VehicleGaugeParse_WithOrWithoutItsWord_IsRead(string text, int number) => Assert.Equal(number, VehicleGaugeSize.Parse(text).Number);

    [Theory]
    [InlineData("22")]
    [InlineData("14 AWG")]
    [InlineData("22 SAE")]
    [InlineData("13 SAE")]
    public void VehicleGaugeParse_OtherText_IsRefused(string text) => Assert.False(VehicleGaugeSize.TryParse(text, out _));

    [Theory]
    [InlineData("14 AWG", SizeSystem.AmericanWireGauge, "14 AWG")]
    [InlineData("AWG 4/0", SizeSystem.AmericanWireGauge, "4/0 AWG")]
    [InlineData("250 MCM", SizeSystem.Kcmil, "250 kcmil")]
    [InlineData("2.5mm2", SizeSystem.Metric, "2.5 mm²")]
    [InlineData("14 SAE", SizeSystem.VehicleGauge, "14 SAE")]
    [InlineData("20 aircraft", SizeSystem.AircraftWire, "20 aircraft")]
    public void ConductorSizeParse_WithASystem_IsRead(string text, SizeSystem system, string designation)
    {
        ConductorSize size = ConductorSize.Parse(text);
        Assert.Equal(system, size.System);
        Assert.Equal(designation, size.Designation);
        Assert.Equal(size, ConductorSize.Parse(designation));
        Assert.Equal(size.GetHashCode(), ConductorSize.Parse(designation).GetHashCode());
    }

    [Theory]
    [InlineData("14")]
    [InlineData("#14")]
    [InlineData("4/0")]
    [InlineData("2.5")]
    [InlineData("14 gauge")]
    public void ConductorSizeParse_NumberAlone_IsRefusedWithWhatIsAccepted(string text)
    {
        Assert.False(ConductorSize.TryParse(text, out ConductorSize size));
        Assert.Equal(SizeSystem.Geometry, size.System);
        string message = Assert.Throws<FormatException>(() => ConductorSize.Parse(text)).Message;
        Assert.Contains($"\"{text}\"", message, StringComparison.Ordinal);
        Assert.Contains("14 AWG, 4/0 AWG, 250 kcmil, 2.5 mm², 14 SAE or 20 aircraft", message, StringComparison.Ordinal);
        Assert.Contains("ambiguous", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_Null_IsRefusedByName()
    {
        Assert.Throws<ArgumentNullException>("s", () => AwgSize.Parse(null!));
        Assert.Throws<ArgumentNullException>("s", () => KcmilSize.Parse(null!));
        Assert.Throws<ArgumentNullException>("s", () => MetricSize.Parse(null!));
        Assert.Throws<ArgumentNullException>("s", () => VehicleGaugeSize.Parse(null!));
        Assert.Throws<ArgumentNullException>("s", () => AircraftWireSize.Parse(null!));
        Assert.Throws<ArgumentNullException>("s", () => ConductorSize.Parse(null!));
        Assert.False(ConductorSize.TryParse(null, out _));
        Assert.False(AwgSize.TryParse(null, CultureInfo.InvariantCulture, out _));
    }

    [Fact]
    public void Parse_EverySizeOfEverySystem_RoundTrips()
    {
        Assert.All(AwgSize.All, size => Assert.Equal(size, AwgSize.Parse(size.ToString())));
        Assert.All(AwgSize.All, size => Assert.Equal(size, AwgSize.Parse(size.ToString("N", null))));
        Assert.All(KcmilSize.All, size => Assert.Equal(size, KcmilSize.Parse(size.ToString())));
        Assert.All(MetricSize.RoadVehicleSeries.Concat(MetricSize.Iec60228Series), size => Assert.Equal(size, MetricSize.Parse(size.ToString())));
        Assert.All(VehicleGaugeSize.All, size => Assert.Equal(size, VehicleGaugeSize.Parse(size.ToString())));
        Assert.All(AircraftWireSize.All, size => Assert.Equal(size, AircraftWireSize.Parse(size.ToString())));
        Assert.Equal(0.1 + 0.2, MetricSize.Parse(MetricSize.FromSquareMillimeters(0.1 + 0.2).ToString()).NominalArea.SquareMillimeters);
    }

    [Fact]
    public void ToString_UnknownFormat_IsRefused()
    {
        Assert.Throws<FormatException>(() => AwgSize.FromNumber(14).ToString("X", null));
        Assert.Throws<FormatException>(() => ConductorSize.FromAwg(AwgSize.FromNumber(14)).ToString("N", null));
        Assert.Equal("14", AwgSize.FromNumber(14).ToString("N", null));
        Assert.Equal("4/0", VehicleGaugeSize.FromNumber(-3).ToString("n", null));
        Assert.Equal("no size", default(ConductorSize).ToString());
    }

    [Fact]
    public void TryFormat_Buffer_IsFilledOrRefused()
    {
        Span<char> buffer = stackalloc char[7];
        Assert.True(AwgSize.FromNumber(-3).TryFormat(buffer, out int written, "", null));
        Assert.Equal("4/0 AWG", buffer[..written].ToString());
        Assert.False(AwgSize.FromNumber(-3).TryFormat(buffer[..6], out written, "", null));
        Assert.Equal(0, written);
        Assert.Equal("[14 SAE]", string.Create(CultureInfo.InvariantCulture, $"[{VehicleGaugeSize.FromNumber(14)}]"));
    }

    // A million texts of the letters that matter, fixed seed: no TryParse throws, and what one accepts it can print and read again.
    [Fact]
    public void TryParse_AMillionRandomTexts_NeverThrows()
    {
        const string Letters = "0123456789/.,# awgAWGNnoOkcmilMCMm²2^sqSAEaircft\0\u0660\u00a0İı-+eE";
        Random random = new(20_240_229);
        Span<char> buffer = stackalloc char[12];
        CultureInfo german = CultureInfo.GetCultureInfo("de-DE");
        int accepted = 0;
        for (int i = 0; i < 1_000_000; i++)
        {
            int length = random.Next(0, buffer.Length + 1);
            for (int j = 0; j < length; j++)
            {
                buffer[j] = Letters[random.Next(Letters.Length)];
            }

            ReadOnlySpan<char> text = buffer[..length];
            accepted += AwgSize.TryParse(text, null, out AwgSize awg) ? 1 : 0;
            accepted += MetricSize.TryParse(text, german, out _) ? 1 : 0;
            accepted += KcmilSize.TryParse(text, null, out _) ? 1 : 0;
            accepted += VehicleGaugeSize.TryParse(text, null, out _) ? 1 : 0;
            accepted += AircraftWireSize.TryParse(text, null, out _) ? 1 : 0;
            if (ConductorSize.TryParse(text, null, out ConductorSize size))
            {
                Assert.Equal(size, ConductorSize.Parse(size.ToString()));
            }

            Assert.True(awg.IsNone || awg.Number is >= -3 and <= 40);
        }

        Assert.True(accepted > 1000); // the alphabet does reach the accepting paths
    }
}
