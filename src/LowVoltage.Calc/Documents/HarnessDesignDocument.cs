using System.Collections.ObjectModel;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A harness that was sized, as a JSON document: what the copper costs, what keeps each wire from being thinner, how close to the least it is, and the verification of the harness with all its sizes and fuses.</summary>
/// <remarks>
/// What comes back from a file is a claim: <see cref="HarnessResultDocument.Verify"/> of <see cref="Verification"/> asks the library again about the same harness.
/// Written and refused as <see cref="CircuitDocument"/>. Immutable and thread-safe.
/// </remarks>
public sealed class HarnessDesignDocument
{
    private static readonly Member<int> Version = DocumentText.VersionOf("lowvoltage_harness_design");
    private static readonly Member<double> MassMember = Member.Needed<double>("conductor_kg", Ranges.Any, "Mass of metal in all its wires, those included that were given, kg.");
    private static readonly Member<double> CostMember = Member.Needed<double>("cost", Ranges.Any, "Cost of the wires that were sized: their mass in kg, or what the caller's price makes of it.");
    private static readonly Member<double> LowerBoundMember = Member.Needed<double>("lower_bound", Ranges.Any, "No sizes that keep every drop and every wire's own checks cost less.");
    private static readonly Member<double> GapMember = Member.Needed<double>("gap_percent", Ranges.Any, "By how much the cost may exceed the least, per cent of the cost.");
    private static readonly Member<bool> TreeMember = Member.Optional<bool>("is_tree", FlagForm.Any, "Whether the wires to be sized form a tree; left out: false.");
    private static readonly Member<bool> LeastMember = Member.Optional<bool>("is_proven_least", FlagForm.Any, "Whether the cost is the least; left out: false.");
    private static readonly Member<double> DividedMember = Member.Optional<double>("cost_divided_by_length", Ranges.Any, "What the same wires would cost with every allowance divided by length; left out: no sizes of the series keep that.");
    private static readonly Member<double> CircuitsMember = Member.Optional<double>("cost_circuit_by_circuit", Ranges.Any, "What the same wires would cost with the way of each load sized by itself, and of the sizes asked of a wire the largest; left out: a way has no answer.");
    private static readonly Member<double> MoreMember = Member.Needed<double>("more_V", Ranges.Any, "How much more each load may lose, V; below zero, less.");
    private static readonly Member<double> CostAtMember = Member.Needed<double>("cost", Ranges.Any, "The least cost with that.");
    private static readonly ObjectForm AllowanceForm = new("allowance_cost", "What the wires would cost if every load might lose a little more, or less.", at => new AllowanceCost(at.Get(MoreMember), at.Get(CostAtMember)), [MoreMember, CostAtMember]);
    private static readonly Member<AllowanceCost[]> AllowancesMember = Member.Optional<AllowanceCost[]>(
        "allowance_costs", new ListForm<AllowanceCost>(AllowanceForm), "The least cost with allowances of a few tenths of a volt less or more; those that no sizes keep are left out, all of them where the wires form no tree.");

    private static readonly Member<int> RoundsMember = Member.Needed<int>("rounds", new CountForm(0, int.MaxValue), "How often the currents were worked out again.");
    private static readonly Member<string> WireMember = Member.Needed<string>("wire", TextForm.Name, "The wire.");
    private static readonly Member<string> HeldByMember = Member.Needed<string>("held_by", TextForm.Any, "What holds its size up: a check of its own, or the drop of a load.");
    private static readonly ObjectForm WireForm = new("sized_wire", "A wire that was sized.", at => new KeyValuePair<string, string>(at.Get(WireMember), at.Get(HeldByMember)), [WireMember, HeldByMember]);
    private static readonly Member<KeyValuePair<string, string>[]> WiresMember = Member.Needed<KeyValuePair<string, string>[]>("sized_wires", new ListForm<KeyValuePair<string, string>>(WireForm), "The wires that were sized; their sizes are in the harness.");
    private static readonly Member<HarnessResultDocument> VerificationMember = Member.Needed<HarnessResultDocument>("verification", HarnessResultDocument.Inner, "The harness with all its sizes and fuses, and every check of it.");

