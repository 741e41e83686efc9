using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class SeveralLights
{
    public static void LightsOnOneRun()
    {
        #region lights-on-one-run
        Conductor cable = Conductor.Iso6722(MetricSize.Parse("1.5 mm²"));
        LinearResistance wire = cable.ResistancePerLength(Temperature.FromDegreesCelsius(40));
        Tap light = Tap.Create(section: Length.FromMeters(2.5), current: ElectricCurrent.FromAmperes(0.8));
        TappedRun run = TappedRun.Create(feed: wire, back: wire, light, light, light, light, light, light);

        RunSolution oneEnd = run.FedAtOneEnd(ElectricPotential.FromVolts(12.2));
        RunSolution bothEnds = run.FedAtBothEnds(ElectricPotential.FromVolts(12.2), ElectricPotential.FromVolts(12.2));

        foreach (RunPoint point in oneEnd.Points)
        {
            Console.WriteLine($"{point.Distance.Meters,5:0.0} m: {point.Voltage.Volts:0.00} V");
        }

        Console.WriteLine($"fed at one end: {oneEnd.GreatestDrop.Volts:0.00} V lost at the last light");
        Console.WriteLine(
            $"fed at both ends: {bothEnds.GreatestDrop.Volts:0.00} V "
            + $"lost, lowest at {bothEnds.Lowest.Distance.Meters:0.0} m");
        #endregion
    }
}
