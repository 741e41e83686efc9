using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;
using static LowVoltage.Calc.Tests.Harnesses.FaultParts;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>The audit of faults against routes of its own: the circuit's checks, the harness said with its fault, laws on random harnesses.</summary>
public class FaultAuditTests
{
    private const int Harnesses = 60;

    // A harness of one loop: the time and the temperature of CircuitDesigner's checks.
    [Fact]
    public void Run_OneLoop_SaysTimeAndTemperatureOfTheCircuitsChecks()
    {
        int times = 0, heats = 0, uncleared = 0;
        for (int n = 0; n < 400; n++)
        {
            if (OneLoop.Draw(1611, n) is not { } loop || loop.Circuit.Fuse?.Curve is null)
            {
                continue;
            }

            CheckResult? opens = Check(loop, CheckKind.FaultOpensFuse), heat = Check(loop, CheckKind.ShortCircuitTemperature);
            HarnessFault? fault = FaultAudit.Run(loop.Harness).Find(HarnessFaultKind.ShortToReturn, "load +");
            if (opens is not { } asked || fault is null || asked.Note.StartsWith("nothing has to open", StringComparison.Ordinal) || asked.Outcome == Calc.Checks.CheckOutcome.Undetermined)
            {
                continue;
            }

            if (asked.Value is { } seconds)
            {
                Assert.Equal(FaultEnding.Cleared, fault.Ending);
                Assert.Equal(seconds, fault.Openings.Single(o => o.IsSure).Longest!.Value.Seconds, 1e-9 * seconds);
                times++;
            }
            else
            {
                Assert.True(fault.Ending == FaultEnding.NotCleared, $"{n}: {asked} ({asked.Note}) against {fault}");
                uncleared++;
            }

            if (heat is { Value: { } celsius })
            {
                Assert.Contains(fault.Wires, w => Math.Abs(w.Temperature.DegreesCelsius - celsius) <= 1e-9 * Math.Max(1, Math.Abs(celsius)));
                heats++;
            }
        }

        Assert.True(times > 100 && heats > 50, $"{times} times, {heats} temperatures, {uncleared} not cleared");
    }

    // The branch left out and everything else as it was.
    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void Run_EveryInterruption_IsTheHarnessWithoutThatBranch(int seed)
    {
        Harness harness = RandomPublicHarness.Make(seed, 30);
        FaultAudit audit = FaultAudit.Run(harness, [LoadCase.AllOn]);
        HarnessSolution healthy = harness.Solve();
        int compared = 0;
        foreach (HarnessFault fault in audit.Faults.Where(f => f.Kind == HarnessFaultKind.Interruption && f.Reason.Length == 0))
        {
            HarnessSolution solved = harness.ToBuilder().Remove(fault.Place).Build().Solve();
            Assert.True(solved.Exists);
            foreach (HarnessLoad load in harness.Loads)
            {
                double before = healthy.VoltageAt(load.Id).Volts, after = solved.VoltageAt(load.Id).Volts;
                if (fault.Loads.FirstOrDefault(l => l.Load == load.Id) is { } told)
                {
                    Assert.Equal(before, told.Before.Volts, 1e-9);
                    Assert.Equal(after, told.After.Volts, 1e-9);
                    Assert.Equal(solved.CurrentAt(load.Id).Amperes, told.Current.Amperes, 1e-9);
                }
                else
                {
                    Assert.InRange(after, before * 0.98, before * 1.02);
                }

                compared++;
            }
        }

        Assert.True(compared > 150, $"{compared}");
    }

