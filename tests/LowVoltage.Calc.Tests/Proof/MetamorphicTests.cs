using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>The same circuit said in another way, and circuits that differ in one thing of which it is known which way it must go. Random cases, fixed seeds.</summary>
public class MetamorphicTests
{
    private const int Seed = 1129;
    private const double Equal = 1e-9;

    private static readonly string[] HelpedByCopper =
        ["VoltageDrop", "LoadVoltage", "ContinuousCurrent", "ConductorTemperature", "FuseProtectsWire", "FaultOpensFuse", "ShortCircuitTemperature", "OverloadTemperature", "MechanicalMinimum"];

    private static readonly string[] HurtByHeat = ["VoltageDrop", "LoadVoltage", "ContinuousCurrent", "ConductorTemperature", "FuseProtectsWire", "OverloadTemperature"];

    private static readonly string[] HurtByLength = ["VoltageDrop", "LoadVoltage", "FaultOpensFuse"];

    [Fact]
    public void Load_SplitInTwo_SameAnswer() => ForEach(400, Design, given =>
    {
        if (Split(given.Load) is { } parts)
        {
            Same(given, given with { Load = parts });
        }
    });

    [Fact]
    public void Stretch_CutInTwo_SameAnswer() => ForEach(400, CaseMaker.Verification, given =>
    {
        StretchGiven first = given.Laid[0], half = first with { Meters = first.Meters / 2 };
        if (first.Parallel > 1)
        {
            // Wires in parallel that are tied once more in the middle are another circuit.
            return;
        }

        if (given.Laid.Length == 1 && given.Back.Type == BackType.Wire)
        {
            // A return like the feed is a stretch of its own.
            given = given with { Back = new BackGiven(BackType.Segments, Stretches: [first with { Meters = given.Back.Meters, Celsius = null }]) };
        }

        Same(given, given with { Laid = [half, half, .. given.Laid.Skip(1)] });
    });

    [Fact]
    public void FeedAndReturn_Exchanged_SameDropHeatAndFarEndFault() => ForEach(400, CaseMaker.Verification, given =>
    {
        StretchGiven[] plain = [.. given.Laid.Select(s => s with { Parallel = 1, Celsius = null })];
        StretchGiven home = plain[0] with { Conductor = Larger(given, plain[0].Conductor), Meters = 0.7 * given.Feed };
        CaseGiven there = given with { Laid = plain, Back = new BackGiven(BackType.Segments, Stretches: [home]) };
        CaseGiven back = given with { Laid = [home], Back = new BackGiven(BackType.Segments, Stretches: plain) };
        Same(there, back, "PowerDelivery", "VoltageDrop", "LoadVoltage", "ContinuousCurrent", "ConductorTemperature", "FuseProtectsWire", "FaultOpensFuse");
    });

    [Fact]
    public void Wire_NextSizeUp_NeverFailsWhatPassed() => ForEach(600, Single, given =>
    {
        // A table may leave out a size between two that it rates.
        if (given.Wire is { } wire && Next(given, wire) is { } next && Library.Answer(given with { Wire = next }).Checks["ContinuousCurrent"].Outcome is "Pass" or "Fail")
        {
            NeverWorse(given, given with { Wire = next }, HelpedByCopper);
        }
    });

    [Fact]
    public void Place_HotterOrFuller_NeverPassesWhatFailed() => ForEach(600, Single, given =>
    {
        // A resistance or a lamp draws less at the end of a warmer wire.
        if (given.Wire is not null && given.Load.Type is LoadType.Current or LoadType.Power or LoadType.Motor)
        {
            NeverWorse(given with { Place = given.Place with { Ambient = given.Place.Ambient + 7 } }, given, HurtByHeat);
            NeverWorse(given with { Place = given.Place with { Loaded = (given.Place.Loaded ?? 2) + 2 } }, given, HurtByHeat);
        }
    });

    [Fact]
    public void Run_Longer_NeverPassesWhatFailed() => ForEach(600, Single, given =>
    {
        if (given.Wire is not null)
        {
            NeverWorse(given with { Feed = given.Feed * 1.2 }, given, HurtByLength);
        }
    });

    [Fact]
    public void SupplyLead_Unstated_PassesForEveryValueOrSaysSo() => ForEach(400, Single, given =>
    {
        CaseGiven unstated = given with { UpstreamOhms = null };
        LibraryAnswer answer = Library.Answer(unstated);
        if (given.Wire is not null && answer.Passes && Array.Exists([0, 0.01, 0.2], ohms => Library.Answer(given with { UpstreamOhms = ohms }).Fails))
        {
            Assert.Contains(answer.Assumptions(), text => text.Contains("supply lead", StringComparison.Ordinal) && text.Contains("not stated", StringComparison.Ordinal));
        }
    });

    [Fact]
    public void FuseDistance_Unstated_DoesNotPassWhereSomeDistanceFails() => ForEach(400, Single, given =>
    {
        LibraryAnswer answer = Library.Answer(given with { FuseMeters = null });
        if (given.Wire is not null && answer.Passes)
        {
            Assert.False(Library.Answer(given with { FuseMeters = 10 }).Fails, "passes unstated, fails at 10 m");
        }
    });

