using System.Text.RegularExpressions;

namespace CircuitPage.Tests;

/// <summary>A page that is open. When it is closed, it must have written no error to the console and asked no other server for anything.</summary>
internal sealed partial class OpenPage : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly StaticServer server;
    private readonly List<string> errors = [];
    private readonly List<string> elsewhere = [];

    public OpenPage(IBrowserContext context, IPage page, StaticServer server)
    {
        (this.context, Page, this.server) = (context, page, server);
        page.Console += (_, message) => Note(message.Type == "error", $"console: {message.Text}");
        page.PageError += (_, message) => Note(true, message);
        page.Request += (_, request) =>
        {
            Requests++;
            if (!request.Url.StartsWith(server.Origin + "/", StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal))
            {
                elsewhere.Add(request.Url);
            }
        };
    }

    public IPage Page { get; }

    public int Requests { get; private set; }

    /// <summary>Opens an address, as somebody does who was sent it.</summary>
    public async Task Load(string address)
    {
        await Page.GotoAsync("about:blank");
        await Page.GotoAsync(server.Page + (address.Length > 0 ? "#" + address : ""));
        await Page.WaitForSelectorAsync("#verdict");
        await Settled();
    }

    /// <summary>Waits until what follows a pause in the typing has followed.</summary>
    public async Task Settled()
    {
        await Page.WaitForFunctionAsync("() => document.getElementById('verdict') && !document.getElementById('waiting') && document.getElementById('status').textContent.startsWith(document.querySelector('#verdict b').textContent)");
    }

    public async Task Type(string key, string text)
    {
        ILocator field = Page.Locator("#" + key);
        await field.EvaluateAsync("field => { const folded = field.closest('details'); if (folded) folded.open = true; }");
        string kind = await field.EvaluateAsync<string>("field => field.tagName + ' ' + field.type");
        await (kind.StartsWith("SELECT", StringComparison.Ordinal) ? field.SelectOptionAsync(text) : kind.EndsWith("checkbox", StringComparison.Ordinal) ? field.CheckAsync() : field.FillAsync(text));
    }

    public async Task<string> Text(string selector) => Plain(await Page.Locator(selector).TextContentAsync() ?? "");

    public async Task<string[]> Texts(string selector) => [.. (await Page.Locator(selector).AllTextContentsAsync()).Select(Plain)];

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        Assert.Empty(errors);
        Assert.Empty(elsewhere);
        Assert.Empty(server.Missing);
    }

    /// <summary>Blanks of every kind as one.</summary>
    public static string Plain(string text) => Blanks().Replace(text, " ").Trim();

    private void Note(bool isError, string words)
    {
        if (isError)
        {
            errors.Add(words);
        }
    }

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();
}
