using ScottPlot;

namespace LowVoltage.Calc.Samples;

/// <summary>A chart as a file, PNG or SVG as its name ends.</summary>
internal static class ChartFile
{
    public static readonly string[] Endings = [".png", ".svg"];

    private const int Width = 1000;
    private const int Height = 650;

    public static void Save(Plot plot, string path)
    {
        if (path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
        {
            plot.SaveSvg(path, Width, Height);
        }
        else
        {
            plot.SavePng(path, Width, Height);
        }
    }
}
