using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class WireSizes
{
    public static void ReadAWireSize()
    {
        #region read-a-wire-size
        string[] labels = 
        [
            "14 AWG", "14 SAE", "14 aircraft", "2.5 mm²", "2.5mm2", "250 kcmil",
            "14", "4/0", "#10", "14 gauge", "2,5 mm²",
        ];
        foreach (string label in labels)
        {
            Console.WriteLine(ConductorSize.TryParse(label, out ConductorSize size)
                ? $"{label}: {size.System}, {size.NominalArea.SquareMillimeters:0.00} mm²"
                : $"{label}: refused");
        }
        #endregion
    }

    public static void TheSameNumberIsNotTheSameWire()
    {
        #region the-same-number-is-not-the-same-wire
        Temperature cold = Temperature.FromDegreesCelsius(20);
        Conductor[] wires =
        [
            Conductor.Stranded(AwgSize.FromNumber(14), ConductorMaterial.Copper),
            Conductor.VehicleGauge(VehicleGaugeSize.FromNumber(14), ConductorMaterial.Copper),
            Conductor.AircraftWire(AircraftWireSize.FromNumber(14)),
            Conductor.Iec60228(MetricSize.Parse("2.5 mm²"), Iec60228Class.Flexible),
            Conductor.Iso6722(MetricSize.Parse("2.5 mm²")),
        ];
        foreach (Conductor wire in wires)
        {
            Console.WriteLine($"{wire.Name}: {wire.ResistancePerLength(cold).OhmsPerKilometer:0.00} Ω/km");
        }
        #endregion
    }
}
