using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <content>The working.</content>
public static partial class BarResistance
{
    private const string OhmSquareMillimetersPerMeter = "Ω·mm²/m";

    private static Reference Law { get; } = new()
    {
        Title = "University Physics Volume 2", Locator = "section 9.3", Kind = ReferenceKind.Handbook, Note = "R = ρ·L/A; any physics textbook has it.",
    };

    /// <summary>The working of <see cref="Resistance"/>.</summary>
    /// <inheritdoc cref="Resistance"/>
    /// <returns>The steps, R last.</returns>
    public static WorkedSolution ExplainResistance(ElectricResistivity resistivity, Length length, Area area)
    {
        double ohms = Resistance(resistivity, length, area).Ohms;
        SolutionBuilder board = new("Resistance of a bar");
        Symbol rho = Rho(board, resistivity), l = Long(board, length), a = Section(board, area);
        board.Step("resistance", "R", rho * l / a, ohms, "Ω", Law, "Resistance grows with the length and falls with the section.");
        return board.Build();
    }

    /// <summary>The working of <see cref="Resistivity"/>.</summary>
    /// <inheritdoc cref="Resistivity"/>
    /// <returns>The steps, ρ last.</returns>
    public static WorkedSolution ExplainResistivity(ElectricResistance resistance, Length length, Area area)
    {
        double ohmMeters = Resistivity(resistance, length, area).OhmMeters;
        SolutionBuilder board = new("Resistivity from a resistance");
        Symbol r = Ohms(board, resistance), l = Long(board, length), a = Section(board, area);
        board.Step("resistivity", "ρ", r * a / l, ohmMeters * 1e6, OhmSquareMillimetersPerMeter, Law, "R = ρ·L/A solved for ρ. 1 Ω·mm²/m is 10⁻⁶ Ω·m.");
        return board.Build();
    }

    /// <summary>The working of <see cref="AreaFor"/>.</summary>
    /// <inheritdoc cref="AreaFor"/>
    /// <returns>The steps, A last.</returns>
    public static WorkedSolution ExplainAreaFor(ElectricResistivity resistivity, Length length, ElectricResistance resistance)
    {
        double squareMeters = AreaFor(resistivity, length, resistance).SquareMeters;
        SolutionBuilder board = new("Section for a resistance");
        Symbol rho = Rho(board, resistivity), l = Long(board, length), r = Ohms(board, resistance);
        board.Step("section", "A", rho * l / r, squareMeters * 1e6, "mm²", Law, "R = ρ·L/A solved for A.");
        return board.Build();
    }

    /// <summary>The working of <see cref="LengthFor"/>.</summary>
    /// <inheritdoc cref="LengthFor"/>
    /// <returns>The steps, L last.</returns>
    public static WorkedSolution ExplainLengthFor(ElectricResistivity resistivity, Area area, ElectricResistance resistance)
    {
        double meters = LengthFor(resistivity, area, resistance).Meters;
        SolutionBuilder board = new("Length for a resistance");
        Symbol rho = Rho(board, resistivity), a = Section(board, area), r = Ohms(board, resistance);
        board.Step("length", "L", r * a / rho, meters, "m", Law, "R = ρ·L/A solved for L.");
        return board.Build();
    }

    /// <summary>The working of <see cref="FieldStrength"/>.</summary>
    /// <inheritdoc cref="FieldStrength"/>
    /// <returns>The steps, E last.</returns>
    public static WorkedSolution ExplainFieldStrength(ElectricResistivity resistivity, ElectricCurrent current, Area area)
    {
        double voltsPerMeter = FieldStrength(resistivity, current, area).VoltsPerMeter;
        SolutionBuilder board = new("Electric field along a bar");
        Symbol rho = Rho(board, resistivity), i = board.Given("current", "I", Accept.AmperesOrZero(current, nameof(current)), "A"), a = Section(board, area);
        board.Step("field along the bar", "E", rho * i / a, voltsPerMeter, "V/m", Law, "The drop per metre: ρ·I/A.");
        return board.Build();
    }

    private static Symbol Rho(SolutionBuilder board, in ElectricResistivity resistivity) =>
        board.Given("resistivity at the bar's temperature", "ρ", OhmMeters(resistivity) * 1e6, OhmSquareMillimetersPerMeter);

    private static Symbol Long(SolutionBuilder board, in Length length) => board.Given("length", "L", Accept.MetersOrZero(length, nameof(length)), "m");

    private static Symbol Section(SolutionBuilder board, in Area area) => board.Given("section", "A", Accept.SquareMillimeters(area, nameof(area)), "mm²");

    private static Symbol Ohms(SolutionBuilder board, in ElectricResistance resistance) =>
        board.Given("resistance", "R", Accept.Ohms(resistance, nameof(resistance)), "Ω");
}
