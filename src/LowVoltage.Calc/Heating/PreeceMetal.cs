using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Heating;

/// <summary>A metal of Preece's law, with its coefficient.</summary>
/// <remarks>Coefficients for a diameter in inches, as tables print them: I = a·d^1.5.</remarks>
public sealed class PreeceMetal
{
    private PreeceMetal(string name, double amperesPerInch)
    {
        Name = name;
        Coefficient = amperesPerInch;
    }

    /// <summary>The metal.</summary>
    public string Name { get; }

    /// <summary>a, in amperes per inch to the power 1.5.</summary>
    public double Coefficient { get; }

    /// <summary>The source of the coefficient.</summary>
    public Reference Reference { get; } = FusingEstimates.PreeceReference;

    /// <summary>Copper, 10 244.</summary>
    public static PreeceMetal Copper { get; } = new("copper", 10244);

    /// <summary>Aluminium, 7585.</summary>
    public static PreeceMetal Aluminium { get; } = new("aluminium", 7585);

    /// <summary>Platinum, 5172.</summary>
    public static PreeceMetal Platinum { get; } = new("platinum", 5172);

    /// <summary>German silver (copper, nickel and zinc), 5230.</summary>
    public static PreeceMetal GermanSilver { get; } = new("german silver", 5230);

    /// <summary>Platinoid (german silver with some tungsten), 4750.</summary>
    public static PreeceMetal Platinoid { get; } = new("platinoid", 4750);

    /// <summary>Iron, 3148.</summary>
    public static PreeceMetal Iron { get; } = new("iron", 3148);

    /// <summary>Tin, 1642.</summary>
    public static PreeceMetal Tin { get; } = new("tin", 1642);

    /// <summary>Tin-lead alloy, 1318.</summary>
    public static PreeceMetal TinLeadAlloy { get; } = new("tin-lead alloy", 1318);

    /// <summary>Lead, 1379.</summary>
    public static PreeceMetal Lead { get; } = new("lead", 1379);

    /// <summary>All nine metals.</summary>
    public static IReadOnlyList<PreeceMetal> All { get; } =
        [Copper, Aluminium, Platinum, GermanSilver, Platinoid, Iron, Tin, TinLeadAlloy, Lead];

    /// <inheritdoc/>
    public override string ToString() => Name;
}
