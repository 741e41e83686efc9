namespace LowVoltage.Calc.Harnesses;

/// <content>One stage at the latest, while the wires heat.</content>
internal sealed partial class ShortSteps
{
    private const int MostSteps = 80;

    // What the heating of the wires may move without the stage being gone through in steps.
    private const double Settled = 1e-3;

    // A step is this part of what is left, and no less than that part of what has passed: the moment is at most so much too late.
    private const double PartLeft = 0.25;
    private const double PartPassed = 0.02;

    // The fuse that has opened, and when; −1 where none need open any more.
    private int Settle(Stage stage, ref HarnessNetwork? network, int first, ref double seconds)
    {
        double[] after = Heated(stage, stage.First, seconds);
        HarnessState? end = With(stage.Scenario, stage.Open, OhmsAfter(after, out bool melts), ref network);
        if (!melts && end is { Exists: true } && Next(end, stage.Melting, stage.Story.Seconds, soonest: false, out double then) == first && Math.Abs(then - seconds) <= Settled * seconds)
        {
            seconds = Math.Max(seconds, then);
            stage.Joules = Difference(Heated(stage, stage.First, seconds), stage.Story.Joules);
            (stage.Last, stage.Had) = (end, Credits(stage));
            foreach (int k in fuses)
            {
                stage.Had[k] += end.Amperes[k] * end.Amperes[k] * seconds;
            }

            return first;
        }

        return March(stage, ref network, ref seconds);
    }

    private int March(Stage stage, ref HarnessNetwork? network, ref double seconds)
    {
        double[] joules = [.. stage.Story.Joules], had = Credits(stage);
        HarnessState now = stage.First;
        double time = 0;
        for (int step = 0; step < MostSteps; step++)
        {
            int next = Nearest(now, had, time, out double left);
            if (next < 0)
            {
                stage.Story.Reason = "As the wires heat, the current falls below what opens a fuse for sure.";
                return -1;
            }

            if (left <= 0)
            {
                seconds = time;
                stage.Joules = Difference(joules, stage.Story.Joules);
                (stage.Last, stage.Had) = (now, had);
                return next;
            }

            double pace = Math.Max(PartLeft * left, PartPassed * time);
            for (int k = 0; k < joules.Length; k++)
            {
                joules[k] += now.Amperes[k] * now.Amperes[k] * pace;
            }

            double[] warmer = OhmsAfter(joules, out bool melts);
            if (melts || With(stage.Scenario, stage.Open, warmer, ref network) is not { Exists: true } later)
            {
                stage.Story.Reason = melts ? "A wire melts before a fuse has opened for sure." : "The harness with this fault could not be solved.";
                return -1;
            }

            foreach (int k in fuses)
            {
                double amperes = Math.Min(Math.Abs(now.Amperes[k]), Math.Abs(later.Amperes[k]));
                had[k] += amperes * amperes * pace;
            }

            (now, time) = (later, time + pace);
        }

        stage.Story.Reason = "As the wires heat, the current falls faster than a fuse that need not open can be told from one that does.";
        return -1;
    }

    // The fuse that opens next if the current stays as it is, and in how many seconds; nothing or less where it has opened.
    private int Nearest(HarnessState now, double[] had, double time, out double left)
    {
        int found = -1;
        left = double.PositiveInfinity;
        foreach (int k in fuses)
        {
            double amperes = Math.Abs(now.Amperes[k]);
            if (amperes > 0 && CurveOf(k) is { } curve && curve.TryLongestSeconds(amperes, out double its))
            {
                double rest = its - (curve.IsBreaker ? time : had[k] / (amperes * amperes));
                (found, left) = rest < left ? (k, rest) : (found, left);
            }
        }

        // What rounding leaves.
        left = left <= 1e-12 * time ? 0 : left;
        return found;
    }

    private double[] Credits(Stage stage)
    {
        double[] had = new double[stage.First.Amperes.Length];
        foreach (int k in fuses)
        {
            had[k] = CurveOf(k) is { } curve && stage.Melting.TryGetValue(k, out FuseMelting known) ? known.Credit(curve, Math.Abs(stage.First.Amperes[k])) : 0;
        }

        return had;
    }

    private static double[] Heated(Stage stage, HarnessState state, double seconds) =>
        [.. stage.Story.Joules.Select((had, k) => had + (state.Amperes[k] * state.Amperes[k] * seconds))];

    private static double[] Difference(double[] all, double[] before) => [.. all.Select((joules, k) => joules - before[k])];

    private sealed class Stage(FaultScenario scenario, HashSet<int> open, HarnessState first, Dictionary<int, FuseMelting> melting, ShortStory story)
    {
        internal FaultScenario Scenario { get; } = scenario;

        internal HashSet<int> Open { get; } = open;

        internal HarnessState First { get; } = first;

        internal Dictionary<int, FuseMelting> Melting { get; } = melting;

        internal ShortStory Story { get; } = story;

        /// <summary>The Joule integral of every branch in the stage.</summary>
        internal double[]? Joules { get; set; }

        /// <summary>The Joule integral that every fuse may count, by the currents at the end of each step and with what it brought along.</summary>
        internal double[] Had { get; set; } = [];

        /// <summary>The end of the stage.</summary>
        internal HarnessState? Last { get; set; }
    }
}
