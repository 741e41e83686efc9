using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Conductors;

public sealed partial class InsulationMaterial
{
    private static readonly Reference Table52 = new()
    {
        Title = "IEC 60364-5-52", Edition = "2009", Locator = "Table 52.1", Kind = ReferenceKind.Standard,
    };

    private static readonly Reference TableA54 = new()
    {
        Title = "IEC 60364-5-54", Edition = "2011", Locator = "Table A.54.4", Kind = ReferenceKind.Standard, Note = "Limit temperatures of IEC 60724, for at most 5 s.",
    };

    private static readonly Reference StatedByCaller = Reference.CommonPractice("temperature stated by the caller");

    private static readonly Reference NoShortCircuitLimit =
        Reference.CommonPractice("no short-circuit limit is published: the continuous limit stands in for it, the safest reading");

    private static readonly Reference Overload = new()
    {
        Title = "ISO 6722-1",
        Edition = Editions.Iso6722,
        Kind = ReferenceKind.FromMemory,
        Note = "No short-circuit limit is standardised: the 6 h thermal-overload temperature, class + 50 K, stands in for it; on the safe side for seconds.",
    };

    // Thermal resistivity K·m/W, heat capacity J/(m³·K), emissivity.
    private static readonly Thermal PvcThermal = new(5.0, 1.7e6, 0.90, Iec("PVC up to 3 kV; polymer tables print 0.93e6 to 1.2e6 J/(m³·K) for unfilled compound"));
    private static readonly Thermal XlpeThermal = new(3.5, 2.4e6, 0.90, Iec("XLPE"));
    private static readonly Thermal EprThermal = new(3.5, 2.0e6, 0.90, Iec("EPR up to 3 kV"));
    private static readonly Thermal RubberThermal = new(5.0, 2.0e6, 0.90, Iec("rubber"));
    private static readonly Thermal SiliconeThermal = new(5.0, 1.4e6, 0.90, Cautious("silicone rubber: measured 4.0 to 4.5 K·m/W, IEC rubber 5.0; heat capacity 1.4e6 to 1.8e6 J/(m³·K); emissivity of rubber 0.90 to 0.94"));
    private static readonly Thermal EtfeThermal = new(4.2, 2.2e6, 0.85, Cautious("ETFE: 0.24 W/(m·K); heat capacity about 3.3e6 J/(m³·K) with low confidence, that of PTFE is used; emissivity the low end of plastics"));
    private static readonly Thermal PtfeThermal = new(4.4, 1.7e6, 0.85, Cautious("PTFE: 0.23 to 0.25 W/(m·K), 2130 to 2230 kg/m³, 0.8 to 1.2 kJ/(kg·K); emissivity the low end of plastics"));
    private static readonly Thermal UnknownThermal = new(6.0, 0.93e6, 0.85, Cautious("compound not known: the worst of the common insulations in each value"));

    private static readonly InsulationMaterial[] RoadVehicleClasses =
    [
        RoadVehicleOf(85, 'A'), RoadVehicleOf(100, 'B'), RoadVehicleOf(125, 'C'), RoadVehicleOf(150, 'D'),
        RoadVehicleOf(175, 'E'), RoadVehicleOf(200, 'F'), RoadVehicleOf(225, 'G'), RoadVehicleOf(250, 'H'),
    ];

    /// <summary>General-purpose plasticised PVC (polyvinyl chloride): 70 °C continuous, 160 °C at the end of a short circuit (140 °C above 300 mm²).</summary>
    public static InsulationMaterial PolyvinylChloride { get; } = Make("PVC (70 °C)", 70, 160, PvcThermal, Table52, TableA54, 140);

    /// <summary>Heat-resistant PVC: 90 °C continuous, 160 °C at the end of a short circuit (140 °C above 300 mm²).</summary>
    public static InsulationMaterial HeatResistantPolyvinylChloride { get; } = Make("PVC (90 °C)", 90, 160, PvcThermal, TableA54, TableA54, 140);

    /// <summary>Cross-linked polyethylene (XLPE): 90 °C continuous, 250 °C at the end of a short circuit.</summary>
    public static InsulationMaterial CrossLinkedPolyethylene { get; } = Make("XLPE (90 °C)", 90, 250, XlpeThermal, Table52, TableA54);

    /// <summary>Ethylene-propylene rubber (EPR): 90 °C continuous, 250 °C at the end of a short circuit.</summary>
    public static InsulationMaterial EthylenePropyleneRubber { get; } = Make("EPR (90 °C)", 90, 250, EprThermal, Table52, TableA54);

