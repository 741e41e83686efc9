using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Working;

/// <summary>Formulas written down: every expected text was written by hand.</summary>
public class FormulaTests
{
    private static readonly Symbol A = new("a", 2, "m", "first"), B = new("b", 3, "m", "second"), C = new("c", 4, "", "third");

    public static TheoryData<string, string, string, double> Written => new()
    {
        { "sum", "a + b − c", "a + b - c", 1 },
        { "product", "a·b/c", @"\frac{a \cdot b}{c}", 1.5 },
        { "quotient of a product", "a/(b·c)", @"\frac{a}{b \cdot c}", 2 / 12.0 },
        { "product of a quotient", "(a/b)·c", @"\frac{a}{b} \cdot c", 8 / 3.0 },
        { "brackets", "(a + b)·c", @"\left(a + b\right) \cdot c", 20 },
        { "difference in a difference", "a − (b − c)", @"a - \left(b - c\right)", 3 },
        { "sum in a sum", "a + b + c", "a + b + c", 9 },
        { "square", "a²", "a^{2}", 4 },
        { "square of a sum", "(a + b)²", @"\left(a + b\right)^{2}", 25 },
        { "power", "a^c", "a^{c}", 16 },
        { "fraction power", "a^0.55", "a^{0.55}", 1.4640856959456254 },
        { "power of a quotient", "(a/b)^(c + 1)", @"\left(\frac{a}{b}\right)^{c + 1}", 32 / 243.0 },
        { "root", "√a", @"\sqrt{a}", 1.4142135623730951 },
        { "root of a product", "√(a·b)", @"\sqrt{a \cdot b}", 2.449489742783178 },
        { "logarithm", "ln(a/b)", @"\ln\left(\frac{a}{b}\right)", -0.40546510810816444 },
        { "exponential", "exp(a) − 1", @"\exp\left(a\right) - 1", 6.38905609893065 },
        { "negation", "−(a + b)", @"-\left(a + b\right)", -5 },
        { "least", "min(a; b)", @"\min\left(a;\ b\right)", 2 },
        { "greatest", "max(a; b)", @"\max\left(a;\ b\right)", 3 },
        { "number with unit", "a − 20 °C", @"a - 20\,\mathrm{^{\circ}C}", -18 },
    };

    [Theory, MemberData(nameof(Written))]
    public void Write_EveryKind_ReadsAsWrittenByHand(string name, string text, string latex, double value)
    {
        Formula formula = Make(name);
        Assert.Equal(text, formula.ToString().Replace('\u00A0', ' '));
        Assert.Equal(latex, formula.ToLatex());
        Assert.Equal(value, formula.Evaluate(), 14);
    }

    [Theory]
    [InlineData("ρ_20", "ρ₂₀", @"\rho_{20}")]
    [InlineData("R′_1", "R′₁", "R'_{1}")]
    [InlineData("ΔV", "ΔV", @"\Delta V")]
    [InlineData("K²", "K²", "K^{2}")]
    [InlineData("I_fuse", "I_fuse", @"I_{\mathrm{fuse}}")]
    [InlineData("k_min", "kₘᵢₙ", @"k_{\mathrm{min}}")]
    [InlineData("θ", "θ", @"\theta")]
    [InlineData("m′", "m′", "m'")]
    public void Symbol_Name_IsWrittenInTextAndLatex(string spec, string text, string latex)
    {
        Symbol symbol = new(spec, 1, "", "");
        Assert.Equal(text, symbol.Name);
        Assert.Equal(latex, symbol.Latex);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Symbol_NoNumber_IsRefused(double value) => Assert.Throws<ArgumentOutOfRangeException>(nameof(value), () => new Symbol("a", value, "", ""));

    [Fact]
    public void Symbol_NullText_IsRefused()
    {
        Assert.Throws<ArgumentNullException>("name", () => new Symbol(null!, 1, "", ""));
        Assert.Throws<ArgumentNullException>("unit", () => new Symbol("a", 1, null!, ""));
        Assert.Throws<ArgumentNullException>("meaning", () => new Symbol("a", 1, "", null!));
        Assert.Throws<ArgumentNullException>("unit", () => Formula.FromNumber(1, null!));
        Assert.Throws<ArgumentNullException>("operands", () => A + null!);
    }

    [Fact]
    public void Tree_CanBeWalked()
    {
        Formula formula = A * B;
        Assert.Equal(FormulaKind.Product, formula.Kind);
        Assert.Equal([A, B], formula.Operands);
        Assert.Empty(A.Operands);
        Assert.Equal(FormulaKind.Symbol, A.Kind);
        Assert.Equal("m", A.Unit);
        Assert.Equal(FormulaKind.Negation, (-A).Kind);
    }

    [Theory]
    [InlineData(0.0172413793, 5, "0.017241")]
    [InlineData(12345.678, 4, "12350")]
    [InlineData(0.00012344, 4, "0.0001234")]
    [InlineData(0.00001234, 4, "1.234×10⁻⁵")]
    [InlineData(1e-6, 5, "1×10⁻⁶")]
    [InlineData(1e-12, 16, "1×10⁻¹²")]
    [InlineData(1.5e9, 4, "1.5×10⁹")]
    [InlineData(-3.25, 4, "−3.25")]
    [InlineData(-1.7e-8, 4, "−1.7×10⁻⁸")]
    [InlineData(-0.0, 4, "0")]
    [InlineData(100, 4, "100")]
    [InlineData(9999.96, 4, "10000")]
    [InlineData(12.6 - (3.75 * 0.188), 4, "11.9")]
    [InlineData(0.30375, 4, "0.3038")]
    public void Number_IsWrittenPlainly(double value, int digits, string text) => Assert.Equal(text, NumberText.Text(value, digits));

    [Theory]
    [InlineData(0.123449, RoundingDirection.Nearest, 0.1234)]
    [InlineData(0.123401, RoundingDirection.Up, 0.1235)]
    [InlineData(0.123499, RoundingDirection.Down, 0.1234)]
    [InlineData(0.1234, RoundingDirection.Up, 0.1234)]
    [InlineData(0.1234, RoundingDirection.Down, 0.1234)]
    [InlineData(-0.123401, RoundingDirection.Up, -0.1234)]
    [InlineData(-0.123401, RoundingDirection.Down, -0.1235)]
    [InlineData(9999.51, RoundingDirection.Up, 10000)]
    [InlineData(15.000000000000002, RoundingDirection.Up, 15)]
    public void Rounding_GoesTheWayThatIsAsked(double value, RoundingDirection direction, double rounded) =>
        Assert.Equal(rounded, NumberText.Round(value, 4, direction));

    private static Formula Make(string name) => name switch
    {
        "sum" => A + B - C,
        "product" => A * B / C,
        "quotient of a product" => A / (B * C),
        "product of a quotient" => A / B * C,
        "brackets" => (A + B) * C,
        "difference in a difference" => A - (B - C),
        "sum in a sum" => A + (B + C),
        "square" => Formula.Square(A),
        "square of a sum" => Formula.Square(A + B),
        "power" => Formula.Power(A, C),
        "fraction power" => Formula.Power(A, 0.55),
        "power of a quotient" => Formula.Power(A / B, C + 1),
        "root" => Formula.SquareRoot(A),
        "root of a product" => Formula.SquareRoot(A * B),
        "logarithm" => Formula.Logarithm(A / B),
        "exponential" => Formula.Exponential(A) - 1,
        "negation" => -(A + B),
        "least" => Formula.Least(A, B),
        "greatest" => Formula.Greatest(A, B),
        _ => A - Formula.FromNumber(20, "°C"),
    };
}
