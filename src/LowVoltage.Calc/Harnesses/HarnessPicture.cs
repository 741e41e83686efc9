using System.Globalization;
using System.Xml.Linq;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Writes one drawing.</summary>
internal sealed class HarnessPicture(HarnessLayout layout, HarnessState? state, DrawingColour colour, HashSet<string> faults)
{
    private const double RowHeight = 66;
    private const double ColumnWidth = 205;
    private const double LoadWidth = 170;
    private const double Left = 24;
    private const double Top = 90;

    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    // Shares at which the colour changes; the steps also grow darker, so that grey tells them apart.
    private static readonly double[] TemperatureSteps = [0.25, 0.5, 0.75, 1];
    private static readonly double[] DropSteps = [0.005, 0.01, 0.02, 0.03];

    private readonly Harness harness = layout.Harness;

    internal XElement Draw()
    {
        double loadX = Left + (layout.FeedColumns * ColumnWidth), width = loadX + LoadWidth + (layout.ReturnColumns * ColumnWidth) + Left, height = Top + (layout.Rows * RowHeight) + 40;
        XElement svg = new(
            Ns + "svg",
            new XAttribute("viewBox", $"0 0 {N(width)} {N(height)}"), new XAttribute("width", N(width)), new XAttribute("height", N(height)), new XAttribute("role", "img"),
            new XAttribute("aria-label", $"Harness {harness.Name}"),
            new XElement(Ns + "title", $"Harness {harness.Name}"),
            new XElement(Ns + "style", Style),
            new XElement(Ns + "rect", new XAttribute("class", "page"), new XAttribute("width", N(width)), new XAttribute("height", N(height))));
        svg.Add(Text(Left, 24, harness.Name.Length > 0 ? harness.Name : "harness", "head"));
        svg.Add(Text(Left, 44, Caption(), "small"));
        svg.Add(Legend(width));
        svg.Add(Text(loadX + (LoadWidth / 2), Top - 8, "loads", "small middle"));
        foreach (int tie in layout.Ties())
        {
            svg.Add(Tie(tie));
        }

        foreach ((int from, int to, int[] branches) in layout.Lines())
        {
            svg.Add(Line(from, to, branches));
        }

        svg.Add(Loads(loadX));
        svg.Add(Nodes());
        return svg;
    }

    private static string Style => """

        svg { font-family: sans-serif; font-size: 11px; --page: #ffffff; --ink: #1a1a1a; --pale: #5a5a5a; --w0: #8a8a8a; --w1: #3f7fb5; --w2: #2c6b3f; --w3: #9a5b00; --w4: #8b0000; --mark: #b00020; }
        @media (prefers-color-scheme: dark) { svg { --page: #16181c; --ink: #ececec; --pale: #b4b4b4; --w0: #8f8f8f; --w1: #7fb6e6; --w2: #7fce95; --w3: #ffb454; --w4: #ff7a7a; --mark: #ff8a9a; } }
        @media print { svg { --page: #ffffff; --ink: #000000; --pale: #333333; --w0: #9a9a9a; --w1: #7a7a7a; --w2: #5a5a5a; --w3: #333333; --w4: #000000; --mark: #000000; } }
        .page { fill: var(--page); } text { fill: var(--ink); } .small { fill: var(--pale); font-size: 10px; } .head { font-size: 15px; font-weight: bold; } .middle { text-anchor: middle; } .end { text-anchor: end; }
        .wire { fill: none; stroke: var(--w0); } .s1 { stroke: var(--w1); } .s2 { stroke: var(--w2); } .s3 { stroke: var(--w3); } .s4 { stroke: var(--w4); } .tie { stroke-dasharray: 7 4; }
        .node { fill: var(--page); stroke: var(--ink); stroke-width: 1.4; } .load { fill: none; stroke: var(--ink); } .bad { stroke: var(--mark); stroke-width: 3; } .mark { fill: var(--mark); font-weight: bold; font-size: 10px; }

        """;

