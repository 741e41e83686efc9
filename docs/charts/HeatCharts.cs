using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using ScottPlot;

namespace LowVoltage.Calc.Docs.Charts;

internal static class HeatCharts
{
    private static readonly Temperature Seventy = Temperature.FromDegreesCelsius(70);

    public static Plot HeatBalanceAndTable()
    {
        Plot plot = Drawing.New("PVC cable at 70 °C in still air of 30 °C", "Nominal section (mm²)", "Continuous current (A)");
        double[] sections = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120];
        Drawing.Line(plot, sections.Select(s => (Math.Log10(s), Math.Log10(Balance(s)))), "heat balance", Colors.DarkRed);
        Drawing.Points(
            plot, sections.Select(s => (Math.Log10(s), Math.Log10(RoadVehicleSingleCore.Ambient30.Rating(MetricSize.FromSquareMillimeters(s), Seventy).Current.Amperes))),
            "road-vehicle table", Colors.Black);
        Drawing.LogAxis(plot.Axes.Bottom, 1, 2, 5);
        Drawing.LogAxis(plot.Axes.Left, 1, 2, 5);
        plot.Axes.SetLimits(-0.05, 2.13, 1.1, 2.75);
        plot.ShowLegend(Alignment.UpperLeft);
        return plot;
    }

    public static Plot Bundle()
    {
        Plot plot = Drawing.New("Bundle factor, PVC 70 °C, 30 °C air, all wires loaded", "Loaded wires", "Current over that of two wires");
        Conductor conductor = Conductor.SolidOfDiameter(Length.FromMillimeters(2.05), ConductorMaterial.Copper);
        Wire wire = Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.8));
        Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(30) };
        double Current(int wires) => BundleHeat.CurrentFor(WireBundle.Create(wire, wires, wires), air, Seventy).Amperes;
        Drawing.Line(plot, Enumerable.Range(1, 20).Select(c => (2.0 * c, Current(2 * c) / Current(2))), "model", Colors.DarkRed);
        int[] circuits = [1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 16, 20];
        Drawing.Points(
            plot, circuits.Select(c => (2.0 * c, Iec60364Grouping.Factor(c, Iec60364Arrangement.Bunched).Value)), "IEC 60364-5-52, circuits of two wires", Colors.Black);
        plot.Axes.SetLimits(0, 42, 0, 1.1);
        plot.ShowLegend(Alignment.UpperRight);
        return plot;
    }

    public static Plot Overload()
    {
        Plot plot = Drawing.New("Time from 25 °C to 70 °C, PVC cable in still air", "Current (A)", "Time (s)");
        Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(25) };
        (double Section, Color Color)[] sizes = [(0.75, Colors.DarkBlue), (1.5, Colors.SeaGreen), (4, Colors.DarkRed)];
        foreach ((double section, Color color) in sizes)
        {
            Wire wire = Cable(section);
            double carried = HeatBalance.CurrentFor(wire, air, Seventy).Amperes;
            Drawing.Line(
                plot,
                Drawing.LogSteps(carried * 1.002, 400, 200).Select(a => (Math.Log10(a), Math.Log10(OverloadHeating.TimeToReach(wire, air, ElectricCurrent.FromAmperes(a), Seventy)!.Value.Seconds))),
                $"{section} mm²: {carried:0} A indefinitely", color);
        }

        Drawing.LogAxis(plot.Axes.Bottom, 1, 2, 5);
        Drawing.LogAxis(plot.Axes.Left, 1);
        plot.Axes.SetLimits(1, 2.61, -2, 3);
        plot.ShowLegend(Alignment.UpperRight);
        return plot;
    }

    private static double Balance(double section) => HeatBalance.CurrentFor(Cable(section), new Surroundings { Ambient = Temperature.FromDegreesCelsius(30) }, Seventy).Amperes;

    private static Wire Cable(double section)
    {
        Conductor conductor = Conductor.Iso6722(MetricSize.FromSquareMillimeters(section));
        return Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, InsulationWall.UsualFor(conductor));
    }
}
