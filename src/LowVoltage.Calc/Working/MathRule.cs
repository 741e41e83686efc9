namespace LowVoltage.Calc.Working;

/// <summary>The CSS rule for the letters of formulas on a page.</summary>
internal static class MathRule
{
    /// <summary>Letters come from the italics of a text font: a browser otherwise asks for the mathematical italics of Unicode, and where no font has them, as on many telephones, it draws boxes.</summary>
    internal const string Letters = "mi{text-transform:none;font-family:Georgia,'Times New Roman','Noto Serif','DejaVu Serif',serif;font-style:italic}mi[mathvariant=normal]{font-style:normal}";
}