    private static readonly ObjectForm Form = new(
        "harness_design_document",
        "A harness sized by LowVoltage.Calc.",
        Make,
        [Version, DocumentText.Schema, MassMember, CostMember, LowerBoundMember, GapMember, TreeMember, LeastMember, DividedMember, CircuitsMember, AllowancesMember, RoundsMember, WiresMember, VerificationMember]);

    private HarnessDesignDocument(HarnessResultDocument verification) => Verification = verification;

    /// <summary>The JSON Schema (draft 2020-12) of such a document.</summary>
    public static string Schema { get; } = SchemaWriter.Of(Form, "A harness sized by LowVoltage.Calc, version 1");

    /// <summary>The harness with all its sizes and ratings.</summary>
    public HarnessDocument Harness => Verification.Harness;

    /// <summary>Every check of it, the assumptions and the cautions: show them.</summary>
    public HarnessResultDocument Verification { get; }

    /// <summary>Mass of metal in all its wires, those included that were given.</summary>
    public Mass ConductorMass => Mass.FromKilograms(Kilograms);

    /// <summary>Cost of the wires that were sized: their mass in kg, or what the caller's price makes of it.</summary>
    public double Cost { get; private init; }

    /// <summary>No sizes that keep every drop and every wire's own checks cost less.</summary>
    public double LowerBound { get; private init; }

    /// <summary>By how much the cost may exceed the least, as a share of the cost.</summary>
    public Ratio Gap => Ratio.FromPercent(GapPercent);

    /// <summary>Whether the wires to be sized form a tree.</summary>
    public bool IsTree { get; private init; }

    /// <summary>Whether the cost is the least.</summary>
    public bool IsProvenLeast { get; private init; }

    /// <summary>What the same wires would cost with every allowance divided by length; <c>null</c> where no sizes of the series keep that.</summary>
    public double? CostDividedByLength { get; private init; }

    /// <summary>What the same wires would cost with the way of each load sized by itself; <c>null</c> where a way has no answer.</summary>
    public double? CostCircuitByCircuit { get; private init; }

    /// <summary>The least cost with allowances of a few tenths of a volt less or more for every load; empty where the wires form no tree.</summary>
    public IReadOnlyList<AllowanceCost> AllowanceCosts { get; private init; } = [];

    /// <summary>What holds each sized wire up, by its name.</summary>
    public IReadOnlyDictionary<string, string> HeldBy { get; private init; } = ReadOnlyDictionary<string, string>.Empty;

    /// <summary>How often the currents were worked out again.</summary>
    public int Rounds { get; private init; }

    internal static Form Root => Form;

    private double Kilograms { get; init; }

    private double GapPercent { get; init; }

    /// <summary>The document of a sized harness.</summary>
    /// <param name="design">The sized harness.</param>
    /// <param name="solutions">Solutions of its harness to go with it; none if none are wanted.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The design, the solutions or one of them is null.</exception>
    /// <exception cref="ArgumentException">A solution is of another harness.</exception>
    public static HarnessDesignDocument Create(HarnessDesign design, params HarnessSolution[] solutions)
    {
        _ = design ?? throw new ArgumentNullException(nameof(design));
        return new HarnessDesignDocument(HarnessResultDocument.Create(design.Verification, solutions))
        {
            Kilograms = design.ConductorMass.Kilograms,
            Cost = design.Cost,
            LowerBound = design.LowerBound,
            GapPercent = design.Gap.Percent,
            IsTree = design.IsTree,
            IsProvenLeast = design.IsProvenLeast,
            CostDividedByLength = design.CostDividedByLength,
            CostCircuitByCircuit = design.CostCircuitByCircuit,
            AllowanceCosts = design.AllowanceCosts,
            HeldBy = design.HeldBy,
            Rounds = design.Rounds,
        };
    }

    /// <summary>Reads a document.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static HarnessDesignDocument Read(string json) => Read(DocumentText.Bytes(json));

