using LowVoltage.Calc;

namespace CircuitPage.Tests;

/// <summary>A circuit as somebody types it, and the same one as the library is asked for it: written twice, by hand.</summary>
/// <param name="Name">What it is called, in both.</param>
/// <param name="Typed">Keys of the fields and what is typed, in order.</param>
/// <param name="Rules">The practice.</param>
/// <param name="Requirements">What it must do.</param>
/// <param name="IsUs">Whether lengths and temperatures are typed in feet and degrees Fahrenheit.</param>
internal sealed record TypedCircuit(string Name, string Typed, DesignRules Rules, CircuitRequirements Requirements, bool IsUs = false)
{
    public CircuitDesign Design() => CircuitDesigner.Design(new CircuitRequirements(Requirements) { Name = Name }, Rules);

    public IEnumerable<(string Key, string Text)> Fields => Typed.Split('|').Select(pair => (pair.Split('=')[0].Trim(), pair.Split('=')[1].Trim()));
}