    [Fact]
    public void Answers_OnFourThreads_AreTheSame()
    {
        string[] alone = [.. Enumerable.Range(0, 200).Select(n => Text(CaseMaker.Design(Seed, n)))], together = new string[alone.Length];
        Parallel.For(0, alone.Length, new ParallelOptions { MaxDegreeOfParallelism = 4 }, n => together[n] = Text(CaseMaker.Design(Seed, n)));
        Assert.Equal(alone, together);
    }

    private static string Text(CaseGiven given)
    {
        LibraryAnswer answer = Library.Answer(given);
        return $"{answer.Verdict}; {answer.Wire}; {answer.Fuse}; {answer.Text()}; {string.Join("; ", answer.Assumptions())}";
    }

    private static CaseGiven Design(int seed, int number) => CaseMaker.Design(seed, number);

    /// <summary>A design's own wire and fuse, as a verification; without a wire where there is none.</summary>
    internal static CaseGiven Single(int seed, int number)
    {
        CaseGiven given = CaseMaker.Design(seed, number);
        LibraryAnswer answer = Library.Answer(given);
        return answer.Wire is { } wire && answer.Fuse is { } fuse ? given with { Wire = wire, Fitted = new(fuse.ToString(), fuse) } : given;
    }

    /// <summary>Runs a rule on many cases; a failure names its case.</summary>
    internal static void ForEach(int cases, Func<int, int, CaseGiven> make, Action<CaseGiven> rule)
    {
        for (int number = 0; number < cases; number++)
        {
            CaseGiven given = make(Seed, number);
            try
            {
                rule(given);
            }
            catch (Exception e) when (e is Xunit.Sdk.XunitException or ArgumentException)
            {
                Assert.Fail($"case {number}: {e.Message}\n{Recipe.Of(given)}");
            }
        }
    }

    private static LoadGiven? Split(LoadGiven load)
    {
        LoadGiven? half = load.Type switch
        {
            LoadType.Resistance => load with { A = 2 * load.A },
            LoadType.Current or LoadType.Power => load with { A = load.A / 2 },
            // A winding shares its surge with its twin through the path, which is asked elsewhere.
            LoadType.Motor when double.IsNaN(load.E) => load with { A = load.A / 2, B = load.B / 2, C = load.C / 2 },
            _ => null,
        };
        return half is null || load.CapacitorFarads is not null ? null : new LoadGiven(LoadType.Together, Parts: [half, half]);
    }

    private static void Same(CaseGiven one, CaseGiven other, params string[] only)
    {
        LibraryAnswer a = Library.Answer(one), b = Library.Answer(other);
        if (only.Length == 0)
        {
            Assert.Equal((a.Verdict, a.Wire, a.Fuse), (b.Verdict, b.Wire, b.Fuse));
            Assert.Equal(a.Checks.Keys, b.Checks.Keys);
        }

        // A splice in the middle of parallel wires joins them: a fault in one is another fault then.
        foreach (string check in a.Checks.Keys.Where(check => only.Length == 0 ? check != "FaultInOneParallelWire" : only.Contains(check)))
        {
            LibraryCheck x = a.Checks[check], y = b.Checks[check];
            Assert.True(x.Outcome == y.Outcome && Near(x.Value, y.Value) && Near(x.Limit, y.Limit), $"{check}: {x}, {y}");
        }
    }

    private static bool Near(double? x, double? y) => x.HasValue == y.HasValue && Math.Abs((x ?? 0) - (y ?? 0)) <= Equal * Math.Max(Math.Abs(x ?? 0), 1e-6);

    /// <summary>A check that the worse circuit passes is not failed by the better one.</summary>
    private static void NeverWorse(CaseGiven worse, CaseGiven better, string[] checks)
    {
        LibraryAnswer a = Library.Answer(worse), b = Library.Answer(better);
        foreach (string check in checks)
        {
            bool passed = a.Checks.TryGetValue(check, out LibraryCheck x) && x.Outcome == "Pass";
            Assert.False(passed && b.Checks.TryGetValue(check, out LibraryCheck y) && y.Outcome == "Fail", $"{check} passes in the harder circuit ({x}) and fails in the easier one ({b.Checks.GetValueOrDefault(check)})");
        }
    }

    private static Conductor? Next(CaseGiven given, Conductor wire)
    {
        Named<Conductor>[] sizes = Sizes.Of(given.Rules.Preset);
        int index = Array.FindIndex(sizes, size => ReferenceEquals(size.Value, wire));
        return index >= 0 && index + 1 < sizes.Length ? sizes[index + 1].Value : null;
    }

    private static Named<Conductor> Larger(CaseGiven given, Named<Conductor> wire) => Next(given, wire.Value) is { } next ? Sizes.Name(given.Rules.Preset, next) : wire;
}
