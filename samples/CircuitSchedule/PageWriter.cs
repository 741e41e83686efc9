using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace CircuitSchedule;

/// <summary>A page written element by element as it grows, well-formed XML and HTML at once; the escaping is the XML library's.</summary>
internal sealed class PageWriter : IDisposable
{
    private static readonly XmlWriterSettings Settings = new() { OmitXmlDeclaration = true, NewLineHandling = NewLineHandling.None };

    private readonly TextWriter output;
    private readonly XmlWriter xml;

    public PageWriter(TextWriter output)
    {
        this.output = output;
        xml = XmlWriter.Create(output, Settings);
        xml.WriteRaw("<!DOCTYPE html>\n");
    }

    /// <summary>Opens an element that what follows stands in, until <see cref="Close"/>.</summary>
    public void Open(string name, params XAttribute[] attributes)
    {
        xml.WriteStartElement(name);
        foreach (XAttribute attribute in attributes)
        {
            xml.WriteAttributeString(attribute.Name.LocalName, attribute.Value);
        }

        NewLine();
    }

    public void Close()
    {
        xml.WriteFullEndElement();
        NewLine();
    }

    /// <summary>A whole element, on a line of its own.</summary>
    public void Add(XElement element)
    {
        element.WriteTo(xml);
        NewLine();
    }

    /// <summary>The style sheet: HTML reads no escapes in it.</summary>
    public void AddStyle(string css)
    {
        xml.WriteStartElement("style");
        xml.WriteRaw($"\n{css}\n");
        Close();
    }

    /// <summary>Closes the elements that are open: the page is whole.</summary>
    public void Finish()
    {
        xml.WriteEndDocument();
        xml.Flush();
        output.Write('\n');
    }

    public void Dispose()
    {
        xml.Dispose();
        output.Dispose();
    }

    /// <param name="name">The element.</param>
    /// <param name="content">Attributes, elements and words; a new line in the words stays one on the page.</param>
    public static XElement Element(string name, params object[] content)
    {
        XElement element = new(name);
        foreach (object part in content)
        {
            if (part is string words)
            {
                AddWords(element, words);
            }
            else
            {
                element.Add(part);
            }
        }

        return element;
    }

    // Empty words too: an element without any content would be written as <td/>, which HTML takes for a start.
    private static void AddWords(XElement element, string words)
    {
        string[] lines = Clean(words).Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (i > 0)
            {
                element.Add(new XElement("br"));
            }

            element.Add(new XText(lines[i]));
        }
    }

    // What no document may hold, a control character of a cell for one, becomes the sign for it.
    private static string Clean(string words)
    {
        if (words.All(XmlConvert.IsXmlChar))
        {
            return words;
        }

        StringBuilder text = new(words.Length);
        foreach (Rune rune in words.EnumerateRunes())
        {
            text.Append(rune.IsBmp && !XmlConvert.IsXmlChar((char)rune.Value) ? Rune.ReplacementChar : rune);
        }

        return text.ToString();
    }

    private void NewLine() => xml.WriteString("\n");
}
