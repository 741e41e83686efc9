namespace LowVoltage.Calc.Working;

/// <summary>A formula as a tree: shown in symbols or with numbers and units put in, and evaluated.</summary>
/// <remarks>
/// Build it with the operators: <c>rho * length / area</c>. It knows nothing of units: what is put together must fit, as in ρ in Ω·mm²/m with a section
/// in mm². Immutable and thread-safe.
/// </remarks>
public class Formula
{
    private static readonly Formula[] None = [];

    private readonly Formula[] operands;

    private protected Formula(FormulaKind kind, double number, string unit)
    {
        Kind = kind;
        Number = number;
        Unit = unit;
        operands = None;
    }

    private Formula(FormulaKind kind, params Formula[] operands)
    {
        Kind = kind;
        Unit = "";
        foreach (Formula operand in operands)
        {
            _ = operand ?? throw new ArgumentNullException(nameof(operands));
        }

        this.operands = operands;
    }

    /// <summary>What this node is.</summary>
    public FormulaKind Kind { get; }

    /// <summary>What the node is made of, left to right; empty for a symbol and a number.</summary>
    public IReadOnlyList<Formula> Operands => Array.AsReadOnly(operands);

    /// <summary>Unit of a symbol or a number as it is shown; empty for the rest.</summary>
    public string Unit { get; }

    internal double Number { get; }

    internal Formula First => operands[0];

    internal Formula Second => operands[1];

    /// <summary>A number of the formula's own.</summary>
    /// <param name="value">The number.</param>
    /// <param name="unit">Its unit as shown; empty for none.</param>
    /// <returns>The number as a formula.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    public static Formula FromNumber(double value, string unit) => new(FormulaKind.Number, value, unit ?? throw new ArgumentNullException(nameof(unit)));

    /// <summary>left + right.</summary>
    /// <param name="left">The left operand.</param>
    /// <param name="right">The right operand.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentNullException">An operand is null.</exception>
    public static Formula Add(Formula left, Formula right) => new(FormulaKind.Sum, left, right);

    /// <summary>left − right.</summary>
    /// <param name="left">The left operand.</param>
    /// <param name="right">The right operand.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentNullException">An operand is null.</exception>
    public static Formula Subtract(Formula left, Formula right) => new(FormulaKind.Difference, left, right);

    /// <summary>left · right.</summary>
    /// <param name="left">The left operand.</param>
    /// <param name="right">The right operand.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentNullException">An operand is null.</exception>
    public static Formula Multiply(Formula left, Formula right) => new(FormulaKind.Product, left, right);

    /// <summary>left / right.</summary>
    /// <param name="left">The numerator.</param>
    /// <param name="right">The denominator.</param>
    /// <returns>The quotient.</returns>
    /// <exception cref="ArgumentNullException">An operand is null.</exception>
    public static Formula Divide(Formula left, Formula right) => new(FormulaKind.Quotient, left, right);

    /// <summary>−operand.</summary>
    /// <param name="operand">The operand.</param>
    /// <returns>The negation.</returns>
    /// <exception cref="ArgumentNullException">The operand is null.</exception>
    public static Formula Negate(Formula operand) => new(FormulaKind.Negation, operand);

    /// <summary>basis to the power of exponent.</summary>
    /// <param name="basis">The basis.</param>
    /// <param name="exponent">The exponent.</param>
    /// <returns>The power.</returns>
    /// <exception cref="ArgumentNullException">An operand is null.</exception>
    public static Formula Power(Formula basis, Formula exponent) => new(FormulaKind.Power, basis, exponent);

    /// <summary>operand².</summary>
    /// <param name="operand">The operand.</param>
    /// <returns>The square.</returns>
    /// <exception cref="ArgumentNullException">The operand is null.</exception>
    public static Formula Square(Formula operand) => Power(operand, 2);

    /// <summary>The square root of an operand.</summary>
    /// <param name="operand">The operand.</param>
    /// <returns>The root.</returns>
    /// <exception cref="ArgumentNullException">The operand is null.</exception>
    public static Formula SquareRoot(Formula operand) => new(FormulaKind.SquareRoot, operand);

    /// <summary>The natural logarithm of an operand.</summary>
    /// <param name="operand">The operand.</param>
    /// <returns>The logarithm.</returns>
    /// <exception cref="ArgumentNullException">The operand is null.</exception>
    public static Formula Logarithm(Formula operand) => new(FormulaKind.Logarithm, operand);

