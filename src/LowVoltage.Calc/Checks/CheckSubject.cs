using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Checks;

/// <summary>What an answer is about, in parts: the check's own kind of note, its subject and a number, the stretch, the supply level.</summary>
/// <remarks>A designer makes hundreds of answers for one that is read, and a sentence costs more than the check: the words are put together when somebody reads them.</remarks>
internal readonly struct CheckSubject
{
    internal byte Note { get; init; }

    internal object? About { get; init; }

    internal double Number { get; init; }

    internal StretchName? Stretch { get; init; }

    internal SupplyLevel? Level { get; init; }

    internal static CheckSubject At(StretchName? stretch, SupplyLevel? level = null) => new() { Stretch = stretch, Level = level };

    internal static CheckSubject At(SupplyLevel level) => new() { Level = level };

    internal static CheckSubject Of(byte note, object? about = null, double number = 0) => new() { Note = note, About = about, Number = number };

    internal CheckSubject In(StretchName? stretch) => new() { Note = Note, About = About, Number = Number, Stretch = stretch, Level = Level };
}
