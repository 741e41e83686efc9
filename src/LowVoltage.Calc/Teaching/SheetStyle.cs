using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>The style of a sheet: on the screen light or dark as the reader has it, on paper black on white.</summary>
internal static class SheetStyle
{
    private const string Light = "--ink:#111;--paper:#fff;--soft:#444;--line:#666;--faint:#bbb;--warn:#a00000";
    private const string Dark = "--ink:#e9e9e9;--paper:#17191b;--soft:#bdbdbd;--line:#999;--faint:#555;--warn:#ff9a8f";

    private const string Rules =
        "body{font:11pt/1.45 Georgia,'Times New Roman',serif;max-width:44em;margin:2em auto;padding:0 1.2em;color:var(--ink);background:var(--paper)}"
        + "h1,h2,h3{font-family:Helvetica,Arial,sans-serif;line-height:1.2}h1{font-size:1.6em;margin:0 0 .2em}h2{font-size:1.05em;margin:0 0 .35em}h3{font-size:.95em;margin:.8em 0 .2em}"
        + ".who{display:flex;gap:2em;margin:1.2em 0 1em;font-size:.95em}.who span{flex:1;border-bottom:1px solid var(--line);padding-bottom:.15em}.who span.short{flex:0 0 7.5em}"
        + ".invented{color:var(--soft);font-style:italic;margin:.3em 0}.paper{border-left:.3em solid var(--warn);padding:.1em 0 .1em .7em;margin:.5em 0 1.2em}"
        + ".problem{margin:0 0 1.5em;break-inside:avoid;page-break-inside:avoid}.problem p{margin:.35em 0}.problem::after{content:'';display:block;clear:both}.question{font-weight:bold}"
        + ".level,.points{font-weight:normal;color:var(--soft)}.points{float:right}.caution{font-size:.88em;color:var(--warn);margin:.3em 0}"
        + "figure{margin:.4em 0}figure.beside{float:right;margin:0 0 .4em 1.2em}figure svg{display:block;max-width:100%;height:auto}"
        + ".space{clear:both;border:1px dotted var(--faint);margin:.6em 0 0}"
        + ".blank{clear:both;margin:.9em 0 0;border-bottom:1px solid var(--line);width:16em;color:var(--soft);font-size:.9em}.blank.wide{width:auto;padding-bottom:3.5em}"
        + "ol.choices{list-style:none;padding:0;margin:.4em 0;display:grid;grid-template-columns:1fr 1fr;gap:.2em 1.5em}ol.choices.long{grid-template-columns:1fr}"
        + "table,.notes,.cautions{break-inside:avoid;page-break-inside:avoid}table{border-collapse:collapse;margin:.5em 0;font-size:.95em}th,td{border-bottom:1px solid var(--faint);padding:.15em .9em .15em 0;text-align:left;vertical-align:top}"
        + "table.data th,table.data td{text-align:right;padding:.05em 0 .05em 1.4em;line-height:1.3}table.data th:first-child,table.data td:first-child{padding-left:0;text-align:left}"
        + "table.marker{break-inside:auto;page-break-inside:auto;font-size:.85em}table.marker tr{break-inside:avoid}table.marker td{white-space:nowrap}"
        + "thead th{border-bottom:1.5px solid var(--ink)}caption{text-align:left;font-weight:bold;padding-bottom:.2em}.answers{margin-bottom:1.5em}"
        + ".solution{margin:0 0 1.8em;border-top:1px solid var(--line);padding-top:.8em}.solution h2{break-after:avoid}.worked-solution>h2{display:none}"
        + "ol.steps{padding-left:1.5em;margin:.4em 0}ol.steps>li{margin:.55em 0;break-inside:avoid;page-break-inside:avoid}.sought{font-weight:bold}"
        + MathRule.Letters + ".math{margin:.1em 0 .1em .6em;line-height:1.8;overflow-x:auto}math{font-size:1.05em}.reason{color:var(--ink)}.source{color:var(--soft);font-size:.85em}"
        + ".answer{break-before:avoid;page-break-before:avoid;border:1px solid var(--ink);padding:.3em .6em;width:fit-content;margin:.4em 0}.cautions{border-left:.3em solid var(--warn);padding-left:.7em}.cautions ul,.notes ul,.mistakes ul{margin:.2em 0;padding-left:1.3em}"
        + ".mistakes{break-inside:avoid;page-break-inside:avoid}"
        + "@media print{body{margin:0;padding:0;max-width:none;font-size:10pt}.math{overflow:visible}a{color:inherit}}";

    internal static string Of(SheetLayout layout, string title, bool landscape = false) =>
        $":root{{color-scheme:light dark;{Light}}}@media screen and (prefers-color-scheme:dark){{:root{{{Dark}}}}}{Rules}{PageRule.Of(layout.Paper, layout.PageNumbers ? title : null, landscape)}";
}
