using System.Text;
using CircuitSchedule;
using LowVoltage.Calc;
using LowVoltage.Calc.Documents;

namespace CircuitPage;

/// <summary>What the page is about: fields or a whole document, the answer, and what is wrong. Every change designs anew.</summary>
internal sealed class PageModel
{
    private static readonly IReadOnlyDictionary<string, string> NoProblems = new Dictionary<string, string>();

    public PageModel() => Load(Examples.All[0].Address);

    public PageState State { get; private set; } = PageState.Empty;

    /// <summary>A document that says more than the fields can hold, as text to edit; null where the fields count.</summary>
    public string? Document { get; private set; }

    /// <summary>The answer; null where there is none, and then something is wrong.</summary>
    public Answer? Answer { get; private set; }

    /// <summary>What is wrong, by the key of the field.</summary>
    public IReadOnlyDictionary<string, string> Problems { get; private set; } = NoProblems;

    /// <summary>What is wrong with the document, each with its place.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>What of the address, the file or the row could not be used.</summary>
    public IReadOnlyList<string> Remarks { get; private set; } = [];

    /// <summary>The circuits of a schedule that was opened; null without one.</summary>
    public ScheduleText? Schedule { get; private set; }

    /// <summary>The circuit for the address of the page; null where it is too long to be sent.</summary>
    public string? Address => Document is null ? CircuitPage.Address.Write(State) : DocumentAddress.Write(Document);

    /// <summary>The circuit as a JSON document; null where there is none.</summary>
    public string? Json => Document ?? (CircuitReading.Of(State) is { Requirements: { } requirements, Rules: { } rules } ? CircuitDocument.Create(requirements, rules).Write() : null);

    /// <summary>Takes over what an address says.</summary>
    public void Load(string address)
    {
        Schedule = null;
        if (address.StartsWith(DocumentAddress.Prefix, StringComparison.Ordinal))
        {
            OpenDocument(DocumentAddress.Read(address) ?? "", "The document in the address is damaged.");
            return;
        }

        PageState state = CircuitPage.Address.Read(address, out IReadOnlyList<string> remarks);
        Take(state, remarks);
    }

    public void Type(string key, string text)
    {
        State = State.With(key, text);
        Design();
    }

    public void Use(PageUnits units)
    {
        State = State.In(units);
        Design();
    }

    /// <summary>A document: as fields where they can hold it, else as it is.</summary>
    public void OpenDocument(string json, string? whenEmpty = null)
    {
        Schedule = null;
        if (CircuitDocument.TryRead(json, out CircuitDocument? document, out _) && DocumentFields.Of(document) is { } fields)
        {
            Take(fields.In(State.Units), []);
            return;
        }

        Document = json;
        Remarks = json.Length == 0 && whenEmpty is not null ? [whenEmpty] : [];
        Design();
    }

    /// <summary>Edits the document.</summary>
    public void TypeDocument(string json)
    {
        Document = json;
        Design();
    }

    /// <summary>Back to the fields, as they were.</summary>
    public void CloseDocument() => Take(State, []);

    /// <param name="path">The file.</param>
    public void OpenSchedule(string path)
    {
        try
        {
            ScheduleText schedule = ScheduleText.Open(path);
            Pick(schedule, 0);
        }
        catch (ScheduleFileException unusable)
        {
            string words = unusable.Message.Replace(path, Path.GetFileName(path), StringComparison.Ordinal);
            (Schedule, Remarks) = (null, [words.Replace("--help lists the columns; their case counts.", "The case of their names counts.", StringComparison.Ordinal)]);
        }
    }

    /// <summary>A file by its name and bytes: JSON, or else a schedule.</summary>
    public void OpenFile(string name, byte[] bytes)
    {
        if (name.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
        {
            OpenDocument(new UTF8Encoding(false).GetString(bytes).TrimStart('\uFEFF'));
            return;
        }

        // A browser keeps it in memory; its folder is of this page alone.
        string folder = Directory.CreateTempSubdirectory().FullName, path = Path.Combine(folder, Path.GetFileName(name));
        try
        {
            File.WriteAllBytes(path, bytes);
            OpenSchedule(path);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Takes another circuit of the schedule.</summary>
    public void Pick(int index) => Pick(Schedule!, index);

    private void Pick(ScheduleText schedule, int index)
    {
        ScheduleChoice choice = schedule.Circuits[index];
        Take(choice.State.In(State.Units), choice.Remarks);
        Schedule = schedule;
    }

    private void Take(PageState state, IReadOnlyList<string> remarks)
    {
        (State, Document, Remarks) = (state, null, remarks);
        Design();
    }

    private void Design()
    {
        (Answer, Problems, Faults) = (null, NoProblems, []);
        if (Document is not null)
        {
            DesignDocument(Document);
            return;
        }

        CircuitReading reading = CircuitReading.Of(State);
        Show(reading.Design());
        Problems = reading.Problems;
    }

    private void DesignDocument(string json)
    {
        if (!CircuitDocument.TryRead(json, out CircuitDocument? document, out IReadOnlyList<DocumentFault> faults))
        {
            Faults = [.. faults.Select(fault => fault.ToString())];
            return;
        }

        try
        {
            Show(document.Answer(), document.Path is not null);
        }
        catch (ArgumentException refusal)
        {
            Faults = [ProblemWords.Plain(refusal)];
        }
    }

    private void Show(CircuitDesign? design, bool isOfStretches = false) => Answer = design is null ? null : new Answer(design, State.Units) { IsOfStretches = isOfStretches };
}