    private string Caption() => state is null
        ? "no solution is drawn"
        : $"{state.Case.Name}, {state.Level.ToString().ToLowerInvariant()} supply; ways out on the left, ways back on the right; dashed: closes a ring or joins sources";

    private XElement Legend(double width)
    {
        XElement legend = new(Ns + "g");
        if (colour == DrawingColour.None || state is null)
        {
            return legend;
        }

        string[] words = colour == DrawingColour.Temperature ? ["≤ 25 %", "≤ 50 %", "≤ 75 %", "≤ 100 %", "too hot"] : ["≤ 0.5 %", "≤ 1 %", "≤ 2 %", "≤ 3 %", "more"];
        double x = width - Left - (words.Length * 70);
        legend.Add(Text(x - 8, 24, colour == DrawingColour.Temperature ? "share of the rise that the insulation allows" : "drop of the nominal voltage", "small end"));
        for (int k = 0; k < words.Length; k++)
        {
            legend.Add(new XElement(Ns + "path", new XAttribute("class", $"wire s{N(k)}"), new XAttribute("stroke-width", "5"), new XAttribute("d", $"M{N(x + (k * 70))} 20h60")));
            legend.Add(Text(x + (k * 70), 36, words[k], "small"));
        }

        return legend;
    }

    private XElement Line(int from, int to, int[] branches)
    {
        (double x1, double y1) = At(from);
        (double x2, double y2) = At(to);
        double bend = layout.IsFeed(to) ? x1 + 14 : x1 - 14, sign = layout.IsFeed(to) ? 1 : -1;
        int worst = branches.Max(Step);
        XElement group = new(Ns + "g");
        group.Add(new XElement(
            Ns + "path", new XAttribute("class", $"wire s{N(worst)}{(branches.Any(b => faults.Contains(harness.BranchArray[b].Id)) ? " bad" : "")}"), new XAttribute("stroke-width", N(branches.Max(Width))),
            new XAttribute("d", $"M{N(x1)} {N(y1)}H{N(bend)}V{N(y2)}H{N(x2)}")));
        double text = bend + (sign * 6);
        string anchor = sign > 0 ? "" : " end";
        string[] lines = [.. branches.Select(Label)];
        for (int k = 0; k < lines.Length; k++)
        {
            bool bad = faults.Contains(harness.BranchArray[branches[k]].Id);
            double y = y2 - 5 - Width(branches[k]) - (11.5 * (lines.Length - 1 - k));
            group.Add(Text(text, y, bad ? "✗ " + lines[k] : lines[k], (bad ? "mark" : "small") + anchor));
        }

        return group;
    }

    private XElement Tie(int branch)
    {
        (double x1, double y1) = At(harness.Graph.From[branch]);
        (double x2, double y2) = At(harness.Graph.To[branch]);
        bool right = !layout.IsFeed(harness.Graph.From[branch]) && !layout.IsFeed(harness.Graph.To[branch]);
        double bow = right ? Math.Min(x1, x2) - 60 : Math.Max(x1, x2) + 60;
        XElement group = new(Ns + "g");
        group.Add(new XElement(
            Ns + "path", new XAttribute("class", $"wire tie s{N(Step(branch))}{(faults.Contains(harness.BranchArray[branch].Id) ? " bad" : "")}"), new XAttribute("stroke-width", N(Width(branch))),
            new XAttribute("d", $"M{N(x1)} {N(y1)}C{N(bow)} {N(y1)} {N(bow)} {N(y2)} {N(x2)} {N(y2)}")));
        group.Add(Text((0.5 * (x1 + x2)) + (right ? -50 : 50), (0.5 * (y1 + y2)) + 4, (faults.Contains(harness.BranchArray[branch].Id) ? "✗ " : "") + Label(branch), right ? "small end" : "small"));
        return group;
    }

