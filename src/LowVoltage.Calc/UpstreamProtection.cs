using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc;

/// <summary>What protects the supply lead before a circuit's own fuse: a main fuse, a main breaker, any device with stated values; where it sits, and the lead behind it.</summary>
/// <remarks>
/// <para>A circuit states its devices in <see cref="CircuitRequirements.UpstreamProtection"/>, from the source on. What is not stated is not guessed: the check that needs it is undetermined and says so.</para>
/// <para>Immutable and thread-safe. Made by <see cref="Fuse"/> or <see cref="Device"/>, completed by the <c>With…</c> methods, each of which returns a copy.</para>
/// </remarks>
public sealed class UpstreamProtection
{
    // A standard's own temperature for its resistances.
    internal const double StatedCelsius = 20;

    private UpstreamProtection(FuseRating rating) => Rating = rating;

    private UpstreamProtection(UpstreamProtection basis)
    {
        Rating = basis.Rating;
        UpstreamOhms = basis.UpstreamOhms;
        DistanceMeters = basis.DistanceMeters;
        Sheathed = basis.Sheathed;
        AmbientCelsius = basis.AmbientCelsius;
        Lead = basis.Lead;
        LetThrough = basis.LetThrough;
        WithstandBehind = basis.WithstandBehind;
        LeastMelting = basis.LeastMelting;
    }

    /// <summary>The device: a fuse of a series, or the one that was stated.</summary>
    public FuseRating Rating { get; }

    /// <summary>
    /// Resistance of the supply lead between the source's terminals and the device, out and back. Zero says that it sits on the terminal; <c>null</c>, that it is not known:
    /// then it must break what the terminals give.
    /// </summary>
    public ElectricResistance? Upstream => UpstreamOhms is { } ohms ? ElectricResistance.FromOhms(ohms) : null;

    /// <summary>Length of conductor between the source and the device; <c>null</c> when not known.</summary>
    public Length? Distance => DistanceMeters is { } meters ? Length.FromMeters(meters) : null;

    /// <summary>Whether the conductor between source and device is sheathed or enclosed over its whole length.</summary>
    public bool Sheathed { get; private init; }

    /// <summary>Temperature of the air around the device; <c>null</c> means that of the circuit's place.</summary>
    public Temperature? Ambient => AmbientCelsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The part of the supply lead behind the device, out and back, up to the next device or to the circuit's fuse; <c>null</c> when not known, or where there is none: there is none where the resistance stated before both is the same.</summary>
    public CircuitPath? Lead { get; private init; }

    /// <summary>The greatest Joule integral that the device lets through, at any fault current behind it; <c>null</c> means by its curve, where it has one.</summary>
    public JouleIntegral? LetThrough { get; private init; }

    /// <summary>The Joule integral that a device behind this one withstands beyond its own breaking capacity, by its maker; <c>null</c> when not known.</summary>
    public JouleIntegral? WithstandBehind { get; private init; }

    /// <summary>The least Joule integral that opens the device, at any current; <c>null</c> means by its curve, as far as that is proven.</summary>
    public JouleIntegral? LeastMelting { get; private init; }

    internal double? UpstreamOhms { get; private init; }

    internal double? DistanceMeters { get; private init; }

    internal double? AmbientCelsius { get; private init; }

    /// <summary>A fuse, or a breaker, of a series that is carried or of the caller's.</summary>
    /// <param name="rating">The rating of the series.</param>
    /// <returns>The device; its place and the lead behind it by the <c>With…</c> methods.</returns>
    /// <exception cref="ArgumentNullException">The rating is null.</exception>
    public static UpstreamProtection Fuse(FuseRating rating) => new(rating ?? throw new ArgumentNullException(nameof(rating)));

