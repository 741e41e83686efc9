using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The conditions of a cold-cranking test of a 12 V battery.</summary>
public sealed class ColdCrankingTest
{
    internal ColdCrankingTest()
    {
    }

    internal double EndVolts { get; init; }

    internal double Seconds { get; init; }

    internal double TestCelsius { get; init; }

    /// <summary>Which test.</summary>
    public ColdCrankingStandard Standard { get; internal init; }

    /// <summary>Least voltage at the end of the test, for six cells.</summary>
    public ElectricPotential EndVoltage => ElectricPotential.FromVolts(EndVolts);

    /// <summary>How long the current flows.</summary>
    public Duration Duration => Duration.FromSeconds(Seconds);

    /// <summary>Temperature of the battery.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(TestCelsius);

    /// <summary>The standard.</summary>
    public required Reference Reference { get; init; }

    /// <summary>The conditions of one test.</summary>
    /// <param name="standard">Which test.</param>
    /// <returns>Its conditions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not one of the enumeration.</exception>
    public static ColdCrankingTest Of(ColdCrankingStandard standard) => standard switch
    {
        ColdCrankingStandard.SaeJ537 => SaeJ537,
        ColdCrankingStandard.En50342 => En50342,
        ColdCrankingStandard.Din43539 => Din43539,
        ColdCrankingStandard.Iec95 => Iec95,
        ColdCrankingStandard.MarineCranking => Marine,
        _ => throw new ArgumentOutOfRangeException(nameof(standard), standard, $"standard must name one of the tests; it was {Quantities.Accept.Text((int)standard)}."),
    };

    private const string Secondary = "As quoted by vehicle service texts and battery glossaries; the standard itself was not read.";

    private static readonly ColdCrankingTest SaeJ537 = Test(ColdCrankingStandard.SaeJ537, 7.2, 30, -18, "SAE J537", Secondary);

    private static readonly ColdCrankingTest En50342 = Test(
        ColdCrankingStandard.En50342, 7.5, 10, -18, "EN 50342-1", Secondary + " A second stage runs down to 6.0 V.");

    private static readonly ColdCrankingTest Din43539 = Test(ColdCrankingStandard.Din43539, 9.0, 30, -18, "DIN 43539-2", Secondary + " Withdrawn.");

    private static readonly ColdCrankingTest Iec95 = Test(ColdCrankingStandard.Iec95, 8.4, 60, -18, "IEC 95-1", Secondary + " Withdrawn.");

    private static readonly ColdCrankingTest Marine = Test(
        ColdCrankingStandard.MarineCranking, 7.2, 30, 0, "Marine cranking current (CA, MCA)", Secondary);

    private static ColdCrankingTest Test(ColdCrankingStandard standard, double volts, double seconds, double celsius, string title, string note) => new()
    {
        Standard = standard,
        EndVolts = volts,
        Seconds = seconds,
        TestCelsius = celsius,
        Reference = new Reference { Title = title, Kind = ReferenceKind.Standard, Note = note },
    };
}
