package plycrag.files.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import plycrag.document.Book;
import plycrag.document.Cell;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Layer;
import plycrag.document.Pen;
import plycrag.document.Shape;
import plycrag.document.Table;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;

class HtmlWriterTest {
  private static final String PICTURE = "<svg width=\"180mm\"><path d=\"M0 0\"/></svg>";

  private final String text = HtmlWriter.write(SampleBook.BOOK, drawing -> PICTURE);

  @Test
  void theHeadTellsTheBrowserWhatItNeeds() throws Exception {
    PageReader page = new PageReader(text);

    assertThat(text).startsWith("<!DOCTYPE html>\n<html lang=\"en\">");
    assertThat(page.texts("title")).containsExactly("River bay");
    assertThat(page.values("meta", "charset")).contains("utf-8");
    assertThat(page.values("meta", "name")).contains("viewport");
  }

  /**
   * W3C, Content Security Policy Level 3: with {@code default-src 'none'} nothing is fetched, and
   * nothing is run but what has the hash that is named.
   */
  @Test
  void nothingRunsAndNothingIsFetched() throws Exception {
    PageReader page = new PageReader(text);

    String script = page.texts("script").get(0);
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
    assertThat(page.values("meta", "content"))
        .contains(
            "default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-"
                + Base64.getEncoder().encodeToString(hash)
                + "'");
    assertThat(page.all("script")).hasSize(1);
    assertThat(text).doesNotContain("http:").doesNotContain("https:").doesNotContain("url(");
    assertThat(page.values("a", "href")).allMatch(link -> link.startsWith("#"));
    for (String name : List.of("link", "img", "iframe")) {
      assertThat(page.all(name)).isEmpty();
    }
  }

  @Test
  void headingsFollowTheBookAndTheContentsLeadToThem() throws Exception {
    PageReader page = new PageReader(text);

    assertThat(page.texts("h1")).containsExactly("River bay");
    assertThat(page.texts("h2")).containsExactly("Overview", "Lists");
    assertThat(page.values("section", "id")).containsExactly("section-1", "section-2");
    assertThat(page.values("a", "href")).containsExactly("#section-1", "#section-2");
    assertThat(page.texts("a")).containsExactly("Overview", "Lists");
  }

  @Test
  void aFigureHoldsThePictureItsNameAndItsCaption() throws Exception {
    PageReader page = new PageReader(text);
    Element frame = (Element) page.all("svg").get(0).getParentNode();

    assertThat(text).contains(">" + PICTURE + "</div>");
    assertThat(frame.getAttribute("role")).isEqualTo("img");
    assertThat(frame.getAttribute("aria-label")).isEqualTo("Elevation of main");
    assertThat(page.texts("figcaption")).containsExactly("Seen from the front.");
  }

  @Test
  void aTableHasCaptionScopesAndNumbersToTheRight() throws Exception {
    PageReader page = new PageReader(text);

    assertThat(page.texts("caption")).containsExactly("What to buy");
    assertThat(page.values("th", "scope")).containsExactly("col", "col", "col", "row", "row");
    assertThat(page.texts("td")).containsExactly("2", "62.4", "9", "by the merchant");
    assertThat(page.values("td", "class")).containsExactly("number", "number", "number", "");
    assertThat(page.values("th", "class")).containsExactly("", "number", "", "", "");
  }

  @Test
  void marksOfPartsLeadToTheirFigure() throws Exception {
    Layer layer = new Layer("TEXT", Pen.FINE);
    Shape.Label mark = new Shape.Label(layer, new Xy(0, 0), "ST1 2400", 2.5, TextAnchor.START, 0);
    Extent extent = new Extent(0, 0, 100, 100);
    Book.Figure any = new Book.Figure(new Drawing("All", 1, extent, List.of(mark)), "all");
    Book.Figure frame =
        new Book.Figure(new Drawing("Frame", 1, extent, List.of(mark)), "frame", true);
    Table cut =
        new Table("Cut", List.of("Mark"), List.of(List.of(Cell.marks(List.of("ST1", "ST2")))));
    Book book =
        new Book(
            "A",
            "",
            "",
            "",
            List.of(new Book.Section("One", List.of(any, frame, new Book.Listing(cut)))));
    PageReader page = new PageReader(HtmlWriter.write(book, drawing -> PICTURE));

    assertThat(page.values("figure", "id")).containsExactly("", "figure-1");
    assertThat(page.values("a", "id")).containsExactly("part-ST1");
    assertThat(page.values("a", "href")).containsExactly("#figure-1");
    assertThat(page.values("span", "id")).contains("part-ST2");
  }

