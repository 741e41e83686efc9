using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>Main fuses, leads and sources that the tests of the supply lead share. Devices and data sheets are invented.</summary>
internal static class Mains
{
    /// <summary>Blade fuses of the caller's data sheet: the times of the standard type, broken at 20 kA.</summary>
    public static FuseSeries HighBreakingBlades { get; } = FuseSeries.Create(new FuseSeriesDefinition
    {
        Name = "data sheet (invented)",
        Kind = "high-breaking blade fuse",
        Reference = new Reference { Title = "Data sheet (invented)", Kind = ReferenceKind.Handbook },
        Ratings = [.. new[] { 3.0, 4, 5, 7.5, 10, 15, 20, 25, 30, 40 }.Select(a => ElectricCurrent.FromAmperes(a))],
        VoltageRating = V(32),
        VoltageBasis = RatingBasis.DirectCurrent,
        BreakingCapacity = ElectricCurrent.FromKiloamperes(20),
        BreakingCapacityBasis = RatingBasis.DirectCurrent,
        Limits = OperatingTimeLimits.RoadVehicleBlade,
    });

    public static Source Pack { get; } = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(200));

    public static FuseRating Gg(double amperes) => FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(A(amperes));

    /// <summary>A main fuse on the terminal with two wires behind it.</summary>
    public static UpstreamProtection OnTerminal(FuseRating fuse, double squareMillimeters, double meters) => UpstreamProtection.Fuse(fuse)
        .WithUpstream(ElectricResistance.Zero).WithDistance(M(0.1), sheathed: true).WithLead(Lead(squareMillimeters, meters));

    public static CircuitPath Lead(double squareMillimeters, double meters) => CircuitPath.TwoWire(RoadVehicle(squareMillimeters), M(meters));

    /// <summary>A fan of 3.2 A, 4.5 m each way.</summary>
    public static CircuitRequirements Fan(double upstreamMilliOhms, Source? source = null) =>
        Circuit(Load.ConstantCurrent(A(3.2)), source ?? LeadAcid(), feed: 4.5, upstreamMilliOhms: upstreamMilliOhms);
}
