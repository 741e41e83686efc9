using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>What is shorted: a source, a wire and the fuse that is to end it.</summary>
internal sealed class Scene
{
    internal const string Caution =
        "CAUTION: a shorted battery burns and can explode. Never try this on a bench: that is what the computation is for.";

    internal Scene(ElectricPotential voltage, ElectricResistance fixedResistance, Length length, AwgSize gauge, FuseRating fuse)
    {
        (Length, Fuse) = (length, fuse);
        Wire = Wire.Create(Conductor.Stranded(gauge, ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));
        Path = FaultPath.Create(voltage, fixedResistance, FaultSegment.Create(Wire.Conductor, Length, Initial));
        Cooled = CooledFaultPath.Create(voltage, fixedResistance, Wire, Length, Air, Initial);
        Protection = FuseAgainstWire.Check(Fuse, Protected, Path.ProspectiveCurrent);
        Ending = new Ending(this);
    }

    internal Temperature Initial { get; } = Temperature.FromDegreesCelsius(22);

    internal Surroundings Air { get; } = new() { Ambient = Temperature.FromDegreesCelsius(22) };

    internal Length Length { get; }

    internal Wire Wire { get; }

    internal FuseRating Fuse { get; }

    /// <summary>The loop while it is too short a time for heat to leave: seconds.</summary>
    internal FaultPath Path { get; }

    /// <summary>The same loop with heat leaving to the air, for as long as it takes.</summary>
    internal CooledFaultPath Cooled { get; }

    internal ProtectedWire Protected => ProtectedWire.Create(Wire, Air);

    internal WireProtection Protection { get; }

    /// <summary>How the short circuit ends.</summary>
    internal Ending Ending { get; }

    /// <summary>The state after a time if nothing opens: without heat loss up to the seconds that this holds for, with it where the fault lasts.</summary>
    internal FaultState StateAfter(Duration time) => Ending.Lasts ? FaultTransient.StateAfter(Cooled, time) : FaultTransient.StateAfter(Path, time);
}
