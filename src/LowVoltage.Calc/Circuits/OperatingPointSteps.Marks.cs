using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <content>The marks that tell the numbers of one supply level from those of another.</content>
internal sealed partial class OperatingPointSteps
{
    private Symbol Step(string sought, string name, Formula formula, double result, string unit, Reference? source, string reason = "")
    {
        string mark = MarkOf(formula);
        Symbol symbol = board.Step(mark.Length == 0 ? sought : sought + Level, SymbolName.With(name, mark), formula, result, unit, source, reason);
        if (mark.Length > 0)
        {
            letters.Marks[symbol] = mark;
        }

        return symbol;
    }

    private Symbol Own(Symbol symbol)
    {
        if (letters.Mark.Length > 0)
        {
            letters.Marks[symbol] = letters.Mark;
        }

        return symbol;
    }

    // The mark of the one level that a formula's numbers come from; of this one where they come from several; none where they hold at every level.
    private string MarkOf(Formula formula)
    {
        string[] marks = [.. Symbols(formula).Select(symbol => letters.Marks.TryGetValue(symbol, out string? mark) ? mark : "").Where(mark => mark.Length > 0).Distinct(StringComparer.Ordinal)];
        return marks.Length == 0 ? "" : marks.Length == 1 ? marks[0] : letters.Mark;
    }

    private static IEnumerable<Symbol> Symbols(Formula formula) => formula is Symbol symbol ? [symbol] : formula.Operands.SelectMany(Symbols);
}
