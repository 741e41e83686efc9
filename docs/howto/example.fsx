// One circuit, designed from F#. Run it with: dotnet fsi example.fsx
#r "nuget: LowVoltage.Calc, 0.1.0"

open System
open LowVoltage.Calc
open LowVoltage.Calc.Circuits
open LowVoltage.Calc.Conductors
open UnitsNet

// An invented small boat: a bilge pump 4 m from the fuse, which sits beside the battery; its own wire back.
let requirements =
    CircuitRequirements(
        Source = Battery.LeadAcid(coldCranking = ElectricCurrent.FromAmperes 250.0),
        Load = Load.Motor(ElectricCurrent.FromAmperes 4.5, ElectricCurrent.FromAmperes 18.0, ElectricCurrent.FromAmperes 22.0, Duration.FromMilliseconds 80.0).WithThermalCutOut(),
        Feed = Length.FromMeters 4.0,
        Return = ReturnPath.Wire(Length.FromMeters 4.2),
        Joints = [| Joint.Create("switch and crimps", ElectricResistance.FromMilliohms 12.0) |],
        Upstream = Nullable(ElectricResistance.FromMilliohms 6.0),
        FuseDistance = Nullable(Length.FromCentimeters 12.0),
        Place = Place(Ambient = Temperature.FromDegreesCelsius 40.0),
        Insulation = InsulationMaterial.HeatResistantPolyvinylChloride
    )

let design = CircuitDesigner.Design(requirements, DesignRules.SmallCraft)

printfn $"{design}"

for check in design.Checks do
    printfn $"- {check}"

for caution in design.Cautions do
    printfn $"! {caution}"

// A sweep: how far may the pump be away, size by size?
for meters in [ 2.0; 4.0; 8.0; 16.0; 32.0 ] do
    let there = Length.FromMeters meters
    let farther =
        CircuitRequirements(
            Source = requirements.Source,
            Load = requirements.Load,
            Feed = there,
            Return = ReturnPath.Wire there,
            Joints = requirements.Joints,
            Upstream = requirements.Upstream,
            FuseDistance = requirements.FuseDistance,
            Place = requirements.Place,
            Insulation = requirements.Insulation
        )

    printfn $"%4.0f{meters} m: {CircuitDesigner.Design(farther, DesignRules.SmallCraft)}"
