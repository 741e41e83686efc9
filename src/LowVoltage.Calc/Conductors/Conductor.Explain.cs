using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <content>The working.</content>
public sealed partial class Conductor
{
    /// <summary>The working of <see cref="Resistance"/>.</summary>
    /// <inheritdoc cref="Resistance"/>
    /// <returns>The steps, R last.</returns>
    public WorkedSolution ExplainResistance(Length length, Temperature temperature)
    {
        double ohms = Resistance(length, temperature).Ohms, celsius = Accept.Celsius(temperature, nameof(temperature));
        SolutionBuilder board = new($"Resistance of {Name}");
        board.Given("conductor", Name);
        Symbol l = board.Given("length, one way", "L", Accept.MetersOrZero(length, nameof(length)), "m");
        Symbol t = board.Given("conductor temperature", "θ", celsius, "°C");
        Symbol hot = ExplainPerMeter(board, t);
        board.Step("resistance of the length", "R", hot * l, ohms, "Ω", null, "Only this length is counted; a way back is a length of its own.");
        return board.Build();
    }

    /// <summary>The working of <see cref="Mass(Length)"/>.</summary>
    /// <inheritdoc cref="Mass(Length)"/>
    /// <returns>The steps, the mass last.</returns>
    public WorkedSolution ExplainMass(Length length)
    {
        double kilograms = Mass(length).Kilograms;
        SolutionBuilder board = new($"Mass of {Name}");
        Symbol l = board.Given("length", "L", Accept.MetersOrZero(length, nameof(length)), "m");
        Symbol a = board.Given("section of metal", "A", AreaSquareMillimeters, "mm²");
        Symbol lay = board.Given("length of strand per length of conductor", "k_lay", LayFactor, "");
        Symbol density = board.LookUp($"density of {Material.Name}", "δ", Material.DensityKilogramsPerCubicMeter, "kg/m³", Material.Reference);
        Symbol meter = board.Step(
            "mass per metre", "m′", density * a * Formula.FromNumber(1e-6, "m²/mm²") * lay, KilogramsPerMeter, "kg/m", Reference, "A metre of conductor holds A·1 m of metal, more where it is twisted.");
        board.Step("mass", "m", meter * l, kilograms, "kg", null);
        return board.Build();
    }

    /// <summary>The working of <see cref="CurrentDensity"/>.</summary>
    /// <inheritdoc cref="CurrentDensity"/>
    /// <returns>The steps, J last.</returns>
    public WorkedSolution ExplainCurrentDensity(ElectricCurrent current)
    {
        double density = CurrentDensity(current).AmperesPerSquareMeter * 1e-6;
        SolutionBuilder board = new($"Current density in {Name}");
        Symbol i = board.Given("current", "I", Accept.AmperesOrZero(current, nameof(current)), "A");
        Symbol a = board.Given("section of metal", "A", AreaSquareMillimeters, "mm²");
        board.Step("current density", "J", i / a, density, "A/mm²", null, "Current per section.");
        return board.Build();
    }

    /// <summary>Writes how the resistance per metre at a temperature comes about.</summary>
    /// <param name="board">Where to.</param>
    /// <param name="celsius">The temperature.</param>
    /// <param name="name">The letter of the result.</param>
    /// <param name="mark">What tells the conductor from others of the same solution.</param>
    internal Symbol ExplainPerMeter(SolutionBuilder board, Symbol celsius, string name = "R′", string mark = "")
    {
        Symbol cold = ExplainPerMeter20(board, mark);
        Symbol alpha = board.LookUp(
            $"temperature coefficient of {Material.Name} at 20 °C", "α_20" + Apart(board, "α_20", mark, Material.TemperatureCoefficient), Material.TemperatureCoefficient, "1/K", Material.Reference);
        return board.Step(
            $"resistance per metre of {Name} at {celsius.Name}",
            name,
            cold * (1 + (alpha * (celsius - Formula.FromNumber(20, "°C")))),
            OhmsPerMeterAt(celsius.Value),
            "Ω/m",
            Material.Reference,
            "Warm metal resists more; the line holds for the conductor's own temperature, not the ambient.");
    }

    private Symbol ExplainPerMeter20(SolutionBuilder board, string mark)
    {
        const string Sought = "resistance per metre at 20 °C";
        string own = mark.Length == 0 ? "" : "," + mark, name = "R′_20" + own;
        double fromGeometry = Material.OhmMeters20 * 1e6 * LayFactor / AreaSquareMillimeters;
        if (Basis is not (ResistanceBasis.SolidGeometry or ResistanceBasis.StrandedGeometry) || Math.Abs(fromGeometry - OhmsPerMeter20) > 1e-12 * OhmsPerMeter20)
        {
            return board.LookUp($"{Sought} of {Name}", name, OhmsPerMeter20, "Ω/m", Reference, "Read, not computed from the section: what the source states is the most that the conductor may have.");
        }

        double resistivity = Material.OhmMeters20 * 1e6;
        Symbol rho = board.LookUp($"resistivity of {Material.Name} at 20 °C", "ρ_20" + Apart(board, "ρ_20", mark, resistivity), resistivity, "Ω·mm²/m", Material.Reference);
        Symbol a = board.LookUp($"section of {Name}", PathLetter("A", mark), AreaSquareMillimeters, "mm²", Reference);
        if (Basis == ResistanceBasis.SolidGeometry)
        {
            return board.Step($"{Sought} of {Name}", name, rho / a, OhmsPerMeter20, "Ω/m", Reference);
        }

        Symbol lay = board.LookUp("length of strand per length of conductor", "k_lay" + mark, LayFactor, "", Reference, "Twisted strands are longer than the conductor.");
        return board.Step($"{Sought} of {Name}", name, rho * lay / a, OhmsPerMeter20, "Ω/m", Reference);
    }

    private static string PathLetter(string letter, string mark) => mark.Length == 0 ? letter : letter + "_" + mark;

    // A constant of the metal has no mark unless another metal has taken its letter.
    private static string Apart(SolutionBuilder board, string name, string mark, double value) =>
        mark.Length == 0 || board.Find(name) is not { } known || known.Value.Equals(value) ? "" : "," + mark;
}
