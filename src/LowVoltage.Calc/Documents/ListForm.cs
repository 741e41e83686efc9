using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Documents;

/// <summary>A list of values of one form; read as an array.</summary>
internal sealed class ListForm<T>(Form item, int least = 0, int most = int.MaxValue) : Form
{
    internal override IEnumerable<Form> Inner => [item];

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind != ValueKind.List)
        {
            return Refuse(node, reading, $"must be a list; it was {node.Said}.");
        }

        bool failed = node.Items.Count < least || node.Items.Count > most;
        if (failed)
        {
            reading.Refuse(node, $"must have {Accepted()}; it has {Accept.Text(node.Items.Count)}.");
        }

        T[] values = new T[node.Items.Count];
        for (int i = 0; i < values.Length; i++)
        {
            object value = item.Read(node.Items[i], reading);
            if (ReferenceEquals(value, Failed))
            {
                failed = true;
                continue;
            }

            values[i] = (T)value;
        }

        return failed ? Failed : values;
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Text("type", "array");
        schema.Inside("items", item);
        if (least > 0)
        {
            schema.Number("minItems", least);
        }

        if (most < int.MaxValue)
        {
            schema.Number("maxItems", most);
        }
    }

    private string Accepted() => most == int.MaxValue ? $"at least {Accept.Text(least)} {(least == 1 ? "entry" : "entries")}"
        : least == most ? $"{Accept.Text(least)} entries" : $"{Accept.Text(least)} to {Accept.Text(most)} entries";
}
