namespace LowVoltage.Calc.Numerics;

/// <summary>A function of one variable as a struct, so that a solver calls it without a delegate or an allocation.</summary>
internal interface IScalarFunction
{
    double Evaluate(double x);
}
