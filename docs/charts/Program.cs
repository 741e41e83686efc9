using LowVoltage.Calc.Docs.Charts;
using ScottPlot;

// The folder to write to; one SVG a chart.
string folder = args.Length > 0 ? args[0] : Environment.CurrentDirectory;
Directory.CreateDirectory(folder);
(string Name, Func<Plot> Draw)[] charts =
[
    ("resistance", ConductorCharts.Resistance),
    ("constant-power", CircuitCharts.ConstantPower),
    ("even-run", CircuitCharts.EvenRun),
    ("heat-balance", HeatCharts.HeatBalanceAndTable),
    ("bundle", HeatCharts.Bundle),
    ("overload", HeatCharts.Overload),
    ("fuse-band", FuseCharts.Band),
];
foreach ((string name, Func<Plot> draw) in charts)
{
    draw().SaveSvg(Path.Combine(folder, name + ".svg"), 900, 520);
    Console.WriteLine($"{name}.svg");
}
