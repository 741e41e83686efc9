using System.Diagnostics;
using System.Globalization;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Tests.Harnesses.Ngspice;

/// <summary>
/// Solve against ngspice: its answers to twelve small harnesses are in <c>PublishedData/solved-by-ngspice.csv</c>, their netlists beside it. <c>bash .ci/ngspice</c> writes both anew (for that this class
/// writes netlists, answers and times to the folder that LOWVOLTAGE_NGSPICE names) and makes the study of 10, 100 and 1 000 branches.
/// </summary>
public class NgspiceTests
{
    // ngspice ends its iteration where no voltage moves by more than reltol, 1e-10, of itself: 1.4e-9 V at the 14 V that these harnesses reach at most. Its print has 15 digits.
    private const double Volts = 1.4e-9;
    private const int DataSeed = 7001;
    private const int StudySeed = 7101;
    private const int OfASize = 5;
    private const int Trials = 201;

    public static TheoryData<string> Ids => [.. PublishedTable.Load("solved-by-ngspice.csv").Rows.Select(r => r.Text("case")).Distinct()];

    [Fact]
    public void Cases_AreTwelve() => Assert.Equal(12, Ids.Count);

    [Theory, MemberData(nameof(Ids))]
    public void Solve_SmallHarness_AgreesWithNgspice(string id)
    {
        PublishedTable.Row[] rows = [.. PublishedTable.Load("solved-by-ngspice.csv").Rows.Where(r => r.Text("case") == id)];
        Harness harness = NgspiceNetlist.Make(rows[0].Text("loads") == "straight", (int)rows[0].Number("seed"), (int)rows[0].Number("branches"));
        HarnessSolution at = harness.Solve();

        Assert.Equal(harness.Nodes.Count, rows.Length);
        foreach (PublishedTable.Row row in rows)
        {
            HarnessNode node = harness.Nodes[(int)row.Number("node")];
            double volts = at.VoltageOf(node.Id).Volts;
            Assert.True(Math.Abs(volts - row.Number("volts")) <= Volts, $"{id}, node {node}: {volts} V, ngspice {row.Text("volts")} V");
        }
    }

    // Not a test of its own: it writes what `bash .ci/ngspice` hands to ngspice.
    [Fact]
    public void Study_IsWrittenWhereAskedFor()
    {
        if (Environment.GetEnvironmentVariable("LOWVOLTAGE_NGSPICE") is not { Length: > 0 } folder)
        {
            return;
        }

        _ = Directory.CreateDirectory(folder);
        List<string> cases = ["set,case,loads,seed,branches,nodes,elements,anew,again,reference"];
        int seed = DataSeed;
        for (int n = 0; n < 12; n++)
        {
            seed = Write(folder, cases, "data", n % 2 == 0, seed, 8 + (4 * n), false) + 1;
        }

        seed = StudySeed;
        foreach (int branches in (int[])[10, 100, 1000])
        {
            for (int n = 0; n < 2 * OfASize; n++)
            {
                seed = Write(folder, cases, "study", n % 2 == 0, seed, branches, true) + 1;
            }
        }

        File.WriteAllLines(Path.Combine(folder, "cases.csv"), cases);
        Assert.Equal(1 + 12 + (6 * OfASize), cases.Count);
    }

    // The first seed from here on whose loads all run: netlist, our volts, and the median time of a solution.
    private static int Write(string folder, List<string> cases, string set, bool straight, int seed, int branches, bool timed)
    {
        while (true)
        {
            Harness harness = NgspiceNetlist.Make(straight, seed, branches);
            HarnessSolution at = harness.Solve();
            if (!NgspiceNetlist.Runs(harness, at))
            {
                seed++;
                continue;
            }

            string loads = straight ? "straight" : "mixed", id = FormattableString.Invariant($"{loads}-{branches}-{seed}");
            double anew = timed ? Median(() => harness.Solve(SupplyLevel.Nominal, LoadCase.Create("new to it"))) : 0, again = timed ? Median(() => harness.Solve()) : 0;
            File.WriteAllText(Path.Combine(folder, $"{id}.cir"), NgspiceNetlist.Of(harness, FormattableString.Invariant($"random harness, {loads}, seed {seed}, at least {branches} branches")));
            File.WriteAllLines(Path.Combine(folder, $"{id}.volts"), harness.Nodes.Select(n => at.VoltageOf(n.Id).Volts.ToString("R", CultureInfo.InvariantCulture)));
            cases.Add(FormattableString.Invariant($"{set},{id},{loads},{seed},{branches},{harness.Nodes.Count},{harness.Branches.Count + harness.Loads.Count + harness.Sources.Count},{anew:F2},{again:F2},{harness.NodeIndex(harness.Reference)}"));
            return seed;
        }
    }

    // What a caller of Solve waits for, in a process that is warm.
    private static double Median(Func<HarnessSolution> solve)
    {
        Stopwatch warm = Stopwatch.StartNew();
        while (warm.ElapsedMilliseconds < 300)
        {
            _ = solve();
        }

        double[] times = new double[Trials];
        for (int k = 0; k < Trials; k++)
        {
            long from = Stopwatch.GetTimestamp();
            _ = solve();
            times[k] = Stopwatch.GetElapsedTime(from).TotalMicroseconds;
        }

        Array.Sort(times);
        return times[Trials / 2];
    }
}