    // The short said with the builder: wires as stated resistances at their hottest, loads that draw their running current, batteries at their lowest.
    [Theory]
    [InlineData(21)]
    [InlineData(22)]
    [InlineData(23)]
    public void Run_EveryShort_FirstCurrentIsTheHarnessSaidWithItsFault(int seed)
    {
        Harness harness = RandomPublicHarness.Make(seed, 30);
        FaultAudit audit = FaultAudit.Run(harness, [LoadCase.AllOn.WithOff([.. harness.Loads.Select(l => l.Id)])]);
        int compared = 0;
        foreach (HarnessFault fault in audit.Faults.Where(f => f.LeastCurrent is not null && f.Ending != FaultEnding.Undetermined))
        {
            Assert.Equal(Said(harness, fault, hot: false, SupplyLevel.Maximum, all: true), fault.GreatestCurrent!.Value.Amperes, 1e-8 * fault.GreatestCurrent.Value.Amperes);
            double least = Math.Min(Said(harness, fault, hot: true, SupplyLevel.Minimum, all: true), Said(harness, fault, hot: true, SupplyLevel.Minimum, all: false));
            Assert.Equal(least, fault.LeastCurrent!.Value.Amperes, 1e-8 * least);
            compared++;
        }

        Assert.True(compared > 10, $"{compared}");
    }

    [Fact]
    public void Run_RandomHarnesses_NoFaultUnconverged()
    {
        int faults = 0;
        foreach (FaultAudit audit in Enumerable.Range(1, Harnesses).Select(seed => FaultAudit.Run(RandomPublicHarness.Make(seed, 10 + (seed * 3 / 2)), [LoadCase.AllOn])))
        {
            faults += audit.Faults.Count;
            Assert.DoesNotContain(audit.Faults, f => f.Reason.Contains("could not be solved", StringComparison.Ordinal));
        }

        Assert.True(faults > 5000, $"{faults}");
    }

    // The currents of a faulted harness balance at every node; told by the solver that the audit uses, on every short and interruption.
    [Fact]
    public void Run_RandomHarnesses_KirchhoffHolds()
    {
        double worst = 0;
        int solved = 0;
        for (int seed = 1; seed <= Harnesses; seed += 3)
        {
            Harness harness = RandomPublicHarness.Make(seed, 40);
            FaultCase at = new(harness, CaseGroup.Of(harness)[0]);
            FaultReturns returns = new(at);
            for (int node = 0; node < harness.Nodes.Count; node++)
            {
                if (returns.ReturnOf(node) is >= 0 and int to)
                {
                    foreach (FaultScenario scenario in at.Scenarios.Append(FaultScenario.Greatest))
                    {
                        worst = Math.Max(worst, Unbalance(harness, at.SolveShort(scenario, node, to)!, node, to));
                        solved++;
                    }
                }
            }

            for (int branch = 0; branch < harness.Branches.Count; branch++)
            {
                worst = Math.Max(worst, Unbalance(harness, at.SolveOpen([branch]), -1, -1));
                solved++;
            }
        }

        Assert.True(worst <= 1e-9, $"{worst} A");
        Assert.True(solved > 2000, $"{solved}");
    }

    // Every fuse on its own band: no sooner than at its greatest current, no later than at its least (of one stage; a fuse that saw more has had its share).
    [Fact]
    public void Run_RandomHarnesses_EveryFuseOpensWithinItsBand()
    {
        int compared = 0;
        for (int seed = 1; seed <= Harnesses; seed++)
        {
            Harness harness = RandomPublicHarness.Make(seed, 30);
            foreach (HarnessFault fault in FaultAudit.Run(harness, [LoadCase.AllOn]).Faults)
            {
                double before = 0;
                foreach (FuseOpening opening in fault.Openings)
                {
                    TimeCurrentCurve curve = ((HarnessFuse)harness.Branches.Single(b => b.Id == opening.Fuse)).Rating!.Curve!;
                    if (opening.Least is { } least)
                    {
                        Assert.True(least.Seconds >= curve.LeastTime(opening.GreatestCurrent)!.Value.Seconds * (1 - 1e-9), $"{seed}: {fault.Text}");
                    }

                    if (opening.Longest is { } longest)
                    {
                        Assert.True(!(opening.Least?.Seconds > longest.Seconds * (1 + 1e-9)), $"{seed}: {fault.Text}");
                        Assert.True(longest.Seconds >= before * (1 - 1e-9), $"{seed}: {fault.Text}");
                        Assert.True(longest.Seconds >= curve.LongestTime(opening.GreatestCurrent)!.Value.Seconds * (1 - 1e-9) || fault.Openings.Count > 1, $"{seed}: {fault.Text}");
                        before = longest.Seconds;
                    }

                    compared++;
                }
            }
        }

        Assert.True(compared > 1000, $"{compared}");
    }

