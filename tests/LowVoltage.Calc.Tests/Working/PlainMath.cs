using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Tests.Working;

/// <summary>
/// Reads a line of plain text as a reader would, <c>R = 0.017241 Ω·mm²/m · 5.5 m / 2.0809 mm² = 0.04557 Ω</c>, and works it out. Knows nothing of the
/// library: a unit is what follows a number behind a space that does not break.
/// </summary>
internal sealed class PlainMath
{
    private const char Glue = '\u00A0';
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private static readonly string[] Prefixed = ["V", "A", "Ω", "W", "s", "m", "Ω/m"];

    private readonly string text;
    private readonly bool prefixes;
    private int at;

    private PlainMath(string text, bool prefixes) => (this.text, this.prefixes) = (text, prefixes);

    /// <summary>The value of an expression with numbers and units.</summary>
    /// <param name="expression">The expression.</param>
    /// <param name="prefixes">Whether a milli or micro before a unit counts, as in a sheet that is written in engineering units; else the formula counts in the unit that stands there.</param>
    public static double Evaluate(string expression, bool prefixes = false)
    {
        PlainMath reader = new(expression, prefixes);
        double value = reader.Sum();
        Assert.True(reader.at == expression.Length, $"'{expression}' was read up to {reader.at}: '{expression[reader.at..]}'");
        return value;
    }

    /// <summary>A line <c>name = expression = result</c>.</summary>
    public static (string Name, string Expression, string Result) Split(string line)
    {
        string[] parts = line.Split(" = ");
        Assert.Equal(3, parts.Length);
        return (parts[0], parts[1], parts[2]);
    }

    /// <summary>One in the last of four significant digits of a number.</summary>
    public static double LastOfFour(double value) => value == 0 ? 0 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 3);

    private double Sum()
    {
        double value = Product();
        while (true)
        {
            if (Take(" + "))
            {
                value += Product();
            }
            else if (Take(" − "))
            {
                value -= Product();
            }
            else
            {
                return value;
            }
        }
    }

    private double Product()
    {
        double value = Signed();
        while (true)
        {
            if (Take(" · "))
            {
                value *= Signed();
            }
            else if (Take(" / "))
            {
                value /= Signed();
            }
            else
            {
                return value;
            }
        }
    }

    private double Signed() => Take("−") ? -Signed() : Power();

    private double Power()
    {
        double value = Atom();
        if (Take("^"))
        {
            return Math.Pow(value, Take("−") ? -Atom() : Atom());
        }

        int exponent = at < text.Length ? Raised.IndexOf(text[at], StringComparison.Ordinal) : -1;
        if (exponent < 0)
        {
            return value;
        }

        at++;
        return Math.Pow(value, exponent);
    }

    private double Atom()
    {
        if (Take("√("))
        {
            return Math.Sqrt(Closed());
        }

        if (Take("ln("))
        {
            return Math.Log(Closed());
        }

        if (Take("exp("))
        {
            return Math.Exp(Closed());
        }

        if (Take("min(") || Take("max("))
        {
            bool least = text[at - 4] == 'm' && text[at - 3] == 'i';
            double found = Sum();
            Assert.True(Take("; "), text);
            do
            {
                double next = Sum();
                found = least ? Math.Min(found, next) : Math.Max(found, next);
            }
            while (Take("; "));
            Assert.True(Take(")"), $"no closing bracket at {at} in '{text}'");
            return found;
        }

        return Take("(") ? Closed() : Number();
    }

    private double Closed()
    {
        double value = Sum();
        Assert.True(Take(")"), $"no closing bracket at {at} in '{text}'");
        return value;
    }

    private double Number()
    {
        int from = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.'))
        {
            at++;
        }

        Assert.True(at > from, $"no number at {from} in '{text}'");
        double value = double.Parse(text[from..at], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        if (Take("×10"))
        {
            value *= Math.Pow(10, Exponent());
        }

        string unit = Unit();
        return !prefixes || unit.Length < 2 || !Prefixed.Contains(unit[1..]) ? value : unit[0] switch { 'm' => value / 1e3, 'µ' => value / 1e6, _ => value };
    }

    private int Exponent()
    {
        int sign = Take("⁻") ? -1 : 1;
        StringBuilder digits = new();
        while (at < text.Length && Raised.Contains(text[at], StringComparison.Ordinal))
        {
            digits.Append(Raised.IndexOf(text[at++], StringComparison.Ordinal));
        }

        return sign * int.Parse(digits.ToString(), CultureInfo.InvariantCulture);
    }

    // A unit may hold brackets of its own: J/(m³·K).
    private string Unit()
    {
        if (at >= text.Length || text[at] != Glue)
        {
            return "";
        }

        int depth = 0, from = at + 1;
        while (at < text.Length && text[at] is not (' ' or ';') && (text[at] != ')' || depth > 0))
        {
            depth += text[at] == '(' ? 1 : text[at] == ')' ? -1 : 0;
            at++;
        }

        return text[from..at];
    }

    private bool Take(string sign)
    {
        bool there = string.CompareOrdinal(text, at, sign, 0, sign.Length) == 0;
        at += there ? sign.Length : 0;
        return there;
    }
}
