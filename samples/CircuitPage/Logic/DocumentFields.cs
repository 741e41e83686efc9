using System.Globalization;
using System.Text.Json;
using LowVoltage.Calc.Documents;

namespace CircuitPage;

/// <summary>A JSON document as fields, where the fields can hold all that it says.</summary>
internal static class DocumentFields
{
    /// <returns>The fields; null where the document says more than they can hold.</returns>
    public static PageState? Of(CircuitDocument document)
    {
        if (document.IsVerification)
        {
            return null;
        }

        // As the library writes it: every name and unit in its own form.
        string text = document.Write();
        using JsonDocument json = JsonDocument.Parse(text);
        PageState state = new(PageUnits.Metric, DocumentCells.Of(json.RootElement));
        CircuitReading reading = CircuitReading.Of(state);
        return reading is { Requirements: { } requirements, Rules: { } rules } && SameJson.Are(text, CircuitDocument.Create(requirements, rules).Write()) ? state : null;
    }
}
