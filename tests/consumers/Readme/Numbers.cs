using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc;
using LowVoltage.Calc.Design;

/// <summary>The design's numbers with all their digits, so that two builds can be compared bit by bit.</summary>
internal static class Numbers
{
    public static void Print(CircuitDesign design)
    {
        Console.WriteLine("numbers");
        foreach (CheckResult check in design.Checks)
        {
            Console.WriteLine(string.Format(CultureInfo.InvariantCulture, "{0} {1:R} {2:R} {3}", check.Kind, check.Value, check.Limit, check.Outcome));
        }
    }
}
