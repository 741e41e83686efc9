using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <content>The checks, each beside the steps that it belongs to.</content>
internal sealed partial class DesignExplanation
{
    private readonly Dictionary<CheckKind, Symbol> values = [];
    private readonly Dictionary<CheckKind, Symbol> limits = [];

    // The steps have given what a check compares.
    private void Value(CheckKind kind, Symbol symbol) => values[kind] = symbol;

    private void Limit(CheckKind kind, Symbol symbol) => limits[kind] = symbol;

    private void Checks(params CheckKind[] kinds)
    {
        foreach (CheckKind kind in kinds)
        {
            foreach (CheckResult check in left.FindAll(c => c.Kind == kind))
            {
                Check(check);
            }

            left.RemoveAll(c => c.Kind == kind);
        }
    }

    // A kind that has no place of its own is listed all the same.
    private void Rest()
    {
        if (left.Count > 0)
        {
            board.Section("Further checks");
        }

        foreach (CheckResult check in left)
        {
            Check(check);
        }

        left.Clear();
    }

    private void Check(in CheckResult check)
    {
        string note = check.Note.Length == 0 ? "" : SolutionText.Sentence(check.Note) + ".";
        bool pass = check.Outcome == CheckOutcome.Pass;
        bool numbers = !double.IsInfinity(check.Value) && !double.IsInfinity(check.Limit) && !double.IsNaN(check.Value) && !double.IsNaN(check.Limit);
        Relation relation = check.LimitIsLeast ? Relation.AtLeast : Relation.AtMost;
        if (check.Outcome == CheckOutcome.Undetermined || !numbers || IsInWords(check, relation, pass))
        {
            board.State($"check: {check.Name}", check.ToString() + ".", check.Reference);
            return;
        }

        board.Compare(
            $"check: {check.Name}",
            Of(values, check.Kind, check.Value, CheckSymbols.Value(check)),
            relation,
            Of(limits, check.Kind, check.Limit, CheckSymbols.Limit(check)),
            check.Reference,
            note.Length == 0 ? check.MarginText + "." : $"{check.MarginText}. {note}",
            pass);
    }

    // The step that gave the check's number, so that both read the same; they differ by the billionth of play that a check has, or not at all.
    private static Symbol Of(Dictionary<CheckKind, Symbol> known, CheckKind kind, double number, Symbol own) =>
        known.TryGetValue(kind, out Symbol? symbol) && Math.Abs(symbol.Value - number) <= 1e-8 * Math.Max(Math.Abs(number), 1e-9)
            ? symbol
            : own;

    // A time that never comes, and a fuse that nothing has to open, carry no number to compare.
    private static bool IsInWords(in CheckResult check, Relation relation, bool pass) =>
        (check.Value == 0 && check.Kind is CheckKind.FaultOpensFuse or CheckKind.StartVoltage)
        || Math.Abs(check.Value - check.Limit) > 1e-6 * Math.Abs(check.Limit) && RelationWords.Holds(check.Value, relation, check.Limit) != pass;
}
