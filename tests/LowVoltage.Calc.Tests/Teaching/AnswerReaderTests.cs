using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

public class AnswerReaderTests
{
    [Theory]
    [InlineData("2.4 A", 2.4, 2)]
    [InlineData("2400 mA", 2.4, 4)]
    [InlineData("2,4 A", 2.4, 2)]
    [InlineData("2.40A", 2.4, 3)]
    [InlineData("I = 2.4 A", 2.4, 2)]
    [InlineData("U = R·I ≈ 2.4 A.", 2.4, 2)]
    [InlineData("2.4 amps", 2.4, 2)]
    [InlineData("2.4 Ampere", 2.4, 2)]
    [InlineData("2.4 a", 2.4, 2)]
    [InlineData("2400 MA", 2.4e9, 4)]
    [InlineData("2400 ma", 2.4, 4)]
    [InlineData("2 400 mA", 2.4, 4)]
    [InlineData("2\u2009400\u202FmA", 2.4, 4)]
    [InlineData("2,400 mA", 2.4, 4)]
    [InlineData("2'400 mA", 2.4, 4)]
    [InlineData("1,234.5 mA", 1.2345, 5)]
    [InlineData("0.0024 kA", 2.4, 2)]
    [InlineData("2.4e3 mA", 2.4, 2)]
    [InlineData("2.4E+3 mA", 2.4, 2)]
    [InlineData("2.4×10³ mA", 2.4, 2)]
    [InlineData("2.4 x 10^3 mA", 2.4, 2)]
    [InlineData("2.4·10⁻³ kA", 2.4, 2)]
    [InlineData("2.4 * 10^-3 kA", 2.4, 2)]
    [InlineData(".24 A", 0.24, 2)]
    [InlineData("12. A", 12, 2)]
    [InlineData("−2.4 A", -2.4, 2)]
    [InlineData("- 2.4 A", -2.4, 2)]
    [InlineData("+2.4 A", 2.4, 2)]
    [InlineData("٢٫٤ A", 2.4, 2)]
    [InlineData("\u200F2.4 A\u200E", 2.4, 2)]
    [InlineData("２．４ A", 2.4, 2)]
    [InlineData("𝟐.𝟒 A", 2.4, 2)]
    [InlineData("२.४ A", 2.4, 2)]
    [InlineData("۲٫۴ A", 2.4, 2)]
    [InlineData("approx 2.4 A", 2.4, 2)]
    [InlineData("approx. 2.4 A", 2.4, 2)]
    [InlineData("About 2.4 A", 2.4, 2)]
    [InlineData("ca. 2.4 A", 2.4, 2)]
    [InlineData("2.4 A approx.", 2.4, 2)]
    [InlineData("≈ 2.4 A", 2.4, 2)]
    [InlineData("~2.4A", 2.4, 2)]
    [InlineData("∼2.4A", 2.4, 2)]
    [InlineData("The answer is 2.4 A.", 2.4, 2)]
    [InlineData("answer: 2.4 A", 2.4, 2)]
    [InlineData("2.4 Amperes", 2.4, 2)]
    [InlineData("2.4A.", 2.4, 2)]
    [InlineData("2.4 × 10^3 mA", 2.4, 2)]
    [InlineData("2.4E3 mA", 2.4, 2)]
    [InlineData("2\u00A0400 mA", 2.4, 4)]
    [InlineData("2’400 mA", 2.4, 4)]
    [InlineData("1,23,456 mA", 123.456, 6)]
    [InlineData("1/2 A", 0.5, 15)]
    [InlineData("2⁄3 A", 0.666666667, 15)]
    [InlineData("1 1/2 A", 1.5, 15)]
    [InlineData("1½ A", 1.5, 15)]
    [InlineData("−3/4 A", -0.75, 15)]
    [InlineData("12 VDC", 12, 2)]
    [InlineData("0.079 kΩ", 79, 2)]
    [InlineData("79 ohm", 79, 2)]
    [InlineData("79 Ohms", 79, 2)]
    [InlineData("79\u2126", 79, 2)]
    [InlineData("79000 milliohms", 79, 5)]
    [InlineData("7.9 mΩ/m", 0.0079, 2)]
    [InlineData("0.0079 Ω/m", 0.0079, 2)]
    [InlineData("7.9 ohm/km", 0.0079, 2)]
    [InlineData("2.4079 Ω/1000 ft", 0.0079, 5)]
    [InlineData("2.4079 ohms/kft", 0.0079, 5)]
    [InlineData("2.5 mm²", 2.5, 2)]
    [InlineData("2.5 mm2", 2.5, 2)]
    [InlineData("2.5 mm^2", 2.5, 2)]
    [InlineData("2.5 sq mm", 2.5, 2)]
    [InlineData("2.5 sq. mm", 2.5, 2)]
    [InlineData("2,5 mm²", 2.5, 2)]
    [InlineData("2.5mm^2", 2.5, 2)]
    [InlineData("2.5 square mm", 2.5, 2)]
    [InlineData("25 °C", 25, 2)]
    [InlineData("25 C", 25, 2)]
    [InlineData("25 deg C", 25, 2)]
    [InlineData("77 °F", 25, 2)]
    [InlineData("298.15 K", 25, 5)]
    [InlineData("3 min", 180, 1)]
    [InlineData("20 ms", 0.02, 2)]
    [InlineData("1.5 h", 5400, 2)]
    [InlineData("1 Ah", 3600, 1)]
    [InlineData("1000 mAh", 3600, 4)]
    [InlineData("4 %", 0.04, 1)]
    [InlineData("6 A/mm²", 6e6, 1)]
    [InlineData("115 A²s", 115, 3)]
    [InlineData("115 A^2·s", 115, 3)]
    [InlineData("0.42", 0.42, 2)]
    public void TryRead_Invariant_TakesWhatPeopleWrite(string text, double inBase, int figures)
    {
        bool read = AnswerReader.TryRead(text, CultureInfo.InvariantCulture, out AnswerReading reading);

        Assert.Equal(figures > 0, read);
        if (figures > 0)
        {
            // Conversions by factors of a foot and a thousand round in the last bits.
            Assert.Equal(1, (reading.Unit?.ToBase(reading.Value) ?? reading.Value) / inBase, 1e-4);
            Assert.Equal(figures, reading.Figures);
        }
    }

