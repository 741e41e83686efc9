using System.Globalization;
using System.Text;
using System.Xml.Linq;
using static LowVoltage.Calc.Working.Xhtml;

namespace LowVoltage.Calc.Working;

/// <summary>Numbers of a worked solution in text: significant digits, invariant, never an exponent where plain digits can be read.</summary>
internal static class NumberText
{
    internal const int Shown = 4;

    internal const char Thin = '\u00A0';

    // What a double holds for sure.
    private const int Exact = 15;

    private const double LeastPlain = 1e-4;
    private const double MostPlain = 1e7;

    // What the last bits of a double may pretend to add before a directed rounding goes one step further.
    private const double Noise = 1e-12;

    /// <summary>The number after rounding to so many significant digits; 0 or more than 16 digits leave it as it is.</summary>
    /// <remarks>
    /// By its first fifteen digits, and a half away from zero, as people round: 11.895 is 11.90, although the double that stands for it is a little less.
    /// </remarks>
    internal static double Round(double value, int digits)
    {
        if (digits is <= 0 or > 16 || value == 0 || double.IsNaN(value) || double.IsInfinity(value))
        {
            return value;
        }

        string[] parts = value.ToString("E" + (Math.Max(digits, Exact) - 1).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).Split('E');
        decimal mantissa = Math.Round(decimal.Parse(parts[0], CultureInfo.InvariantCulture), digits - 1, MidpointRounding.AwayFromZero);
        return double.Parse(mantissa.ToString(CultureInfo.InvariantCulture) + "E" + parts[1], CultureInfo.InvariantCulture);
    }

    internal static double Round(double value, int digits, RoundingDirection direction)
    {
        double near = Round(value, digits), slack = Noise * Math.Abs(value);
        if (direction == RoundingDirection.Up && near < value - slack)
        {
            return Round(near + UnitOf(value, digits), digits);
        }

        return direction == RoundingDirection.Down && near > value + slack ? Round(near - UnitOf(value, digits), digits) : near;
    }

    /// <summary>The number in plain text: <c>0.01724</c>, <c>1.5×10⁻⁷</c>, with a true minus sign.</summary>
    internal static string Text(double value, int digits)
    {
        (string mantissa, int exponent) = Parts(value, digits);
        return exponent == 0 ? mantissa : mantissa + "×10" + Superscript(exponent);
    }

    internal static string Latex(double value, int digits)
    {
        (string mantissa, int exponent) = Parts(value, digits);
        string minus = mantissa.Replace('−', '-');
        return exponent == 0 ? minus : minus + @"\times 10^{" + exponent.ToString(CultureInfo.InvariantCulture) + "}";
    }

    internal static XElement[] MathMl(double value, int digits)
    {
        (string mantissa, int exponent) = Parts(value, digits);
        XElement number = Element("mn", mantissa.TrimStart('−'));
        XElement[] signed = value < 0 ? [Element("mo", "−"), number] : [number];
        XElement power = Element("mn", Math.Abs(exponent).ToString(CultureInfo.InvariantCulture));
        return exponent == 0
            ? signed
            : [.. signed, Element("mo", "×"), Element("msup", Element("mn", "10"), exponent < 0 ? Element("mrow", Element("mo", "−"), power) : power)];
    }

    /// <summary>A number with its unit behind a space that does not break.</summary>
    internal static string WithUnit(double value, NumberStyle style, string unit)
    {
        (double shown, string shownUnit) = style.Engineering ? EngineeringUnit.Of(value, unit) : (value, unit);
        return unit.Length == 0 ? Text(shown, style.Digits) : Text(shown, style.Digits) + Thin + shownUnit.Replace(' ', Thin);
    }

    internal static string Superscript(int number)
    {
        const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
        StringBuilder text = new();
        foreach (char c in number.ToString(CultureInfo.InvariantCulture))
        {
            text.Append(c == '-' ? '⁻' : Raised[c - '0']);
        }

        return text.ToString();
    }

    private static double UnitOf(double value, int digits) =>
        Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(Round(value, digits)))) - digits + 1);

    private static (string Mantissa, int Exponent) Parts(double value, int digits)
    {
        // Adding zero turns a negative zero into a plain one.
        double rounded = Round(value, digits) + 0.0, size = Math.Abs(rounded);
        if (size == 0 || (size >= LeastPlain && size < MostPlain))
        {
            return (Signed(rounded), 0);
        }

        // Fifteen digits: with more, 1e-6 would be 9.99…e-7.
        string[] parts = rounded.ToString("E14", CultureInfo.InvariantCulture).Split('E');
        int exponent = int.Parse(parts[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        string written = rounded.ToString("R", CultureInfo.InvariantCulture);
        double mantissa = double.Parse(WithExponent(written, exponent), CultureInfo.InvariantCulture);
        return (Signed(mantissa), exponent);
    }

    // The same digits with the decimal point after the first one.
    private static string WithExponent(string written, int exponent)
    {
        string[] parts = written.Split('E');
        int own = parts.Length == 1 ? 0 : int.Parse(parts[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        return parts[0] + "E" + (own - exponent).ToString(CultureInfo.InvariantCulture);
    }

    // A size from 1e-4 to 1e7 is written without an exponent, and a mantissa always.
    private static string Signed(double value) => value.ToString("R", CultureInfo.InvariantCulture).Replace('-', '−');
}
