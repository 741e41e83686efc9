using LowVoltage.Calc;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Working;

namespace CircuitPage.Tests;

/// <summary>Twenty circuits, typed into the fields, give the answer of the library on .NET to the last printed digit.</summary>
[Collection(BrowserTests.Name)]
public sealed class AnswersTests(Browser browser)
{
    public static TheoryData<string> Names() => [.. Circuits.All.Select(circuit => circuit.Name)];

    [Theory, MemberData(nameof(Names))]
    public async Task Circuit_Typed_IsAnsweredAsTheLibraryAnswersOnDotNet(string name)
    {
        TypedCircuit circuit = Circuits.All.Single(one => one.Name == name);
        CircuitDesign design = circuit.Design();
        await using OpenPage page = await browser.Open(Preset(circuit));
        await page.Type("circuit", name);
        foreach ((string key, string text) in circuit.Fields)
        {
            await page.Type(key, text);
        }

        await page.Settled();
        await Shows(page, design, circuit.IsUs);

        // The address holds all of it: opened elsewhere, it gives the same answer.
        string address = new Uri(page.Page.Url).Fragment[1..];
        await using OpenPage sent = await browser.Open(address);
        await Shows(sent, design, circuit.IsUs);
    }

    [Fact]
    public void Circuits_AreOfSeveralKinds()
    {
        CircuitDesign[] designs = [.. Circuits.All.Select(circuit => circuit.Design())];
        Assert.Equal(20, designs.Length);
        Assert.Equal(20, Circuits.All.Select(circuit => circuit.Name).Distinct().Count());
        Assert.Equal(3, designs.Select(design => design.Verdict).Distinct().Count());
        Assert.Equal(4, designs.Select(design => design.Rules.Name).Distinct().Count());
        Assert.True(designs.Select(design => design.Requirements.Source.Name).Distinct().Count() >= 5);
        Assert.True(designs.Select(design => design.Requirements.Load.Name).Distinct().Count() >= 5);
        Assert.Equal(3, designs.Select(design => design.Requirements.Return.Kind).Distinct().Count());
        Assert.True(Circuits.All.Count(circuit => circuit.IsUs) >= 3);
        Assert.Equal(2, designs.Count(design => design.Requirements.UpstreamProtection.Count > 0));
    }

    [Theory]
    [InlineData("lamp")]
    [InlineData("too much, too far")]
    [InlineData("pack of 48 V with a main fuse")]
    public async Task Working_WhenAskedFor_IsTheLibrarysWorking(string name)
    {
        TypedCircuit circuit = Circuits.All.Single(one => one.Name == name);
        await using OpenPage page = await browser.Open(Preset(circuit));
        await page.Type("circuit", name);
        foreach ((string key, string text) in circuit.Fields)
        {
            await page.Type(key, text);
        }

        await page.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Show the working" }).ClickAsync();
        await page.Settled();
        WorkedSolution working = circuit.Design().Explain();
        Assert.Equal(Bare(Expected.TextOf(working.ToHtml())), Bare(await page.Text("#working")));
        Assert.True(working.Steps.Count > 20);
    }

    // A browser puts spaces between blocks, the fragment need not.
    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static string Preset(TypedCircuit circuit) => (circuit.IsUs ? "units=us&" : "") + "practice=" + Uri.EscapeDataString(circuit.Rules.Name);

    private static async Task Shows(OpenPage page, CircuitDesign design, bool isUs)
    {
        Assert.Equal(Expected.Verdict(design), await page.Text("#verdict b"));
        Assert.Contains(Expected.Verdict(design).ToLowerInvariant(), await page.Page.Locator("#verdict").GetAttributeAsync("class"), StringComparison.Ordinal);
        Assert.Equal(Expected.Wire(design), await page.Text("#wire"));
        Assert.Equal(Expected.Fuse(design), await page.Text("#fuse"));
        Assert.Equal(design.Governing.Name, await page.Text("#governed"), ignoreCase: true);
        Assert.Equal(Expected.Checks(design, isUs), await Rows(page, "#checks tbody tr"));
        Assert.Equal(Expected.Limits(design, isUs), await Rows(page, "#limits tbody tr", skip: 2));
        Assert.Equal(design.Cautions, await page.Texts(".cautions li"));
        Assert.Equal(design.Advice.Select(OpenPage.Plain), await page.Texts("#help li"));
        Assert.Equal(design.Assumptions.Select(OpenPage.Plain), await page.Texts("#assumed li"));
        Assert.Equal(Expected.TextOf(design.Diagram.ToSvg("drawn")), await page.Text("#drawing"));
        Assert.StartsWith(Expected.Verdict(design) + ": ", await page.Text("#status"), StringComparison.Ordinal);
    }

    private static async Task<string[]> Rows(OpenPage page, string selector, int skip = 0) => [.. (await page.Page.Locator(selector)
        .EvaluateAllAsync<string[]>($"rows => rows.map(row => [...row.children].slice({skip}).map(cell => cell.textContent).join(' '))")).Select(OpenPage.Plain)];
}
