namespace CircuitSchedule;

/// <summary>How the page looks. A colour only repeats what a word says.</summary>
internal static class HtmlStyle
{
    // "landscape" without a name of paper takes the printer's own: A4 and Letter alike.
    public const string Css = """
        :root { color-scheme: light dark; --ink: #1a1a1a; --paper: #fff; --line: #8a8a8a; --band: #f2f2f2; --pass: #14632b; --open: #7a4f00; --fail: #a1121d; }
        @media (prefers-color-scheme: dark) {
          :root { --ink: #ececec; --paper: #181818; --line: #7d7d7d; --band: #262626; --pass: #7fd694; --open: #f0c060; --fail: #ff9a9f; }
        }
        body { font: 1rem/1.45 system-ui, sans-serif; color: var(--ink); background: var(--paper); margin: 0; }
        main { max-width: 75rem; margin: 0 auto; padding: 1rem; }
        a { color: inherit; }
        .cautions { border: 2px solid var(--fail); padding: 0 1rem; }
        .wide { overflow-x: auto; }
        table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
        caption { text-align: left; padding: 1rem 0 .5rem; font-weight: bold; }
        th, td { border: 1px solid var(--line); padding: .3rem .5rem; text-align: left; vertical-align: top; font-weight: normal; }
        td { min-width: 4.5rem; }
        thead th { background: var(--band); font-weight: bold; }
        tr > :last-child { font-weight: bold; }
        .pass > :last-child { color: var(--pass); }
        .undetermined > :last-child { color: var(--open); }
        .fail > :last-child { color: var(--fail); }
        li { margin: .3rem 0; overflow-wrap: anywhere; }
        .signature { display: flex; gap: 3rem; margin-top: 3rem; }
        .signature span { flex: 1; border-top: 1px solid var(--line); padding-top: .3rem; }
        @page { size: landscape; margin: 15mm; }
        @media print {
          :root { color-scheme: light; --ink: #000; --paper: #fff; --line: #666; --band: #eee; --pass: #000; --open: #000; --fail: #000; }
          body { font-size: 9.5pt; }
          main { max-width: none; padding: 0; }
          .wide { overflow: visible; }
          thead { display: table-header-group; }
          tr, li, .cautions, .signature { break-inside: avoid; }
          h2 { break-after: avoid; }
        }
        """;
}
