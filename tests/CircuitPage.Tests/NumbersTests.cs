using System.Globalization;

namespace CircuitPage.Tests;

/// <summary>What the page weighs and how quick it is. The numbers go to PAGE_NUMBERS; the bounds are wide, for slow and busy machines.</summary>
[Collection(BrowserTests.Name)]
public sealed class NumbersTests(Browser browser)
{
    [Fact]
    public async Task Page_AfterLoading_AsksForNothingMore()
    {
        await using OpenPage page = await browser.Open("");
        int loaded = page.Requests;
        Assert.True(loaded > 10);
        browser.Server.Missing.Clear();
        await page.Type("feed_m", "7");
        await page.Settled();
        await page.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Show the working" }).ClickAsync();
        await page.Page.SetInputFilesAsync("#file", Path.Combine(AppContext.BaseDirectory, "six-columns.csv"));
        await page.Page.WaitForSelectorAsync("#row");
        await page.Settled();
        await page.Page.PdfAsync();
        Assert.Equal(loaded, page.Requests);
    }

    [Theory]
    [InlineData(true, 6.0)]
    [InlineData(false, 20.0)]
    public async Task Page_Weighs(bool compressed, double mostMegabytes)
    {
        using StaticServer server = new(Browser.Folder, compressed);
        await using OpenPage page = await browser.Open("", from: server);
        double first = await page.Page.EvaluateAsync<double>("() => performance.getEntriesByName('first answer')[0].startTime");
        double megabytes = server.SentBytes / 1e6;
        Say($"{(compressed ? "brotli" : "plain")}: {megabytes:0.00} MB in {page.Requests} requests; first answer after {first:0} ms, cold");
        Assert.InRange(megabytes, 1, mostMegabytes);
        Assert.InRange(first, 1, 120_000);
    }

    [Fact]
    public async Task Redesign_IsQuick()
    {
        await using OpenPage page = await browser.Open("");
        double[] times = await page.Page.EvaluateAsync<double[]>("""
            async () => {
              const field = document.getElementById("feed_m"), times = [];
              for (let i = 0; i < 60; i++) {
                const length = (2 + i * 0.15).toFixed(2);
                field.value = length;
                const from = performance.now();
                field.dispatchEvent(new Event("input", { bubbles: true }));
                const took = performance.now() - from;
                if (!document.getElementById("waiting")) throw new Error("the page was not drawn anew at once");
                if (i >= 10) times.push(took);
                await new Promise(done => setTimeout(done, 30));
              }
              return times;
            }
            """);
        Array.Sort(times);
        Assert.Equal(50, times.Length);
        Say($"re-design with the page drawn anew, 50 edits: least {times[0]:0.0} ms, median {times[25]:0.0} ms, worst {times[^1]:0.0} ms");
        Assert.InRange(times[25], 0.1, 150);
    }

    private static void Say(FormattableString words)
    {
        if (Environment.GetEnvironmentVariable("PAGE_NUMBERS") is { Length: > 0 } file)
        {
            File.AppendAllText(file, words.ToString(CultureInfo.InvariantCulture) + "\n");
        }
    }
}
