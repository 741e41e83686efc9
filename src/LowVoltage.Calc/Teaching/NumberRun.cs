namespace LowVoltage.Calc.Teaching;

/// <summary>A run of digits and separators, taken apart into whole part and fraction.</summary>
internal static class NumberRun
{
    private const string Separators = ".,' ";

    internal static bool TryRead(string run, char decimalMark, out string whole, out string fraction)
    {
        whole = fraction = "";
        if (!run.Any(char.IsDigit))
        {
            return false;
        }

        // A mark at the end closes a sentence or says nothing: "12." is 12.
        string digits = run.TrimEnd('.', ',');
        int last = digits.LastIndexOfAny([.. Separators]);
        if (last < 0)
        {
            whole = digits;
            return true;
        }

        bool isDecimal = IsDecimal(digits, last, decimalMark);
        string before = isDecimal ? digits.Substring(0, last) : digits;
        fraction = isDecimal ? digits.Substring(last + 1) : "";
        return TryReadGroups(before, isDecimal ? digits[last] : '\0', out whole);
    }

    /// <summary>Whether its only separator is a point or comma that parts thousands here and elsewhere is the decimal one.</summary>
    internal static bool IsAmbiguous(string run, char decimalMark)
    {
        int at = run.IndexOfAny([.. Separators]);
        return at > 0 && at == run.LastIndexOfAny([.. Separators]) && run[at] is '.' or ',' && run[at] != decimalMark && run.Length - at - 1 == 3 && !IsDecimal(run, at, decimalMark);
    }

    // The last separator is the decimal one when it is the culture's, or when it cannot part thousands.
    private static bool IsDecimal(string digits, int last, char decimalMark)
    {
        char mark = digits[last];
        if (mark is ' ' or '\'')
        {
            return false;
        }

        if (mark == decimalMark)
        {
            return true;
        }

        int whole = digits.IndexOfAny([.. Separators]);
        bool alone = whole == last, grouped = digits.Length - last - 1 == 3 && whole is >= 1 and <= 3 && digits[0] != '0';
        return alone && !grouped;
    }

    // Thousands: one to three digits, then threes (or twos and at last three, as in 1,23,456), one kind of separator that is not the decimal mark.
    private static bool TryReadGroups(string digits, char decimalMark, out string whole)
    {
        whole = digits;
        int first = digits.IndexOfAny([.. Separators]);
        if (first < 0)
        {
            return true;
        }

        char mark = digits[first];
        string[] groups = digits.Split(mark);
        whole = string.Concat(groups);
        return mark != decimalMark && groups[0].Length is >= 1 and <= 3 && (groups.Skip(1).All(group => group.Length == 3) || IsLakh(groups)) && whole.All(char.IsDigit);
    }

    private static bool IsLakh(string[] groups)
    {
        int last = groups.Length - 1;
        return groups[0].Length <= 2 && groups[last].Length == 3 && groups.Skip(1).Take(last - 1).All(group => group.Length == 2);
    }
}