    private XElement Loads(double x)
    {
        XElement group = new(Ns + "g");
        for (int n = 0; n < layout.Loads.Count; n++)
        {
            if (layout.Loads[n] < 0)
            {
                continue;
            }

            HarnessLoad load = harness.LoadArray[layout.Loads[n]];
            double y = Top + ((n + 0.5) * RowHeight);
            bool bad = faults.Contains(load.Id);
            group.Add(Lead(x, y, harness.NodeIndex(load.Positive)));
            group.Add(Lead(x + LoadWidth, y, harness.NodeIndex(load.Negative)));
            group.Add(new XElement(
                Ns + "rect", new XAttribute("class", bad ? "load bad" : "load"), new XAttribute("x", N(x)), new XAttribute("y", N(y - 17)), new XAttribute("width", N(LoadWidth)), new XAttribute("height", "34"),
                new XAttribute("rx", "3")));
            group.Add(Text(x + (LoadWidth / 2), y - 3, bad ? "✗ " + load.Id : load.Id, bad ? "mark middle" : "middle"));
            group.Add(Text(x + (LoadWidth / 2), y + 11, LoadText(layout.Loads[n]), "small middle"));
        }

        return group;
    }

    private XElement Lead(double x, double y, int node)
    {
        (double nx, double ny) = At(node);
        return new XElement(Ns + "path", new XAttribute("class", "wire"), new XAttribute("stroke-width", "1"), new XAttribute("d", $"M{N(nx)} {N(ny)}L{N(nx + ((x - nx) * 0.5))} {N(y)}H{N(x)}"));
    }

    private XElement Nodes()
    {
        XElement group = new(Ns + "g");
        for (int node = 0; node < harness.Nodes.Count; node++)
        {
            if (!layout.IsDrawn(node))
            {
                continue;
            }

            (double x, double y) = At(node);
            string id = harness.Nodes[node].Id;
            bool bad = faults.Contains(id);
            group.Add(Shape(node, x, y, bad));
            string source = string.Join(", ", harness.SourceArray.Where(s => s.Positive == id || s.Negative == id).Select(s => s.Positive == id ? $"+ {s.Id}" : $"− {s.Id}"));
            bool feed = layout.IsFeed(node);
            double text = feed ? Math.Max(Left, x - 6) : x + 6;
            group.Add(Text(text, y + 18, (bad ? "✗ " : "") + id + (source.Length > 0 && source.Substring(2) != id ? $" ({source})" : ""), (bad ? "mark" : "") + (feed ? "" : " end")));
            if (state is not null)
            {
                group.Add(Text(text, y + 29, $"{Accept.Short(state.Volts[node])} V", "small" + (feed ? "" : " end")));
            }
        }

        return group;
    }

    // A bar for a busbar, three lines for a ground, a dot for the rest.
    private XElement Shape(int node, double x, double y, bool bad)
    {
        string style = bad ? "node bad" : "node";
        return harness.Nodes[node].Kind switch
        {
            NodeKind.Busbar => new XElement(Ns + "rect", new XAttribute("class", style), new XAttribute("x", N(x - 3)), new XAttribute("y", N(y - 9)), new XAttribute("width", "6"), new XAttribute("height", "18")),
            NodeKind.Ground => new XElement(Ns + "path", new XAttribute("class", style), new XAttribute("d", $"M{N(x - 8)} {N(y)}h16M{N(x - 5)} {N(y + 3)}h10M{N(x - 2)} {N(y + 6)}h4")),
            _ => new XElement(Ns + "circle", new XAttribute("class", style), new XAttribute("cx", N(x)), new XAttribute("cy", N(y)), new XAttribute("r", harness.Nodes[node].Kind == NodeKind.Splice ? "3" : "4")),
        };
    }

