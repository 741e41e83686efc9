using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace CircuitPage;

/// <summary>The series of wires and fuses that the library carries, by their names.</summary>
internal static class Stock
{
    public static IReadOnlyList<ConductorSeries> Wires { get; } =
    [
        ConductorSeries.RoadVehicle, ConductorSeries.Iec60228Class5, ConductorSeries.Iec60228Class5Tinned, ConductorSeries.Iec60228Class2, ConductorSeries.AwgTrade,
        ConductorSeries.AwgTinned, ConductorSeries.AwgAndKcmil, ConductorSeries.VehicleGauge, ConductorSeries.AircraftWire,
    ];

    public static IReadOnlyList<FuseSeries> Fuses { get; } =
    [
        FuseSeries.RoadVehicleBlade, FuseSeries.RoadVehicleBlade58, FuseSeries.RoadVehicleSmallBlade, FuseSeries.RoadVehicleSmallBlade58, FuseSeries.RoadVehicleHighCurrentBlade,
        FuseSeries.RoadVehicleHighCurrentBlade58, FuseSeries.RoadVehicleStrip30, FuseSeries.RoadVehicleStrip51, FuseSeries.RoadVehicleBoltInContacts, FuseSeries.RoadVehicleFemaleContacts,
        FuseSeries.RoadVehicleGlass, FuseSeries.RoadVehicleTorpedo, FuseSeries.IndustrialGg, FuseSeries.IndustrialGgBladeContacts, FuseSeries.NationalElectricalCodeFuses,
        FuseSeries.NationalElectricalCodeBreakers,
    ];

    public static IEnumerable<Choice> WireChoices => Choice.Plain(Wires.Select(series => series.Name));

    public static IEnumerable<Choice> FuseChoices => Fuses.Select(series => new Choice(series.Name, $"{series.Kind}, {series.Name}"));

    public static ConductorSeries Wire(string name) => Wires.First(series => series.Name == name);

    public static FuseSeries Fuse(string name) => Fuses.First(series => series.Name == name);
}
