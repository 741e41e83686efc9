using System.Globalization;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

/// <summary>Stands in for the system's console, so that a snippet reads as in a program and a test sees what it prints.</summary>
internal static class Console
{
    [ThreadStatic]
    private static StringWriter? writer;

    public static void WriteLine(string text) => writer!.WriteLine(text);

    public static void WriteLine(object? value) => writer!.WriteLine(value);

    /// <summary>What an action prints, in the invariant culture.</summary>
    public static string Capture(Action action)
    {
        CultureInfo culture = CultureInfo.CurrentCulture;
        using StringWriter captured = new(CultureInfo.InvariantCulture) { NewLine = "\n" };
        try
        {
            (writer, CultureInfo.CurrentCulture) = (captured, CultureInfo.InvariantCulture);
            action();
            return captured.ToString().TrimEnd();
        }
        finally
        {
            (writer, CultureInfo.CurrentCulture) = (null, culture);
        }
    }
}
