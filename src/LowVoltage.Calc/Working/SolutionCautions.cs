namespace LowVoltage.Calc.Working;

/// <summary>Words that go with explanations of things that can hurt somebody.</summary>
internal static class SolutionCautions
{
    internal const string Paper =
        "A calculation for the circuit as described, not a measurement. Check the installed wiring, and follow the local code and the manufacturers' instructions; where they differ from these values, they take precedence.";

    internal const string ShortCircuit =
        "This is a calculation on paper. Never short a battery or a supply to try it: metal glows, insulation burns, cells can burst.";

    internal const string Battery =
        "A battery can drive thousands of amperes into a short circuit. Take off rings and watches, use insulated tools, and disconnect it before working on the wiring.";

    internal const string Heat =
        "A conductor at these temperatures burns skin and what lies beside it. This is a calculation on paper: don't try it.";

    internal const string Fuse =
        "A fuse protects the wire behind it, not the device. Never fit a larger one than the wire allows, and keep it near the source.";
}
