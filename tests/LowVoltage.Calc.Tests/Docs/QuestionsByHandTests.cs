using System.Globalization;
using System.Text.RegularExpressions;
using LowVoltage.Calc.Tests.Docs.Questions;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>Answers of the page of common questions, beside what a pencil gives. The tolerance is half a unit of the last digit printed, and where named that of the table.</summary>
public partial class QuestionsByHandTests
{
    public static TheoryData<string, double[], double> ByHand() => new()
    {
        // NEC Chapter 9 Table 8: 14 AWG stranded, 3.14 Ω/kft at 75 °C, so 3.14/(1 + 0.00393 · 55) = 2.582 at 20 °C; 10 A · 40 ft. The table has three figures: 0.2 %.
        { nameof(DropQuestions.DropOfARun), [1.033, 8.61], 0.05 },
        // ISO 6722: 12.7 mΩ/m for 1.5 mm²; 8 A · 5 m each way.
        { nameof(DropQuestions.OneWayOrBothWays), [0.508, 0.508], 0.005 },
        // Half the current over the whole way, 1.5 A · 0.5 Ω = 0.75 V; from both ends a quarter of that.
        { nameof(DropQuestions.EndOfAStrip), [11.25, 11.8125], 0.05 },
        // ISO 6722: 7.6 mΩ/m at 20 °C, · (1 + 0.00393 · 20) = 8.197; 0.5 V/(5 A · 8.197 mΩ/m) = 12.20 m, half of it 6.10 m.
        { nameof(DropQuestions.HowFar), [6.10, 12.20], 0.05 },
        // ISO 6722: 3.14 mΩ/m for 6 mm². 12 V − 20 A · 8 m · 3.14 mΩ/m; 12 V − 20 A · (4 m · 3.14 mΩ/m + 2 mΩ).
        { nameof(DropQuestions.BackThroughTheFrame), [11.498, 11.709], 0.005 },
        // ASTM B258: 0.127 mm · 92^(26/39) = 2.588 mm, π/4 of its square.
        { nameof(WireQuestions.GaugeInSquareMillimetres), [5.261, 2.588], 0.005 },
        // As printed in the tables.
        { nameof(WireQuestions.AmpsByTheBook), [35, 50, 40], 0 },
        // 100 W/12 V/0.8.
        { nameof(FuseQuestions.FuseForALoad), [10.417, 15], 0.05 },
        // ISO 8820-3: 110 % for 100 hours, 135 % within 30 minutes.
        { nameof(FuseQuestions.FuseThatDoesNotBlow), [11, 100, 13.5, 30], 0 },
        // IEC 60364-4-43: k = 115 for copper in PVC; 1500 A · √0.2 s/115 = 5.833 mm², k to half a unit.
        { nameof(HeatQuestions.WireForAShortCircuit), [5.833], 0.08 },
        // Preece: 80 A · (0.2 mm)^1.5.
        { nameof(HeatQuestions.WireAsAFuse), [7.155], 0.05 },
        // 50 Ah/(4.5 A · 20/60).
        { nameof(BatteryQuestions.HowLong), [33.33], 0.5 },
        // 0.45 V/50 A.
        { nameof(BatteryQuestions.InnerResistance), [9.0], 0 },
        // 0.9 V/18 mΩ.
        { nameof(BatteryQuestions.OneFullOneEmpty), [50], 0 },
        // 12.6 V − 180 A · 9 mΩ.
        { nameof(BatteryQuestions.CrankingVoltage), [10.98], 0.05 },
    };

    [Theory, MemberData(nameof(ByHand))]
    public void Answer_IsWhatAPencilGives(string method, double[] expected, double tolerance)
    {
        Type type = new[] { typeof(DropQuestions), typeof(WireQuestions), typeof(FuseQuestions), typeof(HeatQuestions), typeof(BatteryQuestions) }
            .Single(answers => answers.GetMethod(method) is not null);
        string printed = Snippets.Console.Capture(type.GetMethod(method)!.CreateDelegate<Action>());
        double[] numbers = [.. Number().Matches(printed).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];
        Assert.All(expected, wanted => Assert.True(numbers.Any(number => Math.Abs(number - wanted) <= tolerance + 1e-9), $"{wanted} is not in: {printed}"));
    }

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Number();
}
