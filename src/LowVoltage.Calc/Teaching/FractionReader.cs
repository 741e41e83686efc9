namespace LowVoltage.Calc.Teaching;

/// <summary>A fraction of whole numbers at the beginning of an answer: <c>1/2</c>, <c>1 1/2</c>, <c>-2/3</c>. It is exact, so it counts as written with every figure.</summary>
internal static class FractionReader
{
    internal const int Exact = 15;

    private const int MostDigits = 6;

    internal static bool TryRead(string text, ref int at, out double value, out int figures)
    {
        value = 0;
        figures = Exact;
        int i = at;
        bool negative = i < text.Length && text[i] == '-';
        i += negative || (i < text.Length && text[i] == '+') ? 1 : 0;
        SkipSpace(text, ref i);
        if (!TryWhole(text, ref i, out int first))
        {
            return false;
        }

        int whole = 0, above = first;
        int space = i;
        SkipSpace(text, ref i);
        if (i > space && TryWhole(text, ref i, out int second))
        {
            whole = first;
            above = second;
        }

        SkipSpace(text, ref i);
        if (i >= text.Length || text[i] != '/')
        {
            return false;
        }

        i++;
        SkipSpace(text, ref i);
        // A point or comma after the fraction makes it something else: 1/2.5 is a quotient, no fraction.
        if (!TryWhole(text, ref i, out int below) || below == 0 || (i < text.Length && text[i] is '.' or ','))
        {
            return false;
        }

        value = (whole + ((double)above / below)) * (negative ? -1 : 1);
        at = i;
        return true;
    }

    private static bool TryWhole(string text, ref int at, out int number)
    {
        int start = at;
        number = 0;
        while (at < text.Length && at - start <= MostDigits && text[at] is >= '0' and <= '9')
        {
            number = (10 * number) + (text[at] - '0');
            at++;
        }

        return at - start is > 0 and <= MostDigits;
    }

    private static void SkipSpace(string text, ref int at)
    {
        while (at < text.Length && text[at] == ' ')
        {
            at++;
        }
    }
}
