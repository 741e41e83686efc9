using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace LowVoltage.Calc.Working;

/// <summary>Elements of a page that is well-formed XML and HTML at once; the escaping is the XML library's.</summary>
internal static class Xhtml
{
    internal static XElement Element(string name, params object?[] content)
    {
        XElement element = new(name);
        foreach (object? part in content)
        {
            element.Add(part is string words ? new XText(Clean(words)) : part);
        }

        // Never <p/>, which HTML reads as the start of a paragraph.
        if (element.IsEmpty && !IsVoid(name))
        {
            element.Add("");
        }

        return element;
    }

    internal const string NewLine = "\n";

    /// <summary>An element on a line of its own, so that the source can be read too.</summary>
    internal static object[] Line(string name, params object?[] content) => [Element(name, content), new XText(NewLine)];

    internal static XAttribute Class(string names) => new("class", names);

    internal static XAttribute Attribute(string name, string value) => new(name, Clean(value));

    internal static string Write(XElement element) => element.ToString(SaveOptions.DisableFormatting);

    /// <summary>Text without what no document may hold.</summary>
    internal static string Clean(string words)
    {
        StringBuilder text = new(words.Length);
        for (int i = 0; i < words.Length; i++)
        {
            if (i + 1 < words.Length && XmlConvert.IsXmlSurrogatePair(words[i + 1], words[i]))
            {
                text.Append(words[i]).Append(words[++i]);
            }
            else
            {
                text.Append(XmlConvert.IsXmlChar(words[i]) ? words[i] : '\uFFFD');
            }
        }

        return text.ToString();
    }

    private static bool IsVoid(string name) => name is "meta" or "br" or "hr";
}
