using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>What the working of several fault checks shares.</content>
internal sealed partial class Sheet
{
    internal const string StartWords = "As hot as the load makes the conductor, or as was stated: the insulation has no limit for short circuits above its continuous one.";

    /// <summary>A short-circuit current behind the source and what lies on the way.</summary>
    internal Symbol ShortCurrent(string sought, string name, Symbol volts, Symbol inner, Symbol outer, double amperes, string why)
    {
        Formula free = volts / (inner.Value > 0 ? inner + outer : outer);
        return At.Source.Beyond is not null
            ? Board.LookUp(sought, name, amperes, "A", Supply.Reference, "Sources in series of which some hold a limit: the greatest of least(V/R, L₁), least((V − V₁)/R, L₂) and so on, the lowest limit first.")
            : double.IsInfinity(At.Source.HeldAmperes)
            ? Board.Step(sought, name, free, amperes, "A", OhmsLaw.Reference, why)
            : inner.Value + outer.Value > 0
            ? Board.Step(sought, name, Formula.Least(free, Source.Limit), amperes, "A", OhmsLaw.Reference, "The source holds its limit: the smaller of the two.")
            : Board.LookUp(sought, name, amperes, "A", Supply.Reference, "The source holds its limit.");
    }

    /// <summary>How hot an overload or a fault finds a stretch.</summary>
    internal Symbol FaultStart(int stretch)
    {
        double celsius = At.FaultStartCelsius(stretch);
        Symbol limit = ContinuousOf(stretch);
        return celsius.Equals(limit.Value) ? limit : Board.LookUp("conductor temperature at the start", StartLetter(stretch), celsius, "°C", null, StartWords);
    }

    // Stretches start at temperatures of their own.
    internal static string StartLetter(int stretch) => stretch == 0 ? "θ_i" : "θ_i" + Text(stretch);

    internal Symbol EffectiveSection(Conductor conductor)
    {
        string mark = Marks.Of(conductor);
        return Board.LookUp(
            $"effective section of {conductor.Name}", mark.Length == 0 ? "S" : "S_" + mark, conductor.EffectiveAreaSquareMillimeters, "mm²", conductor.Reference, "That of a solid bar of its resistance.");
    }

    /// <summary>The path as hot as it may be when a fault begins.</summary>
    internal (PathSteps Steps, Symbol Sum) HotPath() => WritePath(
        "R_phot", "hot", "resistance of the path, as hot as the insulation allows", i => (At.Stretches[i].HotCelsius(At.HeatingAmperes), ContinuousIf(i)));
}
