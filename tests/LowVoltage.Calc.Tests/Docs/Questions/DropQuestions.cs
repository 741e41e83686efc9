using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using Console = LowVoltage.Calc.Tests.Docs.Snippets.Console;

namespace LowVoltage.Calc.Tests.Docs.Questions;

/// <summary>Volts that get lost on the way, and how thick the wire must be for it.</summary>
internal static class DropQuestions
{
    public static void DropOfARun()
    {
        #region drop-of-a-run
        ElectricPotential drop = VoltageDrop.Along(
            Conductor.Awg(14), Length.FromFeet(20 + 20), ElectricCurrent.FromAmperes(10), Temperature.FromDegreesCelsius(20));
        Console.WriteLine($"{drop.Volts:0.00} V lost, {drop.Volts / 12:0.0 %} of 12 V");
        #endregion
    }

    public static void SizeForThreePercent()
    {
        #region size-for-three-percent
        Length there = Length.FromFeet(25);
        ElectricPotential allowed = ElectricPotential.FromVolts(12 * 0.03);
        Conductor wire = ConductorSeries.AwgTrade.SmallestFor(
            there * 2, ElectricCurrent.FromAmperes(30), Temperature.FromDegreesCelsius(20), allowed);
        Console.WriteLine(wire);
        #endregion
    }

    public static void OneWayOrBothWays()
    {
        #region one-way-or-both-ways
        CircuitPath path = CircuitPath.TwoWire(Conductor.Iso6722(MetricSize.Parse("1.5")), Length.FromMeters(5));
        OperatingPoint point = OperatingPoint.Solve(
            Source.Ideal(ElectricPotential.FromVolts(12)), path, Load.ConstantCurrent(ElectricCurrent.FromAmperes(8)),
            ConductorTemperature.At(Temperature.FromDegreesCelsius(20)));
        foreach (PathElement element in point.Elements)
        {
            Console.WriteLine($"{element.Name}: {element.Drop.Volts:0.00} V");
        }
        #endregion
    }

    public static void EndOfAStrip()
    {
        #region end-of-a-strip
        LinearResistance track = LinearResistance.FromOhmsPerMeter(0.05);
        UniformRun strip = UniformRun.Create(track, track, Length.FromMeters(5), ElectricCurrent.FromAmperes(3));
        ElectricPotential supply = ElectricPotential.FromVolts(12);
        Console.WriteLine($"fed at one end: {strip.FedAtOneEnd(supply).Lowest.Voltage.Volts:0.0} V at the far end");
        Console.WriteLine($"fed at both ends: {strip.FedAtBothEnds(supply, supply).Lowest.Voltage.Volts:0.0} V in the middle");
        #endregion
    }

    public static void HowFar()
    {
        #region how-far
        LinearResistance wire = Conductor.Iso6722(MetricSize.Parse("2.5")).ResistancePerLength(Temperature.FromDegreesCelsius(40));
        Length copper = VoltageDrop.GreatestRun(wire, ElectricCurrent.FromAmperes(5), ElectricPotential.FromVolts(0.5));
        Console.WriteLine($"{copper.Meters / 2:0.0} m away, which is {copper.Meters:0.0} m of wire");
        #endregion
    }

    public static void TwelveOrTwentyFour()
    {
        #region twelve-or-twenty-four
        foreach (double volts in new[] { 12.0, 24 })
        {
            ElectricCurrent current = ElectricCurrent.FromAmperes(120 / volts);
            Conductor wire = ConductorSeries.RoadVehicle.SmallestFor(Length.FromMeters(2 * 8), current,
                Temperature.FromDegreesCelsius(40), ElectricPotential.FromVolts(0.03 * volts));
            Console.WriteLine($"{volts} V: {current.Amperes} A, {wire}");
        }
        #endregion
    }

    public static void BackThroughTheFrame()
    {
        #region back-through-the-frame
        Segment feed = Segment.Create(Conductor.Iso6722(MetricSize.Parse("6")), Length.FromMeters(4));
        foreach (ReturnPath back in new[] { ReturnPath.Wire(feed), ReturnPath.Chassis(ElectricResistance.FromMilliohms(2)) })
        {
            OperatingPoint point = OperatingPoint.Solve(Source.Ideal(ElectricPotential.FromVolts(12)), CircuitPath.Create(feed, back),
                Load.ConstantCurrent(ElectricCurrent.FromAmperes(20)), ConductorTemperature.At(Temperature.FromDegreesCelsius(20)));
            Console.WriteLine($"back by {(back.Kind == ReturnKind.Chassis ? "frame" : "wire")}: {point.VoltageAtLoad.Volts:0.00} V at the load");
        }
        #endregion
    }
}
