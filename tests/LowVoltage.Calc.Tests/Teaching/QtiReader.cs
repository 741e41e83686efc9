using System.Globalization;
using System.Xml.Linq;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>Marks an answer by the rules of an item as they stand in its file: an interpreter of its own for the few elements that items use.</summary>
internal sealed class QtiReader
{
    private readonly XElement root;
    private readonly XElement response;

    internal QtiReader(byte[] bytes)
    {
        root = XDocument.Load(new MemoryStream(bytes)).Root!;
        response = Named("responseDeclaration").Single();
    }

    internal string Identifier => (string)root.Attribute("identifier")!;

    internal bool AsksForANumber => Attribute(response, "baseType") == "float";

    internal IEnumerable<(string Id, string Text)> Choices => Named("simpleChoice").Select(choice => ((string)choice.Attribute("identifier")!, choice.Value));

    internal IEnumerable<string> Pictures => root.Descendants().Where(element => element.Name.LocalName == "img").Select(image => (string)image.Attribute("src")!);

    private string Correct => response.Descendants().Last().Value;

    internal string Feedback(string identifier) => Assert.Single(Named("modalFeedback"), feedback => (string?)feedback.Attribute("identifier") == identifier).Value;

    /// <summary>Score and feedback of an answer; null is none.</summary>
    internal (double Score, string? Feedback) Mark(string? answer)
    {
        Dictionary<string, string> outcomes = [];
        foreach (XElement rule in Named("responseProcessing").Single().Elements())
        {
            Run(rule, answer, outcomes);
        }

        return (double.Parse(outcomes["SCORE"], CultureInfo.InvariantCulture), outcomes.GetValueOrDefault("FEEDBACK"));
    }

    internal void CheckReferences()
    {
        string[] outcomes = [.. Named("outcomeDeclaration").Select(outcome => (string)outcome.Attribute("identifier")!)];
        Assert.Equal(["SCORE", "MAXSCORE", "FEEDBACK"], outcomes);
        Assert.All(Named("setOutcomeValue"), set => Assert.Contains((string)set.Attribute("identifier")!, outcomes));
        XElement interaction = Assert.Single(root.Descendants(), element => Plain(element) is "choiceInteraction" or "textEntryInteraction");
        Assert.Equal((string)response.Attribute("identifier")!, Attribute(interaction, "responseIdentifier"));
        string[] shown = [.. Named("modalFeedback").Select(feedback => (string)feedback.Attribute("identifier")!)];
        Assert.Equal(shown.Length, shown.Distinct().Count());
        IEnumerable<string> set = AsksForANumber
            ? Named("setOutcomeValue").Where(value => (string?)value.Attribute("identifier") == "FEEDBACK").Select(value => value.Value)
            : Choices.Select(choice => choice.Id);
        Assert.Equal(set.Distinct().Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
        Assert.All(shown, identifier => Assert.Matches("^[A-Za-z_][A-Za-z0-9_]*$", identifier));
        Assert.True(AsksForANumber ? double.TryParse(Correct, NumberStyles.Float, CultureInfo.InvariantCulture, out double right) && Mark(Correct).Score == 1 && double.IsFinite(right) : Choices.Any(choice => choice.Id == Correct), Correct);
    }

    /// <summary>The name of an element as edition 2.1 spells it.</summary>
    internal static string Plain(XElement element) => Camel(element.Name.LocalName.StartsWith("qti-", StringComparison.Ordinal) ? element.Name.LocalName[4..] : element.Name.LocalName);

    internal static string Camel(string name)
    {
        string[] parts = name.Split('-');
        return parts[0] + string.Concat(parts.Skip(1).Select(part => char.ToUpperInvariant(part[0]) + part[1..]));
    }

    private static string? Attribute(XElement element, string name) => (string?)element.Attributes().SingleOrDefault(attribute => Camel(attribute.Name.LocalName) == name);

    private IEnumerable<XElement> Named(string name) => root.Descendants().Where(element => Plain(element) == name);

    private void Run(XElement rule, string? answer, Dictionary<string, string> outcomes)
    {
        switch (Plain(rule))
        {
            case "responseCondition":
                XElement? branch = rule.Elements().FirstOrDefault(one => Plain(one) == "responseElse" || Holds(one.Elements().First(), answer));
                foreach (XElement inner in branch is null ? [] : branch.Elements().Skip(Plain(branch) == "responseElse" ? 0 : 1))
                {
                    Run(inner, answer, outcomes);
                }

                break;
            case "setOutcomeValue":
                XElement value = rule.Elements().Single();
                outcomes[(string)rule.Attribute("identifier")!] = Plain(value) == "variable" ? answer! : value.Value;
                break;
            default:
                throw new InvalidOperationException(rule.Name.LocalName);
        }
    }

    private bool Holds(XElement condition, string? answer) => Plain(condition) switch
    {
        "isNull" => answer is null,
        "and" => condition.Elements().All(one => Holds(one, answer)),
        "or" => condition.Elements().Any(one => Holds(one, answer)),
        "match" => answer == Correct,
        "gte" => Number(answer!) >= Number(condition.Elements().Last().Value),
        "lte" => Number(answer!) <= Number(condition.Elements().Last().Value),
        _ => throw new InvalidOperationException(condition.Name.LocalName),
    };

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
