using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Protection;

/// <summary>Checks the points of a time-current curve and makes the lines of it.</summary>
internal static class TimeCurrentCurveBuilder
{
    private const double ConstantJouleIntegral = -2;
    private const double ConstantTime = 0;

    // Room for the rounding of interpolated values that touch.
    private const double Rounding = 1e-9;

    internal static TimeCurrentCurve Build(
        IReadOnlyList<TimeCurrentPoint> least, IReadOnlyList<TimeCurrentPoint> longest, TimeCurrentPoint? nonFusing, bool breaker, bool conventionalOnly = false)
    {
        _ = least ?? throw new ArgumentNullException(nameof(least));
        _ = longest ?? throw new ArgumentNullException(nameof(longest));
        if (longest.Count == 0)
        {
            throw new ArgumentException("longest must hold at least one point; it was empty.", nameof(longest));
        }

        LogLogLine? low = least.Count == 0 ? null : Line(least, ConstantJouleIntegral, nameof(least));
        LogLogLine high = Line(longest, breaker ? ConstantTime : ConstantJouleIntegral, nameof(longest));
        if (low is not null)
        {
            CheckBand(low, high, nameof(least));
        }

        CheckNonFusing(nonFusing, low, high);
        return TimeCurrentCurve.FromLines(high, low, nonFusing, conventionalOnly);
    }

    private static LogLogLine Line(IReadOnlyList<TimeCurrentPoint> points, double slopeBeyond, string name)
    {
        double[] amperes = new double[points.Count], seconds = new double[points.Count];
        for (int i = 0; i < points.Count; i++)
        {
            TimeCurrentPoint point = points[i];
            if (!(point.Amperes > 0 && point.Seconds > 0))
            {
                throw new ArgumentException($"{name}[{i}] must have a positive current and time; it was {point}.", name);
            }

            if (i > 0 && !(point.Amperes > amperes[i - 1] && point.Seconds <= seconds[i - 1]))
            {
                throw new ArgumentException(
                    $"{name}[{i}] must have a larger current and no longer time than the point before it ({points[i - 1]}); it was {point}.", name);
            }

            amperes[i] = point.Amperes;
            seconds[i] = point.Seconds;
        }

        return new LogLogLine(amperes, seconds, slopeBeyond);
    }

    // Both lines are straight between their points, so they cannot cross unless they do at a point of one of them or beyond both.
    private static void CheckBand(LogLogLine low, LogLogLine high, string name)
    {
        for (int i = 0; i < low.Count; i++)
        {
            CheckBand(low, high, low.X(i), name);
        }

        for (int i = 0; i < high.Count; i++)
        {
            CheckBand(low, high, high.X(i), name);
        }
    }

    private static void CheckBand(LogLogLine low, LogLogLine high, double amperes, string name)
    {
        if (!high.Covers(amperes))
        {
            return;
        }

        double least = low.Covers(amperes) ? low.At(amperes) : low.Y(0), longest = high.At(amperes);
        if (least > longest * (1 + Rounding))
        {
            throw new ArgumentException(
                $"The least time must not exceed the longest; at {Accept.Text(amperes)} A they are {Accept.Text(least)} s and {Accept.Text(longest)} s.",
                name);
        }
    }

    private static void CheckNonFusing(TimeCurrentPoint? nonFusing, LogLogLine? low, LogLogLine high)
    {
        if (nonFusing is not TimeCurrentPoint point)
        {
            return;
        }

        bool valid = point.Amperes > 0 && point.Seconds > 0 && point.Amperes < high.FirstX
            && (low is null || (point.Amperes < low.FirstX && point.Seconds >= low.Y(0)));
        if (!valid)
        {
            throw new ArgumentException(
                $"nonFusing must have a smaller current than every other point and no shorter time than the first least one; it was {point}.",
                nameof(nonFusing));
        }
    }
}
