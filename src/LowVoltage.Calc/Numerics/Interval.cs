namespace LowVoltage.Calc.Numerics;

/// <summary>All numbers from one to another, both included.</summary>
/// <remarks>Rounding is not directed: who encloses something adds a slack far beyond what rounding can make, once, where a result leaves.</remarks>
internal readonly record struct Interval(double Low, double High)
{
    internal static Interval All { get; } = new(double.NegativeInfinity, double.PositiveInfinity);

    internal double Middle => 0.5 * (Low + High);

    internal double Radius => 0.5 * (High - Low);

    /// <summary>The greatest size of a number in it.</summary>
    internal double Greatest => Math.Max(Math.Abs(Low), Math.Abs(High));

    /// <summary>The least size of a number in it.</summary>
    internal double Least => Low > 0 ? Low : High < 0 ? -High : 0;

    internal static Interval At(double value) => new(value, value);

    internal static Interval Between(double a, double b) => a <= b ? new Interval(a, b) : new Interval(b, a);

    public static Interval operator +(Interval a, Interval b) => new(a.Low + b.Low, a.High + b.High);

    public static Interval operator -(Interval a, Interval b) => new(a.Low - b.High, a.High - b.Low);

    public static Interval operator *(double factor, Interval a) => Between(factor * a.Low, factor * a.High);

    public static Interval operator *(Interval a, Interval b) => Between(a.Low * b.Low, a.Low * b.High).Hull(Between(a.High * b.Low, a.High * b.High));

    internal Interval Hull(Interval other) => new(Math.Min(Low, other.Low), Math.Max(High, other.High));

    internal Interval Hull(double value) => new(Math.Min(Low, value), Math.Max(High, value));

    /// <summary>What both have in common; the point between them where rounding has left nothing.</summary>
    internal Interval Meet(Interval other)
    {
        double low = Math.Max(Low, other.Low), high = Math.Min(High, other.High);
        return low <= high ? new Interval(low, high) : new Interval(high, low);
    }

    internal Interval Wider(double by) => new(Low - by, High + by);

    /// <summary>The squares of its numbers.</summary>
    internal Interval Squared() => new(Least * Least, Greatest * Greatest);

    /// <summary>Whether another lies inside, no end touching.</summary>
    internal bool Holds(Interval inner) => Low < inner.Low && inner.High < High;
}
