using System.Text.RegularExpressions;
using System.Xml.Linq;
using LowVoltage.Calc.Docs.Finish;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>What docs/finish makes of a built page: formulas, code, tables, spaces, the skip link, the search index.</summary>
public partial class FinishedPageTests
{
    [Fact]
    public void EveryFormulaOfThePages_BecomesWellFormedMathMl()
    {
        string[] formulas = [.. DocsFolder.Pages.SelectMany(page => Formula().Matches(Code().Replace(DocsFolder.Read(page), ""))).Select(match => match.Groups["latex"].Value)];
        Assert.True(formulas.Length > 200, $"{formulas.Length} formulas found");
        Assert.All(formulas, latex =>
        {
            XElement markup = XElement.Parse(MathMarkup.Write(latex, display: true));
            Assert.NotEmpty(markup.Descendants("math"));
            Assert.DoesNotContain(@"\", markup.Value, StringComparison.Ordinal);
            Assert.All(markup.Descendants("mfrac"), fraction => Assert.Equal(2, fraction.Elements().Count()));
            Assert.All(markup.Descendants("msubsup"), both => Assert.Equal(3, both.Elements().Count()));
        });
    }

    [Theory]
    [InlineData(@"\frac{a}{2}", "<mfrac><mi>a</mi><mn>2</mn></mfrac>")]
    [InlineData(@"R'_{20}", "<msubsup><mi>R</mi><mrow><mn>20</mn></mrow><mrow><mo lspace=\"0\" rspace=\"0\">′</mo></mrow></msubsup>")]
    [InlineData(@"\mathrm{m\Omega}", "<mi mathvariant=\"normal\">m</mi><mi mathvariant=\"normal\">Ω</mi>")]
    [InlineData(@"\sqrt{x}", "<msqrt><mi>x</mi></msqrt>")]
    [InlineData(@"\ln x", "<mi mathvariant=\"normal\">ln</mi><mspace width=\"0.167em\"></mspace><mi>x</mi>")]
    [InlineData("-F", "<mo form=\"prefix\">−</mo><mi>F</mi>")]
    public void Write_PartOfAFormula_IsItsMathMl(string latex, string expected) =>
        Assert.Equal($"<span class=\"formula\"><span><math><mrow>{expected}</mrow></math></span></span>", MathMarkup.Write(latex, display: false));

    [Theory]
    [InlineData("a = b", false, 2)]
    [InlineData("a = b + c - d", false, 2)]
    [InlineData("a = b + c - d", true, 4)]
    [InlineData("a = -b", true, 2)]
    [InlineData(@"a = \frac{b + c}{d}", true, 2)]
    public void Write_LongFormula_BreaksBeforeRelationsAndDisplayedTerms(string latex, bool display, int parts) =>
        Assert.Equal(parts, XElement.Parse(MathMarkup.Write(latex, display)).Descendants("math").Count());

    [Fact]
    public void Write_CommandThatIsNotKnown_IsRefusedByName()
    {
        FormatException refused = Assert.Throws<FormatException>(() => MathMarkup.Write(@"a + \unheardof b", display: false));
        Assert.Contains(@"\unheardof", refused.Message, StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => MathMarkup.Write(@"\frac{a", display: false));
        Assert.Throws<FormatException>(() => MathMarkup.Write(@"\left( a", display: false));
    }

    [Fact]
    public void Finish_OfAPage_AddsTheSkipLinkAndLeavesNothingToRender()
    {
        const string Built = "<html><body class=\"x\"><article data-uid=\"\"><p>12 V over 18 250 m, <span class=\"math\">\\(I &lt; 2\\)</span></p>"
            + "<pre><code class=\"lang-csharp\">var x = \"a &lt; b\"; // 12 V</code></pre><pre><code class=\"lang-text\">12 V</code></pre></article></body></html>";
        string page = Page.Finish(Built, out int formulas);

        Assert.Equal(1, formulas);
        Assert.Contains("<body class=\"x\">\n    <a class=\"skip-link\" href=\"#content\">", page, StringComparison.Ordinal);
        Assert.Contains("<article id=\"content\"", page, StringComparison.Ordinal);
        Assert.Contains("12\u00a0V over 18\u00a0250\u00a0m", page, StringComparison.Ordinal);
        Assert.Contains("<span class=\"keyword\">var</span> x = <span class=\"string\">\"a &lt; b\"</span>; <span class=\"comment\">// 12 V</span>", page, StringComparison.Ordinal);
        Assert.Contains("<samp>12 V</samp>", page, StringComparison.Ordinal);
        Assert.DoesNotMatch("class=\"math\"|<pre><code", page);
    }

    [Fact]
    public void Fold_WideTable_NamesEachCellsColumnAndKeepsTheRoles()
    {
        const string Wide = "<table>\n<thead>\n<tr>\n<th>size</th>\n<th>a</th>\n<th>b</th>\n<th>c</th>\n<th>d</th>\n</tr>\n</thead>\n<tbody>\n<tr>\n<td>1</td>\n<td>2</td>\n<td>3</td>\n<td>4</td>\n<td>5</td>\n</tr>\n</tbody>\n</table>";
        string folded = TableMarkup.Fold(Wide);

        Assert.Equal(["size", "a", "b", "c", "d"], XElement.Parse(folded).Descendants("td").Select(cell => cell.Attribute("data-label")!.Value));
        Assert.Equal(5, XElement.Parse(folded).Descendants("th").Count(head => head.Attribute("role")?.Value == "columnheader"));
        const string Narrow = "<table>\n<thead>\n<tr>\n<th>what</th>\n<th>value</th>\n</tr>\n</thead>\n<tbody>\n<tr>\n<td>a</td>\n<td>1 V</td>\n</tr>\n</tbody>\n</table>";
        Assert.Equal(Narrow, TableMarkup.Fold(Narrow));
    }

    [Fact]
    public void Shorten_SearchIndex_KeepsEveryRareWordOnce()
    {
        string pages = string.Join(',', Enumerable.Range(0, 8).Select(i => $"\"p{i}.html\":{{\"href\":\"p{i}.html\",\"title\":\"t\",\"summary\":\"{new string('x', 130)} common rare{i} common rare{i}\"}}"));
        string shortened = SearchIndex.Shorten("{" + pages + "}");

        Assert.DoesNotContain("common", shortened, StringComparison.Ordinal);
        Assert.All(Enumerable.Range(0, 8), i => Assert.Single(Regex.Matches(shortened, $"rare{i}")));
    }

    [GeneratedRegex(@"\$\$(?<latex>.+?)\$\$|(?<![\$\w])\$(?<latex>[^$\n]+)\$(?![\$\w])", RegexOptions.Singleline)]
    private static partial Regex Formula();

    [GeneratedRegex("```.*?```|`[^`\n]*`", RegexOptions.Singleline)]
    private static partial Regex Code();
}
