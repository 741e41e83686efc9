# One wire that exists, checked from PowerShell 7. Run it with: pwsh example.ps1 -Library wiring/out
param([Parameter(Mandatory)] [string] $Library)

Add-Type -Path (Join-Path $Library 'UnitsNet.dll'), (Join-Path $Library 'MathNet.Numerics.dll'), (Join-Path $Library 'LowVoltage.Calc.dll')
[cultureinfo]::CurrentCulture = [cultureinfo]::InvariantCulture

# An invented tractor: two work lamps on one 2.5 mm² wire, the frame as the way back, a 15 A blade fuse.
$lamp = [LowVoltage.Calc.Circuits.Load]::Lamp([UnitsNet.Power]::FromWatts(55), [UnitsNet.ElectricPotential]::FromVolts(12))
$requirements = [LowVoltage.Calc.CircuitRequirements]@{
    Source     = [LowVoltage.Calc.Circuits.Battery]::LeadAcid([UnitsNet.ElectricCurrent]::FromAmperes(800))
    Load       = [LowVoltage.Calc.Circuits.Load]::Together($lamp, $lamp)
    Feed       = [UnitsNet.Length]::FromMeters(6)
    Return     = [LowVoltage.Calc.Circuits.ReturnPath]::Chassis([UnitsNet.ElectricResistance]::FromMilliohms(3))
    Upstream   = [UnitsNet.ElectricResistance]::FromMilliohms(15)
    Place      = [LowVoltage.Calc.Conductors.Place]@{ Ambient = [UnitsNet.Temperature]::FromDegreesCelsius(45) }
    Insulation = [LowVoltage.Calc.Conductors.InsulationMaterial]::PolyvinylChloride
}
$rules = [LowVoltage.Calc.DesignRules]::RoadVehicle
$wire = [LowVoltage.Calc.Conductors.Conductor]::Iso6722([LowVoltage.Calc.Conductors.MetricSize]::Parse('2.5 mm²'))
$fuse = [LowVoltage.Calc.Protection.FuseSeries]::RoadVehicleBlade.SmallestAtLeast([UnitsNet.ElectricCurrent]::FromAmperes(15))

$design = [LowVoltage.Calc.CircuitDesigner]::Verify($requirements, $wire, $fuse, $rules)
"$design"
$design.Checks | Select-Object Name, @{ n = 'Value'; e = { '{0:G4} {1}' -f $_.Value, $_.Unit } }, @{ n = 'Limit'; e = { '{0:G4} {1}' -f $_.Limit, $_.Unit } }, Outcome |
    Format-Table -AutoSize | Out-String -Width 120
$design.Advice | ForEach-Object { "> $_" }
$design.Cautions | ForEach-Object { "! $_" }
