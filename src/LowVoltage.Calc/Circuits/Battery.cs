using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Batteries as sources.</summary>
/// <remarks>
/// <para>The numbers are for wiring: a range that holds the battery whatever its state, not a model of it. Where a measured
/// internal resistance is at hand, <see cref="Source.BehindResistance(ElectricPotential, ElectricPotential, ElectricPotential, ElectricResistance, ElectricResistance)"/> is better.</para>
/// </remarks>
public static partial class Battery
{
    // Voltage at rest that the bound on the resistance counts from, six cells.
    private const double TestRestVolts = 12.6;
    private const double NominalVolts = 12.0;
    private const double ChargingVolts = 14.4;

    // Cold (−18 °C) over warm (+25 °C) resistance: published figures suit 2 to 2.5. Each end is used where it is the safer.
    private const double MostWarming = 2.5;
    private const double LeastWarming = 2.0;

    // Aged over new: typical new starter batteries 3 to 8 mΩ, aged ones 10 to 20 mΩ.
    private const double Aging = 2.0;
    private const double ColdCelsius = -18;
    private const double WarmCelsius = 25;

    private const double CellCutOffVolts = 2.5;
    private const double CellNominalVolts = 3.2;
    private const double CellChargeVolts = 3.65;
    private const double CellOhmAmpereHours = 0.040;
    private const double CellSpread = 2.0;

    /// <summary>Where the internal resistance of a lead-acid battery comes from.</summary>
    public static Reference LeadAcidReference { get; } = new()
    {
        Title = "Internal resistance from the cold-cranking test, R ≤ (12.6 V − end voltage)/current",
        Kind = ReferenceKind.FromMemory,
        Note = "The bound follows from the definition of the test. Its change with temperature (2 to 2.5 times from +25 °C to −18 °C) and with age "
            + "(2 times) is from memory, low confidence. Voltages: empty at rest 11.89 V (table), nominal 12 V and 14.4 V on charge (common practice).",
    };

    private static readonly Reference LeadAcidVoltages = Reference.CommonPractice("a 12 V lead-acid block is taken at 12 V nominal and 14.4 V on charge");

    /// <summary>Where the numbers of a lithium iron phosphate pack come from.</summary>
    public static Reference LithiumIronPhosphateReference { get; } = new()
    {
        Title = "Lithium iron phosphate cells: 2.5 V cut-off, 3.2 V nominal, 3.65 V charge limit; 40 mΩ·Ah",
        Kind = ReferenceKind.FromMemory,
        Note = "Cell voltages and the resistance of new cells (0.2 mΩ at 200 Ah, 2 mΩ at 20 Ah) are from trade pages. Half and twice that value for least and greatest "
            + "are this library's own margin, no published source.",
    };

    /// <summary>A lead-acid battery (flooded, AGM or gel), from its cold-cranking current (cold-cranking amperes, CCA).</summary>
    /// <param name="coldCranking">Cold-cranking current of one 12 V block, positive.</param>
    /// <param name="standard">The test behind that current; ratings of different tests are not interchangeable.</param>
    /// <param name="blocksInSeries">12 V blocks in series: 1 for 12 V, 2 for 24 V; 1 to 1000.</param>
    /// <param name="stringsInParallel">Strings side by side, 1 to 1000.</param>
    /// <param name="temperature">Battery temperature, −18 °C to +25 °C, when it is known; <c>null</c> counts the whole of that range.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>
    /// <code>Rc = (12.6 V − Ve)/Icc    least Rc/2.5    nominal Rc    greatest 2·Rc    (−18 °C test, temperature not given)</code>
    /// <para><b>Symbols.</b> Icc cold-cranking current, Ve least voltage at the end of the test (7.2 V, SAE J537), Rc resistance of a new battery at the test's temperature: an
    /// upper bound, polarisation after 30 s included.</para>
    /// <para><b>Least</b> (what a fuse must break): new and warm, Rc over 2.5, behind the charging voltage. For 600 A: 3.6 mΩ, at the low end of the 3 to 8 mΩ of new batteries.
    /// <b>Greatest</b> (does a fuse still open): aged and cold, twice Rc. For 600 A: 18 mΩ, within the 10 to 20 mΩ of aged ones.</para>
    /// <para>Between −18 °C and +25 °C the factor is taken as exponential in temperature. Per block: 11.89 V at rest when empty (minimum), 12 V nominal, 14.4 V on charge (maximum).</para>
    /// <para>The resistance follows from the test, whatever the construction; the voltages are those of a flooded battery. A sealed one (AGM, gel) rests and charges some tenths of a volt higher, from
    /// memory: state its voltages with <see cref="Source.BehindResistance(ElectricPotential, ElectricPotential, ElectricPotential, ElectricResistance, ElectricResistance)"/> where that counts.</para>
    /// <para><b>Accuracy.</b> A factor of two either way; that is why two values are kept.</para>
    /// </remarks>
    public static Source LeadAcid(
        ElectricCurrent coldCranking,
        ColdCrankingStandard standard = ColdCrankingStandard.SaeJ537,
        int blocksInSeries = 1,
        int stringsInParallel = 1,
        Temperature? temperature = null)
    {
        ColdCrankingTest test = ColdCrankingTest.Of(standard);
        double bound = (TestRestVolts - test.EndVolts) / Accept.Amperes(coldCranking, nameof(coldCranking));
        int series = Accept.Count(blocksInSeries, 1, 1000, nameof(blocksInSeries));
        double scale = (double)series / Accept.Count(stringsInParallel, 1, 1000, nameof(stringsInParallel));
        (double least, double greatest) = Factors(test.TestCelsius, temperature);
        double nominal = temperature is null ? 1 : Math.Sqrt(least * greatest / Aging);
        SourceNumbers numbers = new(
            LeadAcidCharge.EmptyVolts * series,
            NominalVolts * series,
            ChargingVolts * series,
            bound * scale * least,
            bound * scale * nominal,
            bound * scale * greatest);
        return Source.Create("lead-acid battery", numbers, LeadAcidReference, Assumed(test, temperature, least, greatest))
            .From(new LeadAcidBasis(Accept.Amperes(coldCranking, nameof(coldCranking)), test, series, stringsInParallel, temperature?.DegreesCelsius));
    }

