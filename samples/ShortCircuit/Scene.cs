using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>What is shorted: a source, a wire and the fuse that is to end it.</summary>
internal sealed class Scene
{
    internal const string Caution =
        "CAUTION: a shorted battery burns and can explode. Never try this on a bench: that is what the computation is for.";

    internal Scene(double volts, double milliohms, double meters, int gauge, double fuseAmperes)
    {
        Length = Length.FromMeters(meters);
        Wire = Wire.Create(
            Conductor.Stranded(AwgSize.FromNumber(gauge), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));
        Fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(fuseAmperes));
        Path = FaultPath.Create(
            ElectricPotential.FromVolts(volts), ElectricResistance.FromMilliohms(milliohms), FaultSegment.Create(Wire.Conductor, Length, Initial));
        Protection = FuseAgainstWire.Check(Fuse, Protected, Path.ProspectiveCurrent);
    }

    internal Temperature Initial { get; } = Temperature.FromDegreesCelsius(22);

    internal Surroundings Air { get; } = new() { Ambient = Temperature.FromDegreesCelsius(22) };

    internal Length Length { get; }

    internal Wire Wire { get; }

    internal FuseRating Fuse { get; }

    internal FaultPath Path { get; }

    internal ProtectedWire Protected => ProtectedWire.Create(Wire, Air);

    internal WireProtection Protection { get; }
}
