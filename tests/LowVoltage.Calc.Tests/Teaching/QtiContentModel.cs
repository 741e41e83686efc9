using System.Xml.Linq;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>What may stand in what, and which attributes must be there: the part of the standard's schema that items use, in the names of edition 2.1 (from memory, and as two items have it that were checked against the schema).</summary>
internal static class QtiContentModel
{
    private static readonly string[] Block = ["p", "table", "choiceInteraction"];
    private static readonly string[] Rule = ["responseCondition", "setOutcomeValue"];
    private static readonly string[] Logic = ["isNull", "match", "and", "or", "gte", "lte"];

    private static readonly Dictionary<string, (string[] Children, string[] Attributes, bool HasText)> Model = new(StringComparer.Ordinal)
    {
        ["assessmentItem"] = (["responseDeclaration", "outcomeDeclaration", "itemBody", "responseProcessing", "modalFeedback"], ["identifier", "title", "adaptive", "timeDependent"], false),
        ["responseDeclaration"] = (["correctResponse"], ["identifier", "cardinality", "baseType"], false),
        ["correctResponse"] = (["value"], [], false),
        ["outcomeDeclaration"] = (["defaultValue"], ["identifier", "cardinality", "baseType"], false),
        ["defaultValue"] = (["value"], [], false),
        ["value"] = ([], [], true),
        ["itemBody"] = (Block, [], false),
        ["p"] = (["strong", "img", "textEntryInteraction"], [], true),
        ["strong"] = ([], [], true),
        ["img"] = ([], ["src", "alt"], false),
        ["table"] = (["thead", "tbody"], [], false),
        ["thead"] = (["tr"], [], false),
        ["tbody"] = (["tr"], [], false),
        ["tr"] = (["th", "td"], [], false),
        ["th"] = ([], [], true),
        ["td"] = ([], [], true),
        ["textEntryInteraction"] = ([], ["responseIdentifier"], false),
        ["choiceInteraction"] = (["prompt", "simpleChoice"], ["responseIdentifier", "shuffle", "maxChoices"], false),
        ["prompt"] = ([], [], true),
        ["simpleChoice"] = ([], ["identifier"], true),
        ["responseProcessing"] = (Rule, [], false),
        ["responseCondition"] = (["responseIf", "responseElseIf", "responseElse"], [], false),
        ["responseIf"] = ([.. Logic, .. Rule], [], false),
        ["responseElseIf"] = ([.. Logic, .. Rule], [], false),
        ["responseElse"] = (Rule, [], false),
        ["isNull"] = (["variable"], [], false),
        ["match"] = (["variable", "correct"], [], false),
        ["and"] = (Logic, [], false),
        ["or"] = (Logic, [], false),
        ["gte"] = (["variable", "baseValue"], [], false),
        ["lte"] = (["variable", "baseValue"], [], false),
        ["variable"] = ([], ["identifier"], false),
        ["correct"] = ([], ["identifier"], false),
        ["baseValue"] = ([], ["baseType"], true),
        ["setOutcomeValue"] = (["baseValue", "variable"], ["identifier"], false),
        ["modalFeedback"] = (["contentBody", "p"], ["outcomeIdentifier", "identifier", "showHide"], false),
        ["contentBody"] = (["p"], [], false),
    };

    internal static void Check(XElement element)
    {
        string name = QtiReader.Plain(element);
        Assert.True(Model.TryGetValue(name, out (string[] Children, string[] Attributes, bool HasText) model), name);
        string[] children = [.. element.Elements().Select(QtiReader.Plain)];
        Assert.All(children, child => Assert.Contains(child, model.Children));
        // In the order of the model, for those whose children have one.
        if (name is "assessmentItem" or "responseCondition" or "choiceInteraction" or "table" or "responseIf" or "responseElseIf")
        {
            int[] order = [.. children.Select(child => Array.IndexOf(model.Children, child))];
            Assert.Equal(name.StartsWith("responseIf", StringComparison.Ordinal) || name == "responseElseIf" ? [.. order.Select(at => at < Logic.Length ? 0 : 1)] : order,
                name.StartsWith("responseIf", StringComparison.Ordinal) || name == "responseElseIf" ? order.Select(at => at < Logic.Length ? 0 : 1).Order() : order.Order());
        }

        string[] attributes = [.. element.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration).Select(attribute => QtiReader.Camel(attribute.Name.LocalName))];
        Assert.All(model.Attributes, needed => Assert.Contains(needed, attributes));
        Assert.True(model.HasText || !element.Nodes().OfType<XText>().Any(text => !string.IsNullOrWhiteSpace(text.Value)), name);
        foreach (XElement child in element.Elements())
        {
            Check(child);
        }
    }
}
