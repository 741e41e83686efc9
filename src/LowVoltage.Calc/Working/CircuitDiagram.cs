using System.Xml.Linq;

namespace LowVoltage.Calc.Working;

/// <summary>A small diagram of one circuit: a source, what the current passes on its way out, the loads side by side, and its way back.</summary>
/// <remarks>
/// <para>Drawn as SVG with lines and text only, in one colour and without fills that carry meaning, so that it stays legible in grey. The symbols are those of IEC 60617 (from memory).
/// The picture has a title and a description for those who do not see it. The same diagram gives the same text on every platform. Immutable and thread-safe.</para>
/// <para>It is a diagram of connections and says nothing about lengths, sizes or places but what its labels say.</para>
/// </remarks>
public sealed class CircuitDiagram
{
    private const int MostParts = 12;

    /// <summary>A diagram.</summary>
    /// <param name="title">What it shows, in a few words.</param>
    /// <param name="source">What drives the current; drawn at the left, its positive pole at the top.</param>
    /// <param name="feed">What the current passes on its way out, from the source on; drawn along the top. Up to 12.</param>
    /// <param name="loads">What it feeds; drawn at the right, side by side. One to 12.</param>
    /// <param name="back">
    /// What the current passes on its way back; drawn along the bottom. Up to 12; a plain wire when empty. A <see cref="DiagramSymbol.Chassis"/> or
    /// <see cref="DiagramSymbol.Earth"/> among them is drawn at either end instead of a wire between.
    /// </param>
    /// <exception cref="ArgumentNullException">An argument, or one of the parts, is null.</exception>
    /// <exception cref="ArgumentException">There is no load, or there are too many parts.</exception>
    public CircuitDiagram(string title, DiagramPart source, IReadOnlyList<DiagramPart> feed, IReadOnlyList<DiagramPart> loads, IReadOnlyList<DiagramPart> back)
    {
        Title = title ?? throw new ArgumentNullException(nameof(title));
        Source = source ?? throw new ArgumentNullException(nameof(source));
        Feed = Copy(feed, 0, nameof(feed));
        Loads = Copy(loads, 1, nameof(loads));
        Back = Copy(back, 0, nameof(back));
    }

    /// <summary>What it shows, in a few words.</summary>
    public string Title { get; }

    /// <summary>What drives the current.</summary>
    public DiagramPart Source { get; }

    /// <summary>What the current passes on its way out.</summary>
    public IReadOnlyList<DiagramPart> Feed { get; }

    /// <summary>What it feeds, side by side.</summary>
    public IReadOnlyList<DiagramPart> Loads { get; }

    /// <summary>What the current passes on its way back.</summary>
    public IReadOnlyList<DiagramPart> Back { get; }

    /// <summary>The diagram in a sentence, for those who do not see it.</summary>
    public string Description =>
        $"Circuit: {Source}; out through {Listed(Feed, "a wire")}; {(Loads.Count == 1 ? "to" : "to, side by side,")} {Listed(Loads, "")}; back through {Listed(Back, "a wire")}.";

    /// <summary>The diagram as an SVG element to stand inside an HTML page: lines and text take the colour of the text around it.</summary>
    /// <param name="id">A name that begins the two identifiers it needs; each diagram of a page has its own. Letters, digits and hyphens, a letter first.</param>
    /// <returns>The element, well-formed as XML too.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">The name has other characters.</exception>
    public string ToSvg(string id) => Xhtml.Write(ToElement(id, out _));

    /// <summary>The diagram as an SVG file: black on white, whatever is behind it.</summary>
    /// <returns>The file.</returns>
    public string ToSvgFile() => "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + Xhtml.Write(DiagramLayout.Write(this, "circuit", standsAlone: true, out _)) + "\n";

    /// <summary>The element and its width in pixels.</summary>
    internal XElement ToElement(string id, out double width) => DiagramLayout.Write(this, Checked(id), standsAlone: false, out width);

    /// <summary>The title.</summary>
    public override string ToString() => Title;

    private static string Checked(string id)
    {
        _ = id ?? throw new ArgumentNullException(nameof(id));
        return id.Length > 0 && IsLetter(id[0]) && id.All(c => IsLetter(c) || c is >= '0' and <= '9' or '-')
            ? id
            : throw new ArgumentException($"id must be letters, digits and hyphens, a letter first; it was '{id}'.", nameof(id));
    }

    private static bool IsLetter(char c) => c is >= 'a' and <= 'z' or >= 'A' and <= 'Z';

    private static string Listed(IReadOnlyList<DiagramPart> parts, string none) => parts.Count == 0 ? none : string.Join(", ", parts);

    private static System.Collections.ObjectModel.ReadOnlyCollection<DiagramPart> Copy(IReadOnlyList<DiagramPart> parts, int least, string name)
    {
        _ = parts ?? throw new ArgumentNullException(name);
        DiagramPart[] own = [.. parts.Select(part => part ?? throw new ArgumentNullException(name))];
        return own.Length >= least && own.Length <= MostParts
            ? Array.AsReadOnly(own)
            : throw new ArgumentException($"{name} must be {least} to {MostParts} parts; it was {own.Length}.", name);
    }
}
