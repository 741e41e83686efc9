namespace LowVoltage.Calc.Working;

/// <summary>How the numbers of a line are written: so many significant digits (0 writes symbols instead), and in engineering units or in the units that the formula counts in.</summary>
internal readonly struct NumberStyle(int digits, bool engineering)
{
    internal int Digits { get; } = digits;

    /// <summary>Whether a small quantity has its milli or micro: 13.28 mm instead of 0.01328 m.</summary>
    internal bool Engineering { get; } = engineering;

    internal bool HasNumbers => Digits > 0;

    public static implicit operator NumberStyle(int digits) => new(digits, false);
}
