namespace LowVoltage.Calc.Working;

/// <summary>A quantity of a worked solution: its letter, its value in the unit it is shown in, and what it stands for.</summary>
/// <remarks>
/// The name is written with <c>_</c> before a subscript: <c>ρ_20</c> is shown as ρ₂₀ in text, <c>\rho_{20}</c> in LaTeX. Immutable and thread-safe.
/// </remarks>
public sealed class Symbol : Formula
{
    /// <summary>A quantity.</summary>
    /// <param name="name">Its letter; a subscript after <c>_</c>.</param>
    /// <param name="value">Its value in the unit, not rounded. Finite.</param>
    /// <param name="unit">The unit as shown; empty for a pure number.</param>
    /// <param name="meaning">What it stands for, in a few words.</param>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public Symbol(string name, double value, string unit, string meaning)
        : base(FormulaKind.Symbol, Finite(value), unit ?? throw new ArgumentNullException(nameof(unit)))
    {
        Spec = name ?? throw new ArgumentNullException(nameof(name));
        Meaning = meaning ?? throw new ArgumentNullException(nameof(meaning));
    }

    /// <summary>The letter in plain text: <c>ρ₂₀</c>.</summary>
    public string Name => SymbolName.Text(Spec);

    /// <summary>The letter in LaTeX: <c>\rho_{20}</c>.</summary>
    public string Latex => SymbolName.Latex(Spec);

    /// <summary>The value in <see cref="Formula.Unit"/>, not rounded.</summary>
    public double Value => Number;

    /// <summary>What it stands for.</summary>
    public string Meaning { get; }

    internal string Spec { get; }

    private static double Finite(double value) => !double.IsNaN(value) && !double.IsInfinity(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, "value must be finite.");
}