    [Fact]
    public void Run_FuseWithoutTimes_IsUndetermined()
    {
        Harness harness = One(FuseSeries.RoadVehicleStrip51.SmallestAtLeast(ElectricCurrent.FromAmperes(60)), Battery(12, 0.01));
        HarnessFault fault = FaultAudit.Run(harness).Short("lamp +");

        Assert.Equal(FaultEnding.Undetermined, fault.Ending);
        Assert.Equal(FaultRank.Undetermined, fault.Rank);
        Assert.Contains("No operating times are published", fault.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SourceWithoutResistance_ShortAtItsTerminalIsUndetermined()
    {
        HarnessFault fault = FaultAudit.Run(One(Blade(10), Source.Ideal(ElectricPotential.FromVolts(12)))).Short("plus");

        Assert.Equal(FaultEnding.Undetermined, fault.Ending);
        Assert.Contains("Nothing bounds the current", fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SourceThatDisconnects_IsNotCountedOn()
    {
        Source pack = CalcBattery(ElectricCurrent.FromAmperes(100));
        HarnessFault fault = FaultAudit.Run(One(Blade(10), pack)).Short("plus");

        Assert.Equal(FaultEnding.NotCleared, fault.Ending);
        Assert.True(fault.RemainingCurrent!.Value.Amperes > 100);
    }

    [Fact]
    public void Run_Twice_SaysTheSame()
    {
        Harness harness = RandomPublicHarness.Make(5, 40);

        Assert.Equal(FaultAudit.Run(harness).ToText(), FaultAudit.Run(harness).ToText());
        Assert.Equal(FaultAudit.Run(harness).Faults.Select(f => f.Text), FaultAudit.Run(harness).Faults.Select(f => f.Text));
    }

    [Fact]
    public void Run_Ranks_WorstFirstAndTenAtMost()
    {
        FaultAudit audit = FaultAudit.Run(RandomPublicHarness.Make(3, 60));

        Assert.Equal(audit.Faults.Select(f => f.Rank).Order(), audit.Faults.Select(f => f.Rank));
        Assert.Equal(Math.Min(10, audit.Findings.Count), audit.Worst.Count);
        Assert.Equal(audit.Faults.Count, Enum.GetValues<FaultRank>().Sum(audit.Count));
        Assert.All(audit.Faults, f => Assert.False(string.IsNullOrWhiteSpace(f.Text)));
        Assert.All(audit.Faults, f => Assert.Contains(f.Place, f.Places));
        Assert.Contains(Calc.Design.Cautions.General[0], audit.Cautions);
    }

    [Fact]
    public void Run_Progress_RisesToOne()
    {
        List<double> told = [];
        _ = FaultAudit.Run(RandomPublicHarness.Make(3, 20), [LoadCase.AllOn], new Told(told));

        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[told.Count - 1]);
        Assert.True(told.Count > 20);
    }

    [Fact]
    public void Run_Cancelled_Throws()
    {
        using CancellationTokenSource source = new();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => FaultAudit.Run(RandomPublicHarness.Make(3, 20), cancellation: source.Token));
    }

    [Fact]
    public void Run_BadInput_IsRefused()
    {
        Harness harness = RandomPublicHarness.Make(3, 10);

        Assert.Throws<ArgumentNullException>(() => FaultAudit.Run(null!));
        Assert.Throws<ArgumentException>(() => FaultAudit.Run(harness, []));
        Assert.Throws<ArgumentException>(() => FaultAudit.Run(harness, [LoadCase.AllOn.WithOff("nobody")]));
        Assert.Throws<ArgumentException>(() => FaultAudit.Run(One(Blade(10), Battery(72, 0.1))));
        Assert.Throws<InvalidOperationException>(() => FaultAudit.Run(One(null, Battery(12, 0.1))));
        Assert.Throws<ArgumentNullException>(() => FaultAudit.Run(harness).Find(HarnessFaultKind.Interruption, null!));
        Assert.Null(FaultAudit.Run(harness).Find(HarnessFaultKind.Interruption, "nothing"));
    }

    // A dead short at the bar parts the harness into two loops that know nothing of each other: each fuse has opened when that loop's own kernel says so, or a little later, since a stage counts with the current
    // at its end. Thin wires on large fuses, so that their heating makes up most of the time.
    [Theory]
    [InlineData(10, 1.0, 4, 20, 1.5, 5)]
    [InlineData(15, 0.75, 3, 15, 1.0, 6)]
    [InlineData(20, 1.5, 8, 10, 0.75, 5)]
    public void Run_TwoBatteries_EachFuseOpensByItsOwnLoop(double fuseOne, double sizeOne, double metersOne, double fuseTwo, double sizeTwo, double metersTwo)
    {
        Place air = Place.Create(Temperature.FromDegreesCelsius(30));
        Conductor one = Conductor.Iso6722(MetricSize.FromSquareMillimeters(sizeOne)), two = Conductor.Iso6722(MetricSize.FromSquareMillimeters(sizeTwo));
        Harness harness = new HarnessBuilder("two batteries", DesignRules.RoadVehicle)
            .Terminals("one +", "two +", "one fused", "two fused", "minus").Busbars("bar")
            .Source("one", "one +", "minus", Battery(12, 0.01)).Source("two", "two +", "minus", Battery(12, 0.02))
            .Fuse("F1", "one +", "one fused", Blade(fuseOne)).Fuse("F2", "two +", "two fused", Blade(fuseTwo))
            .Wire("W1", "one fused", "bar", one, Length.FromMeters(metersOne), air, InsulationMaterial.CrossLinkedPolyethylene)
            .Wire("W2", "two fused", "bar", two, Length.FromMeters(metersTwo), air, InsulationMaterial.CrossLinkedPolyethylene)
            .Load("lamp", "bar", "minus", Lamp(12))
            .Build();
        HarnessFault fault = FaultAudit.Run(harness).Short("bar");
        foreach ((string fuse, double rating, Conductor wire, double meters, double ohms) in new[] { ("F1", fuseOne, one, metersOne, 0.01), ("F2", fuseTwo, two, metersTwo, 0.02) })
        {
            FaultOpening own = FaultClearing.Latest(
                Calc.Heating.FaultPath.Create(ElectricPotential.FromVolts(12), Ohms(ohms), Calc.Heating.FaultSegment.Create(wire, Length.FromMeters(meters), Temperature.FromDegreesCelsius(90))), Blade(rating));
            Assert.Equal(FaultOutcome.Opens, own.Outcome);
            double seconds = own.State!.Time.Seconds;
            Assert.InRange(fault.Openings.Single(o => o.Fuse == fuse).Longest!.Value.Seconds, seconds * (1 - 2e-3), seconds * 1.15);
        }
    }

    // Beyond 90 A the 15 A fuse lets through 162 A²s at least, less than the 360 A²s that the 10 A fuse behind it may take: it may open first, and takes the radio with it. A 40 A fuse holds 1152 A²s.
    [Theory]
    [InlineData(15, true)]
    [InlineData(40, false)]
    public void Run_FuseBehindFuse_SaysWhetherTheWrongOneMayOpen(double before, bool wrong)
    {
        Harness harness = new HarnessBuilder("two fuses", DesignRules.RoadVehicle)
            .Terminals("plus", "minus", "lamp +").Busbars("bar")
            .Source("battery", "plus", "minus", Battery(12, 0.02))
            .Fuse("main", "plus", "bar", Blade(before))
            .Fuse("F1", "bar", "lamp +", Blade(10))
            .Load("lamp", "lamp +", "minus", Lamp(12))
            .Load("radio", "bar", "minus", Lamp(12))
            .Build();
        HarnessFault fault = FaultAudit.Run(harness).Short("lamp +");

        Assert.Equal("F1", fault.Openings[0].Fuse);
        Assert.Equal(wrong ? ["main"] : [], fault.WrongFuses);
        Assert.Equal(wrong ? ["radio"] : [], fault.LostLoads);
        Assert.Equal(wrong ? FaultRank.WrongFuseFirst : FaultRank.Harmless, fault.Rank);
    }

    // A feed that splits in two behind its fuse: what passes the fuse is what both ways carry, 12 V over 0.1 Ω, 0.05 Ω and 6 Ω.
    [Fact]
    public void Solve_RingBehindAFuse_FuseCarriesTheWholeCurrent()
    {
        Harness ring = new HarnessBuilder("ring", DesignRules.RoadVehicle)
            .Terminals("plus", "minus", "a", "b")
            .Source("battery", "plus", "minus", Battery(12, 0.1))
            .Fuse("F1", "plus", "a", Blade(10))
            .Resistance("one way", "a", "b", Ohms(0.1)).Resistance("other way", "a", "b", Ohms(0.1))
            .Load("lamp", "b", "minus", Lamp(6))
            .Build();

        Near(12 / 6.15, ring.Solve().CurrentOf("F1").Amperes);
        Near(6 / 6.15, ring.Solve().CurrentOf("one way").Amperes);
    }

    private static Harness One(FuseRating? fuse, Source source) => new HarnessBuilder("one", DesignRules.RoadVehicle)
        .Terminals("plus", "minus", "lamp +")
        .Source("source", "plus", "minus", source)
        .Fuse("F1", "plus", "lamp +", fuse)
        .Load("lamp", "lamp +", "minus", Lamp(12))
        .Build();

    private static Source CalcBattery(ElectricCurrent limit) => Calc.Circuits.Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), limit);