    /// <summary>A pack of lithium iron phosphate cells (LFP, LiFePO4), from its cells in series and its ampere-hours.</summary>
    /// <param name="cellsInSeries">Cells in series: 4 for 12.8 V, 8 for 25.6 V, 16 for 51.2 V; 1 to 1000.</param>
    /// <param name="capacity">Capacity of the pack, positive.</param>
    /// <param name="protectionLimit">Current at which its protection disconnects; <c>null</c> when there is none or it is not known.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>
    /// <code>R = n·40 mΩ·Ah/C    least half of it, greatest twice of it</code>
    /// <para><b>Symbols.</b> n cells in series, C capacity. Per cell 2.5 V cut-off (minimum), 3.2 V nominal, 3.65 V charge limit (maximum).</para>
    /// <para>The greatest prospective current never counts on the protection: it may be slow, bypassed or welded. Links and fuse are not in R.</para>
    /// </remarks>
    public static Source LithiumIronPhosphate(int cellsInSeries, ElectricCharge capacity, ElectricCurrent? protectionLimit = null)
    {
        int cells = Accept.Count(cellsInSeries, 1, 1000, nameof(cellsInSeries));
        double ohms = cells * CellOhmAmpereHours * 3600 / ElectricalEnergy.Coulombs(capacity, nameof(capacity));
        SourceNumbers numbers = new(
            CellCutOffVolts * cells, CellNominalVolts * cells, CellChargeVolts * cells, ohms / CellSpread, ohms, ohms * CellSpread);
        if (protectionLimit is { } limit)
        {
            numbers = numbers with { LimitAmperes = Accept.Amperes(limit, nameof(protectionLimit)), Action = LimitAction.Disconnects };
        }

        return Source.Create(
            "lithium iron phosphate pack",
            numbers,
            LithiumIronPhosphateReference,
            "Resistance of the cells alone: links, fuse and electronic switch of the pack are not counted.",
            "The pack's own protection is not relied on to break a short circuit, but may be what ends it.")
            .From(new LithiumBasis(cells, Accept.Raw(capacity)));
    }

    // Resistance at a temperature over resistance at the test's, for the least (most warming, new) and the greatest (least warming, aged).
    private static (double Least, double Greatest) Factors(double testCelsius, Temperature? temperature)
    {
        if (temperature is not { } stated)
        {
            return (Math.Pow(MostWarming, -Share(WarmCelsius - testCelsius)), Aging * Math.Pow(MostWarming, Share(testCelsius - ColdCelsius)));
        }

        double celsius = Accept.Within(Accept.Celsius(stated, nameof(temperature)), ColdCelsius, WarmCelsius, "°C", nameof(temperature));
        double share = Share(celsius - testCelsius);
        double most = Math.Pow(MostWarming, -share), least = Math.Pow(LeastWarming, -share);
        return (Math.Min(most, least), Aging * Math.Max(most, least));
    }

    private static double Share(double kelvins) => kelvins / (WarmCelsius - ColdCelsius);

    private static string[] Assumed(ColdCrankingTest test, Temperature? temperature, double least, double greatest) =>
    [
        $"Internal resistance from the cold-cranking current by {test.Reference.Title} ({Accept.Text(test.EndVolts)} V after {Accept.Text(test.Seconds)} s at {Accept.Text(test.TestCelsius)} °C), "
        + $"times {Accept.Text(least)} when new and times {Accept.Text(greatest)} when aged.",
        temperature is { } stated
            ? $"Battery at {Accept.Text(stated.DegreesCelsius)} °C."
            : "Battery anywhere from -18 °C to 25 °C.",
        "Each 12 V block 11.89 V at rest when empty, 12 V nominal, 14.4 V on charge.",
    ];
}
