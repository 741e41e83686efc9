Imports System
Imports System.Globalization
Imports LowVoltage.Calc
Imports LowVoltage.Calc.Checks
Imports LowVoltage.Calc.Circuits
Imports LowVoltage.Calc.Conductors
Imports LowVoltage.Calc.Protection
Imports UnitsNet

' The circuit of ../CSharp7 once more: it must print the same.
Friend Module Program
    Friend Function Main() As Integer
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture
        Dim roof As Place = Place.Create(Temperature.FromDegreesCelsius(50)).WithLoadedConductors(6)
        Dim fan As CircuitRequirements = CircuitRequirements.Create(
            Battery.LeadAcid(ElectricCurrent.FromAmperes(600)),
            Load.Motor(ElectricCurrent.FromAmperes(4), ElectricCurrent.FromAmperes(12), ElectricCurrent.FromAmperes(16), Duration.FromSeconds(0.1)).WithThermalCutOut(),
            Length.FromMeters(4.5),
            ReturnPath.Wire(Length.FromMeters(4.5)),
            roof,
            InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B)).
            WithName("roof fan").
            WithUpstream(ElectricResistance.FromMilliohms(14))

        Dim rules As DesignRules = DesignRules.RoadVehicle.WithFusePractice(DesignRules.RoadVehicle.FusePractice.WithFaultTime(Duration.FromSeconds(2)))
        Dim design As CircuitDesign = CircuitDesigner.Design(fan, rules)
        Console.WriteLine(design)
        For Each check As CheckResult In design.Checks
            Console.WriteLine(check.Kind.Id & " " & check.Outcome.ToString() & " " & If(check.Value.HasValue, BitConverter.DoubleToInt64Bits(check.Value.Value).ToString("x16", CultureInfo.InvariantCulture), "-"))
        Next

        Dim own As FuseSeries = FuseSeries.Create(FuseSeriesDefinition.Create("invented", "fuse", {ElectricCurrent.FromAmperes(5), ElectricCurrent.FromAmperes(10)}, LowVoltage.Calc.References.Reference.CommonPractice("invented")))
        Console.WriteLine(own.Ratings.Count)
        Return If(design.Verdict = Verdict.Pass, 0, 1)
    End Function
End Module
