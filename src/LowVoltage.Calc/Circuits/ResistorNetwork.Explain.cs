using System.Globalization;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public static partial class ResistorNetwork
{
    private static Reference Kirchhoff { get; } = new()
    {
        Title = "Lessons in Electric Circuits, Volume I - DC", Locator = "chapters 5 to 7", Kind = ReferenceKind.Handbook, Note = "Series and parallel circuits, dividers.",
    };

    /// <summary>The working of <see cref="Series"/>.</summary>
    /// <inheritdoc cref="Series"/>
    /// <returns>The steps, R last.</returns>
    public static WorkedSolution ExplainSeries(params ElectricResistance[] resistances)
    {
        double ohms = Series(resistances).Ohms;
        SolutionBuilder board = new("Resistances in series");
        Symbol[] all = Numbered(board, resistances, "resistance");
        board.Step("resistance of the chain", "R", SumOf(all), ohms, "Ω", Kirchhoff, "One current flows through all of them and their drops add, so the resistances add.");
        return board.Build();
    }

    /// <summary>The working of <see cref="Parallel"/>.</summary>
    /// <inheritdoc cref="Parallel"/>
    /// <returns>The steps, R last.</returns>
    public static WorkedSolution ExplainParallel(params ElectricResistance[] resistances)
    {
        double ohms = Parallel(resistances).Ohms;
        SolutionBuilder board = new("Resistances in parallel");
        Symbol[] all = Numbered(board, resistances, "resistance");
        board.Step(
            "resistance of the group", "R", 1 / Reciprocals(all), ohms, "Ω", Kirchhoff, "They share one voltage and their currents add, so the reciprocals add. The result is below the smallest of them.");
        return board.Build();
    }

    /// <summary>The working of <see cref="DividedVoltage"/>.</summary>
    /// <inheritdoc cref="DividedVoltage"/>
    /// <returns>The steps, the part's voltage last.</returns>
    public static WorkedSolution ExplainDividedVoltage(ElectricPotential voltage, ElectricResistance part, params ElectricResistance[] others)
    {
        double volts = DividedVoltage(voltage, part, others).Volts;
        SolutionBuilder board = new("Voltage divider");
        Symbol v = board.Given("voltage across the chain", "V", Accept.VoltsOrZero(voltage, nameof(voltage)), "V");
        Symbol[] all = Numbered(board, [part, .. others], "resistance");
        Symbol total = board.Step("resistance of the chain", "R", SumOf(all), all.Sum(s => s.Value), "Ω", Kirchhoff, "The same current flows through all of them.");
        board.Step("voltage across the first", "V_1", v * (all[0] / total), volts, "V", Kirchhoff, "Each drops its share of the resistance.");
        return board.Build();
    }

    /// <summary>The working of <see cref="DividedCurrent"/>.</summary>
    /// <inheritdoc cref="DividedCurrent"/>
    /// <returns>The steps, the branch's current last.</returns>
    public static WorkedSolution ExplainDividedCurrent(ElectricCurrent total, ElectricResistance branch, params ElectricResistance[] others)
    {
        double amperes = DividedCurrent(total, branch, others).Amperes;
        SolutionBuilder board = new("Current divider");
        Symbol i = board.Given("current into the group", "I", Accept.AmperesOrZero(total, nameof(total)), "A");
        Symbol[] all = Numbered(board, [branch, .. others], "resistance");
        Symbol r = board.Step(
            "resistance of the group", "R", 1 / Reciprocals(all), ParallelOhms([branch, .. others], nameof(others)), "Ω", Kirchhoff, "The branches share one voltage, I·R.");
        board.Step("current in the first", "I_1", i * r / all[0], amperes, "A", Kirchhoff, "That voltage over its own resistance: the smaller resistance takes the larger current.");
        return board.Build();
    }

    /// <summary>The working of <see cref="UnknownSeriesPart"/>.</summary>
    /// <inheritdoc cref="UnknownSeriesPart"/>
    /// <returns>The steps, the unknown part last.</returns>
    public static WorkedSolution ExplainUnknownSeriesPart(ElectricResistance total, params ElectricResistance[] known)
    {
        double ohms = UnknownSeriesPart(total, known).Ohms;
        SolutionBuilder board = new("The unknown part of a chain");
        Symbol all = board.Given("resistance of the chain", "R", Accept.Ohms(total, nameof(total)), "Ω");
        Symbol[] parts = Numbered(board, known, "known part");
        Formula formula = parts.Length == 0 ? all : all - SumOf(parts);
        board.Step("unknown part", "R_x", formula, ohms, "Ω", Kirchhoff, "The parts of a chain add up to the whole.");
        return board.Build();
    }

    /// <summary>The working of <see cref="Shunt"/>.</summary>
    /// <inheritdoc cref="Shunt"/>
    /// <returns>The steps, the shunt last.</returns>
    public static WorkedSolution ExplainShunt(ElectricResistance meter, ElectricCurrent fullScale, ElectricCurrent range)
    {
        double ohms = Shunt(meter, fullScale, range).Ohms;
        SolutionBuilder board = new("Shunt of a current meter");
        Symbol rm = board.Given("resistance of the movement", "R_m", Accept.Ohms(meter, nameof(meter)), "Ω");
        Symbol im = board.Given("current of the movement at full scale", "I_m", Accept.Amperes(fullScale, nameof(fullScale)), "A");
        Symbol i = board.Given("current to be read at full scale", "I", Accept.Amperes(range, nameof(range)), "A");
        board.Step("shunt", "R_s", rm * (im / (i - im)), ohms, "Ω", Kirchhoff, "Both have the same voltage, and the shunt takes what the movement does not.");
        return board.Build();
    }

    private static Symbol[] Numbered(SolutionBuilder board, ElectricResistance[] resistances, string meaning) =>
        [.. resistances.Select((r, k) => board.Given(meaning, "R_" + (k + 1).ToString(CultureInfo.InvariantCulture), Accept.OhmsOrZero(r, nameof(resistances)), "Ω"))];

    private static Formula SumOf(Symbol[] parts) => Formula.Total(parts);

    private static Formula Reciprocals(Symbol[] parts) => parts.Skip(1).Aggregate(1 / parts[0], (sum, part) => sum + (1 / part));
}
