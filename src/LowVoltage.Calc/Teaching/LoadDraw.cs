namespace LowVoltage.Calc.Teaching;

/// <summary>A load of a world and the supply it is drawn with.</summary>
internal sealed record LoadDraw(string Name, LoadKind Kind, int Watts, int Volts)
{
    /// <summary>With its article: a fan, an awning light.</summary>
    internal string One => (IsVowel ? "an " : "a ") + Name;

    internal string OneAtStart => (IsVowel ? "An " : "A ") + Name;

    internal double Amperes => (double)Watts / Volts;

    private bool IsVowel => Name[0] is 'a' or 'e' or 'i' or 'o';
}