    /// <summary>e to the power of an operand.</summary>
    /// <param name="operand">The operand.</param>
    /// <returns>The exponential.</returns>
    /// <exception cref="ArgumentNullException">The operand is null.</exception>
    public static Formula Exponential(Formula operand) => new(FormulaKind.Exponential, operand);

    /// <summary>The smaller of two.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>The smaller.</returns>
    /// <exception cref="ArgumentNullException">An operand is null.</exception>
    public static Formula Least(Formula left, Formula right) => new(FormulaKind.Least, left, right);

    /// <summary>The larger of two.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>The larger.</returns>
    /// <exception cref="ArgumentNullException">An operand is null.</exception>
    public static Formula Greatest(Formula left, Formula right) => new(FormulaKind.Greatest, left, right);

    /// <summary>A number without a unit.</summary>
    public static implicit operator Formula(double value) => FromNumber(value, "");

    /// <summary>left + right.</summary>
    public static Formula operator +(Formula left, Formula right) => Add(left, right);

    /// <summary>left − right.</summary>
    public static Formula operator -(Formula left, Formula right) => Subtract(left, right);

    /// <summary>left · right.</summary>
    public static Formula operator *(Formula left, Formula right) => Multiply(left, right);

    /// <summary>left / right.</summary>
    public static Formula operator /(Formula left, Formula right) => Divide(left, right);

    /// <summary>−operand.</summary>
    public static Formula operator -(Formula operand) => Negate(operand);

    /// <summary>The value, from the values of the symbols, not rounded.</summary>
    /// <returns>The value in the unit that the formula's units make.</returns>
    public double Evaluate() => Evaluate(static (value, _) => value, 0);

    /// <summary>The formula in symbols, in LaTeX without the dollar signs.</summary>
    public string ToLatex() => FormulaLatex.Write(this, 0);

    /// <summary>The formula in symbols, in one line: <c>ρ·L/A</c>.</summary>
    public override string ToString() => FormulaText.Write(this, 0);

    /// <summary>The operands of a least or greatest of several, written as a tree of twos.</summary>
    internal IEnumerable<Formula> Several() =>
        new[] { First, Second }.SelectMany(operand => operand.Kind == Kind ? operand.Several() : [operand]);

    /// <summary>The greatest of one part or more.</summary>
    internal static Formula GreatestOf(IReadOnlyList<Formula> parts) => parts.Skip(1).Aggregate(parts[0], Greatest);

    /// <summary>The least of one part or more.</summary>
    internal static Formula LeastOf(IReadOnlyList<Formula> parts) => parts.Skip(1).Aggregate(parts[0], Least);

    /// <summary>The sum of one part or more.</summary>
    internal static Formula Total(IReadOnlyList<Formula> parts)
    {
        Formula sum = parts[0];
        for (int i = 1; i < parts.Count; i++)
        {
            sum += parts[i];
        }

        return sum;
    }

    /// <summary>The value after every symbol and number has gone through a rounding to so many digits.</summary>
    internal double Evaluate(Func<double, int, double> rounded, int digits) => Kind switch
    {
        FormulaKind.Symbol or FormulaKind.Number => rounded(Number, digits),
        FormulaKind.Sum => First.Evaluate(rounded, digits) + Second.Evaluate(rounded, digits),
        FormulaKind.Difference => First.Evaluate(rounded, digits) - Second.Evaluate(rounded, digits),
        FormulaKind.Product => First.Evaluate(rounded, digits) * Second.Evaluate(rounded, digits),
        FormulaKind.Quotient => First.Evaluate(rounded, digits) / Second.Evaluate(rounded, digits),
        FormulaKind.Power => Raise(First.Evaluate(rounded, digits), Second.Evaluate(rounded, digits)),
        FormulaKind.SquareRoot => Math.Sqrt(First.Evaluate(rounded, digits)),
        FormulaKind.Logarithm => Math.Log(First.Evaluate(rounded, digits)),
        FormulaKind.Exponential => Math.Exp(First.Evaluate(rounded, digits)),
        FormulaKind.Negation => -First.Evaluate(rounded, digits),
        FormulaKind.Least => Math.Min(First.Evaluate(rounded, digits), Second.Evaluate(rounded, digits)),
        _ => Math.Max(First.Evaluate(rounded, digits), Second.Evaluate(rounded, digits)),
    };

    // A square is one product, as everybody computes it.
    private static double Raise(double basis, double exponent) => exponent == 2 ? basis * basis : Math.Pow(basis, exponent);
}
