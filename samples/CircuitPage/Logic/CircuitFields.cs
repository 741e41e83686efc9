using CircuitSchedule;

namespace CircuitPage;

/// <summary>Which circuit, and by which practice.</summary>
internal static class CircuitFields
{
    public static Field[] All { get; } =
    [
        new("circuit", "Name of the circuit", FieldKind.Text, FieldGroup.Circuit),
        new("practice", "Practice to follow", FieldKind.Choice, FieldGroup.Circuit)
        {
            Choices = Fields.Of(Words.Practices), Hint = "Which wires and fuses there are, how a wire is rated, what may be lost.",
        },
    ];
}
