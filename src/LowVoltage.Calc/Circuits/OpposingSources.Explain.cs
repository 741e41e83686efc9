using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public readonly partial struct OpposingSources
{
    private static Reference Loop { get; } = new()
    {
        Title = "University Physics Volume 2", Locator = "section 10.3", Kind = ReferenceKind.Handbook, Note = "Kirchhoff's voltage law.",
    };

    /// <summary>The working of current and powers.</summary>
    /// <returns>The steps: current, heat in the loop, power of the first source, power taken by the second.</returns>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new("Two voltages against each other");
        Symbol v1 = board.Given("voltage that drives the current", "V_1", Made(first), "V"), v2 = board.Given("voltage against it", "V_2", second, "V");
        Symbol r = board.Given("all the resistance of the loop", "R", ohms, "Ω");
        Symbol i = board.Step("current", "I", (v1 - v2) / r, amperes, "A", Loop, "Round the loop only the difference of the voltages drives the current.");
        board.Step("power turned into heat", "P_R", (v1 - v2) * i, (double)Lost.Watts, "W", Loop);
        board.Step("power given by the first source", "P_1", v1 * i, (double)GivenByFirst.Watts, "W", Loop);
        board.Step("power taken by the second source", "P_2", v2 * i, (double)TakenBySecond.Watts, "W", Loop, "Current flows into it against its voltage: it is being charged; negative, it gives power.");
        board.Caution(SolutionCautions.Battery);
        return board.Build();
    }
}
