namespace CircuitPage.Tests;

/// <summary>One browser and one file server for all tests. PAGE_FOLDER names the published page, CHROMIUM another browser than Debian's.</summary>
public sealed class Browser : IAsyncLifetime, IDisposable
{
    private IPlaywright? playwright;
    private IBrowser? browser;
    private StaticServer? server;

    public static string Folder { get; } = Environment.GetEnvironmentVariable("PAGE_FOLDER") is { Length: > 0 } folder
        ? folder
        : throw new InvalidOperationException("PAGE_FOLDER names the published page: run bash .ci/page.");

    internal StaticServer Server => server!;

    public async Task InitializeAsync()
    {
        server = new StaticServer(Folder, compresses: false);
        playwright = await Playwright.CreateAsync();
        string path = Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } named ? named : "/usr/bin/chromium";
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = path });
    }

    public async Task DisposeAsync()
    {
        await browser!.DisposeAsync();
        playwright!.Dispose();
    }

    public void Dispose() => server?.Dispose();

    /// <summary>The page at an address, ready to be typed in.</summary>
    internal async Task<OpenPage> Open(string address, int width = 1280, ColorScheme scheme = ColorScheme.Light, StaticServer? from = null)
    {
        IBrowserContext context = await browser!.NewContextAsync(new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = width, Height = 900 }, ColorScheme = scheme, Locale = "de-DE" });
        context.SetDefaultTimeout(60_000);
        OpenPage page = new(context, await context.NewPageAsync(), from ?? Server);
        await page.Load(address);
        return page;
    }
}

/// <summary>The tests share the browser.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserTests : ICollectionFixture<Browser>
{
    public const string Name = "browser";
}
