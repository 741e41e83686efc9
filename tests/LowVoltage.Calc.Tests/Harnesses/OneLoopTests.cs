using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A circuit is a harness of one loop: the same answers, the same words.</summary>
public class OneLoopTests
{
    // LOWVOLTAGE_LOOPS=50000 dotnet test --filter OneLoopTests draws as many as wanted.
    private static int Circuits => int.TryParse(Environment.GetEnvironmentVariable("LOWVOLTAGE_LOOPS"), NumberStyles.None, CultureInfo.InvariantCulture, out int wanted) ? wanted : 2000;

    [Fact]
    public void Verify_RandomCircuits_SayTheSameAsTheCircuit()
    {
        int compared = 0, collapsed = 0;
        Dictionary<string, int> differ = [];
        List<string> shown = [];
        for (int n = 0; n < Circuits; n++)
        {
            if (OneLoop.Draw(1129, n) is not { } loop)
            {
                continue;
            }

            // A constant current that takes nearly all that a short would leaves a few tenths of a volt. The circuit calls that a drop, the harness a load that gets no power: both must fail.
            if (loop.LeastLoadVolts < 0.05 * loop.Circuit.Requirements.Source.NominalVoltage.Volts)
            {
                collapsed++;
                Assert.Equal((Verdict.Fail, Verdict.Fail), (loop.Circuit.Verdict, HarnessDesigner.Verify(loop.Harness).Verdict));
                continue;
            }

            compared++;
            HarnessVerification verified = HarnessDesigner.Verify(loop.Harness);
            foreach (string wrong in Differences(loop.Circuit, verified))
            {
                string kind = wrong.Split('|')[0];
                differ[kind] = differ.TryGetValue(kind, out int count) ? count + 1 : 1;
                if (differ[kind] <= 3)
                {
                    shown.Add($"{n}: {wrong}");
                }
            }
        }

        Assert.True(differ.Count == 0, $"{compared} compared; {string.Join(", ", differ)}\n{string.Join("\n", shown)}");
        Assert.True(compared > 300);
        Assert.InRange(collapsed, 0, Circuits / 100);
    }

    /// <summary>
    /// A pack that disconnects just above what its converter draws when the wires are as warm as its pauses let them be, and a motor that draws just what its pack gives:
    /// both were counted as disconnected.
    /// </summary>
    [Theory]
    [InlineData(15891)]
    [InlineData(16399)]
    public void LoadNextToTheLimit_StaysConnected(int number)
    {
        OneLoop loop = OneLoop.Draw(1129, number)!;
        Assert.DoesNotContain(loop.Circuit.Checks, check => check.Kind == CheckKind.PowerDelivery);
        Assert.Empty(Differences(loop.Circuit, HarnessDesigner.Verify(loop.Harness)));
    }

    private static IEnumerable<string> Differences(CircuitDesign circuit, HarnessVerification harness)
    {
        Dictionary<string, HarnessCheck> worst = [];
        foreach (HarnessCheck check in harness.Checks)
        {
            string id = check.Kind!.Id;
            if (id == nameof(CheckKind.OvercurrentProtection))
            {
                // Without a fuse the harness protects from the source's terminals on, the circuit from where its supply lead ends.
                continue;
            }

            if (!worst.TryGetValue(id, out HarnessCheck before) || check.IsWorseThan(before))
            {
                worst[id] = check;
            }
        }

        foreach (CheckResult check in circuit.Checks)
        {
            string id = check.Kind!.Id;
            if (id == nameof(CheckKind.OvercurrentProtection))
            {
                // Without a fuse the harness protects from the source's terminals on, the circuit from where its supply lead ends.
                continue;
            }

            if (!worst.TryGetValue(id, out HarnessCheck its))
            {
                yield return $"{id}|is missing: {check}";
                continue;
            }

            bool same = its.Outcome == check.Outcome && Near(its.Result.Value, check.Value, id == nameof(CheckKind.VoltageDrop) ? circuit.Requirements.Source.MaximumVoltage.Volts : 0) && Near(its.Result.Limit, check.Limit) && its.Result.Note == check.Note;
            if (!same)
            {
                yield return $"{id}|{check} ({check.Note}) [{check.Value:R} {check.Limit:R}] against {its} ({its.Result.Note}) [{its.Result.Value:R} {its.Result.Limit:R}]";
            }
        }

        foreach (string id in worst.Keys.Where(id => id != nameof(CheckKind.OvercurrentProtection) && !circuit.Checks.Any(c => c.Kind!.Id == id)))
        {
            yield return $"{id}|is more: {worst[id]}";
        }
    }

    // A drop is the difference of two voltages: what rounding leaves of those.
    private static bool Near(double? a, double? b, double scale = 0) => a is { } x && b is { } y ? Math.Abs(x - y) <= 1e-12 * Math.Max(scale, Math.Max(Math.Abs(x), Math.Abs(y))) : a is null && b is null;
}