    /// <summary>Reads a document from the bytes of a file.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte-order mark.</param>
    /// <returns>The document.</returns>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static HarnessDesignDocument Read(ReadOnlySpan<byte> utf8) => DocumentText.Read<HarnessDesignDocument>(utf8, Form);

    /// <summary>Reads a document, or says what is wrong with it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="document">The document, or null.</param>
    /// <param name="faults">Every mistake with its place; none where the document was read.</param>
    /// <returns>Whether it was read.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out HarnessDesignDocument? document, out IReadOnlyList<DocumentFault> faults)
    {
        bool read = DocumentText.TryRead(DocumentText.Bytes(json), Form, out document, out DocumentFault[] found);
        faults = Array.AsReadOnly(found);
        return read;
    }

    /// <summary>The document as text, indented, with line feeds.</summary>
    /// <returns>JSON that <see cref="Read(string)"/> reads back.</returns>
    public string Write() => DocumentText.Write(Version, this, WriteMembers);

    private static void WriteMembers(Utf8JsonWriter json, HarnessDesignDocument design)
    {
        json.Put(MassMember, design.Kilograms);
        json.Put(CostMember, design.Cost);
        json.Put(LowerBoundMember, design.LowerBound);
        json.Put(GapMember, design.GapPercent);
        json.PutIf(TreeMember, design.IsTree);
        json.PutIf(LeastMember, design.IsProvenLeast);
        json.PutIf(DividedMember, design.CostDividedByLength);
        json.PutIf(CircuitsMember, design.CostCircuitByCircuit);
        json.PutAll(AllowancesMember, design.AllowanceCosts, WriteAllowance);
        json.Put(RoundsMember, design.Rounds);
        json.PutAll(WiresMember, design.HeldBy, WriteWire);
        json.Put(VerificationMember, design.Verification, HarnessResultDocument.WriteInner);
    }

    private static void WriteAllowance(Utf8JsonWriter json, AllowanceCost allowance)
    {
        json.WriteStartObject();
        json.Put(MoreMember, allowance.More.Volts);
        json.Put(CostAtMember, allowance.Cost);
        json.WriteEndObject();
    }

    private static void WriteWire(Utf8JsonWriter json, KeyValuePair<string, string> wire)
    {
        json.WriteStartObject();
        json.Put(WireMember, wire.Key);
        json.Put(HeldByMember, wire.Value);
        json.WriteEndObject();
    }

    private static HarnessDesignDocument? Make(Values at)
    {
        HarnessResultDocument verification = at.Get(VerificationMember);
        KeyValuePair<string, string>[] wires = at.Get(WiresMember);
        Dictionary<string, string> held = new(StringComparer.Ordinal);
        int before = at.Reading.Count;
        for (int w = 0; w < wires.Length; w++)
        {
            string id = wires[w].Key;
            string? wrong = !held.TryAdd(id, wires[w].Value) ? "is sized twice" : verification.Harness.Harness.Branches.OfType<HarnessWire>().Any(own => own.Id == id) ? null : "is no wire of the harness";
            if (wrong is not null)
            {
                at.Reading.Judge(at.At(WiresMember).Items[w], $"\"{DocumentNode.Short(id)}\" {wrong}.");
            }
        }

        return before < at.Reading.Count ? null : new HarnessDesignDocument(verification)
        {
            Kilograms = at.Get(MassMember),
            Cost = at.Get(CostMember),
            LowerBound = at.Get(LowerBoundMember),
            GapPercent = at.Get(GapMember),
            IsTree = at.Or(TreeMember, false),
            IsProvenLeast = at.Or(LeastMember, false),
            CostDividedByLength = at.Maybe(DividedMember),
            CostCircuitByCircuit = at.Maybe(CircuitsMember),
            AllowanceCosts = Array.AsReadOnly(at.Or(AllowancesMember, [])),
            HeldBy = new ReadOnlyDictionary<string, string>(held),
            Rounds = at.Get(RoundsMember),
        };
    }
}
