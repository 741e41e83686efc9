using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Unicode;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs;

#region design
/// <summary>The answer as a file holds it, with the circuit it belongs to.</summary>
public sealed record DesignDocument
{
    public required CircuitDocument Circuit { get; init; }

    public required Verdict Verdict { get; init; }

    public string? WireSize { get; init; }

    public double? FuseAmperes { get; init; }

    public string? FuseSeries { get; init; }

    public required string GovernedBy { get; init; }

    public required IReadOnlyList<CheckDocument> Checks { get; init; }

    public required IReadOnlyList<string> Assumptions { get; init; }

    // Part of the result: whoever shows the file shows them.
    public required IReadOnlyList<string> Cautions { get; init; }

    public static DesignDocument From(CircuitDocument circuit, CircuitDesign design) => new()
    {
        Circuit = circuit,
        Verdict = design.Verdict,
        WireSize = design.Wire?.Size?.Designation,
        FuseAmperes = design.Fuse?.Current.Amperes,
        FuseSeries = design.Fuse?.Series.Name,
        GovernedBy = design.Governing.Name,
        Checks = [.. design.Checks.Select(check => CheckDocument.From(check))],
        Assumptions = design.Assumptions,
        Cautions = design.Cautions,
    };

    /// <summary>What a file says is checked again, not believed: the same wire and fuse, asked everything once more.</summary>
    public CircuitDesign Verify()
    {
        DesignRules rules = Circuit.ToRules();
        if (WireSize is null || !rules.Conductors.TryGet(ConductorSize.Parse(WireSize), out Conductor? wire))
        {
            throw new FormatException($"\"{WireSize}\" is no size of the series {rules.Conductors}.");
        }

        FuseRating fuse = rules.Fuses.Ratings.First(rating => rating.Current.Amperes == FuseAmperes && rating.Series.Name == FuseSeries);
        return CircuitDesigner.Verify(Circuit.ToRequirements(), wire, fuse, rules);
    }
}

public sealed record CheckDocument
{
    public required string Kind { get; init; }

    /// <summary>Null when there is no number: undetermined, or a fuse that need never open.</summary>
    public double? Value { get; init; }

    public double? Limit { get; init; }

    public required string Unit { get; init; }

    public required string Where { get; init; }

    public required CheckOutcome Outcome { get; init; }

    public required string Note { get; init; }

    public required string Source { get; init; }

    public static CheckDocument From(CheckResult check) => new()
    {
        Kind = check.Kind?.Id ?? "",
        Value = check.Value,
        Limit = check.Limit,
        Unit = check.Unit,
        Where = check.Where,
        Outcome = check.Outcome,
        Note = check.Note,
        Source = check.Reference.Title,
    };
}
#endregion

#region contexts
/// <summary>Source generated: no reflection, fit for trimming and native AOT.</summary>
[JsonSerializable(typeof(CircuitDocument))]
[JsonSerializable(typeof(DesignDocument))]
internal sealed partial class CircuitJson : JsonSerializerContext
{
    public static CircuitJson Readable { get; } = new(ReadableOptions());

    /// <summary>The same options serve reflection: <c>JsonSerializer.Serialize(document, CircuitJson.ReadableOptions())</c>.</summary>
    public static JsonSerializerOptions ReadableOptions() => new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        WriteIndented = true,
        // Letters such as ² and ° as they are.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        Converters =
        {
            new JsonStringEnumConverter<Verdict>(), new JsonStringEnumConverter<CheckOutcome>(),
        },
    };
}
#endregion
