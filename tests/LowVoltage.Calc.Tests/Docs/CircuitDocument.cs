using System.Text.Json.Serialization;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs;

// The how-to page shows these regions; a test compares the two.
#region circuit
/// <summary>A circuit as a file holds it: plain numbers, the unit in the name.</summary>
/// <remarks>What has a default is <c>set</c>, not <c>init</c>: source generation would put a zero in the place of a default that is <c>init</c>.</remarks>
public sealed record CircuitDocument
{
    public string Name { get; set; } = "";

    public required string Rules { get; init; }

    public required SourceDocument Source { get; init; }

    public required LoadDocument Load { get; init; }

    public required double FeedMeters { get; init; }

    // One of the two.
    public double? ReturnWireMeters { get; init; }

    public double? ChassisOhms { get; init; }

    public IReadOnlyList<JointDocument> Joints { get; set; } = [];

    public double? UpstreamOhms { get; init; }

    public double? FuseDistanceMeters { get; init; }

    public bool SheathedToFuse { get; init; }

    public required double AmbientCelsius { get; init; }

    public int LoadedConductors { get; set; } = 2;

    public double BundleLoading { get; set; } = 1;

    public double AltitudeMeters { get; init; }

    public bool EngineSpace { get; init; }

    public bool Intermittent { get; init; }

    public required string Insulation { get; init; }

    public double? DropPercent { get; init; }

    public DesignRules ToRules() => DesignRules.Presets.Single(rules => rules.Name == Rules);

    public CircuitRequirements ToRequirements() => new()
    {
        Name = Name,
        Source = Source.ToSource(),
        Load = Load.ToLoad(),
        Feed = Length.FromMeters(FeedMeters),
        Return = (ReturnWireMeters, ChassisOhms) switch
        {
            ({ } meters, null) => ReturnPath.Wire(Length.FromMeters(meters)),
            (null, { } ohms) => ReturnPath.Chassis(ElectricResistance.FromOhms(ohms)),
            _ => throw new FormatException("Either returnWireMeters or chassisOhms must be given."),
        },
        Joints = [.. Joints.Select(joint => Joint.Create(joint.Name, ElectricResistance.FromOhms(joint.Ohms)))],
        Upstream = UpstreamOhms is { } upstream ? ElectricResistance.FromOhms(upstream) : null,
        FuseDistance = FuseDistanceMeters is { } distance ? Length.FromMeters(distance) : null,
        SheathedToFuse = SheathedToFuse,
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(AmbientCelsius), LoadedConductors = LoadedConductors, BundleLoading = BundleLoading, Altitude = Length.FromMeters(AltitudeMeters), EngineSpace = EngineSpace },
        Intermittent = Intermittent,
        Insulation = Insulations[Insulation],
        DropLimit = DropPercent is { } percent ? DropLimit.Percent(percent) : null,
    };

    // The words of this file for the materials that it may name.
    private static readonly Dictionary<string, InsulationMaterial> Insulations = new()
    {
        ["PVC"] = InsulationMaterial.PolyvinylChloride,
        ["PVC 90"] = InsulationMaterial.HeatResistantPolyvinylChloride,
        ["XLPE"] = InsulationMaterial.CrossLinkedPolyethylene,
        ["silicone"] = InsulationMaterial.SiliconeRubber,
    };
}

public sealed record JointDocument
{
    public required string Name { get; init; }

    public required double Ohms { get; init; }
}

[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(LeadAcidDocument), "lead-acid battery")]
[JsonDerivedType(typeof(SupplyDocument), "supply")]
public abstract record SourceDocument
{
    public abstract Source ToSource();
}

public sealed record LeadAcidDocument : SourceDocument
{
    public required double ColdCrankingAmperes { get; init; }

    // The test that the current was read by: the same number means another battery in another one.
    public string CrankingTest { get; set; } = nameof(ColdCrankingStandard.SaeJ537);

    public int BlocksInSeries { get; set; } = 1;

    public override Source ToSource() => Battery.LeadAcid(
        ElectricCurrent.FromAmperes(ColdCrankingAmperes), Enum.Parse<ColdCrankingStandard>(CrankingTest), BlocksInSeries);
}

public sealed record SupplyDocument : SourceDocument
{
    public required double MinimumVolts { get; init; }

    public required double NominalVolts { get; init; }

    public required double MaximumVolts { get; init; }

    public required double LeastOhms { get; init; }

    public required double GreatestOhms { get; init; }

    public override Source ToSource() => Source.BehindResistance(
        ElectricPotential.FromVolts(MinimumVolts),
        ElectricPotential.FromVolts(NominalVolts),
        ElectricPotential.FromVolts(MaximumVolts),
        ElectricResistance.FromOhms(LeastOhms),
        ElectricResistance.FromOhms(GreatestOhms));
}

[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(PowerDocument), "constant power")]
[JsonDerivedType(typeof(CurrentDocument), "constant current")]
[JsonDerivedType(typeof(LampDocument), "lamp")]
public abstract record LoadDocument
{
    public double? MinimumVolts { get; init; }

    public Load ToLoad() => MinimumVolts is { } volts ? Make().WithMinimumVoltage(ElectricPotential.FromVolts(volts)) : Make();

    protected abstract Load Make();
}

public sealed record PowerDocument : LoadDocument
{
    public required double Watts { get; init; }

    public double Efficiency { get; set; } = 1;

    protected override Load Make() => Load.ConstantPower(Power.FromWatts(Watts), Efficiency);
}

public sealed record CurrentDocument : LoadDocument
{
    public required double Amperes { get; init; }

    protected override Load Make() => Load.ConstantCurrent(ElectricCurrent.FromAmperes(Amperes));
}

public sealed record LampDocument : LoadDocument
{
    public required double Watts { get; init; }

    public required double RatedVolts { get; init; }

    protected override Load Make() => Load.Lamp(Power.FromWatts(Watts), ElectricPotential.FromVolts(RatedVolts));
}
#endregion
