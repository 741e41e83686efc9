using System.Xml.Linq;

namespace LowVoltage.Calc.Teaching;

/// <summary>The rules that mark an item: blank first, then right, then each mistake, then what is left.</summary>
internal static class QtiRules
{
    internal const string RightId = "RIGHT";
    internal const string OtherId = "OTHER";
    internal const string SignId = "SIGN";
    internal const string PowerId = "POWER";

    internal static XElement OfChoice(QtiDialect qti) => qti.Element(
        "response-processing",
        qti.Element(
            "response-condition",
            qti.Element("response-if", qti.Element("is-null", Variable(qti)), SetScore(qti, "0")),
            qti.Element(
                "response-else",
                qti.Element(
                    "response-condition",
                    qti.Element("response-if", qti.Element("match", Variable(qti), qti.Element("correct", new XAttribute("identifier", "RESPONSE"))), SetScore(qti, "1")),
                    qti.Element("response-else", SetScore(qti, "0"))),
                qti.Element("set-outcome-value", new XAttribute("identifier", "FEEDBACK"), Variable(qti)))));

    internal static XElement OfNumber(QtiDialect qti, QtiMarking marking) => qti.Element(
        "response-processing",
        qti.Element(
            "response-condition",
            qti.Element("response-if", qti.Element("is-null", Variable(qti)), SetScore(qti, "0")),
            Branch(qti, [marking.Right], RightId, "1"),
            marking.Wrong.Select(wrong => Branch(qti, [wrong.Range], QtiItem.IdOf(wrong.Mistakes), "0")),
            marking.Sign is { } sign ? Branch(qti, [sign], SignId, "0") : null,
            marking.Powers.Count > 0 ? Branch(qti, marking.Powers, PowerId, "0") : null,
            qti.Element("response-else", SetScore(qti, "0"), SetFeedback(qti, OtherId))));

    private static XElement Branch(QtiDialect qti, IReadOnlyList<QtiRange> ranges, string feedback, string score) => qti.Element(
        "response-else-if",
        ranges.Count == 1 ? Within(qti, ranges[0]) : qti.Element("or", ranges.Select(range => Within(qti, range))),
        SetScore(qti, score),
        SetFeedback(qti, feedback));

    private static XElement Within(QtiDialect qti, QtiRange range) => qti.Element(
        "and",
        qti.Element("gte", Variable(qti), Value(qti, "float", range.LeastText)),
        qti.Element("lte", Variable(qti), Value(qti, "float", range.MostText)));

    private static XElement Variable(QtiDialect qti) => qti.Element("variable", new XAttribute("identifier", "RESPONSE"));

    private static XElement Value(QtiDialect qti, string type, string value) => qti.Element("base-value", qti.Attribute("base-type", type), value);

    private static XElement SetScore(QtiDialect qti, string score) =>
        qti.Element("set-outcome-value", new XAttribute("identifier", "SCORE"), Value(qti, "float", score));

    private static XElement SetFeedback(QtiDialect qti, string identifier) =>
        qti.Element("set-outcome-value", new XAttribute("identifier", "FEEDBACK"), Value(qti, "identifier", identifier));
}
