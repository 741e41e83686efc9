using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <content>The working.</content>
public static partial class TemperatureCorrection
{
    private const string Title = "Resistance at another temperature";

    private static Reference Line { get; } = new()
    {
        Title = "Lessons in Electric Circuits, Volume I - DC", Locator = "chapter 12", Kind = ReferenceKind.Handbook, Note = "Temperature coefficient of resistance.",
    };

    /// <summary>The working of <see cref="ResistanceAt(ElectricResistance, Temperature, Temperature, double, Temperature)"/>.</summary>
    /// <inheritdoc cref="ResistanceAt(ElectricResistance, Temperature, Temperature, double, Temperature)"/>
    /// <returns>The steps, R2 last.</returns>
    public static WorkedSolution ExplainResistanceAt(
        ElectricResistance known, Temperature knownAt, Temperature temperature, double coefficient, Temperature coefficientAt)
    {
        double ohms = ResistanceAt(known, knownAt, temperature, coefficient, coefficientAt).Ohms;
        return Explain(
            new SolutionBuilder(Title), known, knownAt, temperature, coefficient, Accept.Celsius(coefficientAt, nameof(coefficientAt)), ohms, Line);
    }

    /// <summary>The working of <see cref="ResistanceAt(ElectricResistance, Temperature, Temperature, ConductorMaterial)"/>.</summary>
    /// <inheritdoc cref="ResistanceAt(ElectricResistance, Temperature, Temperature, ConductorMaterial)"/>
    /// <returns>The steps, R2 last.</returns>
    public static WorkedSolution ExplainResistanceAt(ElectricResistance known, Temperature knownAt, Temperature temperature, ConductorMaterial material)
    {
        double ohms = ResistanceAt(known, knownAt, temperature, material).Ohms;
        SolutionBuilder board = new(Title);
        board.Given("metal", material.Name);
        return Explain(board, known, knownAt, temperature, material.TemperatureCoefficient, 20, ohms, material.Reference);
    }

    /// <summary>The working of <see cref="TemperatureFrom"/>.</summary>
    /// <inheritdoc cref="TemperatureFrom"/>
    /// <returns>The steps, θ2 last.</returns>
    public static WorkedSolution ExplainTemperatureFrom(
        ElectricResistance known, Temperature knownAt, ElectricResistance measured, double coefficient, Temperature coefficientAt)
    {
        double celsius = TemperatureFrom(known, knownAt, measured, coefficient, coefficientAt).DegreesCelsius;
        SolutionBuilder board = new("Temperature from a measured resistance");
        Symbol r1 = board.Given("known resistance", "R_1", Accept.Ohms(known, nameof(known)), "Ω");
        Symbol t1 = board.Given("temperature it was measured at", "θ_1", Accept.Celsius(knownAt, nameof(knownAt)), "°C");
        Symbol r2 = board.Given("measured resistance", "R_2", Accept.Ohms(measured, nameof(measured)), "Ω");
        (Symbol alpha, Symbol reference) = Coefficient(board, coefficient, Accept.Celsius(coefficientAt, nameof(coefficientAt)));
        Symbol factor = Factor(board, "f_1", alpha, t1, reference);
        board.Step(
            "temperature at the measured resistance", "θ_2", reference + (((r2 / r1 * factor) - 1) / alpha), celsius, "°C", Line, "The straight line solved for the temperature.");
        return board.Build();
    }

    /// <summary>The working of <see cref="CoefficientAt"/>.</summary>
    /// <inheritdoc cref="CoefficientAt"/>
    /// <returns>The steps, α at the other temperature last.</returns>
    public static WorkedSolution ExplainCoefficientAt(double coefficient, Temperature coefficientAt, Temperature temperature)
    {
        double result = CoefficientAt(coefficient, coefficientAt, temperature);
        SolutionBuilder board = new("Temperature coefficient at another reference temperature");
        (Symbol alpha, Symbol reference) = Coefficient(board, coefficient, Accept.Celsius(coefficientAt, nameof(coefficientAt)));
        Symbol t = board.Given("the other reference temperature", "θ", Accept.Celsius(temperature, nameof(temperature)), "°C");
        board.Step(
            "coefficient there", "α_θ", alpha / (1 + (alpha * (t - reference))), result, "1/K", Line, "The same straight line, counted from another resistance: a coefficient belongs to its temperature.");
        return board.Build();
    }

