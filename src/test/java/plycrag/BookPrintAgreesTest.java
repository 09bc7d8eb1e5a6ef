package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import plycrag.files.pdf.LittlePdf;

/** The book to print says what the page on the screen says, in the same order. */
class BookPrintAgreesTest {
  private static final Set<String> TEXTS =
      Set.of("h1", "h2", "p", "li", "caption", "th", "td", "figcaption");

  /** What stands lower than this on a page is its foot, mm. */
  private static final double FOOT = 30;

  private static final double MM = 25.4 / 72;
  private static final String BOX = "☐";

  /** Each book is read once. */
  private static final Map<Path, List<PdfWords.Word>> WORDS = new ConcurrentHashMap<>();

  private static List<PdfWords.Word> words(Path pdf) {
    return WORDS.computeIfAbsent(pdf, file -> PdfWords.of(TestFiles.content(file)));
  }

  static List<Path> books() {
    return TestFiles.list(Path.of("out-samples"), "build-book.pdf");
  }

  @ParameterizedTest
  @MethodSource("books")
  void saysWhatThePageSays(Path pdf) throws Exception {
    String printed = text(words(pdf));
    List<String> wanted = new ArrayList<>();
    collect(page(pdf.resolveSibling("index.html")), wanted);
    assertThat(wanted).hasSizeGreaterThan(200);
    int from = 0;
    for (String one : wanted) {
      int at = printed.indexOf(one.replaceAll("\\s", ""), from);
      assertThat(at).as(one).isNotNegative();
      from = at;
    }
  }

  /** Words of the pictures among them; the paper, less the margins that the writer promises. */
  @ParameterizedTest
  @MethodSource("books")
  void noWordLeavesTheMargins(Path pdf) {
    LittlePdf.Box box = LittlePdf.of(TestFiles.content(pdf)).boxes().get(0);
    Envelope paper =
        new Envelope(11.99, box.width() * MM - 11.99, 11.99, box.height() * MM - 11.99);
    for (PdfWords.Word word : words(pdf)) {
      assertThat(paper.contains(word.place().getEnvelopeInternal())).as(word::toString).isTrue();
    }
  }

  private static String text(List<PdfWords.Word> all) {
    List<PdfWords.Word> words =
        all.stream().filter(word -> word.place().getEnvelopeInternal().getMinY() > FOOT).toList();
    int pages = words.get(words.size() - 1).page();
    StringBuilder text = new StringBuilder();
    IntStream.rangeClosed(1, pages).forEach(page -> text.append(PdfWords.text(words, page)));
    return text.toString();
  }

  private static Element page(Path file) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(file.toFile())
        .getDocumentElement();
  }

  /** All texts but those of pictures, of the list of contents and of the foot. */
  private static void collect(Node node, List<String> texts) {
    if (Set.of("nav", "svg").contains(node.getNodeName())) {
      return;
    }
    if (node instanceof Element element && element.getAttribute("class").equals("foot")) {
      return;
    }
    if (TEXTS.contains(node.getNodeName())) {
      texts.add(node.getTextContent().replace(BOX, ""));
      return;
    }
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      collect(child, texts);
    }
  }
}
