using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>The style of a calculation sheet: on the screen light or dark as the reader has it, on paper black on white, page 1 on one sheet.</summary>
internal static class CalculationSheetStyle
{
    private const string Light = "--ink:#111;--paper:#fff;--soft:#444;--line:#666;--faint:#bbb;--warn:#a00000;--good:#0a5c1e";
    private const string Dark = "--ink:#e9e9e9;--paper:#17191b;--soft:#bdbdbd;--line:#999;--faint:#555;--warn:#ff9a8f;--good:#8fd6a0";

    private const string Front =
        "header{border-bottom:2px solid var(--ink);padding-bottom:.4em}"
        + "h1{font-size:1.4em;margin:0}h2{font-size:1em;margin:.6em 0 .1em}"
        + "dl{margin:0}dl div{display:grid;grid-template-columns:5.2em 1fr;gap:.6em;padding:.08em 0}dt{color:var(--soft)}dd{margin:0}.details{display:flex;flex-wrap:wrap;gap:0 1.6em;margin-top:.3em}.details div{display:flex;gap:.5em}.details .line{width:8em}"
        + ".verdict{border:2px solid var(--ink);padding:.35em .6em;margin:.6em 0}.verdict b{font:bold 1.25em Helvetica,Arial,sans-serif;text-transform:uppercase;padding-right:.4em}.verdict.pass b{color:var(--good)}.verdict.fail b,.verdict.undetermined b{color:var(--warn)}"
        + ".facts{display:grid;grid-template-columns:4fr 6fr;gap:1.2em;font-size:.92em}.answer dd{font-weight:bold}"
        + "figure{margin:.5em 0}figure svg{display:block;max-width:100%;height:auto;margin:0 auto}"
        + ".checks{width:100%;font-size:.88em}.checks td,.checks th{padding:.1em .6em .08em 0}.checks tbody th{font-weight:normal}.checks td:not([colspan]):nth-child(n+2):nth-child(-n+4),.checks td:nth-last-child(2):not([colspan]){white-space:nowrap}"
        + ".checks tr.fail td,.checks tr.fail th,.checks tr.undetermined td,.checks tr.undetermined th{font-weight:bold}.checks th:first-child{min-width:11em}"
        + ".list ul,.cautions ul{margin:.1em 0;padding-left:1.2em;font-size:.85em}.cautions{border-left:.3em solid var(--warn);padding-left:.7em;margin-top:.6em}"
        + ".signatures{display:grid;grid-template-columns:1fr 1fr;gap:1.6em;margin:1.6em 0 .6em;break-inside:avoid}.signatures p{display:flex;gap:.5em;align-items:flex-end;margin:0}.line{flex:1;border-bottom:1px solid var(--ink);min-height:1.2em;display:block}.line.short{flex:0 0 6em}";

    private const string Working =
        ".working{border-top:2px solid var(--ink);margin-top:2em;padding-top:.8em}.working h3{margin:1em 0 .3em;break-after:avoid}"
        + MathRule.Letters + "ol.steps{padding-left:2em;margin:.3em 0}ol.steps li{margin:.55em 0;break-inside:avoid}.sought{font-weight:bold}.math{margin:.1em 0 .1em .6em;line-height:1.8;overflow-x:auto}math{font-size:1.05em}.source{color:var(--soft);font-size:.85em}"
        + ".givens{font-size:.92em;margin-bottom:1em}.notes{font-size:.92em}";

    private const string Base =
        "body{font:10.5pt/1.38 Georgia,'Times New Roman',serif;max-width:52em;margin:1.5em auto;padding:0 1.2em;color:var(--ink);background:var(--paper)}h1,h2,h3,th{font-family:Helvetica,Arial,sans-serif;line-height:1.2}a{color:inherit}"
        + "table{border-collapse:collapse}th,td{text-align:left;vertical-align:top;padding:.12em .8em .12em 0;border-bottom:1px solid var(--faint)}caption{text-align:left;font-weight:bold;padding:.2em 0}tr{break-inside:avoid}"
        + "table{font-variant-numeric:tabular-nums}";

    // Narrow screens: one column, and the table scrolls rather than squeezes.
    private const string Narrow = "@media screen and (max-width:44em){.facts,.signatures{display:block}.signatures p{margin-bottom:1em}.wide{overflow-x:auto}.checks{min-width:42em}}";

    private const string Print =
        "@media print{body{margin:0;padding:0;max-width:none;font-size:9pt}.page-one{font-size:8.2pt;line-height:1.24}.page-one figure{margin:2mm 0}.page-one figure svg{max-height:27mm;width:auto}.page-one h1{font-size:14pt}.working{break-before:page;border:0;margin:0}.math{overflow:visible}a{text-decoration:none}"
        + ".list ul,.cautions ul{columns:2;column-gap:1.6em}.list li,.cautions li{break-inside:avoid}}";

    internal static string Of(CalculationSheet sheet)
    {
        SheetDetails details = sheet.Details;
        string foot = string.Join(", ", new[] { sheet.Title, details.Number, details.Date }.Where(part => part.Length > 0));
        return $":root{{color-scheme:light dark;{Light}}}@media screen and (prefers-color-scheme:dark){{:root{{{Dark}}}}}{Base}{Front}{Working}{Narrow}{Print}{PageRule.Of(details.Paper, foot)}";
    }
}
