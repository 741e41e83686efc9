using System.Globalization;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Every constant of the metals and insulations against the transcriptions; sources in the CSV files.</summary>
public class MaterialConstantsTests
{
    [Fact]
    public void Metals_EveryConstant_IsAsPublished()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("conductor-materials.csv").Rows;
        Assert.Equal(33, rows.Count);
        Assert.All(rows, row =>
        {
            double published = row.Number("value");
            Assert.Equal(published, Value(Metal(row.Text("material")), row.Text("property")), HalfUnit(row.Text("value")));
        });
    }

    [Fact]
    public void TinnedCopper_EveryClass_HasTheResistivityOfAstmB33()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("astm-b33-tinned-copper.csv").Rows)
        {
            double ohmMeters = row.Number("mass_resistivity") / 8.89e6;
            double middle = Math.Sqrt(row.Number("from_in") * row.Number("to_in"));
            Assert.Equal(ohmMeters, OfStrand(middle), 1e-15);
            Assert.Equal(ohmMeters, OfStrand(row.Number("to_in") * (1 - 1e-6)), 1e-15);
            Assert.Equal(ohmMeters, OfStrand(row.Number("from_in") * (1 + 1e-6)), 1e-15);
            // At the limit itself the more resistive class.
            Assert.True(OfStrand(row.Number("from_in")) >= ohmMeters);
        }

        Assert.Equal(0.16454 / 8.89e6, ConductorMaterial.TinnedCopper.Resistivity.OhmMeters, 1e-15);
        Assert.Equal(0.16454 / 8.89e6, OfStrand(0.0111), 1e-15);
        Assert.Equal(0.15695 / 8.89e6, OfStrand(0.460), 1e-15);
        Assert.Throws<ArgumentOutOfRangeException>("diameter", () => OfStrand(0.00299));
        Assert.Throws<ArgumentOutOfRangeException>("diameter", () => OfStrand(0.461));
    }

    [Fact]
    public void Insulations_EveryPublishedValue_IsExact()
    {
        Conductor large = Conductor.OfArea(Area.FromSquareMillimeters(301), ConductorMaterial.Copper);
        Conductor limit = Conductor.OfArea(Area.FromSquareMillimeters(300), ConductorMaterial.Copper);
        foreach (PublishedTable.Row row in PublishedTable.Load("insulation-materials.csv").Rows)
        {
            InsulationMaterial insulation = Insulation(row.Text("insulation"));
            Assert.Equal(row.Number("continuous"), insulation.ContinuousLimit.DegreesCelsius);
            double shortCircuit = row.Has("short_circuit") ? row.Number("short_circuit") : row.Number("continuous");
            Assert.Equal(shortCircuit, insulation.ShortCircuitLimit.DegreesCelsius);
            Assert.Equal(shortCircuit, insulation.ShortCircuitLimitFor(limit).DegreesCelsius);
            Assert.Equal(row.Has("large") ? row.Number("large") : shortCircuit, insulation.ShortCircuitLimitFor(large).DegreesCelsius);
            Assert.Equal(row.Has("short_circuit") && !row.Text("insulation").StartsWith("road", StringComparison.Ordinal), insulation.HasPublishedShortCircuitLimit);
            if (row.Has("resistivity"))
            {
                Assert.Equal(row.Number("resistivity"), insulation.ThermalResistivity);
                Assert.Equal(1 / row.Number("resistivity"), insulation.ThermalConductivity.WattsPerMeterKelvin, 1e-12);
            }

            if (row.Has("heat_capacity"))
            {
                Assert.Equal(row.Number("heat_capacity"), insulation.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin);
            }

            Assert.InRange(insulation.Emissivity, 0.85, 0.96); // infrared tables of plastics
            Assert.NotNull(insulation.Reference);
            Assert.NotNull(insulation.ShortCircuitReference);
            Assert.NotNull(insulation.ThermalReference);
            Assert.Equal(insulation.Name, insulation.ToString());
        }
    }

    private static double OfStrand(double inches) => ConductorMaterial.TinnedCopperOfStrand(Length.FromInches(inches)).Resistivity.OhmMeters;

    private static double HalfUnit(string printed)
    {
        int e = printed.IndexOf('e', StringComparison.Ordinal);
        string mantissa = e < 0 ? printed : printed[..e];
        double scale = e < 0 ? 1 : Math.Pow(10, int.Parse(printed[(e + 1)..], CultureInfo.InvariantCulture));
        // Trailing half units are reached: 2.6425e6 is printed 2.642e6.
        return PublishedTable.HalfUnitInLastPlace(mantissa) * scale * (1 + 1e-9);
    }

    private static ConductorMaterial Metal(string name) => name switch
    {
        "copper" => ConductorMaterial.Copper,
        "hard-drawn copper" => ConductorMaterial.HardDrawnCopper,
        "aluminium" => ConductorMaterial.Aluminium,
        "mild steel" => ConductorMaterial.MildSteel,
        "cca 10" => ConductorMaterial.CopperCladAluminium(0.10),
        "cca 15" => ConductorMaterial.CopperCladAluminium(0.15),
        _ => throw new ArgumentException(name, nameof(name)),
    };

    private static double Value(ConductorMaterial metal, string property) => property switch
    {
        "resistivity" => metal.Resistivity.OhmMeters,
        "mass_resistivity" => metal.Resistivity.OhmMeters * metal.Density.KilogramsPerCubicMeter * 1000,
        "percent_iacs" => metal.PercentIacs,
        "alpha20" => metal.TemperatureCoefficient,
        "inferred_zero" => metal.InferredZero.DegreesCelsius,
        "density" => metal.Density.KilogramsPerCubicMeter,
        "heat_capacity" => metal.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin,
        "melting" => metal.MeltingPoint.DegreesCelsius,
        _ => throw new ArgumentException(property, nameof(property)),
    };

    private static InsulationMaterial Insulation(string name) => name switch
    {
        "PVC 70" => InsulationMaterial.PolyvinylChloride,
        "PVC 90" => InsulationMaterial.HeatResistantPolyvinylChloride,
        "XLPE 90" => InsulationMaterial.CrossLinkedPolyethylene,
        "EPR 90" => InsulationMaterial.EthylenePropyleneRubber,
        "rubber 60" => InsulationMaterial.Rubber60,
        "rubber 85" => InsulationMaterial.Rubber85,
        "silicone 180" => InsulationMaterial.SiliconeRubber,
        "ETFE 150" => InsulationMaterial.Etfe,
        "PTFE 260" => InsulationMaterial.Ptfe,
        _ => InsulationMaterial.RoadVehicle(Enum.Parse<RoadVehicleTemperatureClass>(name[^1..])),
    };
}