  @Test
  void wordsOfCareStandWhereTheyAreSeen() throws Exception {
    PageReader page = new PageReader(text);

    assertThat(page.text("stamp")).isEqualTo("Not for making");
    assertThat(page.text("foot")).isEqualTo("Bouldering only, over mats.");
    assertThat(page.text("caution")).isEqualTo("Caution. Have it checked by an engineer.");
    assertThat(page.texts("strong")).containsExactly("Caution.");
    assertThat(page.texts("li")).endsWith("Two people for the lift", "Mats laid");
  }

  @Test
  void whatIsEmptyIsLeftOut() throws Exception {
    Book book = new Book("River bay", "", "", "", List.of(new Book.Section("One", List.of())));
    PageReader page = new PageReader(HtmlWriter.write(book, drawing -> ""));

    assertThat(page.all("p")).isEmpty();
    assertThat(page.all("nav")).isEmpty();
    assertThat(page.texts("h2")).containsExactly("One");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "</title></style><img src=x onerror=alert(1)>",
        "\" onmouseover=\"alert(1)",
        "' style='x",
        "&lt;b&gt; & &amp; &#60;",
        "]]> <!-- --> <![CDATA[",
        "%s %n %1$s",
        "$1 \\ {{x}}",
        "é 樹 العربية 🧗 ≤ ⌀"
      })
  void textStaysText(String words) throws Exception {
    PageReader page = new PageReader(HtmlWriter.write(SampleBook.saying(words), drawing -> ""));

    Set<String> used = new TreeSet<>();
    page.all("*").forEach(element -> used.add(element.getTagName()));
    assertThat(used)
        .containsExactly(
            "a",
            "aside",
            "body",
            "caption",
            "dd",
            "div",
            "dl",
            "dt",
            "figcaption",
            "figure",
            "footer",
            "h1",
            "h2",
            "h3",
            "head",
            "header",
            "html",
            "input",
            "label",
            "li",
            "main",
            "meta",
            "nav",
            "ol",
            "p",
            "script",
            "section",
            "span",
            "strong",
            "style",
            "table",
            "tbody",
            "td",
            "th",
            "thead",
            "title",
            "tr",
            "ul");
    for (String name : List.of("title", "h1", "h2", "a", "caption", "figcaption", "td", "th")) {
      assertThat(page.texts(name)).isNotEmpty().allMatch(words::equals);
    }
    assertThat(page.text("stamp")).isEqualTo(words);
    assertThat(page.text("foot")).isEqualTo(words);
    assertThat(page.text("caution")).isEqualTo(words + " " + words);
    assertThat(page.texts("h3")).allMatch(("1. " + words)::equals);
    assertThat(page.values("div", "aria-label")).allMatch(l -> l.isEmpty() || l.equals(words));
    assertThat(page.all("script")).hasSize(1);
    page.all("*").forEach(HtmlWriterTest::hasOnlyKnownAttributes);
  }

  private static void hasOnlyKnownAttributes(Element element) {
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      assertThat(element.getAttributes().item(i).getNodeName())
          .isIn(
              "class",
              "id",
              "href",
              "lang",
              "charset",
              "name",
              "content",
              "http-equiv",
              "scope",
              "role",
              "aria-label",
              "tabindex",
              "type");
    }
  }

  /** WHATWG HTML, section 13.2.3.5: the characters that are errors in a page. */
  @ParameterizedTest
  @ValueSource(
      strings = {"\u0000", "\u0007", "\u001b", "\u007f", "\u0085", "\ufffe", "\ufdd0", "\ud800"})
  void whatNoPageMayHoldIsReplaced(String character) throws Exception {
    PageReader page =
        new PageReader(HtmlWriter.write(SampleBook.saying("a" + character + "b"), drawing -> ""));

    assertThat(page.texts("h1")).containsExactly("a\ufffdb");
  }
}
