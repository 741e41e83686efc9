namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about arithmetic.</content>
public sealed partial class Mistake
{
    internal static Mistake WattsForAmperes { get; } = new("watts for amperes",
        "The power was used where a current belongs. First divide it by the voltage: I = P/U.");

    internal static Mistake MilliLost { get; } = new("prefix milli lost",
        "A milliohm is a thousandth of an ohm; that factor was lost on the way.");

    internal static Mistake PerThousandLost { get; } = new("per 1000 forgotten",
        "The resistance per length is for 1000 of the unit of length; divide by 1000.");

    internal static Mistake ThousandTooMuch { get; } = new("factor of 1000 where none belongs",
        "A factor of 1000 stands where the units need none.");

    internal static Mistake PowerOfTen { get; } = new("decimal point out of place",
        "The digits are right, but the decimal point is not; go through the prefixes and the powers of ten.");

    internal static Mistake Inverted { get; } = new("fraction upside down",
        "The quantities were divided the wrong way round; compare the units of both sides.");

    internal static Mistake Multiplied { get; } = new("multiplied where to divide",
        "A product stands where a quotient belongs; compare the units of both sides.");

    internal static Mistake Divided { get; } = new("divided where to multiply",
        "A quotient stands where a product belongs; compare the units of both sides.");

    internal static Mistake SquareForgotten { get; } = new("square forgotten",
        "A quantity that enters with its square was taken once only.");

    internal static Mistake SquareAdded { get; } = new("square where none belongs",
        "A quantity that enters once was squared.");

    internal static Mistake RatioInverted { get; } = new("ratio upside down",
        "The ratio was turned over; ask whether the result should rise or fall.");

    internal static Mistake SquaredRatio { get; } = new("ratio squared",
        "The ratio does not enter with its square here.");

    internal static Mistake SignLost { get; } = new("sign",
        "The size is right, but the sign is not.");

    private static Mistake[] OfArithmetic =>
    [
        WattsForAmperes, MilliLost, PerThousandLost, ThousandTooMuch, PowerOfTen, Inverted, Multiplied, Divided, SquareForgotten, SquareAdded,
        RatioInverted, SquaredRatio, SignLost,
    ];
}
