using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Conductors;

/// <content>The series that are carried, each made when first asked for.</content>
public sealed partial class ConductorSeries
{
    private const int SmallestStranded = 30;

    // Even numbers, and every one from 1 AWG up: what is sold by the metre. Common practice, no published source.
    private static readonly int[] TradeNumbers = [30, 28, 26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];

    private static readonly Lazy<ConductorSeries> LazyAwgStranded = new(() => new("AWG, stranded copper", AwgSize.Reference, Awg(Every(SmallestStranded), size => Conductor.Stranded(size, ConductorMaterial.Copper))));

    private static readonly Lazy<ConductorSeries> LazyAwgSolid = new(() => new("AWG, solid copper", AwgSize.Reference, Awg(Every(40), size => Conductor.Solid(size, ConductorMaterial.Copper))));

    private static readonly Lazy<ConductorSeries> LazyAwgTrade = new(() => new("AWG, stranded copper, sizes of the trade", AwgSize.Reference, Awg(TradeNumbers, size => Conductor.Stranded(size, ConductorMaterial.Copper))));

    private static readonly Lazy<ConductorSeries> LazyAwgTinned = new(() => new("AWG, stranded tinned copper, sizes of the trade", ConductorMaterial.TinnedReference, Awg(TradeNumbers, size => Conductor.Stranded(size, ConductorMaterial.TinnedCopper))));

    private static readonly Lazy<ConductorSeries> LazyKcmil = new(() => new("kcmil, stranded copper", KcmilSize.Reference, Kcmil()));

    private static readonly Lazy<ConductorSeries> LazyAwgAndKcmil = new(() => new("AWG and kcmil, stranded copper, sizes of the trade", KcmilSize.Reference, [.. AwgTrade.conductors, .. KcmilStranded.conductors]));

    private static readonly Lazy<ConductorSeries> LazyRoadVehicle = new(() => new("road-vehicle plain copper", Iso6722Table.Reference, Metric(MetricSize.RoadVehicleSeries, Conductor.Iso6722)));

    private static readonly Lazy<ConductorSeries> LazyClass5 = new(() => new("IEC 60228 class 5 plain copper", Iec60228Table.Reference, Metric(MetricSize.Iec60228Series, size => Conductor.Iec60228(size, Iec60228Class.Flexible))));

    private static readonly Lazy<ConductorSeries> LazyClass2 = new(() => new("IEC 60228 class 2 plain copper", Iec60228Table.Reference, Metric(MetricSize.Iec60228Series, size => Conductor.Iec60228(size, Iec60228Class.Stranded))));

    private static readonly Lazy<ConductorSeries> LazyClass5Tinned = new(() => new("IEC 60228 class 5 tinned copper", Iec60228Table.Reference, Metric(MetricSize.Iec60228Series, size => Conductor.Iec60228(size, Iec60228Class.Flexible, Iec60228Metal.CoatedCopper))));

    private static readonly Lazy<ConductorSeries> LazyVehicleGauge = new(() => new("vehicle gauge, copper", VehicleGaugeSize.Reference, Vehicle()));

    private static readonly Lazy<ConductorSeries> LazyAircraft = new(() => new("aircraft wire, tinned copper", AircraftWireSize.Reference, Aircraft()));

    /// <summary>Stranded annealed copper, 30 AWG to 4/0 AWG, every number, concentric lay of 2 %.</summary>
    /// <remarks>Every number, 11 and 13 and the other odd ones too, which are hard to buy: <see cref="AwgTrade"/> leaves them out.</remarks>
    public static ConductorSeries AwgStranded => LazyAwgStranded.Value;

    /// <summary>Solid annealed copper, 40 AWG to 4/0 AWG, every number.</summary>
    public static ConductorSeries AwgSolid => LazyAwgSolid.Value;

    /// <summary>Stranded annealed copper in the AWG sizes that shops carry: even numbers from 30 to 2, 1, and 1/0 to 4/0.</summary>
    /// <remarks>Which sizes are sold is common practice, no published source. <see cref="Only"/> makes another choice.</remarks>
    public static ConductorSeries AwgTrade => LazyAwgTrade.Value;

