using System.Text;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Working;

/// <summary>What a worked solution says in words and symbols, a line each, a blank one between two steps: to be read, without what the numbers make of it.</summary>
/// <remarks>That the numbers are those of the symbols, and give the result, is what <see cref="ExplanationProperties"/> reads back from every step.</remarks>
internal static class SolutionWords
{
    // Said by the design itself, which is read with the designs; so is what was asked.
    private static readonly string[] OfTheDesign = ["what governs", "verdict"];

    /// <param name="solution">The solution.</param>
    /// <param name="isDesign">Whether it is that of a design.</param>
    /// <param name="withGivens">False where the statement of a problem has said what is given.</param>
    internal static string Of(WorkedSolution solution, bool isDesign = false, bool withGivens = true)
    {
        StringBuilder text = new();
        Lines(text, isDesign || !withGivens ? [] : [solution.Title, "Given", .. solution.Givens.Select(given => given.Symbol is { } symbol ? $"{symbol.Name} = {given.Value}, {given.Meaning}" : $"{given.Meaning}: {given.Value}")]);
        string section = "";
        foreach (SolutionStep step in solution.Steps.Where(step => !isDesign || !OfTheDesign.Contains(step.Sought)))
        {
            text.Append('\n');
            Lines(text, step.Section == section ? "" : "[" + step.Section + "]", SolutionText.Sentence(step.Sought), InSymbols(step), step.ReasonAndRounding);
            section = step.Section;
        }

        if (!isDesign)
        {
            text.Append('\n');
            Lines(text, "Answer: " + solution.Answer);
            solution.Notes.ToList().ForEach(notes => Lines(text, ["", notes.Heading, .. notes.Lines]));
            Lines(text, [.. solution.Cautions]);
        }

        return text.ToString();
    }

    // Where nothing is calculated the number is all that is said.
    private static string InSymbols(SolutionStep step) => step.Kind switch
    {
        StepKind.Statement => "",
        StepKind.Calculation or StepKind.Comparison => step.InSymbols,
        _ => step.InNumbers,
    };

    private static void Lines(StringBuilder text, params IEnumerable<string> lines)
    {
        foreach (string line in lines.Where(line => line.Length > 0))
        {
            text.Append(line).Append('\n');
        }
    }
}
