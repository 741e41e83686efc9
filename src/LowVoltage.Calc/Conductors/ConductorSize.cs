using System.Globalization;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A conductor size of any system, with the system as part of its identity.</summary>
/// <remarks>
/// 14 AWG, 14 SAE and 14 aircraft are three sizes and never equal; nothing converts one system into another by equivalence.
/// <c>default</c> is no size (<see cref="IsNone"/>): it prints <c>no size</c> and is refused wherever a size is needed. Sizes of different systems
/// have no order: compare <see cref="NominalArea"/>.
/// </remarks>
public readonly partial struct ConductorSize
{
    // The gauge number, the kcmil or the mm²: one number is enough for every system.
    private readonly double value;

    private ConductorSize(SizeSystem system, double value)
    {
        System = system;
        this.value = value;
    }

    /// <summary>Whether this is no size: a <c>default</c>, or what a <c>TryParse</c> left that answered false.</summary>
    public bool IsNone => System == SizeSystem.Geometry;

    /// <summary>The system; <see cref="SizeSystem.Geometry"/> for no size. Nominal square millimetres of whichever standard are <see cref="SizeSystem.Metric"/>.</summary>
    public SizeSystem System { get; }

    /// <summary>The gauge number, kcmil or nominal mm², as the tables key it.</summary>
    internal double Value => value;

    /// <summary>The size as text with its system, invariant: <c>14 AWG</c>, <c>2.5 mm²</c>; <c>no size</c> for <c>default</c>.</summary>
    public string Designation => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>The nominal cross-section that goes with the size.</summary>
    /// <exception cref="InvalidOperationException">This is no size.</exception>
    public Area NominalArea => Area.FromSquareMillimeters(System switch
    {
        SizeSystem.AmericanWireGauge => AwgSize.FromNumber((int)value).AreaSquareMillimeters,
        SizeSystem.Kcmil => KcmilSize.FromKcmil(value).AreaSquareMillimeters,
        SizeSystem.Metric => value,
        SizeSystem.VehicleGauge => VehicleGaugeSize.FromNumber((int)value).AreaSquareMillimeters,
        SizeSystem.AircraftWire => AircraftWireSize.FromNumber((int)value).AreaSquareMillimeters,
        _ => throw NoSize.Read(nameof(ConductorSize)),
    });

    /// <summary>An AWG size as a size of any system.</summary>
    /// <param name="size">The size.</param>
    /// <returns>The same size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static ConductorSize FromAwg(AwgSize size) => new(SizeSystem.AmericanWireGauge, size.Need(nameof(size)).Number);

    /// <summary>An AWG size as a size of any system; the same as <see cref="FromAwg"/>.</summary>
    /// <param name="size">The size.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static implicit operator ConductorSize(AwgSize size) => FromAwg(size);

    /// <summary>The size as an AWG size, if it is one; no conversion between systems.</summary>
    /// <param name="size">The size, or no size.</param>
    /// <returns>Whether the size is of that system.</returns>
    public bool TryGetAwg(out AwgSize size)
    {
        bool found = System == SizeSystem.AmericanWireGauge;
        size = found ? AwgSize.FromNumber((int)value) : default;
        return found;
    }

    /// <summary>A kcmil size as a size of any system.</summary>
    /// <param name="size">The size.</param>
    /// <returns>The same size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static ConductorSize FromKcmil(KcmilSize size) => new(SizeSystem.Kcmil, size.Need(nameof(size)).Kcmil);

    /// <summary>A kcmil size as a size of any system; the same as <see cref="FromKcmil"/>.</summary>
    /// <param name="size">The size.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static implicit operator ConductorSize(KcmilSize size) => FromKcmil(size);

    /// <summary>The size as a kcmil size, if it is one; no conversion between systems.</summary>
    /// <param name="size">The size, or no size.</param>
    /// <returns>Whether the size is of that system.</returns>
    public bool TryGetKcmil(out KcmilSize size)
    {
        bool found = System == SizeSystem.Kcmil;
        size = found ? KcmilSize.FromKcmil(value) : default;
        return found;
    }

    /// <summary>A metric size as a size of any system.</summary>
    /// <param name="size">The size.</param>
    /// <returns>The same size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static ConductorSize FromMetric(MetricSize size) =>
        new(SizeSystem.Metric, size.Need(nameof(size)).SquareMillimeters);

    /// <summary>A metric size as a size of any system; the same as <see cref="FromMetric"/>.</summary>
    /// <param name="size">The size.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static implicit operator ConductorSize(MetricSize size) => FromMetric(size);

    /// <summary>The size as a metric size, if it is one; no conversion between systems.</summary>
    /// <param name="size">The size, or no size.</param>
    /// <returns>Whether the size is of that system.</returns>
    public bool TryGetMetric(out MetricSize size)
    {
        bool found = System == SizeSystem.Metric;
        size = found ? MetricSize.FromSquareMillimeters(value) : default;
        return found;
    }

    /// <summary>A vehicle gauge as a size of any system.</summary>
    /// <param name="size">The size.</param>
    /// <returns>The same size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static ConductorSize FromVehicleGauge(VehicleGaugeSize size) => new(SizeSystem.VehicleGauge, size.Need(nameof(size)).Number);

    /// <summary>A vehicle gauge as a size of any system; the same as <see cref="FromVehicleGauge"/>.</summary>
    /// <param name="size">The size.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static implicit operator ConductorSize(VehicleGaugeSize size) => FromVehicleGauge(size);

    /// <summary>The size as a vehicle gauge, if it is one; no conversion between systems.</summary>
    /// <param name="size">The size, or no size.</param>
    /// <returns>Whether the size is of that system.</returns>
    public bool TryGetVehicleGauge(out VehicleGaugeSize size)
    {
        bool found = System == SizeSystem.VehicleGauge;
        size = found ? VehicleGaugeSize.FromNumber((int)value) : default;
        return found;
    }

    /// <summary>An aircraft wire size as a size of any system.</summary>
    /// <param name="size">The size.</param>
    /// <returns>The same size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static ConductorSize FromAircraft(AircraftWireSize size) => new(SizeSystem.AircraftWire, size.Need(nameof(size)).Number);

    /// <summary>An aircraft wire size as a size of any system; the same as <see cref="FromAircraft"/>.</summary>
    /// <param name="size">The size.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static implicit operator ConductorSize(AircraftWireSize size) => FromAircraft(size);

    /// <summary>The size as an aircraft wire size, if it is one; no conversion between systems.</summary>
    /// <param name="size">The size, or no size.</param>
    /// <returns>Whether the size is of that system.</returns>
    public bool TryGetAircraft(out AircraftWireSize size)
    {
        bool found = System == SizeSystem.AircraftWire;
        size = found ? AircraftWireSize.FromNumber((int)value) : default;
        return found;
    }

    /// <inheritdoc/>
    public bool Equals(ConductorSize other) => System == other.System && value.Equals(other.value);

    /// <inheritdoc/>
    public override int GetHashCode() => (System, value).GetHashCode();

    /// <summary>This size, or a refusal of no size that names the parameter.</summary>
    internal ConductorSize Need(string name) => IsNone ? throw NoSize.Argument(name, nameof(ConductorSize)) : this;

    private static bool TryRead(ReadOnlySpan<char> text, IFormatProvider? provider, out ConductorSize result)
    {
        // A bare gauge number is an AWG size to AwgSize, and ambiguous here.
        if (SizeText.TryGauge(text, "AWG", out _, out bool hasWord) && hasWord && AwgSize.TryParse(text, provider, out AwgSize awg))
        {
            result = awg;
        }
        else if (KcmilSize.TryRead(text, provider, needsUnit: true, out KcmilSize kcmil))
        {
            result = kcmil;
        }
        else if (MetricSize.TryRead(text, provider, needsUnit: true, out MetricSize metric))
        {
            result = metric;
        }
        else if (VehicleGaugeSize.TryRead(text, needsWord: true, out VehicleGaugeSize vehicle))
        {
            result = vehicle;
        }
        else if (AircraftWireSize.TryRead(text, needsWord: true, out AircraftWireSize aircraft))
        {
            result = aircraft;
        }
        else
        {
            result = default;
        }

        return !result.IsNone;
    }

    private string Write(string? format, IFormatProvider provider)
    {
        if (!string.IsNullOrEmpty(format) && format is not ("G" or "g"))
        {
            throw new FormatException($"The format \"{format}\" is not known; G is.");
        }

        return System switch
        {
            SizeSystem.AmericanWireGauge => AwgSize.FromNumber((int)value).ToString(null, provider),
            SizeSystem.Kcmil => KcmilSize.FromKcmil(value).ToString(null, provider),
            SizeSystem.Metric => MetricSize.FromSquareMillimeters(value).ToString(null, provider),
            SizeSystem.VehicleGauge => VehicleGaugeSize.FromNumber((int)value).ToString(null, provider),
            SizeSystem.AircraftWire => AircraftWireSize.FromNumber((int)value).ToString(null, provider),
            _ => NoSize.Text,
        };
    }
}