    private string Label(int branch)
    {
        string what = harness.BranchArray[branch] switch
        {
            HarnessWire wire => $"{wire.Id} {(wire.Parallel > 1 ? $"{N(wire.Parallel)}×" : "")}{wire.Conductor?.Size?.ToString() ?? wire.Conductor?.ToString() ?? "?"}, {Accept.Short(wire.Meters)} m",
            HarnessFuse fuse => $"{fuse.Id} ⊟ {(fuse.Rating is { } rating ? $"{Accept.Text(rating.Amperes)} A" : "?")}",
            HarnessSwitch contact => $"{contact.Id} {(state is null ? contact.IsClosed : state.Case.IsClosed(contact)) switch { true => "closed", _ => "open" }}",
            HarnessBranch other => $"{other.Id} {Accept.Short(1000 * other.FixedOhms)} mΩ",
        };
        return state is null ? what : $"{what}; {Accept.Short(Math.Abs(state.Amperes[branch]))} A{Number(branch)}";
    }

    private string Number(int branch) => harness.BranchArray[branch] is not HarnessWire || state is null ? ""
        : colour == DrawingColour.Drop ? $", {Accept.Short(Math.Abs(Drop(branch)))} V"
        : colour == DrawingColour.Temperature && Celsius(branch) is { } celsius ? $", {Math.Round(celsius).ToString("0", CultureInfo.InvariantCulture)} °C"
        : "";

    private string LoadText(int load) => state is null
        ? harness.LoadArray[load].Load.ToString()
        : state.ConditionOf(load) is LoadCondition.Running
        ? $"{Accept.Short(state.VoltsAcross(load))} V, {Accept.Short(state.LoadAmperes[load])} A"
        : $"{state.ConditionOf(load)}, {Accept.Short(state.VoltsAcross(load))} V";

    private int Step(int branch)
    {
        if (state is null || colour == DrawingColour.None || harness.BranchArray[branch] is not HarnessWire)
        {
            return 0;
        }

        double share = colour == DrawingColour.Drop ? Math.Abs(Drop(branch)) / harness.NominalVolts : Room(branch);
        double[] steps = colour == DrawingColour.Drop ? DropSteps : TemperatureSteps;
        int at = Array.FindIndex(steps, s => share <= s);
        return at < 0 ? steps.Length : at;
    }

    private double Room(int branch)
    {
        ref readonly SegmentState s = ref state!.Wires[branch];
        double room = s.Site.Insulation.ContinuousCelsius - s.Site.AmbientCelsius;
        return Celsius(branch) is { } celsius && room > 0 ? (celsius - s.Site.AmbientCelsius) / room : double.PositiveInfinity;
    }

    private double? Celsius(int branch)
    {
        ref readonly SegmentState s = ref state!.Wires[branch];
        return s.IsRated && s.TrySteadyCelsius(state.HeatAmperes[branch], out double celsius) ? celsius : null;
    }

    private double Drop(int branch) => state!.Volts[harness.Graph.From[branch]] - state.Volts[harness.Graph.To[branch]];

    private double Width(int branch) => harness.BranchArray[branch] is HarnessWire { Conductor: { } conductor } wire
        ? Math.Min(9, 1.2 + (1.1 * Math.Log(1 + (conductor.AreaSquareMillimeters * wire.Parallel))))
        : 2;

    private (double X, double Y) At(int node)
    {
        double y = Top + ((layout.Row(node) + 0.5) * RowHeight);
        double loads = Left + (layout.FeedColumns * ColumnWidth), width = loads + LoadWidth + (layout.ReturnColumns * ColumnWidth);
        return layout.IsFeed(node) ? (Left + 10 + (layout.Depth(node) * ColumnWidth), y) : (width - 10 - (layout.Depth(node) * ColumnWidth), y);
    }

    private static XElement Text(double x, double y, string text, string style) =>
        new(Ns + "text", new XAttribute("x", N(x)), new XAttribute("y", N(y)), new XAttribute("class", style.Trim()), text);

    private static string N(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
