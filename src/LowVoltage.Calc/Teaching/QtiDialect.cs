using System.Text;
using System.Xml.Linq;

namespace LowVoltage.Calc.Teaching;

/// <summary>How an edition of the standard spells its names: 3.0 with a prefix and hyphens, 2.1 with capitals inside.</summary>
internal sealed class QtiDialect
{
    private readonly bool isThree;

    internal QtiDialect(QtiVersion version)
    {
        isThree = version == QtiVersion.Qti30;
        Items = isThree ? "http://www.imsglobal.org/xsd/imsqtiasi_v3p0" : "http://www.imsglobal.org/xsd/imsqti_v2p1";
        Package = isThree ? "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1" : "http://www.imsglobal.org/xsd/imscp_v1p1";
    }

    /// <summary>The namespace of items and tests.</summary>
    internal XNamespace Items { get; }

    /// <summary>The namespace of the manifest.</summary>
    internal XNamespace Package { get; }

    internal string SchemaName => isThree ? "QTI Package" : "QTIv2.1 Package";

    internal string SchemaVersion => isThree ? "3.0.0" : "1.0.0";

    internal string ItemType => isThree ? "imsqti_item_xmlv3p0" : "imsqti_item_xmlv2p1";

    internal string TestType => isThree ? "imsqti_test_xmlv3p0" : "imsqti_test_xmlv2p1";

    /// <summary>An element of the standard, by its name with hyphens.</summary>
    internal XElement Element(string name, params object?[] content) => new(Items + (isThree ? "qti-" + name : Camel(name)), content);

    /// <summary>An attribute of the standard, by its name with hyphens.</summary>
    internal XAttribute Attribute(string name, string value) => new(isThree ? name : Camel(name), value);

    /// <summary>An element of HTML, which both editions take into their own namespace.</summary>
    internal XElement Html(string name, params object?[] content) => new(Items + name, content);

    /// <summary>The content of a feedback: 3.0 wraps it.</summary>
    internal XElement Feedback(string words) => isThree ? Element("content-body", Html("p", words)) : Html("p", words);

    private static string Camel(string name)
    {
        StringBuilder text = new();
        foreach (string part in name.Split('-'))
        {
            text.Append(text.Length == 0 ? part : char.ToUpperInvariant(part[0]) + part.Substring(1));
        }

        return text.ToString();
    }
}
