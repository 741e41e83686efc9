using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Samples.ProblemSheet;

/// <summary>A file of answers, one a line: <c>3: 2.4 A</c>. Empty lines and lines that begin with # are passed over.</summary>
public static class AnswersFile
{
    private const int LongestShown = 60;

    public static IReadOnlyDictionary<int, string> Read(string path, int count)
    {
        Dictionary<int, string> answers = [];
        string[] lines = File.ReadAllLines(path);
        for (int i = 0; i < lines.Length; i++)
        {
            string line = lines[i].Trim();
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            int colon = line.IndexOf(':');
            if (colon < 1 || !int.TryParse(line[..colon], NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out int number) || number < 1 || number > count)
            {
                throw new AnswersFileException($"{path}, line {i + 1}: write the number of a problem, 1 to {count}, a colon and the answer, such as '1: 2.4 A'.");
            }

            if (!answers.TryAdd(number, line[(colon + 1)..].Trim()))
            {
                throw new AnswersFileException($"{path}, line {i + 1}: problem {number} is answered twice.");
            }
        }

        return answers;
    }

    /// <summary>Marks every problem; returns how many are right.</summary>
    public static int Mark(IReadOnlyList<Problem> problems, IReadOnlyDictionary<int, string> answers, CultureInfo culture, TextWriter output)
    {
        int right = 0;
        for (int i = 0; i < problems.Count; i++)
        {
            if (!answers.TryGetValue(i + 1, out string? answer))
            {
                output.WriteLine($"{i + 1,3}  -      no answer");
                continue;
            }

            GradingResult verdict = problems[i].Grade(answer, culture);
            right += verdict.IsCorrect ? 1 : 0;
            output.WriteLine($"{i + 1,3}  {(verdict.IsCorrect ? "right" : "WRONG")}  {Shown(answer)}: {verdict.Message}");
        }

        output.WriteLine();
        output.WriteLine($"{right} of {problems.Count} right.");
        return right;
    }

    // What came out of a file goes to a console: in one line, and without what a console would obey.
    private static string Shown(string answer)
    {
        string plain = string.Concat(answer.Where(c => !char.IsControl(c)));
        return plain.Length > LongestShown ? string.Concat(plain.AsSpan(0, LongestShown), "…") : plain;
    }
}

/// <summary>The file of answers cannot be understood.</summary>
public sealed class AnswersFileException(string problem) : Exception(problem);
