using System.Text.Json;

namespace LowVoltage.Calc.Documents;

/// <summary>JSON text as a tree of values with their places.</summary>
internal ref struct DocumentParser
{
    // Deeper than any document of this library; a hostile one ends here.
    private const int Deepest = 64;

    private Utf8JsonReader json;
    private DocumentNode? at;

    private DocumentParser(ReadOnlySpan<byte> utf8) => json = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = Deepest });

    /// <summary>The value of a document; null where it is no JSON, which the reading then tells.</summary>
    internal static DocumentNode? Parse(ReadOnlySpan<byte> utf8, Reading reading)
    {
        DocumentParser parser = new(utf8);
        try
        {
            parser.json.Read();
            DocumentNode root = parser.Value(null, "", 0);

            // Reads on to the end, so that anything behind the value is refused.
            parser.json.Read();
            return root;
        }
        catch (JsonException e)
        {
            reading.Judge(OffsetOf(utf8, e), parser.at?.Path ?? "$", "This is no JSON: " + Told(e.Message));
            return null;
        }
        catch (InvalidOperationException)
        {
            reading.Judge((int)parser.json.TokenStartIndex, parser.at?.Path ?? "$", "This text is not valid UTF-8 or has half of a surrogate pair.");
            return null;
        }
    }

    private DocumentNode Value(DocumentNode? parent, string name, int index)
    {
        int offset = (int)json.TokenStartIndex;
        switch (json.TokenType)
        {
            case JsonTokenType.StartObject:
                return Object(new DocumentNode(ValueKind.Object, offset, parent, name, index));
            case JsonTokenType.StartArray:
                return List(new DocumentNode(ValueKind.List, offset, parent, name, index));
            case JsonTokenType.String:
                return new DocumentNode(ValueKind.Text, offset, parent, name, index) { Text = json.GetString()! };
            case JsonTokenType.Number:
                return new DocumentNode(ValueKind.Number, offset, parent, name, index) { Number = json.GetDouble() };
            case JsonTokenType.True or JsonTokenType.False:
                return new DocumentNode(ValueKind.Flag, offset, parent, name, index) { Flag = json.TokenType == JsonTokenType.True };
            default:
                return new DocumentNode(ValueKind.Null, offset, parent, name, index);
        }
    }

    private DocumentNode Object(DocumentNode node)
    {
        DocumentNode? outer = at;
        at = node;
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            string name = json.GetString()!;
            int offset = (int)json.TokenStartIndex;
            json.Read();
            node.Members.Add(new NodeMember(name, offset, Value(node, name, 0)));
        }

        at = outer;
        return node;
    }

    private DocumentNode List(DocumentNode node)
    {
        DocumentNode? outer = at;
        at = node;
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
        {
            node.Items.Add(Value(node, "", node.Items.Count));
        }

        at = outer;
        return node;
    }

    private static int OffsetOf(ReadOnlySpan<byte> utf8, JsonException e)
    {
        int offset = 0;
        for (long line = e.LineNumber ?? 0; line > 0; line--)
        {
            offset += utf8[offset..].IndexOf((byte)'\n') + 1;
        }

        return Math.Min(utf8.Length, offset + (int)(e.BytePositionInLine ?? 0));
    }

    // The place is told apart.
    private static string Told(string message)
    {
        int end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return end < 0 ? message : message[..end];
    }
}