    [Theory]
    [InlineData("14 AWG", 14)]
    [InlineData("AWG 14", 14)]
    [InlineData("#14", 14)]
    [InlineData("14 gauge", 14)]
    [InlineData("1/0", 0)]
    [InlineData("4/0 AWG", -3)]
    [InlineData("0000 AWG", -3)]
    [InlineData("0000", -3)]
    [InlineData("2/0", -1)]
    [InlineData("14AWG", 14)]
    [InlineData("14 awg.", 14)]
    [InlineData("14 ga", 14)]
    [InlineData("14 ga.", 14)]
    [InlineData("14 gage", 14)]
    [InlineData("No. 14", 14)]
    [InlineData("no 14", 14)]
    [InlineData("Nº 14", 14)]
    [InlineData("#14 AWG", 14)]
    [InlineData("AWG-14", 14)]
    [InlineData("size 14 AWG", 14)]
    [InlineData("wire size = 14 AWG", 14)]
    [InlineData("14 A.W.G.", 14)]
    public void TryRead_Gauge(string text, int number)
    {
        Assert.True(AnswerReader.TryRead(text, CultureInfo.InvariantCulture, out AnswerReading reading));
        Assert.Equal(number, reading.Value);
        Assert.Equal(AnswerDimension.Section, reading.Unit!.Dimension);
    }

    [Theory]
    [InlineData("de-DE", "2,4 A", 2.4)]
    [InlineData("de-DE", "2.400 mA", 2.4)]
    [InlineData("de-DE", "2.400,5 mA", 2.4005)]
    [InlineData("de-DE", "2,400 A", 2.4)]
    [InlineData("de-DE", "2.4 A", 2.4)]
    [InlineData("fr-FR", "2 400,5 mA", 2.4005)]
    [InlineData("tr-TR", "2,4 A", 2.4)]
    [InlineData("ar-SA", "2.4 A", 2.4)]
    [InlineData("ar-SA", "٢٫٤ A", 2.4)]
    [InlineData("", "2,400 A", 2400)]
    [InlineData("en-US", "2,400 A", 2400)]
    public void TryRead_Culture_SaysWhichMarkIsTheDecimalOne(string culture, string text, double amperes)
    {
        Assert.True(AnswerReader.TryRead(text, CultureInfo.GetCultureInfo(culture), out AnswerReading reading));
        Assert.Equal(amperes, reading.Unit!.ToBase(reading.Value), 1e-9);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("A")]
    [InlineData("two amps")]
    [InlineData("2.4 Q")]
    [InlineData("2..4 A")]
    [InlineData("1.2.3 A")]
    [InlineData("1/2.5 V")]
    [InlineData("1/0 V")]
    [InlineData("2² A")]
    [InlineData("2.4³ A")]
    [InlineData("2.4e A")]
    [InlineData("1e99999 A")]
    [InlineData("1e999 A")]
    [InlineData("2.4 × 10 A")]
    [InlineData("2.4 A 3")]
    [InlineData("🔥")]
    [InlineData("2.4 🔥")]
    [InlineData("\uD800")]
    [InlineData("NaN A")]
    [InlineData("∞ A")]
    [InlineData("-")]
    [InlineData("=")]
    [InlineData("2.4 A/")]
    [InlineData("2.4 /m")]
    public void TryRead_WhatIsNoAnswer_SaysSo(string? text)
    {
        Assert.False(AnswerReader.TryRead(text, CultureInfo.InvariantCulture, out AnswerReading reading));
        Assert.Equal(string.IsNullOrWhiteSpace(text) ? AnswerFlaw.Empty : AnswerFlaw.Unreadable, reading.Flaw);
    }

    [Theory]
    [InlineData("99 AWG")]
    [InlineData("-14 AWG")]
    [InlineData("−14 AWG")]
    [InlineData("-2 AWG")]
    [InlineData("14.5 AWG")]
    [InlineData("5/0")]
    [InlineData("41 gauge")]
    [InlineData("00000")]
    [InlineData("No. 1000")]
    public void TryRead_GaugeThatDoesNotExist_SaysSo(string text)
    {
        Assert.False(AnswerReader.TryRead(text, CultureInfo.InvariantCulture, out AnswerReading reading));
        Assert.Equal(AnswerFlaw.NoSuchGauge, reading.Flaw);
    }
}
