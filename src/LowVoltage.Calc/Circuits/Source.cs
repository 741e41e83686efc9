using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>What feeds a circuit: a range of open-circuit voltages behind a range of internal resistances, and perhaps a current limit.</summary>
/// <remarks>
/// <para>Two resistances are kept, because one cannot serve both short-circuit questions: the least (new, warm, full) gives the greatest current,
/// which a fuse must be able to break; the greatest (aged, cold) gives the least, which must still open it.</para>
/// Immutable and thread-safe.
/// </remarks>
public sealed class Source
{
    private Source(string name, SourceNumbers numbers, Reference reference, IReadOnlyList<string> assumptions)
    {
        Name = name;
        Numbers = numbers;
        Reference = reference;
        Assumptions = assumptions;
    }

    /// <summary>What the source is: <c>lead-acid battery</c>.</summary>
    public string Name { get; }

    /// <summary>Least open-circuit voltage.</summary>
    public ElectricPotential MinimumVoltage => ElectricPotential.FromVolts(Numbers.MinimumVolts);

    /// <summary>Nominal voltage, which a drop in per cent is counted on.</summary>
    public ElectricPotential NominalVoltage => ElectricPotential.FromVolts(Numbers.NominalVolts);

    /// <summary>Greatest open-circuit voltage.</summary>
    public ElectricPotential MaximumVoltage => ElectricPotential.FromVolts(Numbers.MaximumVolts);

    /// <summary>Least internal resistance: new, warm, full.</summary>
    public ElectricResistance LeastResistance => ElectricResistance.FromOhms(Numbers.LeastOhms);

    /// <summary>Internal resistance used at the nominal voltage.</summary>
    public ElectricResistance NominalResistance => ElectricResistance.FromOhms(Numbers.NominalOhms);

    /// <summary>Greatest internal resistance: aged, cold.</summary>
    public ElectricResistance GreatestResistance => ElectricResistance.FromOhms(Numbers.GreatestOhms);

    /// <summary>The current limit; <c>null</c> when there is none.</summary>
    public ElectricCurrent? CurrentLimit =>
        Numbers.Action == LimitAction.None ? null : ElectricCurrent.FromAmperes(Numbers.LimitAmperes);

    /// <summary>What the source does at its limit.</summary>
    public LimitAction LimitAction => Numbers.Action;

    /// <summary>Where the numbers come from.</summary>
    public Reference Reference { get; }

    /// <summary>What was assumed, one sentence each.</summary>
    public IReadOnlyList<string> Assumptions { get; }

    internal SourceNumbers Numbers { get; }

    /// <summary>What the numbers were worked out from; null where they were stated.</summary>
    internal SourceBasis? Basis { get; private init; }

    /// <summary>The sources that this one is made of; empty for a source by itself.</summary>
    internal IReadOnlyList<Source> Parts { get; private init; } = [];

    /// <summary>Whether the parts are in parallel; otherwise they are in series.</summary>
    internal bool IsParallel { get; private init; }

    /// <summary>A voltage that nothing changes: no internal resistance, no limit.</summary>
    /// <param name="voltage">The voltage, positive.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive or is absurdly large.</exception>
    public static Source Ideal(ElectricPotential voltage)
    {
        double volts = Accept.Volts(voltage, nameof(voltage));
        return Stated("ideal voltage", new SourceNumbers(volts, volts, volts, 0, 0, 0));
    }

    /// <summary>A supply known by its range of voltages at the point where the circuit begins: no internal resistance, no limit.</summary>
    /// <param name="minimum">Least voltage, positive.</param>
    /// <param name="nominal">Nominal voltage, at least the least.</param>
    /// <param name="maximum">Greatest voltage, at least the nominal.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is outside its range or out of order.</exception>
    public static Source Ideal(ElectricPotential minimum, ElectricPotential nominal, ElectricPotential maximum) =>
        Stated("voltage range", SourceNumbers.Range(minimum, nominal, maximum, 0, 0, 0));

    /// <summary>One voltage behind one resistance.</summary>
    /// <param name="voltage">Open-circuit voltage, positive.</param>
    /// <param name="resistance">Internal resistance, zero or greater.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Source BehindResistance(ElectricPotential voltage, ElectricResistance resistance)
    {
        double volts = Accept.Volts(voltage, nameof(voltage)), ohms = Accept.OhmsOrZero(resistance, nameof(resistance));
        return Stated("voltage behind a resistance", new SourceNumbers(volts, volts, volts, ohms, ohms, ohms));
    }

