using CircuitSchedule;

namespace CircuitPage;

/// <summary>A number as typed: with a decimal point, or a decimal comma where that can mean nothing else.</summary>
internal static class PageNumber
{
    public static NumberReading Read(string text, out double number) =>
        NumberText.Read(text.Trim(), text.Contains('.', StringComparison.Ordinal) ? DecimalSign.Point : DecimalSign.Either, out number);
}
