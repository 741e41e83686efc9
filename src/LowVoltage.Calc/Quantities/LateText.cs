using System.Globalization;

namespace LowVoltage.Calc.Quantities;

/// <summary>A text that is put together when somebody reads it, and nothing before: of most reasons and conditions nobody does. The default is an empty one.</summary>
internal readonly struct LateText
{
    private readonly object? source;
    private readonly double first;
    private readonly double second;

    /// <summary>A text with one or two numbers in the places {0} and {1}; or with none, and then as it stands.</summary>
    internal LateText(string text, double first = double.NaN, double second = double.NaN)
    {
        source = text;
        this.first = first;
        this.second = second;
    }

    /// <summary>A text that needs more than numbers.</summary>
    internal LateText(Func<string> write)
        : this("") => source = write;

    internal bool Exists => source is not (null or "");

    /// <summary>The text; empty for the default.</summary>
    public override string ToString() => source switch
    {
        Func<string> write => write(),
        string text when !double.IsNaN(first) => string.Format(CultureInfo.InvariantCulture, text, Accept.Text(first), Accept.Text(second)),
        string text => text,
        _ => "",
    };
}
