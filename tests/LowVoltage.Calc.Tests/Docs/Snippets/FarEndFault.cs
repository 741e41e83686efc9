using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class FarEndFault
{
    public static void FaultAtTheFarEnd()
    {
        #region fault-at-the-far-end
        Source battery = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600));
        Conductor wire = Conductor.Iso6722(MetricSize.Parse("1 mm²"));
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(15));
        Temperature hot = Temperature.FromDegreesCelsius(70);

        foreach (double meters in new[] { 3.0, 6, 10 })
        {
            Segment run = Segment.Create(wire, Length.FromMeters(meters));
            CircuitPath path = CircuitPath.Create(run, ReturnPath.Wire(run));
            ElectricCurrent least = ProspectiveCurrent.AtEnd(battery, path, hot, cold: hot).Least!.Value;
            FaultSegment loop = FaultSegment.Create(wire, Length.FromMeters(2 * meters), initial: hot);
            FaultPath fault = FaultPath.Create(battery.MinimumVoltage, battery.GreatestResistance, loop);
            FaultOpening latest = FaultClearing.Latest(fault, fuse);
            string end = latest is { Outcome: FaultOutcome.Opens, State: { } state }
                ? $"opens within {state.Time.Seconds:0.00} s, wire at {state.HottestTemperature.DegreesCelsius:0} °C"
                : "need not open";
            Console.WriteLine($"{meters,4:0} m: at least {least.Amperes:0} A; {end}");
        }
        #endregion
    }
}
