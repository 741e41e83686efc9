using System.Text.Json;

namespace LowVoltage.Calc.Documents;

/// <summary>A member that an object may or must have.</summary>
internal abstract class Member(string name, Form form, bool isNeeded, string says)
{
    internal string Name => name;

    internal Form Form => form;

    internal bool IsNeeded => isNeeded;

    internal string Says => says;

    internal JsonEncodedText Encoded { get; } = JsonEncodedText.Encode(name);

    /// <summary>A member that must be there.</summary>
    internal static Member<T> Needed<T>(string name, Form form, string says) => new(name, form, true, says);

    /// <summary>A member that may be left out.</summary>
    internal static Member<T> Optional<T>(string name, Form form, string says) => new(name, form, false, says);
}

/// <summary>A member whose value is read as a type.</summary>
internal sealed class Member<T>(string name, Form form, bool isNeeded, string says) : Member(name, form, isNeeded, says);

/// <summary>What was read of an object's members.</summary>
internal sealed class Values(Member[] members, object?[] values, DocumentNode node, Reading reading)
{
    internal DocumentNode Node => node;

    internal Reading Reading => reading;

    internal bool Has(Member member) => values[Index(member)] is not null;

    internal T Get<T>(Member<T> member) => (T)values[Index(member)]!;

    internal T Or<T>(Member<T> member, T fallback) => values[Index(member)] is { } value ? (T)value : fallback;

    internal T? Maybe<T>(Member<T> member)
        where T : struct => values[Index(member)] is { } value ? (T)value : null;

    internal T? OrNull<T>(Member<T> member)
        where T : class => (T?)values[Index(member)];

    /// <summary>Where a member's value stands; the object where it is left out.</summary>
    internal DocumentNode At(Member member) => node.Find(member.Name) ?? node;

    private int Index(Member member) => Array.IndexOf(members, member);
}
