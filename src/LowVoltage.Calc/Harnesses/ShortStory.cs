namespace LowVoltage.Calc.Harnesses;

/// <summary>The course of a short in one scenario, from opening to opening.</summary>
internal sealed class ShortStory(int branches)
{
    /// <summary>Which fuse opened when, and at which current in its last stage.</summary>
    internal List<(int Fuse, double Seconds, double Amperes)> Opened { get; } = [];

    internal FaultEnding Ending { get; set; }

    internal string Reason { get; set; } = "";

    internal double FirstAmperes { get; set; }

    /// <summary>The harness before any fuse has opened; null where that could not be solved.</summary>
    internal HarnessState? First { get; set; }

    internal double RemainingAmperes { get; set; }

    /// <summary>Current of every branch in the last stage.</summary>
    internal double[] LastThrough { get; set; } = [];

    internal double[] Joules { get; } = new double[branches];

    /// <summary>Largest current of every branch in any stage.</summary>
    internal double[] Most { get; } = new double[branches];

    internal double Seconds { get; set; }
}