    private static CheckResult? Check(OneLoop loop, CheckKind kind)
    {
        foreach (CheckResult check in loop.Circuit.Checks)
        {
            if (ReferenceEquals(check.Kind, kind))
            {
                return check;
            }
        }

        return null;
    }

    private static double Said(Harness harness, HarnessFault fault, bool hot, SupplyLevel level, bool all)
    {
        HarnessBuilder builder = harness.ToBuilder();
        foreach (HarnessWire wire in harness.Branches.OfType<HarnessWire>())
        {
            double celsius = hot ? wire.Insulation.ContinuousLimit.DegreesCelsius : wire.Place.Ambient.DegreesCelsius;
            double ohms = wire.Conductor!.ResistancePerLength(Temperature.FromDegreesCelsius(celsius)).OhmsPerMeter * wire.Length.Meters;
            _ = builder.Replace(HarnessResistance.Create(wire.Id, wire.From, wire.To, Ohms(ohms)));
        }

        foreach (HarnessSource source in harness.Sources.Where(s => !all && (s.Panel is not null || s.Id == "charger")))
        {
            _ = builder.Remove(source.Id);
        }

        LoadCase off = LoadCase.AllOn.WithOff([.. harness.Loads.Select(l => l.Id)]);
        HarnessSolution solved = builder.Resistance("the short", fault.Place, fault.To!, ElectricResistance.Zero).Build().Solve(level, off);
        return Math.Abs(solved.CurrentOf("the short").Amperes);
    }

