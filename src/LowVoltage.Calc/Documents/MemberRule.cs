namespace LowVoltage.Calc.Documents;

/// <summary>Members of one object that depend on each other.</summary>
internal abstract class MemberRule
{
    /// <summary>Whether the schema says it too.</summary>
    internal virtual bool IsOfShape => true;

    /// <summary>Refuses the object where the rule is broken.</summary>
    internal abstract void Check(DocumentNode node, Reading reading);

    /// <summary>Writes a schema that every valid object fulfils, what stands between its braces.</summary>
    internal abstract void Describe(SchemaWriter schema);

    /// <summary>A member that says nothing without another.</summary>
    internal static MemberRule Needs(Member member, params Member[] others) => new NeedsRule(member, others);

    /// <summary>Members of which at most one is given.</summary>
    internal static MemberRule NotBoth(Member one, Member other) => new NotBothRule(one, other);

    /// <summary>Members that must all be given where another is not.</summary>
    internal static MemberRule Without(Member member, params Member[] needed) => new WithoutRule(member, needed);

    private sealed class NeedsRule(Member member, Member[] others) : MemberRule
    {
        internal override void Check(DocumentNode node, Reading reading)
        {
            if (node.Find(member.Name) is not { } given)
            {
                return;
            }

            foreach (Member other in others)
            {
                if (node.Find(other.Name) is null)
                {
                    reading.Refuse(given, $"needs \"{other.Name}\" beside it, which is missing.");
                }
            }
        }

        internal override void Describe(SchemaWriter schema) => schema.Dependent(member.Name, others.Select(other => other.Name));
    }

    private sealed class NotBothRule(Member one, Member other) : MemberRule
    {
        internal override void Check(DocumentNode node, Reading reading)
        {
            if (node.Find(one.Name) is not null && node.Find(other.Name) is { } second)
            {
                reading.Refuse(second, $"must not be given beside \"{one.Name}\": they say the same thing in two ways.");
            }
        }

        internal override void Describe(SchemaWriter schema) => schema.NotBoth(one.Name, other.Name);
    }

    private sealed class WithoutRule(Member member, Member[] needed) : MemberRule
    {
        internal override void Check(DocumentNode node, Reading reading)
        {
            if (node.Find(member.Name) is not null)
            {
                return;
            }

            foreach (Member own in needed)
            {
                if (node.Find(own.Name) is null)
                {
                    reading.Refuse(node, $"\"{own.Name}\" is missing; only with \"{member.Name}\" may it be left out.");
                }
            }
        }

        internal override void Describe(SchemaWriter schema) => schema.EitherRequired([member.Name], needed.Select(own => own.Name));
    }
}
