package plycrag.files.html;

/** How a page looks: black on white, one column, space instead of boxes. */
final class PageCss {
  private PageCss() {}

  /** The style sheet; the column is as wide as A4 between its margins. */
  static final String CSS =
      """
      @page { margin: 12mm 10mm; }
      html {
        background: #fff; color: #000;
        font: 11pt/1.5 "Liberation Sans", Arial, Helvetica, sans-serif;
        font-variant-numeric: tabular-nums;
        -webkit-text-size-adjust: 100%; text-size-adjust: 100%;
      }
      body { max-width: 190mm; margin: 0 auto; padding: 8mm 4mm; overflow-wrap: anywhere; }
      header, nav, .stamp { margin-bottom: 8mm; }
      h1, h2, p, ul, ol { margin: 0 0 3mm; }
      h1 { font-size: 24pt; line-height: 1.15; }
      h2 { font-size: 15pt; line-height: 1.25; }
      section { margin-top: 14mm; }
      p, li { max-width: 150mm; }
      .subtitle { font-size: 13pt; }
      .stamp p {
        max-width: none; margin: 0; padding: 2mm 3mm; border: 0.7mm solid #000;
        font-weight: bold; text-align: center;
      }
      .foot p { max-width: none; margin: 14mm 0 0; padding-top: 2mm; border-top: 0.18mm solid #000; }
      .foot { font-size: 9pt; }
      nav ol { padding-left: 7mm; }
      nav li { padding: 1mm 0; }
      a { color: inherit; text-underline-offset: 0.2em; }
      :target { outline: 0.5mm solid #d9381e; outline-offset: 1mm; }
      svg a:hover text { text-decoration: underline; }
      :focus-visible { outline: 0.5mm solid #000; outline-offset: 1mm; }
      figure { margin: 0 0 8mm; }
      figcaption { max-width: 150mm; margin-top: 2mm; }
      .wide { overflow-x: auto; }
      section > .wide { margin: 0 0 8mm; }
      .wide svg { display: block; }
      table {
        width: max-content; border-collapse: collapse;
        line-height: 1.3; overflow-wrap: normal;
      }
      caption { text-align: left; font-weight: bold; padding-bottom: 2mm; }
      caption span {
        display: inline-block; position: sticky; left: 0;
        max-width: min(150mm, calc(100vw - 12mm));
      }
      th, td {
        max-width: 66mm; padding: 0.9mm 5mm 0.9mm 0;
        text-align: left; vertical-align: top; font-weight: normal;
      }
      th:last-child, td:last-child { padding-right: 0; }
      thead th { border-bottom: 0.18mm solid #000; vertical-align: bottom; font-weight: bold; }
      tbody tr:nth-child(5n) > * { padding-bottom: 3mm; }
      .number { text-align: right; white-space: nowrap; }
      .caution { border-left: 1.2mm solid #d9381e; padding-left: 3mm; margin: 5mm 0; }
      h3 { font-size: 13pt; line-height: 1.3; margin: 0 0 3mm; }
      .facts { display: flex; flex-wrap: wrap; gap: 2mm 7mm; margin: 0 0 5mm; }
      .facts div { display: flex; flex-direction: column-reverse; }
      .facts dt { font-size: 9pt; }
      .facts dd { margin: 0; font-size: 13pt; font-weight: bold; }
      .step { margin: 0 0 8mm; padding-top: 4mm; border-top: 0.18mm solid #000; }
      .doing .wide { margin-bottom: 3mm; }
      .doing .wide svg { max-width: 100%; height: auto; }
      .taken { width: auto; margin-bottom: 3mm; overflow-wrap: anywhere; }
      .taken th { font-weight: bold; max-width: 34mm; }
      .checklist { list-style: none; padding: 0; }
      .checklist li { padding: 1mm 0; }
      .checklist label { display: grid; grid-template-columns: 8mm minmax(0, 1fr); }
      input[type="checkbox"] { width: 4.2mm; height: 4.2mm; margin: 0.4mm 0 0; accent-color: #000; }
      @media (min-width: 180mm) {
        .doing:has(> .wide) { display: grid; grid-template-columns: 104mm minmax(0, 1fr); gap: 5mm; }
      }
      @media screen and (min-width: 200mm) {
        .wide svg { max-width: 100%; height: auto; }
      }
      @media print {
        body { display: table; table-layout: fixed; width: 100%; max-width: none; padding: 0; }
        .stamp { display: table-header-group; }
        .foot { display: table-footer-group; }
        .stamp p { margin-bottom: 6mm; }
        .foot p { margin-top: 4mm; }
        a { text-decoration: none; }
        .wide { overflow: visible; }
        .wide svg { width: auto; height: auto; max-width: 100%; max-height: 215mm; }
        table { width: auto; max-width: 100%; }
        caption span { position: static; max-width: 150mm; }
        figure, tr, li, .step, .caution, .stamp, .foot { break-inside: avoid; }
        h1, h2, caption { break-after: avoid; }
        p { orphans: 3; widows: 3; }
      }
      """;

  /** What a sheet for the workshop has beyond that: printed, it takes one paper, front and back. */
  static final String SHEET =
      """
      @media print {
        html { font-size: 9pt; line-height: 1.3; }
        h1 { font-size: 13pt; margin: 0; }
        h2 { font-size: 10pt; margin: 0 0 1.5mm; }
        header { margin-bottom: 2mm; }
        .subtitle { font-size: 9pt; margin: 0; }
        main { column-count: 2; column-gap: 8mm; }
        section { margin-top: 3mm; }
        section:first-child { column-span: all; margin-top: 0; break-after: page; }
        section > .wide, figure { margin-bottom: 3mm; }
        p, ul { margin-bottom: 1.5mm; }
        figcaption, p, li { max-width: none; }
        th, td { padding: 0.3mm 3mm 0.3mm 0; max-width: none; }
        tbody tr:nth-child(5n) > * { padding-bottom: 1mm; }
        section:first-child .wide svg { width: 190mm; max-height: 120mm; }
        .caution { margin: 1.5mm 0; padding-left: 2mm; }
        .checklist li { padding: 0.3mm 0; }
        .checklist label { grid-template-columns: 5mm minmax(0, 1fr); }
        input[type="checkbox"] { width: 2.8mm; height: 2.8mm; }
        .foot { font-size: 8pt; }
        .foot p { margin-top: 1mm; }
      }
      """;
}
