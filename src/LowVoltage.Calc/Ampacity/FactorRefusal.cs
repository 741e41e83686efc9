namespace LowVoltage.Calc.Ampacity;

/// <summary>Why a derating factor was refused.</summary>
public enum FactorRefusal
{
    /// <summary>The factor belongs to another family of rules than the table, and mixing was not asked for.</summary>
    OtherRuleSet,

    /// <summary>The numbers of the table already contain the effect, or hold for one fixed condition only.</summary>
    SettledByTable,

    /// <summary>A factor for the same effect has been applied already.</summary>
    CountedTwice,

    /// <summary>The factor was made for another insulation rating than the column that was read.</summary>
    OtherInsulation,

    /// <summary>The factor counts from another base ambient than the table.</summary>
    OtherBaseAmbient,

    /// <summary>The factor raises the current above the table, and that was not asked for.</summary>
    AboveOne,
}
