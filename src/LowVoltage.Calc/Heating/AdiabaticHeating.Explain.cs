using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <content>The working.</content>
public static partial class AdiabaticHeating
{
    private const string Inside = "In so short a time the heat stays in the metal: all of I²·R·t warms it.";

    /// <summary>The working of <see cref="KFactor"/>.</summary>
    /// <inheritdoc cref="KFactor"/>
    /// <returns>The steps, k last.</returns>
    public static WorkedSolution ExplainKFactor(ConductorMaterial material, Temperature initial, Temperature limit)
    {
        double k = KFactor(material, initial, limit);
        SolutionBuilder board = Board($"k of {material.Name}", material);
        (Symbol start, Symbol end) = Ends(board, initial, limit);
        (Symbol square, Symbol beta) = Constant(board, material);
        Symbol log = Log(board, start, end, beta);
        board.Step("constant k between the two temperatures", "k", Formula.SquareRoot(square * log), k, "A·√s/mm²", Reference, "I²·t = k²·S²: what a square millimetre stands.", RoundingDirection.Down);
        return board.Build();
    }

    /// <summary>The working of <see cref="AreaFor"/>.</summary>
    /// <inheritdoc cref="AreaFor"/>
    /// <returns>The steps, S last.</returns>
    public static WorkedSolution ExplainAreaFor(
        ConductorMaterial material, ElectricCurrent current, Duration duration, Temperature initial, Temperature limit)
    {
        double area = AreaFor(material, current, duration, initial, limit).SquareMillimeters, k = KFactor(material, initial, limit);
        SolutionBuilder board = Board("Smallest section for a short circuit", material);
        Symbol i = Amperes(board, current), t = board.Given("duration", "t", Accept.Seconds(duration, nameof(duration)), "s");
        (Symbol start, Symbol end) = Ends(board, initial, limit);
        (Symbol square, Symbol beta) = Constant(board, material);
        Symbol log = Log(board, start, end, beta);
        Symbol factor = board.Step("constant k between the two temperatures", "k", Formula.SquareRoot(square * log), k, "A·√s/mm²", Reference, "", RoundingDirection.Down);
        board.Step("smallest section", "S", i * Formula.SquareRoot(t) / factor, area, "mm²", Reference, "I²·t = k²·S² solved for S. Go up to the next standard size.", RoundingDirection.Up);
        return board.Build();
    }

    /// <summary>The working of the final temperature of a conductor.</summary>
    /// <inheritdoc cref="FinalTemperature(Conductor, ElectricCurrent, Duration, Temperature)"/>
    /// <returns>The steps, θf last; that the conductor melts is an answer here.</returns>
    public static WorkedSolution ExplainFinalTemperature(Conductor wire, ElectricCurrent current, Duration duration, Temperature initial)
    {
        bool holds = TryFinalTemperature(wire, current, duration, initial, out Temperature final);
        SolutionBuilder board = Board($"Short circuit in {wire.Name}", wire.Material);
        return Final(board, wire.Material, Section(board, wire), current, duration, initial, holds ? final.DegreesCelsius : null);
    }

    /// <summary>The working of the final temperature of a section of metal.</summary>
    /// <inheritdoc cref="FinalTemperature(ConductorMaterial, Area, ElectricCurrent, Duration, Temperature)"/>
    /// <returns>The steps, θf last; that the conductor melts is an answer here.</returns>
    public static WorkedSolution ExplainFinalTemperature(
        ConductorMaterial material, Area area, ElectricCurrent current, Duration duration, Temperature initial)
    {
        bool holds = TryFinalTemperature(material, area, current, duration, initial, out Temperature final);
        SolutionBuilder board = Board($"Short circuit in {material.Name}", material);
        return Final(board, material, Given(board, area), current, duration, initial, holds ? final.DegreesCelsius : null);
    }

