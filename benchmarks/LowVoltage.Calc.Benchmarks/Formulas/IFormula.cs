namespace LowVoltage.Calc.Benchmarks.Formulas;

/// <summary>One public calculation and what it is measured against. A struct, so that the loop around it is compiled for it.</summary>
public interface IFormula
{
    /// <summary>The same formula in doubles, without any check; for a search the kernel behind the call, or a plain version by hand.</summary>
    double Raw(Case x);

    /// <summary>The call, its result read as a number.</summary>
    double Typed(Case x);
}

/// <summary>A calculation that the operators of UnitsNet can express from the first step to the last.</summary>
public interface IUnitsFormula : IFormula
{
    double UnitsNet(Case x);
}

/// <summary>What the report says of a calculation.</summary>
/// <param name="call">The public member.</param>
/// <param name="formula">What it computes.</param>
/// <param name="quantities">How many arguments are quantities of UnitsNet.</param>
[AttributeUsage(AttributeTargets.Struct)]
public sealed class FormulaAttribute(string call, string formula, int quantities) : Attribute
{
    public string Call { get; } = call;

    public string Formula { get; } = formula;

    public int Quantities { get; } = quantities;

    /// <summary>What stands in for raw doubles where there is no formula: the kernel, or a plain version by hand.</summary>
    public string? Baseline { get; init; }
}
