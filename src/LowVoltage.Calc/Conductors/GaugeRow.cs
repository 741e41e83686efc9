namespace LowVoltage.Calc.Conductors;

/// <summary>One row of a table by gauge number: what the vehicle and the aircraft table share.</summary>
internal readonly struct GaugeRow(int number, double squareMillimeters, int strands, double ohmsPerThousandFeet = 0)
{
    /// <summary>−3 for 4/0, 0 for 1/0.</summary>
    public int Number { get; } = number;

    public double SquareMillimeters { get; } = squareMillimeters;

    /// <summary>Usual number of strands; sets the diameter over the strands and nothing else.</summary>
    public int Strands { get; } = strands;

    public double OhmsPerThousandFeet { get; } = ohmsPerThousandFeet;

    internal static bool TryFind(GaugeRow[] rows, int number, out GaugeRow row)
    {
        foreach (GaugeRow candidate in rows)
        {
            if (candidate.Number == number)
            {
                row = candidate;
                return true;
            }
        }

        row = default;
        return false;
    }
}
