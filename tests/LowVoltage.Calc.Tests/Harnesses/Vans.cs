using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Small invented harnesses, and short ways to say their parts.</summary>
internal static class Vans
{
    public static Place Cabin { get; } = Place.Create(Temperature.FromDegreesCelsius(30));

    public static InsulationMaterial Vinyl => InsulationMaterial.PolyvinylChloride;

    public static Conductor Copper(double squareMillimeters) => DesignRules.RoadVehicle.Conductors.SmallestAtLeast(Area.FromSquareMillimeters(squareMillimeters));

    public static FuseRating Blade(double amperes) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(amperes));

    public static Source Battery600 { get; } = Battery.LeadAcid(ElectricCurrent.FromAmperes(600));

    public static HarnessBuilder AddWire(this HarnessBuilder builder, string id, string from, string to, double squareMillimeters, double meters) =>
        builder.Wire(id, from, to, Copper(squareMillimeters), Length.FromMeters(meters), Cabin, Vinyl);

    /// <summary>A battery, a main blade fuse, a panel with two fused circuits, grounds to a frame and a chassis back.</summary>
    public static HarnessBuilder Two(Load left, Load right, double mainFuse = 40) => new HarnessBuilder("two circuits", DesignRules.RoadVehicle)
        .Terminals("plus", "minus", "main out", "left fused", "right fused", "left +", "right +", "left −", "right −").Busbars("panel").Grounds("frame")
        .Source("battery", "plus", "minus", Battery600)
        .Fuse("FM", "plus", "main out", Blade(mainFuse))
        .AddWire("main", "main out", "panel", 10, 2)
        .Fuse("FL", "panel", "left fused", Blade(10)).Fuse("FR", "panel", "right fused", Blade(15))
        .AddWire("left feed", "left fused", "left +", 1.5, 3).AddWire("right feed", "right fused", "right +", 2.5, 4)
        .AddWire("left ground", "left −", "frame", 1.5, 0.5).AddWire("right ground", "right −", "frame", 2.5, 0.5)
        .Chassis("chassis", "frame", "minus", ElectricResistance.FromMilliohms(2))
        .Load("left", "left +", "left −", left).Load("right", "right +", "right −", right);
}