    /// <summary>The working of the time that takes a conductor to a temperature.</summary>
    /// <inheritdoc cref="TimeToReach(Conductor, ElectricCurrent, Temperature, Temperature)"/>
    /// <returns>The steps, t last.</returns>
    public static WorkedSolution ExplainTimeToReach(Conductor wire, ElectricCurrent current, Temperature initial, Temperature limit)
    {
        double seconds = TimeToReach(wire, current, initial, limit).Seconds;
        SolutionBuilder board = Board($"Time of {wire.Name} to a temperature", wire.Material);
        return Time(board, wire.Material, Section(board, wire), current, initial, limit, seconds);
    }

    /// <summary>The working of the time that takes a section of metal to a temperature.</summary>
    /// <inheritdoc cref="TimeToReach(ConductorMaterial, Area, ElectricCurrent, Temperature, Temperature)"/>
    /// <returns>The steps, t last.</returns>
    public static WorkedSolution ExplainTimeToReach(ConductorMaterial material, Area area, ElectricCurrent current, Temperature initial, Temperature limit)
    {
        double seconds = TimeToReach(material, area, current, initial, limit).Seconds;
        SolutionBuilder board = Board($"Time of {material.Name} to a temperature", material);
        return Time(board, material, Given(board, area), current, initial, limit, seconds);
    }

    private static WorkedSolution Final(
        SolutionBuilder board, ConductorMaterial material, Symbol s, in ElectricCurrent current, in Duration duration, in Temperature initial, double? celsius)
    {
        Symbol i = Amperes(board, current), t = board.Given("duration", "t", Accept.Seconds(duration, nameof(duration)), "s");
        Symbol start = board.Given("temperature at the start", "θ_i", Initial(material, initial), "°C");
        double joule = i.Value * i.Value * t.Value;
        Symbol energy = board.Step("Joule integral of the current", "I²t", Formula.Square(i) * t, joule, "A²·s", Reference, "What heats the metal.");
        if (celsius is { } final)
        {
            WriteFinal(board, material, s, energy, start, final);
            return board.Build();
        }

        (Symbol square, Symbol beta) = Constant(board, material);
        Symbol melting = board.LookUp($"melting point of {material.Name}", "θ_m", material.MeltingPointCelsius, "°C", material.Reference);
        Symbol log = Log(board, start, melting, beta);
        Symbol most = board.Step(
            "Joule integral to the melting point", "I²t_m", square * Formula.Square(s) * log,
            AdiabaticKernel.JouleIntegral(square.Value, s.Value, start.Value, melting.Value, beta.Value), "A²·s", Reference, Inside, RoundingDirection.Down);
        board.Compare("does the metal stay solid", energy, Relation.AtMost, most, Reference, "", verdict: false);
        board.State("temperature at the end", "There is none: the metal melts before the time is over.");
        return board.Build();
    }

    /// <summary>Writes how a Joule integral leads to a temperature; the mark tells its letters from those of another on the same sheet.</summary>
    internal static Symbol WriteFinal(SolutionBuilder board, ConductorMaterial material, Symbol s, Symbol energy, Symbol start, double final, string mark = "")
    {
        (Symbol square, Symbol beta) = Constant(board, material);
        Symbol x = board.Step(
            "Joule integral over what the metal stands for a factor e", mark.Length == 0 ? "x" : "x_" + mark, energy / (square * Formula.Square(s)), energy.Value / (square.Value * s.Value * s.Value), "", Reference, Inside);
        Formula hot = start + ((start + beta) * (Formula.Exponential(x) - 1));
        bool melts = final >= material.MeltingPointCelsius;
        if (melts)
        {
            Symbol melting = board.LookUp($"melting point of {material.Name}", "θ_m", material.MeltingPointCelsius, "°C", material.Reference, "No temperature is given above it.");
            hot = Formula.Least(hot, melting);
        }

        return board.Step(
            "temperature at the end", "θ_f" + mark, hot, final, "°C", Reference, "Resistance grows as the metal warms, so the temperature grows faster and faster.", RoundingDirection.Up);
    }