    /// <summary>A range of voltages behind a range of resistances. The nominal voltage has the mean of the two resistances.</summary>
    /// <param name="minimum">Least open-circuit voltage, positive.</param>
    /// <param name="nominal">Nominal voltage, at least the least.</param>
    /// <param name="maximum">Greatest open-circuit voltage, at least the nominal.</param>
    /// <param name="leastResistance">Least internal resistance, zero or greater.</param>
    /// <param name="greatestResistance">Greatest internal resistance, at least the least.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range or out of order.</exception>
    public static Source BehindResistance(
        ElectricPotential minimum,
        ElectricPotential nominal,
        ElectricPotential maximum,
        ElectricResistance leastResistance,
        ElectricResistance greatestResistance)
    {
        double least = Accept.OhmsOrZero(leastResistance, nameof(leastResistance));
        double most = Accept.Within(
            Accept.OhmsOrZero(greatestResistance, nameof(greatestResistance)), least, Accept.MostOhms, "Ω", nameof(greatestResistance));
        return Stated("voltage behind a resistance", SourceNumbers.Range(minimum, nominal, maximum, least, 0.5 * (least + most), most));
    }

    /// <summary>A regulated supply that holds its current at a limit.</summary>
    /// <param name="voltage">Voltage below the limit, positive.</param>
    /// <param name="limit">Current limit, positive.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Source CurrentLimited(ElectricPotential voltage, ElectricCurrent limit)
    {
        double volts = Accept.Volts(voltage, nameof(voltage));
        SourceNumbers numbers = new(volts, volts, volts, 0, 0, 0) { Action = LimitAction.Holds, LimitAmperes = Accept.Amperes(limit, nameof(limit)) };
        return Create("current-limited supply", numbers, Given, "The supply holds its current at the limit; the discharge of its output capacitor at a short circuit is not counted.");
    }

    /// <summary>An alternator or generator without a battery beside it: its regulated voltage up to its rated current.</summary>
    /// <param name="regulated">Regulated voltage, positive.</param>
    /// <param name="rated">Rated current, positive; taken as its limit.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Source Alternator(ElectricPotential regulated, ElectricCurrent rated)
    {
        double volts = Accept.Volts(regulated, nameof(regulated));
        SourceNumbers numbers = new(volts, volts, volts, 0, 0, 0) { Action = LimitAction.Holds, LimitAmperes = Accept.Amperes(rated, nameof(rated)) };
        return Create(
            "alternator",
            numbers,
            Reference.CommonPractice("an alternator limits itself near its rated current"),
            "The alternator limits itself near its rated current, after a first surge that is not counted.",
            "A battery beside it adds its own current to a short circuit.");
    }

    /// <summary>Sources in series: voltages and resistances add. The smallest current limit holds for all.</summary>
    /// <param name="sources">At least one.</param>
    /// <returns>The combination.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static Source InSeries(params Source[] sources) => SourceCombination.Series(sources);

    /// <summary>Sources side by side, each behind its own resistance. Their voltages need not be equal: then current flows between them with no load.</summary>
    /// <param name="sources">At least one; each with an internal resistance; all with the same kind of limit or all without.</param>
    /// <returns>
    /// The combination: V = Σ(Vk/Rk)/Σ(1/Rk), 1/R = Σ(1/Rk). At the minimum the lowest V of any resistances within their ranges, behind the greatest of all; at the maximum the highest V behind the least of all.
    /// Limits add; of sources that disconnect the first one ends it, all of them taken as equally warm, old and charged.
    /// </returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    /// <exception cref="ArgumentException">There is none, one has no resistance, or only some have a current limit.</exception>
    public static Source InParallel(params Source[] sources) => SourceCombination.Parallel(sources);

    /// <inheritdoc/>
    public override string ToString() => $"{Name}, {Accept.Text(Numbers.NominalVolts)} V";

    /// <summary>The same source with every voltage so many times as high: a tolerance of its make.</summary>
    internal Source Scaled(double factor) => factor.Equals(1.0) ? this : new Source(
        Name,
        Numbers with { MinimumVolts = Numbers.MinimumVolts * factor, NominalVolts = Numbers.NominalVolts * factor, MaximumVolts = Numbers.MaximumVolts * factor },
        Reference,
        Assumptions);

    internal static Source Create(string name, in SourceNumbers numbers, Reference reference, params string[] assumptions) =>
        new(name, numbers, reference, assumptions);

    internal Source From(SourceBasis basis) => new(Name, Numbers, Reference, Assumptions) { Basis = basis };

    internal Source Of(Source[] parts, bool parallel) => new(Name, Numbers, Reference, Assumptions) { Parts = [.. parts], IsParallel = parallel };

    private static Source Stated(string name, in SourceNumbers numbers) => Create(name, numbers, Given);

    private static Reference Given { get; } = Reference.CommonPractice("source described by the caller");
}
