namespace LowVoltage.Calc.Teaching;

/// <summary>A load of a world and the supply it is drawn with.</summary>
internal sealed record LoadDraw(string Name, int Watts, int Volts)
{
    internal double Amperes => (double)Watts / Volts;
}
