using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace LowVoltage.Calc.Teaching;

/// <summary>A sheet as a package of the quiz standard: a manifest, one test, an item and a drawing for each problem.</summary>
internal static class QtiPackage
{
    private const string TestFile = "test.xml";

    internal static byte[] Write(ProblemSheet sheet, QtiVersion version)
    {
        QtiDialect qti = new(version);
        List<(string Name, byte[] Bytes)> files = [];
        List<(string Name, bool HasDrawing)> items = [];
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            string name = "q" + (i + 1).ToString("000", CultureInfo.InvariantCulture);
            QtiItem item = new(qti, sheet.Problems[i], name);
            files.Add(($"items/{name}.xml", Bytes(item.Write())));
            if (sheet.Problems[i].Diagram is { } diagram)
            {
                files.Add(($"items/{item.DrawingName}", Encoding.UTF8.GetBytes(diagram.ToSvgFile())));
            }

            items.Add((name, sheet.Problems[i].Diagram is not null));
        }

        files.Insert(0, (TestFile, Bytes(Test(qti, sheet, items))));
        files.Insert(0, ("imsmanifest.xml", Bytes(Manifest(qti, items))));
        return StoredZip.Write(files);
    }

    private static XElement Test(QtiDialect qti, ProblemSheet sheet, List<(string Name, bool HasDrawing)> items) => qti.Element(
        "assessment-test",
        new XAttribute("identifier", "sheet"),
        new XAttribute("title", sheet.Title),
        qti.Element(
            "test-part",
            new XAttribute("identifier", "part"),
            qti.Attribute("navigation-mode", "nonlinear"),
            qti.Attribute("submission-mode", "individual"),
            qti.Element(
                "assessment-section",
                new XAttribute("identifier", "section"),
                new XAttribute("title", sheet.Title),
                new XAttribute("visible", "true"),
                items.Select(item => qti.Element("assessment-item-ref", new XAttribute("identifier", "ref-" + item.Name), new XAttribute("href", $"items/{item.Name}.xml"))))));

    private static XElement Manifest(QtiDialect qti, List<(string Name, bool HasDrawing)> items)
    {
        XNamespace cp = qti.Package;
        return new XElement(
            cp + "manifest",
            new XAttribute("identifier", "manifest"),
            new XElement(cp + "metadata", new XElement(cp + "schema", qti.SchemaName), new XElement(cp + "schemaversion", qti.SchemaVersion)),
            new XElement(cp + "organizations"),
            new XElement(
                cp + "resources",
                Resource(cp, "test", qti.TestType, TestFile, [], items.Select(item => item.Name)),
                items.Select(item => Resource(cp, item.Name, qti.ItemType, $"items/{item.Name}.xml", item.HasDrawing ? [$"items/{item.Name}.svg"] : [], []))));
    }

    private static XElement Resource(XNamespace cp, string name, string type, string file, IEnumerable<string> more, IEnumerable<string> needs) => new(
        cp + "resource",
        new XAttribute("identifier", name),
        new XAttribute("type", type),
        new XAttribute("href", file),
        new[] { file }.Concat(more).Select(path => new XElement(cp + "file", new XAttribute("href", path))),
        needs.Select(need => new XElement(cp + "dependency", new XAttribute("identifierref", need))));

    private static byte[] Bytes(XElement root)
    {
        using MemoryStream stream = new();
        XmlWriterSettings settings = new() { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = true, NewLineChars = "\n" };
        using (XmlWriter writer = XmlWriter.Create(stream, settings))
        {
            new XDocument(root).Save(writer);
        }

        return stream.ToArray();
    }
}
