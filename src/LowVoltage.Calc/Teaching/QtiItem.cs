using System.Globalization;
using System.Xml.Linq;

namespace LowVoltage.Calc.Teaching;

/// <summary>One problem as an item of the quiz standard: a number to type, or something to choose.</summary>
/// <remarks>Numbers are marked by explicit ranges, since readers differ in how they take a tolerance; every wrong answer that is known has a feedback of its own.</remarks>
internal sealed class QtiItem(QtiDialect qti, Problem problem, string name)
{
    private const string Response = "RESPONSE";
    private const string Score = "SCORE";
    private const string FeedbackName = "FEEDBACK";

    internal string DrawingName => name + ".svg";

    internal XElement Write()
    {
        IReadOnlyList<(string Id, string Text, bool IsRight)> choices = Choices();
        bool number = choices.Count == 0;
        return qti.Element(
            "assessment-item",
            new XAttribute("identifier", name),
            new XAttribute("title", SheetWords.Title(problem)),
            qti.Attribute("adaptive", "false"),
            qti.Attribute("time-dependent", "false"),
            new XAttribute(XNamespace.Xml + "lang", "en"),
            qti.Element(
                "response-declaration",
                new XAttribute("identifier", Response),
                new XAttribute("cardinality", "single"),
                qti.Attribute("base-type", number ? "float" : "identifier"),
                qti.Element("correct-response", qti.Element("value", number ? RightNumber() : choices.Single(choice => choice.IsRight).Id))),
            Outcome(Score, "float", "0"),
            Outcome("MAXSCORE", "float", "1"),
            Outcome(FeedbackName, "identifier", null),
            Body(choices),
            number ? QtiRules.OfNumber(qti, QtiMarking.Of(problem)) : QtiRules.OfChoice(qti),
            number ? NumberFeedback() : choices.Select(choice => Feedback(choice.Id, problem.Grade(choice.Id.Length == 1 ? choice.Id : choice.Text).Message)));
    }

    /// <summary>The identifier of the feedback on mistakes.</summary>
    internal static string IdOf(IReadOnlyList<Mistake> mistakes) =>
        "M" + string.Join("_", mistakes.Select(mistake => (Number(mistake) + 1).ToString(CultureInfo.InvariantCulture)));

    // Its place in the catalogue: the same mistake has the same identifier in every item.
    private static int Number(Mistake mistake)
    {
        int at = 0;
        while (Mistake.All[at] != mistake)
        {
            at++;
        }

        return at;
    }

    private string RightNumber() => AnswerText.Digits(problem.Answer.Value, Math.Max(1, problem.Answer.SignificantFigures)).Replace('−', '-');

    private XElement Outcome(string identifier, string type, string? value) => qti.Element(
        "outcome-declaration",
        new XAttribute("identifier", identifier),
        new XAttribute("cardinality", "single"),
        qti.Attribute("base-type", type),
        value is null ? null : qti.Element("default-value", qti.Element("value", value)));

    private IReadOnlyList<(string Id, string Text, bool IsRight)> Choices() => problem.Choices.Count > 0
        ? [.. problem.Choices.Select(choice => (choice.Letter.ToString(), choice.Text, choice.IsRight))]
        : [.. problem.Standards.Select((value, i) => ($"S{(i + 1).ToString(CultureInfo.InvariantCulture)}", AnswerText.Of(value, problem.Answer.Unit, 0), value == problem.Answer.Value))];

    private XElement Body(IReadOnlyList<(string Id, string Text, bool IsRight)> choices) => qti.Element(
        "item-body",
        qti.Html("p", problem.Story),
        problem.Diagram is { } diagram ? qti.Html("p", qti.Html("img", new XAttribute("src", DrawingName), new XAttribute("alt", diagram.Description))) : null,
        problem.Table is { } table ? Table(table) : null,
        choices.Count == 0 ? Entry() : Choice(choices),
        problem.Caution.Length > 0 ? qti.Html("p", problem.Caution) : null);

    private XElement[] Entry() =>
    [
        qti.Html("p", qti.Html("strong", problem.Question), " " + problem.Instruction),
        qti.Html(
            "p",
            $"Type the number only, with a decimal point{(problem.Answer.Unit.Length > 0 ? $"; the unit is {problem.Answer.Unit}" : "")}: ",
            qti.Element("text-entry-interaction", qti.Attribute("response-identifier", Response), qti.Attribute("expected-length", "10"))),
    ];

    private XElement Choice(IReadOnlyList<(string Id, string Text, bool IsRight)> choices) => qti.Element(
        "choice-interaction",
        qti.Attribute("response-identifier", Response),
        qti.Attribute("shuffle", "false"),
        qti.Attribute("min-choices", "0"),
        qti.Attribute("max-choices", "1"),
        qti.Element("prompt", $"{problem.Question} {(problem.Choices.Count > 0 ? problem.Instruction : "Choose one.")}"),
        choices.Select(choice => qti.Element("simple-choice", new XAttribute("identifier", choice.Id), choice.Text)));

    private XElement Table(ProblemTable table) => qti.Html(
        "table",
        qti.Html("thead", qti.Html("tr", table.Heads.Select(head => qti.Html("th", head)))),
        qti.Html("tbody", table.Rows.Select(row => qti.Html("tr", row.Select(cell => qti.Html("td", cell))))));

    private IEnumerable<XElement> NumberFeedback()
    {
        QtiMarking marking = QtiMarking.Of(problem);
        yield return Feedback(QtiRules.RightId, "Right.");
        foreach (IReadOnlyList<Mistake> mistakes in marking.Wrong.Select(wrong => wrong.Mistakes).GroupBy(IdOf).Select(group => group.First()))
        {
            yield return Feedback(IdOf(mistakes), Grader.Diagnosis(mistakes));
        }

        if (marking.Sign is not null)
        {
            yield return Feedback(QtiRules.SignId, Grader.Diagnosis([Mistake.SignLost]));
            yield return Feedback(QtiRules.PowerId, Grader.Diagnosis([Mistake.PowerOfTen]));
        }

        yield return Feedback(QtiRules.OtherId, "Not right, and none of the usual mistakes gives this number. Compare your steps with the solution.");
    }

    private XElement Feedback(string identifier, string words) => qti.Element(
        "modal-feedback",
        qti.Attribute("outcome-identifier", FeedbackName),
        new XAttribute("identifier", identifier),
        qti.Attribute("show-hide", "show"),
        qti.Feedback(words));
}
