using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace LowVoltage.Calc.References;

/// <summary>A published source: carried by every table and printed by every result that used it.</summary>
/// <remarks>Immutable. Two references are equal when all their parts are.</remarks>
public sealed class Reference : IEquatable<Reference>
{
    private const ReferenceKind LastKind = ReferenceKind.FromMemoryCompared;

    /// <summary>A reference to be filled by an initialiser; <see cref="Create"/> does without.</summary>
    public Reference()
    {
    }

    [SetsRequiredMembers]
    private Reference(Reference other)
    {
        Title = other.Title;
        Kind = other.Kind;
        Edition = other.Edition;
        Locator = other.Locator;
        Note = other.Note;
    }

    /// <summary>The document: <c>IEC 60228</c>, <c>33 CFR 183.425</c>.</summary>
    /// <exception cref="ArgumentNullException">The value is null; so for every text here.</exception>
    public required string Title { get; init => field = value ?? throw new ArgumentNullException(nameof(Title)); }

    /// <summary>Edition or year: <c>2004</c>. Empty for common practice.</summary>
    public string Edition { get; init => field = value ?? throw new ArgumentNullException(nameof(Edition)); } = "";

    /// <summary>Where in the document: a clause, table, page or equation.</summary>
    public string Locator { get; init => field = value ?? throw new ArgumentNullException(nameof(Locator)); } = "";

    /// <summary>What sort of authority it is.</summary>
    public required ReferenceKind Kind { get; init; }

    /// <summary>What a careful user must know about the value: how it was read, a conflict between editions, a limit. May be empty.</summary>
    public string Note { get; init => field = value ?? throw new ArgumentNullException(nameof(Note)); } = "";

    /// <summary>A reference, for every .NET language; the rest by <c>With…</c>.</summary>
    /// <param name="title">The document.</param>
    /// <param name="kind">What sort of authority it is.</param>
    /// <returns>The reference.</returns>
    /// <exception cref="ArgumentNullException">The title is null.</exception>
    /// <exception cref="ArgumentException">The title is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not one of the enumeration.</exception>
    public static Reference Create(string title, ReferenceKind kind)
    {
        _ = title ?? throw new ArgumentNullException(nameof(title));
        if (string.IsNullOrWhiteSpace(title))
        {
            throw new ArgumentException("A title is needed; it was empty.", nameof(title));
        }

        return kind is >= ReferenceKind.Law and <= LastKind
            ? new Reference { Title = title, Kind = kind }
            : throw new ArgumentOutOfRangeException(nameof(kind), kind, $"kind must be a value of {nameof(ReferenceKind)}; it was {((int)kind).ToString(CultureInfo.InvariantCulture)}.");
    }

    /// <summary>The same document in an edition.</summary>
    /// <param name="edition">Edition or year.</param>
    /// <returns>A copy with it.</returns>
    /// <exception cref="ArgumentNullException">The edition is null.</exception>
    public Reference WithEdition(string edition) => new(this) { Edition = edition ?? throw new ArgumentNullException(nameof(edition)) };

    /// <summary>The same document at a place.</summary>
    /// <param name="locator">A clause, table, page or equation.</param>
    /// <returns>A copy with it.</returns>
    /// <exception cref="ArgumentNullException">The locator is null.</exception>
    public Reference WithLocator(string locator) => new(this) { Locator = locator ?? throw new ArgumentNullException(nameof(locator)) };

    /// <summary>The same reference with a note.</summary>
    /// <param name="note">What a careful user must know.</param>
    /// <returns>A copy with it.</returns>
    /// <exception cref="ArgumentNullException">The note is null.</exception>
    public Reference WithNote(string note) => new(this) { Note = note ?? throw new ArgumentNullException(nameof(note)) };

    /// <summary>A practice of the trade that no published source states.</summary>
    /// <param name="practice">The practice, in a few words.</param>
    public static Reference CommonPractice(string practice) =>
        new() { Title = practice ?? throw new ArgumentNullException(nameof(practice)), Kind = ReferenceKind.CommonPractice };

    /// <inheritdoc/>
    public bool Equals(Reference? other) =>
        ReferenceEquals(this, other)
        || (other is not null && Title == other.Title && Edition == other.Edition && Locator == other.Locator
            && Kind == other.Kind && Note == other.Note);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Reference);

    /// <inheritdoc/>
    public override int GetHashCode() => (Title, Edition, Locator, Kind).GetHashCode();

    /// <summary>Whether two references are the same in all their parts.</summary>
    /// <param name="left">A reference, or null.</param>
    /// <param name="right">Another reference, or null.</param>
    public static bool operator ==(Reference? left, Reference? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two references differ in a part.</summary>
    /// <param name="left">A reference, or null.</param>
    /// <param name="right">Another reference, or null.</param>
    public static bool operator !=(Reference? left, Reference? right) => !(left == right);

    /// <summary>The source in one line: <c>IEC 60228 (2004), Table 2 [standard]</c>.</summary>
    public override string ToString()
    {
        string edition = Edition.Length == 0 ? "" : $" ({Edition})";
        string locator = Locator.Length == 0 ? "" : $", {Locator}";
        return $"{Title}{edition}{locator} [{Describe(Kind)}]";
    }

    /// <summary>This reference for a set of rows that have their own: its kind is that of the weakest of them.</summary>
    internal Reference WithWeakest(IEnumerable<Reference> rows)
    {
        ReferenceKind weakest = Kind;
        foreach (Reference row in rows)
        {
            weakest = Strength(row.Kind) < Strength(weakest) ? row.Kind : weakest;
        }

        return weakest == Kind ? this : new Reference(this) { Kind = weakest };
    }

    private static int Strength(ReferenceKind kind) => kind switch
    {
        ReferenceKind.FromMemory => 0,
        ReferenceKind.FromMemoryCompared => 1,
        ReferenceKind.CommonPractice => 2,
        _ => 3,
    };

    private static string Describe(ReferenceKind kind) => kind switch
    {
        ReferenceKind.Law => "law",
        ReferenceKind.Standard => "standard",
        ReferenceKind.Handbook => "handbook",
        ReferenceKind.Paper => "paper",
        ReferenceKind.CommonPractice => "common practice, no published source",
        ReferenceKind.FromMemoryCompared => "from memory, agrees with an independent transcription 2026-11",
        _ => "from memory",
    };
}
