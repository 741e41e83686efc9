using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace CircuitPage.Tests;

/// <summary>axe-core finds nothing serious or critical, and the keyboard reaches everything.</summary>
[Collection(BrowserTests.Name)]
public sealed class AccessibilityTests(Browser browser)
{
    private const string Undetermined = "practice=bench&supply=voltage&supply_V=12&load=current&load_A=2&feed_m=1&ambient_degC=25";
    private const string Failing = "practice=road+vehicle&supply=LiFePO4&cells_in_series=4&capacity_Ah=200&load=power&load_W=1800&feed_m=6&ambient_degC=35&insulation=XLPE&supply_lead_mOhm=8";
    private const string Unfinished = "practice=road+vehicle&feed_m=-3";

    [Theory, CombinatorialData(["", Undetermined, Failing, Unfinished])]
    public async Task Page_HasNothingSerious(string address, int width, ColorScheme scheme)
    {
        await using OpenPage page = await browser.Open(address, width, scheme);
        await page.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(folded => { folded.open = true; })");
        ILocator working = page.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Show the working" });
        if (await working.CountAsync() > 0)
        {
            await working.ClickAsync();
        }

        AxeResult found = await page.Page.RunAxe();
        Assert.Empty(found.Violations.Where(one => one.Impact is "serious" or "critical").Select(one => $"{one.Id}: {one.Nodes[0].Html}"));
        Assert.True(found.Passes.Length > 20);
        Assert.True(await page.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), "the page scrolls sideways");
        if (Environment.GetEnvironmentVariable("PAGE_SHOTS") is { Length: > 0 } shots)
        {
            string state = await page.Text("#verdict b");
            await page.Page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(shots, $"{state.Replace(' ', '-')}-{width}-{scheme}.png"), FullPage = true });
        }
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Keyboard_ReachesEverything(int width)
    {
        await using OpenPage page = await browser.Open("", width);
        await page.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(folded => { folded.open = true; })");
        string[] all = await page.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('a[href], input, select, textarea, button, summary, [tabindex="0"]')]
                .filter(one => one.checkVisibility() && !(one.type === 'radio' && !one.checked))
                .map((one, i) => { one.dataset.at = String(i); return String(i); })
            """);
        HashSet<string> reached = [];
        for (int i = 0; i < all.Length + 20; i++)
        {
            await page.Page.Keyboard.PressAsync("Tab");
            reached.Add(await page.Page.EvaluateAsync<string>("() => document.activeElement.dataset.at ?? ''"));
        }

        Assert.True(all.Length > 40);
        Assert.Empty(all.Except(reached));
    }

    [Fact]
    public async Task SkipLink_LeadsToTheAnswerAndKeepsTheAddress()
    {
        await using OpenPage page = await browser.Open("");
        string before = page.Page.Url;
        await page.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("Skip to the answer", await page.Page.EvaluateAsync<string>("() => document.activeElement.textContent"));
        await page.Page.Keyboard.PressAsync("Enter");
        Assert.Equal("answer", await page.Page.EvaluateAsync<string>("() => document.activeElement.id"));
        Assert.Equal(before, page.Page.Url);
    }

    [Fact]
    public async Task Verdict_IsSpokenPolitely()
    {
        await using OpenPage page = await browser.Open("");
        Assert.Equal("status", await page.Page.Locator("#status").GetAttributeAsync("role"));
        await page.Type("feed_m", "40");
        await page.Settled();
        Assert.Equal($"{await page.Text("#verdict b")}: {(await page.Text("#wire")).Split(", ")[0]}, {await page.Text("#fuse")}.", await page.Text("#status"));
    }
}
