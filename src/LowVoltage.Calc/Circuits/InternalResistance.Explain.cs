using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public static partial class InternalResistance
{
    private static Reference Emf { get; } = new()
    {
        Title = "College Physics 2e", Locator = "section 21.2", Kind = ReferenceKind.Handbook, Note = "Electromotive force and terminal voltage.",
    };

    /// <summary>The working of <see cref="FromDischarge"/>.</summary>
    /// <inheritdoc cref="FromDischarge"/>
    /// <returns>The steps, r last.</returns>
    public static WorkedSolution ExplainFromDischarge(ElectricPotential openCircuit, ElectricPotential loaded, ElectricCurrent current)
    {
        double ohms = FromDischarge(openCircuit, loaded, current).Ohms;
        SolutionBuilder board = new("Internal resistance from a discharge");
        Symbol e = Open(board, openCircuit), v = board.Given("voltage at the current", "V", Accept.VoltsOrZero(loaded, nameof(loaded)), "V");
        Symbol i = board.Given("discharge current", "I", Accept.Amperes(current, nameof(current)), "A");
        board.Step("internal resistance", "r", (e - v) / i, ohms, "Ω", Emf, "What is missing at the terminals is dropped inside.");
        return Battery(board);
    }

    /// <summary>The working of <see cref="FromCharge"/>.</summary>
    /// <inheritdoc cref="FromCharge"/>
    /// <returns>The steps, r last.</returns>
    public static WorkedSolution ExplainFromCharge(ElectricPotential openCircuit, ElectricPotential charging, ElectricCurrent current)
    {
        double ohms = FromCharge(openCircuit, charging, current).Ohms;
        SolutionBuilder board = new("Internal resistance from a charge");
        Symbol e = Open(board, openCircuit), v = board.Given("voltage while the current flows in", "V", Accept.Volts(charging, nameof(charging)), "V");
        Symbol i = board.Given("charging current", "I", Accept.Amperes(current, nameof(current)), "A");
        board.Step("internal resistance", "r", (v - e) / i, ohms, "Ω", Emf, "The charger must give the inner drop on top of the battery's own voltage.");
        return Battery(board);
    }

    /// <summary>The working of <see cref="FromTwoPoints"/>.</summary>
    /// <inheritdoc cref="FromTwoPoints"/>
    /// <returns>The steps, r last.</returns>
    public static WorkedSolution ExplainFromTwoPoints(
        ElectricPotential firstVoltage, ElectricCurrent firstCurrent, ElectricPotential secondVoltage, ElectricCurrent secondCurrent)
    {
        double ohms = FromTwoPoints(firstVoltage, firstCurrent, secondVoltage, secondCurrent).Ohms;
        SolutionBuilder board = new("Internal resistance from two points");
        Symbol v1 = board.Given("voltage at the first current", "V_1", Accept.Volts(firstVoltage, nameof(firstVoltage)), "V");
        Symbol i1 = board.Given("first current", "I_1", Accept.AmperesOrZero(firstCurrent, nameof(firstCurrent)), "A");
        Symbol v2 = board.Given("voltage at the second current", "V_2", Accept.VoltsOrZero(secondVoltage, nameof(secondVoltage)), "V");
        Symbol i2 = board.Given("second current", "I_2", Accept.Amperes(secondCurrent, nameof(secondCurrent)), "A");
        board.Step("internal resistance", "r", (v1 - v2) / (i2 - i1), ohms, "Ω", Emf, "The extra current drops the extra voltage.");
        return Battery(board);
    }

    /// <summary>The working of <see cref="TerminalVoltage"/>.</summary>
    /// <inheritdoc cref="TerminalVoltage"/>
    /// <returns>The steps, V last.</returns>
    public static WorkedSolution ExplainTerminalVoltage(ElectricPotential openCircuit, ElectricResistance resistance, ElectricCurrent current)
    {
        double volts = TerminalVoltage(openCircuit, resistance, current).Volts;
        SolutionBuilder board = new("Voltage at the terminals under load");
        (Symbol e, Symbol r, Symbol i) = Givens(board, openCircuit, resistance, current);
        board.Step("voltage at the terminals", "V", e - (i * r), volts, "V", Emf, "The current drops I·r inside. Zero and less mean that the source cannot give it.");
        return Battery(board);
    }

    /// <summary>The working of <see cref="ChargingVoltage"/>.</summary>
    /// <inheritdoc cref="ChargingVoltage"/>
    /// <returns>The steps, V last.</returns>
    public static WorkedSolution ExplainChargingVoltage(ElectricPotential openCircuit, ElectricResistance resistance, ElectricCurrent current)
    {
        double volts = ChargingVoltage(openCircuit, resistance, current).Volts;
        SolutionBuilder board = new("Voltage at the terminals on charge");
        (Symbol e, Symbol r, Symbol i) = Givens(board, openCircuit, resistance, current);
        board.Step("voltage at the terminals", "V", e + (i * r), volts, "V", Emf, "The charger gives the inner drop on top of the battery's own voltage.");
        return Battery(board);
    }

    private static (Symbol E, Symbol R, Symbol I) Givens(SolutionBuilder board, in ElectricPotential open, in ElectricResistance resistance, in ElectricCurrent current) => (
        Open(board, open),
        board.Given("internal resistance", "r", Accept.OhmsOrZero(resistance, nameof(resistance)), "Ω"),
        board.Given("current", "I", Accept.AmperesOrZero(current, nameof(current)), "A"));

    private static Symbol Open(SolutionBuilder board, in ElectricPotential openCircuit) =>
        board.Given("voltage with no current", "E", Accept.Volts(openCircuit, nameof(openCircuit)), "V");

    private static WorkedSolution Battery(SolutionBuilder board)
    {
        board.Caution(SolutionCautions.Battery);
        return board.Build();
    }
}
