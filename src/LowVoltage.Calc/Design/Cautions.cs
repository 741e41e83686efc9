namespace LowVoltage.Calc.Design;

/// <summary>The cautions that go with every design.</summary>
public static class Cautions
{
    /// <summary>What holds for every circuit fed from a battery or supply of up to 60 V.</summary>
    public static IReadOnlyList<string> General { get; } =
    [
        "A battery can drive thousands of amperes into a short circuit: metal glows, insulation burns, cells can burst. Take off rings and watches, use insulated tools, and disconnect the battery before working on the wiring.",
        "Charging batteries give off explosive gas: ventilate, and keep flames and sparks away.",
        "A battery or charger at the far end feeds a fault from there: that end needs a fuse of its own.",
        "Fit the fuse as close to the source as possible: nothing protects the conductor between the source and the fuse.",
        "These are calculated values for the circuit as described. Check the installed wiring by measurement, and follow the local code and the manufacturers' instructions; where they differ from these values, they take precedence.",
        "Leave work that the law reserves for licensed persons to them. Whoever installs the circuit is responsible for it.",
    ];
}