    /// <summary>A device with stated values: what its marking or data sheet says.</summary>
    /// <param name="name">What it is called: <c>main breaker</c>.</param>
    /// <param name="rating">Rated current. Positive.</param>
    /// <param name="voltageRating">Rated d.c. voltage; <c>null</c> when not known.</param>
    /// <param name="breakingCapacity">Breaking capacity for d.c. at the rated voltage; <c>null</c> when not known.</param>
    /// <param name="curve">Its time-current curve; <c>null</c> when not known.</param>
    /// <returns>The device; its place, the lead behind it and its let-through by the <c>With…</c> methods.</returns>
    /// <remarks>A voltage or breaking capacity that is too small for the circuit is a failed check, not an exception.</remarks>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The curve opens the device below its rating.</exception>
    public static UpstreamProtection Device(
        string name, ElectricCurrent rating, ElectricPotential? voltageRating, ElectricCurrent? breakingCapacity, TimeCurrentCurve? curve = null)
    {
        _ = name ?? throw new ArgumentNullException(nameof(name));
        double? volts = voltageRating is { } voltage ? Accept.Volts(voltage, nameof(voltageRating)) : null;
        double? breaking = breakingCapacity is { } capacity ? Accept.Amperes(capacity, nameof(breakingCapacity)) : null;
        double amperes = Accept.Amperes(rating, nameof(rating));
        FuseSeriesCheck.Carries(curve, amperes, nameof(curve), nameof(curve));
        FuseSeries series = FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = "as stated",
            Kind = name,
            Reference = Reference.CommonPractice("values of the device as the caller states them"),
            Ratings = [ElectricCurrent.FromAmperes(amperes)],
            VoltageRating = volts is { } v ? ElectricPotential.FromVolts(v) : null,
            VoltageBasis = volts is null ? RatingBasis.NotStated : RatingBasis.DirectCurrent,
            BreakingCapacity = breaking is { } a ? ElectricCurrent.FromAmperes(a) : null,
            BreakingCapacityBasis = breaking is null ? RatingBasis.NotStated : RatingBasis.DirectCurrent,
            Curves = curve is null ? null : [curve],
        });
        return new UpstreamProtection(series.Ratings[0]);
    }

    /// <summary>The same device after a part of the supply lead.</summary>
    /// <param name="upstream">See <see cref="Upstream"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is outside its range.</exception>
    public UpstreamProtection WithUpstream(ElectricResistance? upstream) =>
        new(this) { UpstreamOhms = upstream is { } given ? Accept.OhmsOrZero(given, nameof(upstream)) : null };

    /// <summary>The same device at a distance from the source.</summary>
    /// <param name="distance">See <see cref="Distance"/>.</param>
    /// <param name="sheathed">See <see cref="Sheathed"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside its range.</exception>
    public UpstreamProtection WithDistance(Length? distance, bool sheathed) =>
        new(this) { DistanceMeters = distance is { } given ? Accept.MetersOrZero(given, nameof(distance)) : null, Sheathed = sheathed };

    /// <summary>The same device in other air.</summary>
    /// <param name="ambient">See <see cref="Ambient"/>; −60 °C to 250 °C.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public UpstreamProtection WithAmbient(Temperature? ambient) =>
        new(this) { AmbientCelsius = ambient is { } given ? Accept.Within(Accept.Celsius(given, nameof(ambient)), -60, 250, "°C", nameof(ambient)) : null };

    /// <summary>The same device with the lead behind it, which is then checked as a wire of its own.</summary>
    /// <param name="lead">See <see cref="Lead"/>. A segment without a place or a wire of its own runs in the circuit's place with the circuit's insulation.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentException">The lead is a resistance without wires: state that by <see cref="CircuitRequirements.Upstream"/>.</exception>
    public UpstreamProtection WithLead(CircuitPath? lead) => new(this) { Lead = lead?.OfWires(nameof(lead)) };

    /// <summary>The same device with its let-through from its data sheet, and what a device behind it withstands.</summary>
    /// <param name="letThrough">See <see cref="LetThrough"/>.</param>
    /// <param name="withstandBehind">See <see cref="WithstandBehind"/>.</param>
    /// <returns>A copy.</returns>
    public UpstreamProtection WithLetThrough(JouleIntegral? letThrough, JouleIntegral? withstandBehind) => new(this) { LetThrough = letThrough, WithstandBehind = withstandBehind };

    /// <summary>The same device with its least melting (pre-arcing) Joule integral from its data sheet.</summary>
    /// <param name="leastMelting">See <see cref="LeastMelting"/>.</param>
    /// <returns>A copy.</returns>
    public UpstreamProtection WithLeastMelting(JouleIntegral? leastMelting) => new(this) { LeastMelting = leastMelting };

    /// <summary>Devices in a row from the source on, none of them nearer to it than the one before.</summary>
    internal static UpstreamProtection[] InOrder(IReadOnlyList<UpstreamProtection> devices, string name)
    {
        UpstreamProtection[] row = [.. devices.Select(device => device ?? throw new ArgumentNullException(name, "A device is null."))];
        for (int i = 1; i < row.Length; i++)
        {
            if (row[i].UpstreamOhms < row[i - 1].UpstreamOhms || row[i].DistanceMeters < row[i - 1].DistanceMeters)
            {
                throw new ArgumentException(
                    $"{name}[{Accept.Text(i)}] must not sit nearer to the source than the device before it; the {row[i - 1]} was given before the {row[i]}.", name);
            }
        }

        return row;
    }

    /// <summary>What counts of a lead, Ω: what is stated of the whole; or where that is nothing or less than its wires have at 20 °C, these as hot as their insulation allows, or as they are stated to be.</summary>
    internal static double CountedOhms(double? whole, ReadOnlySpan<UpstreamProtection> row, InsulationMaterial insulation)
    {
        double cold = 0, hot = 0;
        foreach (UpstreamProtection device in row)
        {
            (cold, hot) = Whole(device.UpstreamOhms, cold, hot);
            if (device.Lead is { } lead)
            {
                cold += lead.OhmsAt(StatedCelsius);
                hot += HotOhms(lead, insulation);
            }
        }

        return Whole(whole, cold, hot).Hot;
    }

    // What is stated as a whole, with no less than the wires before have when cold, says it all.
    private static (double Cold, double Hot) Whole(double? stated, double cold, double hot) =>
        stated is { } whole && cold <= whole * (1 + 1e-9) ? (whole, whole) : (cold, Math.Max(hot, stated ?? 0));

    private static double HotOhms(CircuitPath lead, InsulationMaterial insulation)
    {
        double ohms = lead.FixedOhms;
        foreach (Segment[] part in new[] { lead.FeedArray, lead.BackArray })
        {
            foreach (Segment segment in part)
            {
                double allowed = (segment.Wire?.Insulation ?? insulation).ContinuousCelsius;
                ohms += segment.OhmsAt(segment.Temperature is { } stated ? Math.Max(allowed, stated.CelsiusAt(0)) : allowed);
            }
        }

        return ohms;
    }

    /// <summary>The device in words: <c>63 A gG fuse-link (IEC 60269-1 gG)</c>.</summary>
    public override string ToString() => Rating.ToString();
}
