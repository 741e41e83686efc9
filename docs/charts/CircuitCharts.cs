using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;
using ScottPlot;

namespace LowVoltage.Calc.Docs.Charts;

internal static class CircuitCharts
{
    public static Plot ConstantPower()
    {
        Plot plot = Drawing.New("12 V behind 0.5 Ω: what the line offers and what the loads ask for", "Voltage at the load (V)", "Current (A)");
        Drawing.Line(plot, [(0, 24), (12, 0)], "the line: I = (12 V − U)/0.5 Ω", Colors.Black);
        (double Watts, string Name, Color Color)[] loads = [(40, "40 W: two points, the right one is stable", Colors.SeaGreen), (72, "72 W: the most that can arrive", Colors.DarkOrange), (100, "100 W: no operating point", Colors.DarkRed)];
        foreach ((double watts, string name, Color color) in loads)
        {
            Drawing.Line(plot, Drawing.Steps(1.5, 12.5, 200).Select(u => (u, watts / u)), name, color);
        }

        Source source = Source.BehindResistance(ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(0.5));
        CircuitPath path = CircuitPath.Create(
            Segment.Create(Conductors.Conductor.OfArea(Area.FromSquareMillimeters(100), Conductors.ConductorMaterial.Copper), Length.FromMillimeters(1)),
            ReturnPath.Chassis(ElectricResistance.Zero));
        OperatingPoint point = OperatingPoint.Solve(source, path, Load.ConstantPower(Power.FromWatts(40)), ConductorTemperature.At(Temperature.FromDegreesCelsius(20)));
        Drawing.Points(plot, [(point.VoltageAtLoad.Volts, point.Current.Amperes)], "the point that the library gives", Colors.Blue);
        plot.Axes.SetLimits(0, 12.5, 0, 26);
        plot.ShowLegend(Alignment.UpperRight);
        return plot;
    }

    public static Plot EvenRun()
    {
        Plot plot = Drawing.New("10 m of light strip, 4 A in all, 20 mΩ/m out and back", "Distance from the near feed (m)", "Voltage (V)");
        UniformRun run = UniformRun.Create(
            LinearResistance.FromOhmsPerKilometer(10), LinearResistance.FromOhmsPerKilometer(10), Length.FromMeters(10), ElectricCurrent.FromAmperes(4));
        ElectricPotential feed = ElectricPotential.FromVolts(12);
        Drawing.Line(plot, Drawing.Steps(0, 10, 100).Select(x => (x, run.VoltageAt(feed, Length.FromMeters(x)).Volts)), "fed at one end", Colors.DarkRed);
        Drawing.Line(plot, Drawing.Steps(0, 10, 100).Select(x => (x, run.VoltageAt(feed, feed, Length.FromMeters(x)).Volts)), "fed at both ends", Colors.SeaGreen);
        plot.Axes.SetLimits(0, 10, 11.5, 12.05);
        plot.ShowLegend(Alignment.LowerLeft);
        return plot;
    }
}
