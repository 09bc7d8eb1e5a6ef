package plycrag.files.html;

import java.util.stream.Collectors;
import plycrag.document.LabelSheet;
import plycrag.document.LabelSheet.Label;

/** Writes labels as one web page that prints on A4 and on Letter, two labels side by side. */
public final class LabelWriter {
  private static final String CSS =
      """
      @page { margin: 10mm; }
      html {
        background: #fff; color: #000;
        font: 10pt/1.35 "Liberation Sans", Arial, Helvetica, sans-serif;
        font-variant-numeric: tabular-nums;
      }
      body { max-width: 190mm; margin: 0 auto; }
      h1 { font-size: 13pt; margin: 0 0 3mm; }
      .stamp { margin: 0 0 3mm; padding: 2mm 3mm; border: 0.7mm solid #000; font-weight: bold; }
      .caution { margin: 0 0 3mm; }
      ul { display: grid; grid-template-columns: 1fr 1fr; margin: 0; padding: 0; list-style: none; }
      li {
        box-sizing: border-box; min-height: 34mm; padding: 2.5mm 4mm;
        border: 0.18mm dashed #000; margin: 0 -0.18mm -0.18mm 0;
        break-inside: avoid; overflow-wrap: anywhere;
      }
      li p { margin: 0; }
      .mark { font-size: 26pt; line-height: 1.1; font-weight: bold; }
      """;

  private LabelWriter() {}

  /** The text of the page. */
  public static String write(LabelSheet sheet) {
    String title = HtmlText.of(sheet.title() + ": labels");
    String head = optional("stamp", sheet.stamp()) + optional("caution", sheet.caution());
    return HtmlText.fill(
        """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8"/>
        <meta http-equiv="Content-Security-Policy" \
        content="default-src 'none'; style-src 'unsafe-inline'"/>
        <meta name="viewport" content="width=device-width, initial-scale=1"/>
        <title>%s</title>
        <style>
        %s</style>
        </head>
        <body>
        <main>
        <h1>%s</h1>
        %s<ul>
        %s</ul>
        </main>
        </body>
        </html>
        """,
        title,
        CSS,
        title,
        head,
        sheet.labels().stream().map(LabelWriter::label).collect(Collectors.joining()));
  }

  private static String label(Label label) {
    return "<li>\n"
        + paragraph("mark", label.mark())
        + paragraph("what", label.what())
        + paragraph("where", label.where())
        + optional("to", label.neighbours())
        + "</li>\n";
  }

  private static String optional(String kind, String text) {
    return text.isBlank() ? "" : paragraph(kind, text);
  }

  private static String paragraph(String kind, String text) {
    return "<p class=\"" + kind + "\">" + HtmlText.of(text) + "</p>\n";
  }
}
