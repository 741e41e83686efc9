using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public static partial class ElectricalEnergy
{
    private static Reference Definitions { get; } = new()
    {
        Title = "College Physics 2e", Locator = "section 20.4", Kind = ReferenceKind.Handbook, Note = "Electric power and energy.",
    };

    /// <summary>The working of <see cref="FromPower"/>.</summary>
    /// <inheritdoc cref="FromPower"/>
    /// <returns>The steps, W last.</returns>
    public static WorkedSolution ExplainFromPower(Power power, Duration time)
    {
        double joules = FromPower(power, time).Joules;
        SolutionBuilder board = new("Energy of a power over a time");
        Symbol p = board.Given("power", "P", Accept.Watts(power, nameof(power)), "W"), t = board.Given("time", "t", Accept.SecondsOrZero(time, nameof(time)), "s");
        Symbol energy = board.Step("energy", "W", p * t, joules, "J", Definitions, "A watt is a joule each second.");
        board.Step("energy in watt-hours", "W_h", energy / Formula.FromNumber(3600, "J/Wh"), joules / 3600, "Wh", Definitions, "An hour has 3600 seconds.");
        return board.Build();
    }

    /// <summary>The working of <see cref="RunningTime(ElectricCharge, ElectricCurrent)"/>.</summary>
    /// <inheritdoc cref="RunningTime(ElectricCharge, ElectricCurrent)"/>
    /// <returns>The steps, t in hours last.</returns>
    public static WorkedSolution ExplainRunningTime(ElectricCharge capacity, ElectricCurrent current)
    {
        double hours = RunningTime(capacity, current).Hours;
        SolutionBuilder board = new("Running time at a current");
        Symbol c = Capacity(board, capacity), i = board.Given("current", "I", Accept.Amperes(current, nameof(current)), "A");
        board.Step("running time", "t", c / i, hours, "h", Definitions, "An ampere-hour is one ampere for one hour; the whole capacity is counted.");
        return board.Build();
    }

    /// <summary>The working of <see cref="RunningTime(ElectricCharge, ElectricPotential, Power)"/>.</summary>
    /// <inheritdoc cref="RunningTime(ElectricCharge, ElectricPotential, Power)"/>
    /// <returns>The steps, t in hours last.</returns>
    public static WorkedSolution ExplainRunningTime(ElectricCharge capacity, ElectricPotential voltage, Power power)
    {
        double hours = RunningTime(capacity, voltage, power).Hours;
        SolutionBuilder board = new("Running time at a power");
        Symbol c = Capacity(board, capacity), v = board.Given("mean voltage", "V", Accept.Volts(voltage, nameof(voltage)), "V");
        Symbol p = board.Given("power", "P", Accept.Watts(power, nameof(power)), "W");
        Symbol energy = board.Step("energy in the battery", "W", c * v, c.Value * v.Value, "Wh", Definitions, "Ampere-hours times volts are watt-hours.");
        board.Step("running time", "t", energy / p, hours, "h", Definitions);
        return board.Build();
    }

    private static Symbol Capacity(SolutionBuilder board, ElectricCharge capacity) => board.Given("capacity", "C", Coulombs(capacity, nameof(capacity)) / 3600, "Ah");
}
