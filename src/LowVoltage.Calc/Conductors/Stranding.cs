using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Conductors;

/// <summary>Stranded conductors: how many strands, how thick over all, how much longer than the conductor.</summary>
internal static class Stranding
{
    internal const double ConcentricLay = 1.02;

    internal const double MostLay = 1.10;

    internal static Reference ConcentricReference { get; } = new()
    {
        Title = "ASTM B8 and B496", Edition = "2004", Kind = ReferenceKind.Standard, Note = "2 % more mass and resistance for concentric stranding.",
    };

    /// <summary>Diameter over n equal strands: d·√((4n − 1)/3). Exact for 1, 7, 19, 37, 61 … in concentric layers (1, 3, 5, 7, 9 diameters).</summary>
    internal static double DiameterRatio(int strands) => Math.Sqrt(((4.0 * strands) - 1) / 3);

    /// <summary>Diameter over the strands when their total section is known: the same rule with d = √(4A/(πn)).</summary>
    internal static double Diameter(double squareMillimeters, int strands) =>
        Math.Sqrt(4 * squareMillimeters / (Math.PI * strands)) * DiameterRatio(strands);

    /// <summary>Strands of ASTM B8 class B, as NEC chapter 9 table 8 lists them (from memory): 7 up to 2 AWG, 19 up to 4/0, 37 up to 500 kcmil, then 61.</summary>
    internal static int ClassB(AwgSize size) => size.Number >= 2 ? 7 : 19;

    internal static int ClassB(KcmilSize size) => size.Kcmil <= 500 ? 37 : 61;

    internal static double AcceptLay(double layFactor, string name) => Accept.Within(layFactor, 1, MostLay, "", name);
}
