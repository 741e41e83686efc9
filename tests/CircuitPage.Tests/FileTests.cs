using System.Text;
using LowVoltage.Calc;
using LowVoltage.Calc.Documents;

namespace CircuitPage.Tests;

/// <summary>Files that somebody opens in the page, and what the page saves and prints.</summary>
[Collection(BrowserTests.Name)]
public sealed class FileTests(Browser browser)
{
    [Fact]
    public async Task Schedule_Opened_OffersItsCircuits()
    {
        await using OpenPage page = await browser.Open("");
        await page.Page.SetInputFilesAsync("#file", Path.Combine(AppContext.BaseDirectory, "scenario.csv"));
        await page.Page.WaitForSelectorAsync("#row");
        Assert.Equal(13, await page.Page.Locator("#row option").CountAsync());
        await page.Page.SelectOptionAsync("#row", "8");
        await page.Settled();
        Assert.Equal("Launch: bilge pump", await page.Page.Locator("#circuit").InputValueAsync());

        // What the schedule's own README prints for that row.
        Assert.StartsWith("12 AWG stranded copper", await page.Text("#wire"), StringComparison.Ordinal);
        Assert.StartsWith("15 A blade fuse", await page.Text("#fuse"), StringComparison.Ordinal);
        Assert.Equal("Voltage at the load while it starts", await page.Text("#governed"));
        Assert.Equal("Pass", await page.Text("#verdict b"));
    }

    [Fact]
    public async Task Schedule_WithDecimalCommasAndBadRows_IsReadAndNamesThem()
    {
        await using OpenPage page = await browser.Open("");
        await page.Page.SetInputFilesAsync("#file", Path.Combine(AppContext.BaseDirectory, "scenario-with-faults.csv"));
        await page.Page.WaitForSelectorAsync("#row");
        Assert.Contains("semicolons between the cells, decimal commas, UTF-8", await page.Text("#row-hint"), StringComparison.Ordinal);
        Assert.Equal("2.8", await page.Page.Locator("#feed_m").InputValueAsync());
        await page.Page.SelectOptionAsync("#row", "3");
        await page.Settled();
        Assert.Equal("Expected a number in m, such as 2.5; found '3 m'.", await page.Text("#feed_m-problem"));
    }

    [Fact]
    public async Task Schedule_ThatIsNone_IsRefusedInWords()
    {
        await using OpenPage page = await browser.Open("");
        await page.Page.SetInputFilesAsync("#file", new FilePayload { Name = "mine.csv", MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes("name,length\nLamp,3\n") });
        await page.Page.WaitForSelectorAsync("#remarks");
        Assert.Contains("'mine.csv', header in line 1", await page.Text("#remarks"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Document_ThatTheFieldsCanHold_FillsThem()
    {
        TypedCircuit circuit = Circuits.All.Single(one => one.Name == "converter in a bundle");
        await using OpenPage page = await browser.Open("");
        await Give(page, CircuitDocument.Create(circuit.Requirements, circuit.Rules).Write());
        await page.Page.WaitForFunctionAsync("() => document.getElementById('feed_m')?.value === '5.5'");
        await page.Settled();
        Assert.Equal(Expected.Wire(circuit.Design()), await page.Text("#wire"));
        Assert.Equal(0, await page.Page.Locator("#document").CountAsync());
    }

    [Fact]
    public async Task Document_OfExistingWiring_IsVerifiedAndCanBeEditedAndSent()
    {
        TypedCircuit circuit = Circuits.All.Single(one => one.Name == "lamp");
        DesignRules rules = circuit.Rules;
        CircuitDocument document = CircuitDocument.Create(circuit.Requirements, rules.Conductors.Conductors[8], rules.Fuses.Ratings[5], rules);
        await using OpenPage page = await browser.Open("");
        await Give(page, document.Write());
        await page.Page.WaitForSelectorAsync("#document");
        await page.Settled();
        Assert.Equal(Expected.Checks(document.Answer(), false).Length, await page.Page.Locator("#checks tbody tr").CountAsync());
        Assert.Equal(Expected.Fuse(document.Answer()), await page.Text("#fuse"));

        await using OpenPage sent = await browser.Open(new Uri(page.Page.Url).Fragment[1..]);
        Assert.Equal(document.Write(), (await sent.Page.Locator("#document").InputValueAsync()).ReplaceLineEndings("\n"));
        await sent.Page.FillAsync("#document", document.Write().Replace("\"feed_m\"", "\"feed\"", StringComparison.Ordinal));
        await sent.Settled();
        Assert.Equal("No answer", await sent.Text("#verdict b"));
        Assert.Contains("$.feed: \"feed\" is not known here", await sent.Text("#document-problem"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Save_GivesADocumentThatTheLibraryReads()
    {
        TypedCircuit circuit = Circuits.All.Single(one => one.Name == "lamp");
        await using OpenPage page = await browser.Open("practice=road+vehicle");
        foreach ((string key, string text) in circuit.Fields)
        {
            await page.Type(key, text);
        }

        IDownload saved = await page.Page.RunAndWaitForDownloadAsync(() => page.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Save as JSON" }).ClickAsync());
        CircuitDocument document = CircuitDocument.Read(await File.ReadAllBytesAsync(await saved.PathAsync()));
        Assert.Equal(circuit.Design().ToString(), document.Answer().ToString());
    }

    private static Task Give(OpenPage page, string json) =>
        page.Page.SetInputFilesAsync("#file", new FilePayload { Name = "circuit.json", MimeType = "application/json", Buffer = Encoding.UTF8.GetBytes(json) });
}
