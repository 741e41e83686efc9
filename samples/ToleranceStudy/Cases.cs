namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>What was drawn and what came out, one array for each quantity, in the units that their names say.</summary>
internal sealed class Cases(int count)
{
    internal const string Spreads =
        """
        supply at the terminals   triangular 11.7, 12.4, 12.8 V
        length, each way          uniform 5 to 6 m
        ambient                   normal, mean 45 °C, deviation 8 K
        joints together           triangular 3, 8, 30 mΩ
        load                      normal, mean 120 W, deviation 8 W
        """;

    internal int Count => count;

    internal double[] SupplyVolts { get; } = new double[count];

    internal double[] Meters { get; } = new double[count];

    internal double[] AmbientCelsius { get; } = new double[count];

    internal double[] JointOhms { get; } = new double[count];

    internal double[] LoadWatts { get; } = new double[count];

    internal double[] LoadVolts { get; } = new double[count];

    internal double[] Amperes { get; } = new double[count];

    internal double[] WireCelsius { get; } = new double[count];

    internal static Cases Draw(Circuit circuit, ulong seed, int count)
    {
        Dice dice = new(seed);
        Cases cases = new(count);
        for (int i = 0; i < count; i++)
        {
            cases.SupplyVolts[i] = dice.Triangular(11.7, 12.4, 12.8);
            cases.Meters[i] = dice.Uniform(5, 6);
            cases.AmbientCelsius[i] = dice.Normal(circuit.BaseCelsius, 8);
            cases.JointOhms[i] = dice.Triangular(0.003, 0.008, 0.030);
            cases.LoadWatts[i] = dice.Normal(120, 8);
        }

        return cases;
    }
}
