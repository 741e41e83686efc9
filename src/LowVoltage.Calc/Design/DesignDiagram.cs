using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>Draws a design: source, supply lead, fuse, wire and joints, load, and the way back.</summary>
internal static class DesignDiagram
{
    // What can still be read across a page.
    private const int MostStretches = 3;
    private const int MostLoads = 4;
    private const int LongestLine = 20;

    internal static CircuitDiagram Of(CircuitDesign design)
    {
        CircuitRequirements asked = design.Requirements;
        return new CircuitDiagram(
            asked.Name.Length > 0 ? Clean(asked.Name) : "The circuit",
            new DiagramPart(asked.Source.Basis is null ? DiagramSymbol.Supply : DiagramSymbol.Battery, [.. Lines(asked.Source.Name), Accept.Short(asked.Source.Numbers.NominalVolts) + " V"]),
            [.. Feed(design)],
            [.. Loads(asked.Load)],
            [.. Back(design)]);
    }

    private static IEnumerable<DiagramPart> Feed(CircuitDesign design)
    {
        CircuitRequirements asked = design.Requirements;
        if (asked.CountedLeadOhms is > 0 and double ohms)
        {
            yield return new DiagramPart(DiagramSymbol.Wire, "supply lead", MilliOhms(ohms));
        }

        if (design.Fuse is { } fuse)
        {
            yield return new DiagramPart(DiagramSymbol.Fuse, [Accept.Text(fuse.Amperes) + " A", .. Lines(fuse.Series.Kind)]);
        }

        foreach (DiagramPart part in Wires(design.Existing?.FeedArray ?? [Segment.Create(design.Wire, asked.Feed, asked.ParallelWires.Least)]))
        {
            yield return part;
        }

        IReadOnlyList<Joint> joints = design.Existing?.FeedJoints ?? asked.Joints;
        if (joints.Count > 0)
        {
            yield return Joints(joints);
        }
    }

    private static IEnumerable<DiagramPart> Back(CircuitDesign design)
    {
        ReturnPath back = design.Existing?.Return ?? design.Requirements.Return;
        if (back.Kind == ReturnKind.Chassis)
        {
            // A joint on the way back would be drawn into the metal: the labels name it.
            IReadOnlyList<Joint> chassis = design.Existing?.ReturnJoints ?? [];
            yield return new DiagramPart(DiagramSymbol.Chassis, "chassis", MilliOhms(back.Ohms), chassis.Count > 0 ? "joints " + MilliOhms(chassis.Sum(joint => joint.Ohms)) : "");
            yield break;
        }

        if (back.Kind == ReturnKind.SharedResistance)
        {
            yield return new DiagramPart(DiagramSymbol.SharedWire, "shared return", MilliOhms(back.Ohms), $"others {Accept.Short(back.OtherAmperes)} A");
        }

        bool shared = back.Kind == ReturnKind.SharedSegments;
        Segment[] segments = back.Kind == ReturnKind.SameConductor ? [Segment.Create(design.Wire, UnitsNet.Length.FromMeters(back.Meters), design.Existing?.FeedArray[0].Parallel ?? design.Requirements.ParallelWires.Least)] : [.. back.Segments];
        foreach (DiagramPart part in Wires(segments, shared))
        {
            yield return part;
        }

        if (design.Existing?.ReturnJoints is { Count: > 0 } joints)
        {
            yield return Joints(joints);
        }
    }

    private static IEnumerable<DiagramPart> Wires(Segment[] segments, bool shared = false)
    {
        foreach (Segment segment in segments.Take(MostStretches))
        {
            string parallel = segment.Parallel == 1 ? "" : Accept.Text(segment.Parallel) + " × ";
            yield return new DiagramPart(shared ? DiagramSymbol.SharedWire : DiagramSymbol.Wire, parallel + Line(segment.Conductor.Size?.ToString() ?? segment.Conductor.Name), Accept.Short(segment.Meters) + " m");
        }

        if (segments.Length > MostStretches)
        {
            yield return new DiagramPart(DiagramSymbol.Wire, $"{Accept.Text(segments.Length - MostStretches)} more", Accept.Short(segments.Skip(MostStretches).Sum(segment => segment.Meters)) + " m");
        }
    }

    private static DiagramPart Joints(IReadOnlyList<Joint> joints) => new(
        DiagramSymbol.Joint, joints.Count == 1 ? Line(joints[0].Name) : $"{Accept.Text(joints.Count)} joints", MilliOhms(joints.Sum(joint => joint.Ohms)));

    private static IEnumerable<DiagramPart> Loads(Load load)
    {
        (DiagramSymbol Symbol, string Name)[] all = [.. load.Drawn];
        return all.Length > MostLoads
            ? [new DiagramPart(DiagramSymbol.Device, $"{Accept.Text(all.Length)} loads")]
            : all.Select(part => new DiagramPart(part.Symbol, [.. Lines(part.Name)]));
    }

    private static string MilliOhms(double ohms) => Accept.Short(ohms * 1000) + " mΩ";

    // Two short lines instead of a long one.
    private static IEnumerable<string> Lines(string words)
    {
        string clean = Clean(words);
        int cut = clean.Length <= LongestLine ? -1 : clean.LastIndexOf(' ', LongestLine);
        return cut <= 0 ? [Line(clean)] : [clean.Substring(0, cut), Line(clean.Substring(cut + 1))];
    }

    private static string Line(string words) => Clean(words) is { Length: > LongestLine } clean ? string.Concat(clean.Substring(0, LongestLine - 1), "…") : Clean(words);

    // A name of the caller's may hold what no line can.
    private static string Clean(string words) => new([.. words.Select(c => char.IsControl(c) ? ' ' : c)]);
}
