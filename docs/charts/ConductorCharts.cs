using LowVoltage.Calc.Conductors;
using ScottPlot;

namespace LowVoltage.Calc.Docs.Charts;

internal static class ConductorCharts
{
    public static Plot Resistance()
    {
        Plot plot = Drawing.New("Resistance of 1 mm²", "Conductor temperature (°C)", "Resistance (mΩ/m)");
        (ConductorMaterial Metal, string Name, Color Color)[] metals =
        [
            (ConductorMaterial.Aluminium, "aluminium", Colors.Gray),
            (ConductorMaterial.CopperCladAluminium(0.15), "copper-clad aluminium, 15 % copper", Colors.DarkOrange),
            (ConductorMaterial.Copper, "copper", Colors.DarkRed),
        ];
        foreach ((ConductorMaterial metal, string name, Color color) in metals)
        {
            Conductor bar = Conductor.OfArea(Area.FromSquareMillimeters(1), metal);
            Drawing.Line(plot, Drawing.Steps(-40, 250, 100).Select(c => (c, bar.ResistancePerLength(Temperature.FromDegreesCelsius(c)).OhmsPerMeter * 1000)), name, color);
        }

        plot.Axes.SetLimits(-40, 250, 0, 60);
        plot.ShowLegend(Alignment.LowerRight);
        return plot;
    }
}
