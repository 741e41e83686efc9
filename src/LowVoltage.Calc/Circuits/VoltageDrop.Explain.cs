using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public static partial class VoltageDrop
{
    private const string Percent = "%";

    /// <summary>Where the drop formula stands.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Locator = "paragraph 11-66", Kind = ReferenceKind.Handbook, Note = "Voltage drop from resistance per foot, length and current; Ohm's law.",
    };

    /// <summary>The working of <see cref="Along(LinearResistance, Length, ElectricCurrent)"/>.</summary>
    /// <inheritdoc cref="Along(LinearResistance, Length, ElectricCurrent)"/>
    /// <returns>The steps, ΔV last.</returns>
    public static WorkedSolution ExplainAlong(LinearResistance resistance, Length length, ElectricCurrent current)
    {
        double volts = Along(resistance, length, current).Volts;
        SolutionBuilder board = new("Voltage drop along a conductor");
        Symbol perMeter = PerMeter(board, resistance), l = Meters(board, length), i = Amperes(board, current);
        board.Step("voltage drop", "ΔV", perMeter * l * i, volts, "V", Reference, "Ohm's law for the whole length of conductor that carries the current.");
        return board.Build();
    }

    /// <summary>The working of <see cref="GreatestRun"/>.</summary>
    /// <inheritdoc cref="GreatestRun"/>
    /// <returns>The steps, L last.</returns>
    public static WorkedSolution ExplainGreatestRun(LinearResistance resistance, ElectricCurrent current, ElectricPotential allowed)
    {
        double meters = GreatestRun(resistance, current, allowed).Meters;
        SolutionBuilder board = new("Longest conductor for an allowed drop");
        Symbol perMeter = PerMeter(board, resistance), i = Amperes(board, current), v = Allowed(board, allowed);
        board.Step(
            "greatest length of conductor, out plus back", "L", v / perMeter / i, meters, "m", Reference, "ΔV = I·R′·L solved for L. Both ways count: a circuit of two equal wires reaches half as far.", RoundingDirection.Down);
        return board.Build();
    }

    /// <summary>The working of <see cref="GreatestResistance"/>.</summary>
    /// <inheritdoc cref="GreatestResistance"/>
    /// <returns>The steps, R last.</returns>
    public static WorkedSolution ExplainGreatestResistance(ElectricCurrent current, ElectricPotential allowed)
    {
        double ohms = GreatestResistance(current, allowed).Ohms;
        SolutionBuilder board = new("Greatest resistance for an allowed drop");
        Symbol i = Amperes(board, current), v = Allowed(board, allowed);
        board.Step("greatest resistance, out and back together", "R", v / i, ohms, "Ω", Reference, "Ohm's law.", RoundingDirection.Down);
        return board.Build();
    }

    /// <summary>The working of <see cref="LeastArea(ElectricResistivity, Length, ElectricCurrent, ElectricPotential)"/>.</summary>
    /// <inheritdoc cref="LeastArea(ElectricResistivity, Length, ElectricCurrent, ElectricPotential)"/>
    /// <returns>The steps, S last.</returns>
    public static WorkedSolution ExplainLeastArea(ElectricResistivity resistivity, Length length, ElectricCurrent current, ElectricPotential allowed)
    {
        double area = LeastArea(resistivity, length, current, allowed).SquareMillimeters;
        SolutionBuilder board = new("Smallest section for an allowed drop");
        Symbol rho = Rho(board, resistivity), l = Meters(board, length), i = Amperes(board, current), v = Allowed(board, allowed);
        board.Step("smallest section of metal", "S", rho * l * i / v, area, "mm²", Reference, "ΔV = I·ρ·L/S solved for S. Go up to the next standard size.", RoundingDirection.Up);
        return board.Build();
    }

    /// <summary>The working of <see cref="LeastArea(ElectricResistivity, Length, ElectricResistance)"/>.</summary>
    /// <inheritdoc cref="LeastArea(ElectricResistivity, Length, ElectricResistance)"/>
    /// <returns>The steps, S last.</returns>
    public static WorkedSolution ExplainLeastArea(ElectricResistivity resistivity, Length length, ElectricResistance resistance)
    {
        double area = LeastArea(resistivity, length, resistance).SquareMillimeters;
        SolutionBuilder board = new("Section for a resistance");
        Symbol rho = Rho(board, resistivity), l = Meters(board, length), r = board.Given("resistance of that length", "R", Positive(resistance), "Ω");
        board.Step("section of metal", "S", rho * l / r, area, "mm²", Reference, "R = ρ·L/S solved for S.");
        return board.Build();
    }

    /// <summary>The working of <see cref="ResistanceOf"/>.</summary>
    /// <inheritdoc cref="ResistanceOf"/>
    /// <returns>The steps, R last.</returns>
    public static WorkedSolution ExplainResistanceOf(ElectricResistivity resistivity, Length length, Area area)
    {
        double ohms = ResistanceOf(resistivity, length, area).Ohms;
        SolutionBuilder board = new("Resistance of a conductor");
        Symbol rho = Rho(board, resistivity), l = Meters(board, length), s = board.Given("section of metal", "S", Accept.SquareMillimeters(area, nameof(area)), "mm²");
        board.Step("resistance", "R", rho * l / s, ohms, "Ω", Reference, "Resistance grows with the length and falls with the section.");
        return board.Build();
    }

    /// <summary>The working of <see cref="OutAndBack"/>.</summary>
    /// <inheritdoc cref="OutAndBack"/>
    /// <returns>The steps, R last.</returns>
    public static WorkedSolution ExplainOutAndBack(LinearResistance feed, Length feedLength, LinearResistance back, Length backLength)
    {
        double ohms = OutAndBack(feed, feedLength, back, backLength).Ohms;
        SolutionBuilder board = new("Resistance of the way out and back");
        Symbol r1 = board.Given("resistance per metre of the feed", "R′_1", feed.OhmsPerMeter, "Ω/m"), l1 = board.Given("length of the feed", "L_1", Accept.MetersOrZero(feedLength, nameof(feedLength)), "m");
        Symbol r2 = board.Given("resistance per metre of the return", "R′_2", back.OhmsPerMeter, "Ω/m"), l2 = board.Given("length of the return", "L_2", Accept.MetersOrZero(backLength, nameof(backLength)), "m");
        board.Step("resistance of both ways", "R", (r1 * l1) + (r2 * l2), ohms, "Ω", Reference, "The current flows through both, one after the other.");
        return board.Build();
    }

    /// <summary>The working of <see cref="Lost"/>.</summary>
    /// <inheritdoc cref="Lost"/>
    /// <returns>The steps, P last.</returns>
    public static WorkedSolution ExplainLost(ElectricCurrent current, ElectricResistance resistance)
    {
        double watts = (double)Lost(current, resistance).Watts;
        SolutionBuilder board = new("Power lost in a resistance");
        Symbol i = Amperes(board, current), r = board.Given("resistance", "R", Accept.OhmsOrZero(resistance, nameof(resistance)), "Ω");
        board.Step("power turned into heat", "P", Formula.Square(i) * r, watts, "W", OhmsLaw.Reference, "Joule's law: twice the current makes four times the heat.");
        return board.Build();
    }

    /// <summary>The working of <see cref="LostShare"/>.</summary>
    /// <inheritdoc cref="LostShare"/>
    /// <returns>The steps, the share in per cent last.</returns>
    public static WorkedSolution ExplainLostShare(ElectricCurrent current, ElectricResistance resistance, ElectricPotential sent)
    {
        double percent = LostShare(current, resistance, sent).Percent;
        SolutionBuilder board = new("Share of the power lost in a resistance");
        Symbol i = Amperes(board, current), r = board.Given("resistance", "R", Accept.OhmsOrZero(resistance, nameof(resistance)), "Ω");
        Symbol v = board.Given("voltage at the sending end", "V", Accept.Volts(sent, nameof(sent)), "V");
        board.Step("share lost", "p", Formula.FromNumber(100, Percent) * i * r / v, percent, Percent, Reference, "I²·R over V·I: the drop as a share of the voltage.");
        return board.Build();
    }

    private static Symbol PerMeter(SolutionBuilder board, LinearResistance resistance) =>
        board.Given("resistance per metre at the conductor's temperature", "R′", resistance.OhmsPerMeter, "Ω/m");

    private static Symbol Meters(SolutionBuilder board, in Length length) =>
        board.Given("length of conductor, out plus back", "L", Accept.MetersOrZero(length, nameof(length)), "m");

    private static Symbol Amperes(SolutionBuilder board, in ElectricCurrent current) => board.Given("current", "I", Accept.AmperesOrZero(current, nameof(current)), "A");

    private static Symbol Allowed(SolutionBuilder board, in ElectricPotential allowed) => board.Given("allowed drop", "ΔV", Accept.Volts(allowed, nameof(allowed)), "V");

    private static Symbol Rho(SolutionBuilder board, in ElectricResistivity resistivity) =>
        board.Given("resistivity at the conductor's temperature", "ρ", OhmMeters(resistivity, nameof(resistivity)) * 1e6, "Ω·mm²/m");
}
