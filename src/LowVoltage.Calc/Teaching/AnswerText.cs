using System.Globalization;
using System.Text;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Numbers with units as problems print them.</summary>
internal static class AnswerText
{
    private const char Space = NumberText.Thin;

    /// <summary>A drawn number: a decimal, so every digit is exact.</summary>
    internal static string Of(decimal value, string unit) => Of(value.ToString(CultureInfo.InvariantCulture).Replace('-', '−'), unit);

    /// <summary>A computed number to so many significant figures, zeros at the end included.</summary>
    internal static string Of(double value, string unit, int figures)
    {
        if (unit == AnswerUnit.Gauge)
        {
            return Conductors.AwgSize.FromNumber((int)value).ToString();
        }

        return Of(figures == 0 ? value.ToString("R", CultureInfo.InvariantCulture) : Digits(value, figures), unit);
    }

    /// <summary>The digits alone, plain, with a true minus sign.</summary>
    internal static string Digits(double value, int figures)
    {
        if (value == 0)
        {
            return "0";
        }

        string[] parts = NumberText.Round(value, figures).ToString("E" + (figures - 1).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).Split('E');
        int exponent = int.Parse(parts[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        bool negative = parts[0][0] == '-';
        StringBuilder digits = new(parts[0].Replace("-", "").Replace(".", ""));
        if (exponent < 0)
        {
            digits.Insert(0, "0", -exponent).Insert(1, '.');
        }
        else if (exponent < figures - 1)
        {
            digits.Insert(exponent + 1, '.');
        }
        else
        {
            digits.Append('0', exponent - figures + 1);
        }

        return (negative ? "−" : "") + digits;
    }

    private static string Of(string digits, string unit) => unit.Length == 0 ? digits : digits + Space + unit.Replace(' ', Space);
}
