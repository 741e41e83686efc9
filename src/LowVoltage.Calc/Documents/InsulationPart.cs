using System.Text.Json;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Documents;

/// <summary>An insulation in a document: the name of a carried one, or its values.</summary>
internal static class InsulationPart
{
    private static readonly WordForm<InsulationMaterial> Words = new([.. new[]
    {
        InsulationMaterial.PolyvinylChloride, InsulationMaterial.HeatResistantPolyvinylChloride, InsulationMaterial.CrossLinkedPolyethylene, InsulationMaterial.EthylenePropyleneRubber,
        InsulationMaterial.Rubber60, InsulationMaterial.Rubber85, InsulationMaterial.SiliconeRubber, InsulationMaterial.Etfe, InsulationMaterial.Ptfe,
        InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.A), InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B), InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C),
        InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.D), InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.E), InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.F),
        InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.G), InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.H),
    }.Select(material => (material.Name, material))]);

    private static readonly NumberForm Limit = new(40, 500, "°C");

    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Name, "What it is called.");
    private static readonly Member<double> Continuous = Member.Needed<double>("continuous_C", Ranges.RatedCelsius, "Highest conductor temperature in continuous service, °C.");
    private static readonly Member<double> Short = Member.Optional<double>("short_circuit_C", Limit, "Highest conductor temperature at the end of a short circuit, °C, at least the continuous one; left out: the continuous one stands in for it.");
    private static readonly Member<double> Large = Member.Optional<double>("short_circuit_above_300_mm2_C", Limit, "The same for conductors over 300 mm², °C; left out: the same.");
    private static readonly Member<bool> Published = Member.Optional<bool>("short_circuit_is_published", FlagForm.Any, "Whether that limit is published, and not a stand-in; left out: whether it is stated.");
    private static readonly Member<double> Resistivity = Member.Optional<double>("thermal_resistivity_K_m_per_W", new NumberForm(0.2, 50, "K·m/W"), "Thermal resistivity, K·m/W; left out with the next two: the worst of common insulations.");
    private static readonly Member<double> Capacity = Member.Optional<double>("heat_capacity_J_per_m3_K", new NumberForm(1e5, 1e7, "J/(m³·K)"), "Volumetric heat capacity, J/(m³·K).");
    private static readonly Member<double> Emissivity = Member.Optional<double>("emissivity", new NumberForm(0, 1, ""), "Emissivity of the surface.");
    private static readonly Member<Reference> Source = ReferencePart.Optional("reference", "Source of the continuous limit.");
    private static readonly Member<Reference> ShortSource = ReferencePart.Optional("short_circuit_reference", "Source of the short-circuit limit.");
    private static readonly Member<Reference> ThermalSource = ReferencePart.Optional("thermal_reference", "Source of the thermal values.");

    internal static EitherForm Form { get; } = new("insulation", "An insulation: the name of one that the library carries, or its values.", Words, new ObjectForm(
        "insulation_stated",
        "An insulation of the caller's.",
        Make,
        [Name, Continuous, Short, Large, Published, Resistivity, Capacity, Emissivity, Source, ShortSource, ThermalSource],
        MemberRule.Needs(Large, Short),
        MemberRule.Needs(Resistivity, Capacity, Emissivity),
        MemberRule.Needs(Capacity, Resistivity, Emissivity),
        MemberRule.Needs(Emissivity, Resistivity, Capacity)));

    internal static void Write(Utf8JsonWriter json, InsulationMaterial insulation)
    {
        if (Words.WordOf(insulation) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        json.Put(Name, insulation.Name);
        json.Put(Continuous, insulation.ContinuousCelsius);
        json.Put(Short, insulation.ShortCircuitCelsius);
        json.PutIf(Large, insulation.LargeConductorCelsius);
        json.Put(Published, insulation.HasPublishedShortCircuitLimit);
        json.Put(Resistivity, insulation.ThermalResistivityKelvinMetersPerWatt);
        json.Put(Capacity, insulation.HeatCapacityJoulesPerCubicMeterKelvin);
        json.Put(Emissivity, insulation.Emissivity);
        json.Put(Source, insulation.Reference, ReferencePart.Write);
        json.Put(ShortSource, insulation.ShortCircuitReference, ReferencePart.Write);
        json.Put(ThermalSource, insulation.ThermalReference, ReferencePart.Write);
        json.WriteEndObject();
    }

    private static InsulationMaterial Make(Values at) => InsulationMaterial.Stated(
        at.Get(Name),
        at.Get(Continuous),
        (at.Maybe(Short), at.Maybe(Large), at.Maybe(Published), at.OrNull(ShortSource)),
        at.Has(Resistivity) ? (at.Get(Resistivity), at.Get(Capacity), at.Get(Emissivity)) : null,
        at.OrNull(ThermalSource),
        at.OrNull(Source));
}
