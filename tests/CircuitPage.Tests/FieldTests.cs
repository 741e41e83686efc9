namespace CircuitPage.Tests;

/// <summary>Bad input is named at its field, to the eye and to a screen reader; there is then no answer that could be taken for one.</summary>
[Collection(BrowserTests.Name)]
public sealed class FieldTests(Browser browser)
{
    [Theory]
    [InlineData("feed_m", "-2", "Must be greater than zero and at most 1E+07 m; it was -2 m.")]
    [InlineData("feed_m", "3 m", "Expected a number in m, such as 2.5; found '3 m'.")]
    [InlineData("feed_m", "", "Needed: a number in m, such as 2.5.")]
    [InlineData("ambient_degC", "400", "Must be from -60 °C to 250 °C; it was 400 °C.")]
    [InlineData("cold_cranking_A", "0", "Must be greater than zero")]
    [InlineData("blocks_in_series", "5", "accepted is a source of at most 60 V")]
    [InlineData("drop_limit_percent", "200", "Must be from 0.001 % to 99.9 %; it was 200 %.")]
    [InlineData("sizes", "3.3", "'3.3' is not a size of")]
    public async Task Field_WithBadInput_NamesItAndGivesNoAnswer(string key, string text, string words)
    {
        await using OpenPage page = await browser.Open("");
        Assert.Equal("Pass", await page.Text("#verdict b"));
        await page.Type(key, text);
        await page.Settled();

        ILocator field = page.Page.Locator("#" + key);
        Assert.Equal("true", await field.GetAttributeAsync("aria-invalid"));
        string problem = $"{key}-problem";
        Assert.Contains(problem, (await field.GetAttributeAsync("aria-describedby"))!.Split(' '));
        Assert.Contains(words, await page.Text("#" + problem), StringComparison.Ordinal);
        Assert.True(await page.Page.Locator("#" + problem).IsVisibleAsync());

        Assert.Equal("No answer", await page.Text("#verdict b"));
        Assert.StartsWith("No answer", await page.Text("#status"), StringComparison.Ordinal);
        Assert.Equal(0, await page.Page.Locator("#checks, #wire, #fuse, #limits").CountAsync());
        ILocator link = page.Page.Locator("#problems a");
        Assert.Equal(1, await link.CountAsync());
        await link.ClickAsync();
        Assert.Equal(key, await page.Page.EvaluateAsync<string>("() => document.activeElement.id"));
    }

    [Fact]
    public async Task Field_PutRight_GivesTheAnswerAgain()
    {
        await using OpenPage page = await browser.Open("");
        string wire = await page.Text("#wire");
        await page.Type("feed_m", "x");
        await page.Type("feed_m", "4");
        await page.Settled();
        Assert.Equal(wire, await page.Text("#wire"));
        Assert.Null(await page.Page.Locator("#feed_m").GetAttributeAsync("aria-invalid"));
    }

    [Fact]
    public async Task Units_Switched_ConvertTheFieldsAndKeepTheWire()
    {
        await using OpenPage page = await browser.Open("");
        string wire = await page.Text("#wire"), limit = await page.Text("#limits tbody tr:first-child td:nth-of-type(2)");
        await page.Page.GetByLabel("ft, °F").CheckAsync();
        await page.Settled();
        Assert.Equal("13.12336", await page.Page.Locator("#feed_m").InputValueAsync());
        Assert.Equal("95", await page.Page.Locator("#ambient_degC").InputValueAsync());
        Assert.Equal(wire, await page.Text("#wire"));
        Assert.Contains("units=us", page.Page.Url, StringComparison.Ordinal);
        await page.Page.GetByLabel("m, °C").CheckAsync();
        await page.Settled();
        Assert.Equal("4", await page.Page.Locator("#feed_m").InputValueAsync());
        Assert.Equal(limit, await page.Text("#limits tbody tr:first-child td:nth-of-type(2)"));
    }

    [Fact]
    public async Task Name_ThatLooksLikeMarkup_StaysText()
    {
        const string name = "<img src=x onerror=document.title='taken'><b>lamp</b>";
        await using OpenPage page = await browser.Open("");
        await page.Type("circuit", name);
        await page.Settled();
        await page.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Show the working" }).ClickAsync();
        await page.Page.EvaluateAsync("() => dispatchEvent(new Event('beforeprint'))");
        Assert.Contains(name, await page.Text("#sheet h1 >> nth=0"), StringComparison.Ordinal);
        Assert.Equal(0, await page.Page.Locator("img").CountAsync());
        Assert.Equal("Wire and fuse for one circuit", await page.Page.TitleAsync());
        await page.Page.EvaluateAsync("() => dispatchEvent(new Event('afterprint'))");
    }

    [Fact]
    public async Task Address_WithWhatThePageDoesNotKnow_SaysSo()
    {
        await using OpenPage page = await browser.Open("practice=bench&feed_ft=3&colour=red");
        string[] remarks = await page.Texts("#remarks li");
        Assert.Equal(["'feed_ft' is not a field of this page.", "'colour' is not a field of this page."], remarks);
    }

    [Fact]
    public async Task Address_ChangedInTheSamePage_IsTaken()
    {
        await using OpenPage page = await browser.Open("");
        await page.Page.EvaluateAsync("() => { location.hash = 'practice=bench&supply=voltage&supply_V=12&load=current&load_A=2&feed_m=1&ambient_degC=25'; }");
        await page.Page.WaitForFunctionAsync("() => document.getElementById('load_A')?.value === '2'");
        await page.Settled();
        Assert.Equal("Undetermined", await page.Text("#verdict b"));
        Assert.DoesNotContain("pass", await page.Page.Locator("#verdict").GetAttributeAsync("class"), StringComparison.Ordinal);
    }
}
