using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>How much of its rated current a fuse may carry continuously, by one source.</summary>
/// <remarks>Sources define the rated current differently (the same element is rated 1.35 times higher by UL than by IEC), so a rule fits the fuses it was made for only.</remarks>
public sealed class LoadingRule
{
    private readonly LoadingStep[] steps;

    private LoadingRule(string name, Reference reference, LoadingStep[] steps)
    {
        Name = name;
        Reference = reference;
        this.steps = steps;
    }

    /// <summary>What the rule is for.</summary>
    public string Name { get; }

    /// <summary>The source.</summary>
    public Reference Reference { get; }

    /// <summary>Small fuses rated by UL 248-14: 75 % at 25 °C.</summary>
    public static LoadingRule UlSmallFuse { get; } = Uniform(
        "small fuse rated by UL 248-14, 25 °C", 0.75, Guide("Fuse selection guides (two of them, in agreement)", "Long life at 25 °C."));

    /// <summary>Small fuses rated by IEC 60127: 100 % at 23 °C.</summary>
    public static LoadingRule IecSmallFuse { get; } = Uniform(
        "small fuse rated by IEC 60127, 23 °C", 1, Guide("Notes that compare the UL and IEC fuse standards (two of them, in agreement)", "At 23 °C."));

    /// <summary>Continuous load (3 h or more) by the National Electrical Code: 80 %, that is a device of 125 % of the load.</summary>
    public static LoadingRule NationalElectricalCode { get; } = Uniform(
        "continuous load, NEC", 0.8, new Reference { Title = "NFPA 70 (National Electrical Code)", Locator = "210.20(A), 215.3", Kind = ReferenceKind.FromMemory });

    /// <summary>Installation cartridge fuses above 40 A: 80 %. Smaller ones are not covered.</summary>
    public static LoadingRule CartridgeAbove40 { get; } = new(
        "installation cartridge fuse above 40 A", Guide("A teaching page on installation fuses", "Ratings above 40 A only."), [new LoadingStep(40, false, double.PositiveInfinity, 0.8)]);

    /// <summary>Road-vehicle blade fuses: 80 %, the upper end of the usual 70 % to 80 %. Common practice, no published source.</summary>
    public static LoadingRule RoadVehicle { get; } = Uniform(
        "road-vehicle blade fuse", 0.8, Reference.CommonPractice("road-vehicle fuses carry 70 % to 80 % of their rating continuously (from memory)"));

    /// <summary>Road-vehicle blade fuses: 70 %, the lower end of the usual 70 % to 80 %. Common practice, no published source.</summary>
    public static LoadingRule RoadVehicleCautious { get; } = Uniform(
        "road-vehicle blade fuse, cautious", 0.7, Reference.CommonPractice("road-vehicle fuses carry 70 % to 80 % of their rating continuously (from memory)"));

    /// <summary>Cartridge fuses in space hardware at 25 °C: 25 % at 0.125 A to 50 % from 2 A to 15 A. Only the ratings of the table are covered.</summary>
    public static LoadingRule SpaceHardware { get; } = new(
        "cartridge fuse in space hardware, 25 °C",
        new Reference
        {
            Title = "Fuse derating guidelines for space hardware", Locator = "table of cartridge fuses", Kind = ReferenceKind.Handbook,
            Note = "As a reference page prints it; \"2 - 1.5 amps\" is read as 2 A to 15 A. NASA EEE-INST-002 (2003) table 4 is remembered with the same list.",
        },
        [At(0.125, 0.25), At(0.25, 0.30), At(0.375, 0.35), At(0.5, 0.40), At(0.75, 0.40), At(1, 0.45), At(1.5, 0.45), new LoadingStep(2, true, 15, 0.50)]);

    /// <summary>The share of its rating that a fuse may carry continuously.</summary>
    /// <param name="rating">Rated current. Positive.</param>
    /// <returns>The factor, greater than 0 and at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rated current is outside its range or not covered by the rule.</exception>
    public double FactorFor(ElectricCurrent rating) =>
        TryFactorFor(rating, out double factor)
            ? factor
            : throw new ArgumentOutOfRangeException(
                nameof(rating), Accept.Raw(rating), $"rating must be covered by the rule \"{Name}\" ({Covered()}); it was {Accept.Text(Accept.Raw(rating))} A.");

    /// <summary>The share of its rating that a fuse may carry continuously, when the rule covers the rating.</summary>
    /// <param name="rating">Rated current. Positive.</param>
    /// <param name="factor">The factor, or zero.</param>
    /// <returns>False when the rule does not cover the rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rated current is outside its range.</exception>
    public bool TryFactorFor(ElectricCurrent rating, out double factor) => TryFactorFor(Accept.Amperes(rating, nameof(rating)), out factor);

    /// <inheritdoc/>
    public override string ToString() => Name;

    internal bool TryFactorFor(double ratingAmperes, out double factor)
    {
        foreach (LoadingStep step in steps)
        {
            if (step.Covers(ratingAmperes))
            {
                factor = step.Factor;
                return true;
            }
        }

        factor = 0;
        return false;
    }

    private string Covered() => string.Join("; ", steps.Select(s => s.ToString()));

    private static LoadingStep At(double amperes, double factor) => new(amperes, true, amperes, factor);

    private static LoadingRule Uniform(string name, double factor, Reference reference) =>
        new(name, reference, [new LoadingStep(0, false, double.PositiveInfinity, factor)]);

    private static Reference Guide(string title, string note) => new() { Title = title, Kind = ReferenceKind.Handbook, Note = note };
}
