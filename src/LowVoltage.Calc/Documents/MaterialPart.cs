using System.Text.Json;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A metal in a document: the name of a carried one, what it is derived from, or its values.</summary>
internal static class MaterialPart
{
    private static readonly WordForm<ConductorMaterial> Words = new(
        ("copper", ConductorMaterial.Copper), ("hard-drawn copper", ConductorMaterial.HardDrawnCopper), ("tinned copper", ConductorMaterial.TinnedCopper),
        ("coated copper", ConductorMaterial.CoatedCopper), ("aluminium", ConductorMaterial.Aluminium), ("mild steel", ConductorMaterial.MildSteel));

    // A strand of each class of tinned wire, mm.
    private static readonly double[] Strands = [8, 3, 1, 0.4];

    private static readonly Member<double> Strand = Member.Needed<double>("tinned_strand_mm", new NumberForm(0.0762, 11.684, "mm"), "Tinned copper by the diameter of one strand, mm.");
    private static readonly Member<double> Clad = Member.Needed<double>("copper_share", new NumberForm(0.05, 0.40, ""), "Copper-clad aluminium by the copper's share of the volume.");
    private static readonly Member<double> Iacs = Member.Needed<double>("conductivity_percent", new NumberForm(70, 103, "% IACS"), "Copper by its conductivity, % IACS.");
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Name, "What it is called.");
    private static readonly Member<double> Resistivity = Member.Needed<double>("resistivity_ohm_m", new NumberForm(1e-9, 1e-2, "Ω·m"), "Resistivity at 20 °C, Ω·m.");
    private static readonly Member<double> Coefficient = Member.Needed<double>("temperature_coefficient_per_K", new NumberForm(0, 0.008, "1/K"), "Temperature coefficient at 20 °C, 1/K: 0, or from 0.00001.");
    private static readonly Member<double> Density = Member.Needed<double>("density_kg_per_m3", new NumberForm(100, 30_000, "kg/m³"), "Density, kg/m³.");
    private static readonly Member<double> Heat = Member.Needed<double>("heat_capacity_J_per_m3_K", new NumberForm(1e5, 1e7, "J/(m³·K)"), "Volumetric heat capacity, J/(m³·K).");
    private static readonly Member<double> Melting = Member.Needed<double>("melting_point_C", new NumberForm(100, 4000, "°C"), "Melting point, °C.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Where the values come from.");

    internal static EitherForm Form { get; } = new(
        "material",
        "A metal: the name of one that the library carries, what it is derived from, or its values.",
        Words,
        new ObjectForm("material_tinned", "Tinned copper of a strand.", at => ConductorMaterial.TinnedCopperOfStrand(Length.FromMillimeters(at.Get(Strand))), [Strand]),
        new ObjectForm("material_clad", "Copper-clad aluminium.", at => ConductorMaterial.CopperCladAluminium(at.Get(Clad)), [Clad]),
        new ObjectForm("material_conductivity", "Copper of a conductivity.", at => ConductorMaterial.FromConductivity(at.Get(Iacs)), [Iacs]),
        new ObjectForm("material_stated", "A metal of the caller's.", Make, [Name, Resistivity, Coefficient, Density, Heat, Melting, Source]));

    internal static void Write(Utf8JsonWriter json, ConductorMaterial material)
    {
        if (Words.WordOf(material) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        int strand = Array.FindIndex(Strands, own => ConductorMaterial.TinnedCopperOfStrand(Length.FromMillimeters(own)).Equals(material));
        if (strand >= 0)
        {
            json.Put(Strand, Strands[strand]);
        }
        else
        {
            json.Put(Name, material.Name);
            json.Put(Resistivity, material.OhmMeters20);
            json.Put(Coefficient, material.TemperatureCoefficient);
            json.Put(Density, material.DensityKilogramsPerCubicMeter);
            json.Put(Heat, material.HeatCapacityJoulesPerCubicMeterKelvin);
            json.Put(Melting, material.MeltingPointCelsius);
            json.Put(Source, material.Reference, ReferencePart.Write);
        }

        json.WriteEndObject();
    }

    private static ConductorMaterial Make(Values at) => ConductorMaterial.Create(
        at.Get(Name),
        ElectricResistivity.FromOhmMeters(at.Get(Resistivity)),
        at.Get(Coefficient),
        UnitsNet.Density.FromKilogramsPerCubicMeter(at.Get(Density)),
        VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(at.Get(Heat)),
        Temperature.FromDegreesCelsius(at.Get(Melting)),
        at.Get(Source));
}