    private static double Unbalance(Harness harness, HarnessState state, int node, int to)
    {
        Assert.True(state.Exists);
        double[] leaves = new double[harness.Nodes.Count];
        for (int k = 0; k < harness.Branches.Count; k++)
        {
            leaves[harness.NodeIndex(harness.Branches[k].From)] += state.Amperes[k];
            leaves[harness.NodeIndex(harness.Branches[k].To)] -= state.Amperes[k];
        }

        for (int k = 0; k < harness.Loads.Count; k++)
        {
            leaves[harness.NodeIndex(harness.Loads[k].Positive)] += state.LoadAmperes[k];
            leaves[harness.NodeIndex(harness.Loads[k].Negative)] -= state.LoadAmperes[k];
        }

        for (int k = 0; k < harness.Sources.Count; k++)
        {
            leaves[harness.NodeIndex(harness.Sources[k].Positive)] -= state.SourceAmperes[k];
            leaves[harness.NodeIndex(harness.Sources[k].Negative)] += state.SourceAmperes[k];
        }

        if (node >= 0)
        {
            leaves[node] += state.ShortAmperes;
            leaves[to] -= state.ShortAmperes;
        }

        return leaves.Max(Math.Abs);
    }

    private sealed class Told(List<double> told) : IProgress<double>
    {
        public void Report(double value) => told.Add(value);
    }
}
