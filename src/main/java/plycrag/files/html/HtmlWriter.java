package plycrag.files.html;

import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plycrag.document.Book;
import plycrag.document.Drawing;

/** Writes a book as one web page. */
public final class HtmlWriter {
  private HtmlWriter() {}

  /**
   * The text of the page.
   *
   * @param book what it shows
   * @param figures gives a drawing as an inline svg element of its true size, well-formed and
   *     escaped
   */
  public static String write(Book book, Function<Drawing, String> figures) {
    return page(book, contents(book), "", figures);
  }

  /**
   * The text of a short page without a list of its contents.
   *
   * @param book what it shows
   * @param figures as for a book
   */
  public static String writeSheet(Book book, Function<Drawing, String> figures) {
    return page(book, "", PageCss.SHEET, figures);
  }

  private static String page(
      Book book, String contents, String style, Function<Drawing, String> figures) {
    return HtmlText.fill(
        """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8"/>
        <meta http-equiv="Content-Security-Policy" \
        content="default-src 'none'; style-src 'unsafe-inline'; script-src %s"/>
        <meta name="viewport" content="width=device-width, initial-scale=1"/>
        <title>%s</title>
        <style>
        %s</style>
        </head>
        <body>
        %s%s<main>
        %s%s</main>
        %s<script>%s</script>
        </body>
        </html>
        """,
        Ticks.source(),
        HtmlText.of(book.title()),
        PageCss.CSS + style,
        running("aside", "stamp", book.stamp()),
        head(book),
        contents,
        sections(book, new BlockHtml(figures, PartLinks.of(book))),
        running("footer", "foot", book.footer()),
        Ticks.SCRIPT);
  }

  /** Words that stand on every printed page. */
  private static String running(String element, String kind, String words) {
    return words.isBlank()
        ? ""
        : HtmlText.fill(
            "<%s class=\"%s\"><p>%s</p></%s>\n", element, kind, HtmlText.of(words), element);
  }

  private static String head(Book book) {
    String subtitle =
        book.subtitle().isBlank()
            ? ""
            : "<p class=\"subtitle\">" + HtmlText.of(book.subtitle()) + "</p>\n";
    return "<header>\n<h1>" + HtmlText.of(book.title()) + "</h1>\n" + subtitle + "</header>\n";
  }

  /** Links to the sections, where there is more than one. */
  private static String contents(Book book) {
    int count = book.sections().size();
    return count < 2
        ? ""
        : IntStream.range(0, count)
            .mapToObj(i -> link(i + 1, book.sections().get(i)))
            .collect(
                Collectors.joining("", "<nav aria-label=\"Contents\"><ol>\n", "</ol></nav>\n"));
  }

  private static String link(int number, Book.Section section) {
    return HtmlText.fill(
        "<li><a href=\"#section-%d\">%s</a></li>\n", number, HtmlText.of(section.heading()));
  }

  private static String sections(Book book, BlockHtml blocks) {
    return IntStream.range(0, book.sections().size())
        .mapToObj(i -> section(i + 1, book.sections().get(i), blocks))
        .collect(Collectors.joining());
  }

  private static String section(int number, Book.Section section, BlockHtml blocks) {
    String body = section.blocks().stream().map(blocks::html).collect(Collectors.joining());
    return HtmlText.fill(
        "<section id=\"section-%d\">\n<h2>%s</h2>\n%s</section>\n",
        number, HtmlText.of(section.heading()), body);
  }
}
