using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.JSInterop;

namespace CircuitPage;

/// <summary>The page: passes what is typed to the model and shows what it answers.</summary>
public sealed partial class App
{
    // A circuit of a hundred stretches is far smaller.
    private const long LargestFile = 4 << 20;

    // As long as a typist pauses.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private static readonly FieldGroup[] Groups = Enum.GetValues<FieldGroup>();

    private readonly Action<string, string> typed;
    private CancellationTokenSource pending = new();
    private DotNetObjectReference<App>? self;
    private LaterAnswer? later;
    private string spoken = "";
    private string working = "";
    private int row;
    private bool isOpen;

    /// <summary>The page.</summary>
    public App() => typed = Typed;

    private PageModel Model { get; } = new();

    private IJSInProcessRuntime Script => (IJSInProcessRuntime)Browser;

    private string Tone => Model.Answer?.Verdict.ToLowerInvariant() ?? "none";

    private string Brief => Model.Answer is { } answer ? $"{answer.Verdict}: {answer.Brief}" : "No answer yet";

    private string Missing => Model.Document is not null
        ? $"{Sentences.Count(Model.Faults.Count, "mistake")} in the document."
        : $"{Sentences.Count(Model.Problems.Count, "field")} to be put right:";

    /// <summary>The calculation sheet for the printer: style and content; without an answer, what is missing.</summary>
    /// <param name="date">The day, as the browser's clock has it.</param>
    /// <returns>Style and content.</returns>
    [JSInvokable]
    public string[] Sheet(string date)
    {
        if (Model.Answer is not { } answer)
        {
            return ["", "<p>There is no answer to print: fields of the circuit are to be put right first.</p>"];
        }

        SheetHtml sheet = SheetHtml.Of(answer.Design, date);
        return [sheet.Style, sheet.Content];
    }

    /// <summary>Another address was opened in this page.</summary>
    /// <param name="address">What stands behind the #.</param>
    [JSInvokable]
    public void Load(string address)
    {
        Model.Load(address);
        Changed();
        StateHasChanged();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        pending.Cancel();
        pending.Dispose();
        self?.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        self = DotNetObjectReference.Create(this);
        if (Script.Invoke<string>("circuitPage.start", self) is { Length: > 0 } address)
        {
            Model.Load(address);
        }

        Changed();
    }

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            Script.InvokeVoid("circuitPage.ready");
        }
    }

    private bool IsOpen(FieldGroup group) => Model.State.Used.Any(field => field.Group == group && field.IsFolded
        && (Model.State.Text(field.Key).Length > 0 || Model.Problems.ContainsKey(field.Key)));

    private void Typed(string key, string text)
    {
        Model.Type(key, text);
        Changed();
        StateHasChanged();
    }

    private void Start(ChangeEventArgs change)
    {
        if (change.Value is string { Length: > 0 } index)
        {
            Model.Load(Examples.All[int.Parse(index, System.Globalization.CultureInfo.InvariantCulture)].Address);
            Changed();
        }
    }

    private void Use(PageUnits units)
    {
        Model.Use(units);
        Changed();
    }

    private void Edit(string json)
    {
        Model.TypeDocument(json);
        Changed();
    }

    private void Close()
    {
        Model.CloseDocument();
        Changed();
    }

    private void Pick(ChangeEventArgs change)
    {
        row = int.Parse((string)change.Value!, System.Globalization.CultureInfo.InvariantCulture);
        Model.Pick(row);
        Changed();
    }

    private async Task Open(InputFileChangeEventArgs chosen)
    {
        using MemoryStream bytes = new();
        await using (Stream file = chosen.File.OpenReadStream(LargestFile))
        {
            await file.CopyToAsync(bytes);
        }

        row = 0;
        Model.OpenFile(chosen.File.Name, bytes.ToArray());
        Changed();
    }

    private void Unfold()
    {
        isOpen = !isOpen;
        working = isOpen && Model.Answer is { } answer ? answer.Design.Explain().ToHtml() : "";
    }

    private void Print() => Script.InvokeVoid("circuitPage.print");

    private void Save()
    {
        if (Model.Json is { } json)
        {
            Script.InvokeVoid("circuitPage.save", "circuit.json", json);
        }
    }

    // What takes longer than a key press waits for a pause in the typing.
    private void Changed()
    {
        pending.Cancel();
        pending.Dispose();
        pending = new CancellationTokenSource();
        _ = Later(pending.Token);
    }

    private async Task Later(CancellationToken overtaken)
    {
        try
        {
            await Task.Delay(Pause, overtaken);
        }
        catch (OperationCanceledException)
        {
            return;
        }

        later = Model.Answer is { } answer ? new LaterAnswer(answer) : null;
        spoken = Model.Answer?.Spoken ?? "No answer. " + Missing;
        working = isOpen && Model.Answer is { } opened ? opened.Design.Explain().ToHtml() : "";
        Script.InvokeVoid("circuitPage.keep", Model.Address ?? "");
        StateHasChanged();
    }
}