    /// <summary>Stranded tinned copper in the AWG sizes that shops carry, 30 to 4/0: the cable of boats and other damp places.</summary>
    /// <remarks>
    /// The metal is <see cref="ConductorMaterial.TinnedCopper"/>: the most resistive class of ASTM B33, strands under 0.28 mm, 7.3 % above bare copper, with a lay of 2 %.
    /// A cable of thicker strands is better: build it with <see cref="ConductorMaterial.TinnedCopperOfStrand"/> and <see cref="Create"/>.
    /// </remarks>
    public static ConductorSeries AwgTinned => LazyAwgTinned.Value;

    /// <summary>Stranded annealed copper above 4/0 AWG: 250 to 1000 kcmil (MCM).</summary>
    public static ConductorSeries KcmilStranded => LazyKcmil.Value;

    /// <summary>Stranded annealed copper, <see cref="AwgTrade"/> followed by <see cref="KcmilStranded"/>: 30 AWG to 1000 kcmil.</summary>
    public static ConductorSeries AwgAndKcmil => LazyAwgAndKcmil.Value;

    /// <summary>Plain copper road-vehicle conductors, 0.13 to 120 mm², largest resistance of ISO 6722.</summary>
    public static ConductorSeries RoadVehicle => LazyRoadVehicle.Value;

    /// <summary>Flexible plain copper conductors of IEC 60228 class 5, 0.5 to 400 mm², largest resistance.</summary>
    public static ConductorSeries Iec60228Class5 => LazyClass5.Value;

    /// <summary>Flexible tinned (metal-coated) copper conductors of IEC 60228 class 5, 0.5 to 400 mm², largest resistance: metric cable of boats.</summary>
    public static ConductorSeries Iec60228Class5Tinned => LazyClass5Tinned.Value;

    /// <summary>Stranded plain copper conductors of IEC 60228 class 2, 0.5 to 400 mm², largest resistance.</summary>
    public static ConductorSeries Iec60228Class2 => LazyClass2.Value;

    /// <summary>Annealed copper in vehicle gauges, 20 to 4/0 (SAE J1127, J1128); least areas from memory.</summary>
    public static ConductorSeries VehicleGauge => LazyVehicleGauge.Value;

    /// <summary>Tin-plated copper aircraft wire, 24 to 4/0, largest resistance of FAA AC 43.13-1B Table 11-9.</summary>
    public static ConductorSeries AircraftWire => LazyAircraft.Value;

    // Plain loops: queries over structs are compiled anew at every start of a program.
    private static int[] Every(int smallest)
    {
        int[] numbers = new int[smallest - SizeText.FourOught + 1];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = smallest - i;
        }

        return numbers;
    }

    private static Conductor[] Awg(int[] numbers, Func<AwgSize, Conductor> make)
    {
        Conductor[] made = new Conductor[numbers.Length];
        for (int i = 0; i < made.Length; i++)
        {
            made[i] = make(AwgSize.FromNumber(numbers[i]));
        }

        return made;
    }

    private static Conductor[] Metric(IReadOnlyList<MetricSize> sizes, Func<MetricSize, Conductor> make)
    {
        Conductor[] made = new Conductor[sizes.Count];
        for (int i = 0; i < made.Length; i++)
        {
            made[i] = make(sizes[i]);
        }

        return made;
    }

    private static Conductor[] Kcmil()
    {
        Conductor[] made = new Conductor[KcmilSize.All.Count];
        for (int i = 0; i < made.Length; i++)
        {
            made[i] = Conductor.Stranded(KcmilSize.All[i], ConductorMaterial.Copper);
        }

        return made;
    }

    private static Conductor[] Vehicle()
    {
        Conductor[] made = new Conductor[VehicleGaugeSize.All.Count];
        for (int i = 0; i < made.Length; i++)
        {
            made[i] = Conductor.VehicleGauge(VehicleGaugeSize.All[i], ConductorMaterial.Copper);
        }

        return made;
    }

    private static Conductor[] Aircraft()
    {
        Conductor[] made = new Conductor[AircraftWireSize.All.Count];
        for (int i = 0; i < made.Length; i++)
        {
            made[i] = Conductor.AircraftWire(AircraftWireSize.All[i]);
        }

        return made;
    }
}
