namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about what a wire may carry.</content>
public sealed partial class Mistake
{
    internal static Mistake DeratingTwice { get; } = new("derating multiplied twice",
        "A derating factor was applied two times. Each condition reduces the rating once.");

    internal static Mistake DeratingForgotten { get; } = new("derating forgotten",
        "The table's current holds at the table's conditions; here it must be multiplied by the factor for this place.");

    internal static Mistake DeratingInverted { get; } = new("divided by the derating factor",
        "The wire may carry less here, so the table's current is multiplied by the factor.");

    internal static Mistake DeratingComplement { get; } = new("what derating takes away",
        "The factor says what is left of the table's current; this is what is lost.");

    internal static Mistake OneFactorOnly { get; } = new("one of two factors forgotten",
        "Heat around the wire and heat from its neighbours each reduce the rating; both factors multiply.");

    internal static Mistake FactorsAveraged { get; } = new("factors averaged",
        "Factors of separate conditions multiply; their mean is too much.");

    private static Mistake[] OfRatings =>
    [
        DeratingTwice, DeratingForgotten, DeratingInverted, DeratingComplement, OneFactorOnly, FactorsAveraged,
    ];
}
