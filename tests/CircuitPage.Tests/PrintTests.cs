using LowVoltage.Calc;
using LowVoltage.Calc.Design;
using UglyToad.PdfPig;

namespace CircuitPage.Tests;

/// <summary>What the printer gets is the library's calculation sheet, and nothing of the screen.</summary>
[Collection(BrowserTests.Name)]
public sealed class PrintTests(Browser browser)
{
    [Fact]
    public async Task Print_IsTheCalculationSheet()
    {
        TypedCircuit circuit = Circuits.All.Single(one => one.Name == "lamp");
        await using OpenPage page = await browser.Open("practice=road+vehicle");
        await page.Type("circuit", circuit.Name);
        foreach ((string key, string text) in circuit.Fields)
        {
            await page.Type(key, text);
        }

        await page.Settled();
        CircuitDesign design = circuit.Design();
        byte[] pdf = await page.Page.PdfAsync(new PagePdfOptions { Format = "A4", PreferCSSPageSize = true });
        if (Environment.GetEnvironmentVariable("PAGE_SHOTS") is { Length: > 0 } shots)
        {
            await File.WriteAllBytesAsync(Path.Combine(shots, "sheet.pdf"), pdf);
        }

        using PdfDocument printed = PdfDocument.Open(pdf);
        string first = Letters(printed.GetPage(1).Text), all = Letters(string.Concat(printed.GetPages().Select(one => one.Text)));
        Assert.Contains(Letters($"Calculation sheet: {circuit.Name}"), first, StringComparison.Ordinal);
        Assert.Contains($"1/{printed.NumberOfPages}", first, StringComparison.Ordinal);
        foreach (string words in new[] { "Pass", design.Wire.ToString()!, design.Fuse!.ToString(), "Calculated by", "Checked by", "CircuitPage, LowVoltage.Calc" })
        {
            Assert.Contains(Letters(words), first, StringComparison.OrdinalIgnoreCase); // the sheet sets its verdict in capitals
        }

        Assert.All(design.Cautions, caution => Assert.Contains(Letters(caution), first, StringComparison.Ordinal));
        Assert.All(design.Checks, check => Assert.Contains(Letters(check.Name), first, StringComparison.OrdinalIgnoreCase));
        Assert.Contains("Working", all, StringComparison.Ordinal);
        Assert.True(printed.NumberOfPages > 3);
        Assert.DoesNotContain(Letters("Start from an invented example"), all, StringComparison.Ordinal);
        Assert.Equal("", await page.Text("#sheet"));
    }

    [Fact]
    public async Task Print_Content_IsTheSheetsOwn()
    {
        TypedCircuit circuit = Circuits.All.Single(one => one.Name == "supply lead not known");
        await using OpenPage page = await browser.Open("practice=road+vehicle");
        await page.Type("circuit", circuit.Name);
        foreach ((string key, string text) in circuit.Fields)
        {
            await page.Type(key, text);
        }

        await page.Settled();
        await page.Page.EvaluateAsync("() => dispatchEvent(new Event('beforeprint'))");
        string sheet = CalculationSheet.Create(circuit.Design()).ToHtmlPage();
        string main = sheet[sheet.IndexOf("<main", StringComparison.Ordinal)..(sheet.IndexOf("</main>", StringComparison.Ordinal) + "</main>".Length)];

        // Program, version and date are the page's; all behind them is the library's.
        string shown = Letters(await page.Text("#sheet main"));
        Assert.Equal(Behind(Letters(Expected.TextOf(main))), Behind(shown));
        Assert.Contains(Letters("CircuitPage, LowVoltage.Calc"), shown, StringComparison.Ordinal);
        Assert.Equal("", await page.Page.EvaluateAsync<string>("() => { dispatchEvent(new Event('afterprint')); return document.getElementById('sheet').textContent; }"));
    }

    [Fact]
    public async Task Print_WithoutAnAnswer_SaysSo()
    {
        await using OpenPage page = await browser.Open("practice=bench");
        using PdfDocument printed = PdfDocument.Open(await page.Page.PdfAsync());
        Assert.Contains(Letters("There is no answer to print"), Letters(printed.GetPage(1).Text), StringComparison.Ordinal);
    }

    private static string Behind(string sheet) => sheet[sheet.IndexOf("Undetermined", StringComparison.Ordinal)..];

    // Where a line of a PDF breaks is the paper's business.
    private static string Letters(string text) => new([.. text.Where(c => !char.IsWhiteSpace(c) && c != '\u00AD')]);
}