    private static WorkedSolution Time(
        SolutionBuilder board, ConductorMaterial material, Symbol s, in ElectricCurrent current, in Temperature initial, in Temperature limit, double seconds)
    {
        Symbol i = Amperes(board, current);
        (Symbol start, Symbol end) = Ends(board, initial, limit);
        (Symbol square, Symbol beta) = Constant(board, material);
        Symbol log = Log(board, start, end, beta);
        string why = seconds > LongestSeconds
            ? "I²·t = K²·S²·ln(…) solved for t. Beyond 5 s the source does not go: heat leaves the metal, and the wire takes longer than this."
            : "I²·t = K²·S²·ln(…) solved for t.";
        board.Step("time", "t", square * Formula.Square(s / i) * log, seconds, "s", Reference, why, RoundingDirection.Down);
        return board.Build();
    }

    private static SolutionBuilder Board(string title, ConductorMaterial material)
    {
        SolutionBuilder board = new(title);
        board.Given("metal", material.Name);
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Heat);
        return board;
    }

    private static Symbol Section(SolutionBuilder board, Conductor wire) =>
        board.Given($"effective section of {wire.Name} (that of a solid bar of its resistance)", "S", wire.EffectiveAreaSquareMillimeters, "mm²");

    private static Symbol Given(SolutionBuilder board, in Area area) => board.Given("section", "S", Section(area), "mm²");

    private static Symbol Amperes(SolutionBuilder board, in ElectricCurrent current) => board.Given("current, constant", "I", Accept.Amperes(current, nameof(current)), "A");

    private static (Symbol Start, Symbol End) Ends(SolutionBuilder board, in Temperature initial, in Temperature limit) => (
        board.Given("temperature at the start", "θ_i", initial.DegreesCelsius, "°C"), board.Given("temperature at the end", "θ_f", limit.DegreesCelsius, "°C"));

    /// <summary>Writes the heat capacity of a metal.</summary>
    internal static Symbol Capacity(SolutionBuilder board, ConductorMaterial material)
    {
        double value = material.HeatCapacityJoulesPerCubicMeterKelvin;
        string mark = board.Find("σ_c") is { } other && !other.Value.Equals(value) ? "2" : "";
        return board.LookUp($"volumetric heat capacity of {material.Name}", "σ_c" + mark, value, "J/(m³·K)", material.Reference);
    }

    /// <summary>Writes the material constant K² and the temperature from which resistance counts. A second metal of one solution has a 2 behind its letters.</summary>
    internal static (Symbol Square, Symbol Beta) Constant(SolutionBuilder board, ConductorMaterial material)
    {
        double result = AdiabaticKernel.ConstantSquared(material), resistivity = material.OhmMeters20 * 1e6;
        Symbol heat = Capacity(board, material);
        string mark = heat.Spec.Substring("σ_c".Length), apart = mark.Length == 0 ? "" : "_" + mark;
        Symbol beta = board.LookUp($"reciprocal temperature coefficient of {material.Name} at 0 °C", "β" + apart, -material.InferredZeroCelsius, "K", material.Reference);
        Symbol rho = board.LookUp($"resistivity of {material.Name} at 20 °C", "ρ_20" + (mark.Length == 0 ? "" : "," + mark), resistivity, "Ω·mm²/m", material.Reference);
        Symbol square = board.Step(
            $"square of the material constant of {material.Name}", "K²" + apart, heat * (beta + Formula.FromNumber(20, "°C")) * Formula.FromNumber(1e-6, "m²/mm²") / rho,
            result, "A²·s/mm⁴", Reference, "Heat taken up over heat made, for one square millimetre.");
        return (square, beta);
    }

    private static Symbol Log(SolutionBuilder board, Symbol start, Symbol end, Symbol beta) => board.Step(
        "logarithm of the resistance ratio", "λ", Formula.Logarithm((end + beta) / (start + beta)), AdiabaticKernel.LogRatio(start.Value, end.Value, beta.Value), "", Reference,
        "Counted from the temperature where the metal's resistance would be zero.");
}