    /// <summary>Rubber, 60 °C continuous, 200 °C at the end of a short circuit.</summary>
    public static InsulationMaterial Rubber60 { get; } = Make("rubber (60 °C)", 60, 200, RubberThermal, TableA54, TableA54);

    /// <summary>Rubber, 85 °C continuous, 220 °C at the end of a short circuit.</summary>
    public static InsulationMaterial Rubber85 { get; } = Make("rubber (85 °C)", 85, 220, RubberThermal, TableA54, TableA54);

    /// <summary>Silicone rubber: 180 °C continuous, 350 °C at the end of a short circuit.</summary>
    public static InsulationMaterial SiliconeRubber { get; } = Make("silicone rubber (180 °C)", 180, 350, SiliconeThermal, TableA54, TableA54);

    /// <summary>ETFE: 150 °C continuous; no short-circuit limit is published, so 150 °C stands for it too.</summary>
    public static InsulationMaterial Etfe { get; } = Make(
        "ETFE (150 °C)", 150, 150, EtfeThermal, Reference.CommonPractice("ETFE wire is rated 150 °C"), NoShortCircuitLimit, published: false);

    /// <summary>PTFE: 260 °C continuous; it decomposes above, and no short-circuit limit is published, so 260 °C stands for it too.</summary>
    public static InsulationMaterial Ptfe { get; } = Make(
        "PTFE (260 °C)", 260, 260, PtfeThermal, Reference.CommonPractice("PTFE wire is rated 260 °C"), NoShortCircuitLimit, published: false);

    /// <summary>The insulation of road-vehicle cable by its temperature class.</summary>
    /// <param name="temperatureClass">Class A (85 °C) to H (250 °C) of ISO 6722 and ISO 19642.</param>
    /// <returns>
    /// The insulation: continuous limit the class temperature; short-circuit limit class + 50 K, the 6 h overload temperature (from memory), because
    /// none is standardised. The compound is not part of the class, so the thermal values are cautious.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is not defined.</exception>
    public static InsulationMaterial RoadVehicle(RoadVehicleTemperatureClass temperatureClass) =>
        temperatureClass is >= RoadVehicleTemperatureClass.A and <= RoadVehicleTemperatureClass.H
            ? RoadVehicleClasses[(int)temperatureClass]
            : throw new ArgumentOutOfRangeException(
                nameof(temperatureClass), temperatureClass, $"temperatureClass must be A to H; it was {Quantities.Accept.Text((int)temperatureClass)}.");

    private static InsulationMaterial RoadVehicleOf(int celsius, char letter) => Make(
        $"road-vehicle class {letter} ({celsius} °C)",
        celsius,
        celsius + 50,
        UnknownThermal,
        new Reference { Title = "ISO 6722-1", Edition = Editions.Iso6722, Locator = "temperature classes", Kind = ReferenceKind.Standard, Note = "Read in a cable specification that quotes it." },
        Overload,
        published: false);

    private static InsulationMaterial Make(
        string name,
        double continuous,
        double shortCircuit,
        Thermal thermal,
        Reference reference,
        Reference shortCircuitReference,
        double? largeConductor = null,
        bool published = true) => new()
    {
        Name = name,
        ContinuousCelsius = continuous,
        ShortCircuitCelsius = shortCircuit,
        LargeConductorShortCircuitCelsius = largeConductor,
        HasPublishedShortCircuitLimit = published,
        ThermalResistivityKelvinMetersPerWatt = thermal.Resistivity,
        HeatCapacityJoulesPerCubicMeterKelvin = thermal.HeatCapacity,
        Emissivity = thermal.Emissivity,
        ThermalReference = thermal.Reference,
        Reference = reference,
        ShortCircuitReference = shortCircuitReference,
    };

    private static Reference Iec(string note) => new()
    {
        Title = "IEC 60287-2-1 and IEC 60853-2",
        Kind = ReferenceKind.FromMemory,
        Note = note + "; emissivity 0.90 from infrared tables of plastics (0.85 to 0.96).",
    };

    private static Reference Cautious(string note) => Reference.CommonPractice("polymer tables, cautious end: " + note);

    private sealed class Thermal(double resistivity, double heatCapacity, double emissivity, Reference reference)
    {
        public double Resistivity => resistivity;

        public double HeatCapacity => heatCapacity;

        public double Emissivity => emissivity;

        public Reference Reference => reference;
    }
}
