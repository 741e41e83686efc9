namespace LowVoltage.Calc.Teaching;

/// <summary>What became of a student's answer.</summary>
public enum GradingOutcome
{
    /// <summary>Nobody has graded it.</summary>
    NotGraded,

    /// <summary>Right: value and unit.</summary>
    Correct,

    /// <summary>Wrong, and it is known which mistake gives just that.</summary>
    KnownMistake,

    /// <summary>Wrong, and no known mistake gives it.</summary>
    WrongValue,

    /// <summary>The right value, written with too few significant figures to be told from others.</summary>
    TooFewFigures,

    /// <summary>The right number without its unit.</summary>
    MissingUnit,

    /// <summary>A quantity of another kind: a current where a voltage is asked.</summary>
    WrongQuantity,

    /// <summary>The right value, but the mistake that was asked for is not named yet.</summary>
    MistakeNotNamed,

    /// <summary>The text could not be read as an answer.</summary>
    Unreadable,

    /// <summary>There is no text.</summary>
    NoAnswer,

    /// <summary>The text names a gauge that does not exist.</summary>
    NoSuchSize,

    /// <summary>Right if the point or comma is the decimal one; in this culture it parts thousands.</summary>
    WrongDecimalMark,
}
