using LowVoltage.Calc;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace CircuitSchedule;

/// <summary>The words that a cell may hold, and what they stand for. Case does not matter.</summary>
internal static class Words
{
    public static Dictionary<string, DesignRules> Practices { get; } =
        DesignRules.Presets.ToDictionary(rules => rules.Name, StringComparer.OrdinalIgnoreCase);

    public static Dictionary<string, ColdCrankingStandard> CrankingTests { get; } = new(StringComparer.OrdinalIgnoreCase)
    {
        ["SAE J537"] = ColdCrankingStandard.SaeJ537,
        ["EN 50342"] = ColdCrankingStandard.En50342,
        ["DIN 43539"] = ColdCrankingStandard.Din43539,
        ["IEC 95"] = ColdCrankingStandard.Iec95,
        ["marine cranking"] = ColdCrankingStandard.MarineCranking,
    };

    public static Dictionary<string, InsulationMaterial> Insulations { get; } = new(StringComparer.OrdinalIgnoreCase)
    {
        ["PVC"] = InsulationMaterial.PolyvinylChloride,
        ["PVC 90"] = InsulationMaterial.HeatResistantPolyvinylChloride,
        ["XLPE"] = InsulationMaterial.CrossLinkedPolyethylene,
        ["EPR"] = InsulationMaterial.EthylenePropyleneRubber,
        ["rubber 60"] = InsulationMaterial.Rubber60,
        ["rubber 85"] = InsulationMaterial.Rubber85,
        ["silicone"] = InsulationMaterial.SiliconeRubber,
        ["ETFE"] = InsulationMaterial.Etfe,
        ["PTFE"] = InsulationMaterial.Ptfe,
        ["class A"] = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.A),
        ["class B"] = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B),
        ["class C"] = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C),
        ["class D"] = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.D),
        ["class E"] = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.E),
        ["class F"] = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.F),
        ["class G"] = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.G),
        ["class H"] = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.H),
    };

    public static Dictionary<string, bool> YesNo { get; } = new(StringComparer.OrdinalIgnoreCase) { ["yes"] = true, ["no"] = false };

    public static string List<T>(Dictionary<string, T> words) => string.Join(", ", words.Keys);
}