    /// <summary>The working of <see cref="NecResistanceAt"/>.</summary>
    /// <inheritdoc cref="NecResistanceAt"/>
    /// <returns>The steps, R2 last.</returns>
    public static WorkedSolution ExplainNecResistanceAt(ElectricResistance at75, Temperature temperature, double coefficient)
    {
        double ohms = NecResistanceAt(at75, temperature, coefficient).Ohms;
        SolutionBuilder board = new("Resistance from the 75 °C table");
        Symbol r1 = board.Given("resistance at 75 °C", "R_1", Accept.Ohms(at75, nameof(at75)), "Ω");
        Symbol t2 = board.Given("conductor temperature", "θ_2", Accept.Celsius(temperature, nameof(temperature)), "°C");
        Symbol alpha = board.Given("temperature coefficient at 75 °C", "α_75", coefficient, "1/K");
        board.Step(
            "resistance there", "R_2", r1 * (1 + (alpha * (t2 - Formula.FromNumber(75, "°C")))), ohms, "Ω", NecReference, "The coefficient is the one at 75 °C, not the one at 20 °C.");
        return board.Build();
    }

    /// <summary>The working of <see cref="TemperatureOfEqualResistance"/>.</summary>
    /// <inheritdoc cref="TemperatureOfEqualResistance"/>
    /// <returns>The steps, θ last; a statement where there is no such temperature.</returns>
    public static WorkedSolution ExplainTemperatureOfEqualResistance(
        ElectricResistance first, double firstCoefficient, ElectricResistance second, double secondCoefficient, Temperature knownAt)
    {
        Temperature? equal = TemperatureOfEqualResistance(first, firstCoefficient, second, secondCoefficient, knownAt);
        SolutionBuilder board = new("Temperature at which two resistors are equal");
        Symbol r1 = board.Given("first resistance", "R_1", Accept.Ohms(first, nameof(first)), "Ω"), a1 = board.Given("its coefficient", "α_1", firstCoefficient, "1/K");
        Symbol r2 = board.Given("second resistance", "R_2", Accept.Ohms(second, nameof(second)), "Ω"), a2 = board.Given("its coefficient", "α_2", secondCoefficient, "1/K");
        Symbol t = board.Given("temperature that both belong to", "θ_r", Accept.Celsius(knownAt, nameof(knownAt)), "°C");
        if (equal is not { } there)
        {
            board.State("temperature", "The two lines do not cross where both resistances are positive.");
            return board.Build();
        }

        board.Step(
            "temperature of equal resistance", "θ", t + ((r2 - r1) / ((r1 * a1) - (r2 * a2))), there.DegreesCelsius, "°C", Line, "R₁·[1 + α₁·(θ − θᵣ)] = R₂·[1 + α₂·(θ − θᵣ)] solved for θ.");
        return board.Build();
    }

    private static WorkedSolution Explain(
        SolutionBuilder board, in ElectricResistance known, in Temperature knownAt, in Temperature temperature, double coefficient, double coefficientAt, double ohms, Reference source)
    {
        Symbol r1 = board.Given("known resistance", "R_1", Accept.Ohms(known, nameof(known)), "Ω");
        Symbol t1 = board.Given("temperature it is known at", "θ_1", Accept.Celsius(knownAt, nameof(knownAt)), "°C");
        Symbol t2 = board.Given("the other temperature", "θ_2", Accept.Celsius(temperature, nameof(temperature)), "°C");
        (Symbol alpha, Symbol reference) = Coefficient(board, coefficient, coefficientAt);
        Symbol f1 = Factor(board, "f_1", alpha, t1, reference), f2 = Factor(board, "f_2", alpha, t2, reference);
        board.Step("resistance at the other temperature", "R_2", r1 * f2 / f1, ohms, "Ω", source, "Both resistances lie on one straight line; the warmer metal has the more where α is positive.");
        return board.Build();
    }

    private static (Symbol Alpha, Symbol Reference) Coefficient(SolutionBuilder board, double coefficient, double celsius) => (
        board.Given("temperature coefficient", "α", coefficient, "1/K"), board.Given("temperature that α belongs to", "θ_r", celsius, "°C"));

    private static Symbol Factor(SolutionBuilder board, string name, Symbol alpha, Symbol at, Symbol reference) => board.Step(
        $"factor at {at.Name}", name, 1 + (alpha * (at - reference)), 1 + (alpha.Value * (at.Value - reference.Value)), "", Line, "Resistance there over resistance at the temperature that α belongs to.");
}
