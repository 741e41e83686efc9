namespace LowVoltage.Calc.Docs.Finish;

/// <summary>Letters, operators and spaces of formulas.</summary>
public static class MathSymbols
{
    private static readonly Dictionary<string, string> Letters = new()
    {
        ["alpha"] = "α", ["beta"] = "β", ["gamma"] = "γ", ["delta"] = "δ", ["Delta"] = "Δ", ["varepsilon"] = "ε", ["epsilon"] = "ε", ["eta"] = "η", ["theta"] = "θ",
        ["kappa"] = "κ", ["lambda"] = "λ", ["mu"] = "µ", ["nu"] = "ν", ["pi"] = "π", ["rho"] = "ρ", ["sigma"] = "σ", ["tau"] = "τ", ["varphi"] = "φ", ["phi"] = "φ",
        ["omega"] = "ω", ["Omega"] = "Ω", ["infty"] = "∞",
    };

    private static readonly Dictionary<string, string> Relations = new()
    {
        ["le"] = "≤", ["ge"] = "≥", ["ne"] = "≠", ["approx"] = "≈", ["propto"] = "∝", ["to"] = "→", ["leftarrow"] = "←", ["in"] = "∈",
    };

    private static readonly Dictionary<string, string> Operators = new()
    {
        ["cdot"] = "·", ["times"] = "×", ["pm"] = "±", ["dots"] = "…", ["cdots"] = "⋯", ["circ"] = "°", ["%"] = "%", ["surd"] = "√", ["mid"] = "|", ["{"] = "{", ["}"] = "}",
    };

    private static readonly Dictionary<string, string> Spaces = new()
    {
        [","] = "0.167em", [":"] = "0.222em", [";"] = "0.278em", [" "] = "0.25em", ["!"] = "-0.167em",
    };

    private static readonly HashSet<string> Functions = ["ln", "log", "exp", "sin", "cos", "min", "max"];

    // What is upright says so, several letters too: the style of the site sets every other letter in italics of a text font, because a telephone may have no mathematical ones.
    public static MathNode Identifier(string letters, bool upright) => new($"<mi{(upright ? " mathvariant=\"normal\"" : "")}>{letters}</mi>");

    public static MathNode? Operator(char sign) => sign switch
    {
        '=' => Relation("="),
        '<' => Relation("&lt;"),
        '>' => Relation("&gt;"),
        '+' => new MathNode("<mo form=\"infix\">+</mo>", MathKind.Sum),
        '-' or '−' => new MathNode("<mo form=\"infix\">−</mo>", MathKind.Sum),
        '(' or ')' or '[' or ']' or '|' => new MathNode($"<mo stretchy=\"false\">{sign}</mo>"),
        '/' => new MathNode("<mo lspace=\"0\" rspace=\"0\">/</mo>"),
        ',' or ';' or ':' => new MathNode($"<mo separator=\"true\">{sign}</mo>"),
        '!' or '·' or '×' or '°' or '%' or '…' or '√' => new MathNode($"<mo>{sign}</mo>"),
        _ => null,
    };

    public static MathNode? Command(string name, bool upright) => name switch
    {
        "quad" or "qquad" => new MathNode("", MathKind.Separator),
        "sum" => new MathNode("<mo>∑</mo>", TakesLimits: true),
        "int" => new MathNode("<mo>∫</mo>"),
        _ when Letters.TryGetValue(name, out string? letter) => Identifier(letter, upright || char.IsUpper(name[0])),
        _ when Relations.TryGetValue(name, out string? relation) => Relation(relation),
        _ when Operators.TryGetValue(name, out string? sign) => sign is "·" or "×" ? new MathNode($"<mo form=\"infix\">{sign}</mo>", MathKind.Product) : new MathNode(sign is "°" or "%" or "√" ? $"<mo lspace=\"0\" rspace=\"0\">{sign}</mo>" : $"<mo>{sign}</mo>"),
        _ when Spaces.TryGetValue(name, out string? width) => new MathNode($"<mspace width=\"{width}\"></mspace>"),
        _ when Functions.Contains(name) => new MathNode($"<mi mathvariant=\"normal\">{name}</mi><mspace width=\"0.167em\"></mspace>"),
        _ => null,
    };

    private static MathNode Relation(string sign) => new($"<mo form=\"infix\">{sign}</mo>", MathKind.Relation);
}
