using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>The closed forms of a start against the current itself, added up in small steps and searched by halving.</summary>
public class StartPiecesTests
{
    private const int Cases = 60;
    private const int StepsAPiece = 4000;

    [Fact]
    public void SecondsAbove_AnyStart_IsWhereTheCurrentFallsToIt()
    {
        Random random = new(11);
        for (int i = 0; i < Cases; i++)
        {
            (StartWaveform start, double[] _) = Draw(random);
            double level = start.RunningAmperes + ((start.PeakAmperes - start.RunningAmperes) * (0.05 + (0.9 * random.NextDouble())));
            double seconds = start.SecondsAbove(level);
            Assert.True(At(start, seconds * (1 - 1e-9)) >= level * (1 - 1e-6), $"case {i}: {At(start, seconds * (1 - 1e-9))} A before, {level} A");
            Assert.True(At(start, seconds * (1 + 1e-9)) <= level * (1 + 1e-6), $"case {i}: {At(start, seconds * (1 + 1e-9))} A after, {level} A");
        }
    }

    [Fact]
    public void JoulesAbove_AnyStart_IsTheSquareAddedUp()
    {
        Random random = new(12);
        for (int i = 0; i < Cases; i++)
        {
            (StartWaveform start, double[] ends) = Draw(random);
            double level = start.RunningAmperes + ((start.PeakAmperes - start.RunningAmperes) * (0.05 + (0.9 * random.NextDouble())));
            double sum = Sum(start, ends, start.SecondsAbove(level), amperes => amperes * amperes);
            Assert.Equal(sum, start.JoulesAbove(level), 1e-4 * sum);
        }
    }

    [Fact]
    public void MeltingAbove_AnyStart_IsTheShareAddedUp()
    {
        TimeCurrentCurve curve = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10)).Curve!;
        Random random = new(13);
        for (int i = 0; i < Cases; i++)
        {
            (StartWaveform start, double[] ends) = Draw(random);
            double level = Math.Max(10, start.RunningAmperes * 1.02);
            if (level >= start.PeakAmperes)
            {
                continue;
            }

            double sum = Sum(start, ends, start.SecondsAbove(level), amperes => curve.TryLeastSeconds(amperes, out double seconds) ? 1 / seconds : double.NaN);
            Assert.Equal(sum, start.MeltingAbove(level, curve, proven: false), 2e-3 * sum);
        }
    }

    // A start with constant surges and a lamp, a capacitor or neither; some behind a source that holds a limit. And where constant surges end.
    private static (StartWaveform Start, double[] Ends) Draw(Random random)
    {
        double path = 60 + (200 * random.NextDouble()), running = 1 + (5 * random.NextDouble()), held = random.Next(4) == 0 ? 40 + (30 * random.NextDouble()) : double.PositiveInfinity;
        List<StartSurge> surges = [];
        for (int i = random.Next(3); i >= 0; i--)
        {
            surges.Add(new StartSurge("motor", StartSurgeShape.Constant, 5 + (20 * random.NextDouble()), 0.05 + random.NextDouble()));
        }

        int kind = random.Next(3);
        if (kind > 0)
        {
            surges.Add(kind == 1
                ? new StartSurge("lamp", StartSurgeShape.Fading, 10 + (80 * random.NextDouble()), 0.01 + (0.1 * random.NextDouble()), 3 * random.NextDouble() * random.Next(2))
                : new StartSurge("capacitor", StartSurgeShape.Charging, path, 0.01 + (0.1 * random.NextDouble())));
        }

        double[] ends = [.. surges.Where(surge => surge.Shape == StartSurgeShape.Constant).Select(surge => surge.Seconds)];
        return (new StartWaveform([.. surges], running, path, held), ends);
    }

    private static double At(StartWaveform start, double seconds) => start.CurrentAt(Duration.FromSeconds(seconds)).Amperes;

    // By the middle of small steps, ever longer ones, between the places where the current may jump. A held limit delays the jumps: the steps are small enough to meet them.
    private static double Sum(StartWaveform start, double[] ends, double until, Func<double, double> of)
    {
        double sum = 0, from = 0;
        foreach (double to in ends.Where(end => end < until).Append(until).Order())
        {
            for (int i = 0; i < StepsAPiece; i++)
            {
                double a = (double)i / StepsAPiece, b = (double)(i + 1) / StepsAPiece, width = to - from;
                (double begin, double end) = (from + (width * a * a), from + (width * b * b));
                sum += of(At(start, 0.5 * (begin + end))) * (end - begin);
            }

            from = to;
        }

        return sum;
    }
}
