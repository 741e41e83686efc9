namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about what a wire may carry.</content>
public sealed partial class Mistake
{
    internal static Mistake DeratingTwice { get; } = new("derating applied twice",
        "A derating factor was applied twice. Each condition reduces the rating once.");

    internal static Mistake DeratingForgotten { get; } = new("derating forgotten",
        "The table current holds under the conditions of the table; here it must be multiplied by the factor for this place.");

    internal static Mistake DeratingInverted { get; } = new("divided by the derating factor",
        "The wire may carry less here, so the table current is multiplied by the factor.");

    internal static Mistake DeratingComplement { get; } = new("what derating takes away given instead",
        "The factor says what is left of the table current; this is what is lost.");

    internal static Mistake OneFactorOnly { get; } = new("one of two factors forgotten",
        "Heat around the wire and heat from its neighbours each reduce the rating; both factors multiply.");

    internal static Mistake FactorsAveraged { get; } = new("factors averaged",
        "Factors for separate conditions multiply; their average is too large.");

    private static Mistake[] OfRatings =>
    [
        DeratingTwice, DeratingForgotten, DeratingInverted, DeratingComplement, OneFactorOnly, FactorsAveraged,
    ];
}
