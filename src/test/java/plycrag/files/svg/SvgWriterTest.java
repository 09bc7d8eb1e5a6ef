package plycrag.files.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.files.Specimens;

/** Read back by the JDK's XML parser. Attributes' meaning: SVG 1.1, from memory. */
class SvgWriterTest {
  private final Element sheet = parse(SvgWriter.write(Specimens.sheet()));

  /** CSS absolute lengths: a user unit is 1 mm if the size in mm has the viewBox's numbers. */
  @Test
  void aUserUnitIsAMillimetreOnPaper() {
    assertThat(sheet.getAttribute("width")).isEqualTo("130mm");
    assertThat(sheet.getAttribute("height")).isEqualTo("70mm");
    assertThat(sheet.getAttribute("viewBox")).isEqualTo("0 0 130 70");
    String inside = SvgWriter.write(Specimens.sheet()).replaceFirst("<svg[^>]*>", "");
    assertThat(inside).doesNotContainPattern("[0-9](mm|px|pt|in|em|%)\"").doesNotContain("vector-");
  }

  @Test
  void saysWhatItShows() {
    assertThat(sheet.getAttribute("role")).isEqualTo("img");
    Element title = (Element) sheet.getElementsByTagName("title").item(0);
    assertThat(title.getTextContent()).isEqualTo("Boathouse: sheet S1 <front> & more");
    assertThat(title.getParentNode()).isSameAs(sheet);
  }

  @Test
  void standsOnWhite() {
    Element ground = elements(sheet, "rect").get(0);
    assertThat(ground.getAttribute("fill")).isEqualTo("#fff");
    assertThat(ground.getAttribute("width")).isEqualTo("130");
  }

  /** By hand: 1:10, x from -50, y from 650 down: (200, 300.25) is (25, 34.975). */
  @Test
  void placesAreOnPaper() {
    Element circle = elements(sheet, "circle").get(0);
    assertThat(circle.getAttribute("cx")).isEqualTo("25");
    assertThat(circle.getAttribute("cy")).isEqualTo("34.975");
    assertThat(circle.getAttribute("r")).isEqualTo("0.6");
    assertThat(elements(sheet, "polygon").get(0).getAttribute("points"))
        .isEqualTo("5,65 125,65 125,5 5,5");
    assertThat(elements(sheet, "polyline").get(0).getAttribute("points"))
        .isEqualTo("15,55 115,55 115,15");
  }

  @Test
  void pensAndFillsAreOnPaper() {
    Element outline = elements(sheet, "polygon").get(0);
    assertThat(outline.getAttribute("fill")).isEqualTo("#f3e3c3");
    assertThat(elements(sheet, "polygon").get(1).getAttribute("fill")).isEqualTo("#000");
    Element group = (Element) outline.getParentNode();
    assertThat(group.getAttribute("class")).isEqualTo("OUTLINE_THROUGH");
    assertThat(group.getAttribute("stroke-width")).isEqualTo("0.5");
    assertThat(group.hasAttribute("stroke-dasharray")).isFalse();
    Element limit = (Element) elements(sheet, "polyline").get(0).getParentNode();
    assertThat(limit.getAttribute("stroke-dasharray")).isEqualTo("0.3 1.1");
    assertThat(limit.getAttribute("stroke")).isEqualTo("#d9381e");
  }

  @Test
  void oneGroupForARunOfALayer() {
    Shape line = new Shape.Line(Specimens.NOTES, new Xy(0, 0), new Xy(1, 1));
    Shape other = new Shape.Line(Specimens.BORE, new Xy(0, 0), new Xy(2, 1));
    Element root = parse(SvgWriter.write(drawing(line, line, other, line)));
    assertThat(elements(root, "g").stream().map(group -> group.getAttribute("class")))
        .containsExactly("NOT_FOR_CUTTING", "BORE_12_0_THROUGH", "NOT_FOR_CUTTING");
  }

  /** Liberation Sans: capitals 1409 of 2048 units, read from the font's OS/2 table. */
  @Test
  void capitalsAreAsTallAsAskedAndCentredOnTheirPlace() {
    Element text = elements(sheet, "text").get(0);
    assertThat(text.getTextContent()).isEqualTo("Ø 12 & <5>");
    assertThat(Double.parseDouble(text.getAttribute("font-size")) * 1409 / 2048)
        .isCloseTo(3.5, offset(0.0001));
    assertThat(text.getAttribute("x")).isEqualTo("65");
    assertThat(text.getAttribute("y")).isEqualTo("21.75");
    assertThat(text.getAttribute("text-anchor")).isEqualTo("middle");
  }

  /** SVG turns clockwise, since its y runs down. */
  @Test
  void textTurnsAboutItsPlace() {
    Element text = elements(sheet, "text").get(1);
    assertThat(text.getAttribute("transform")).isEqualTo("rotate(-90 20 20)");
    assertThat(text.getAttribute("y")).isEqualTo("21.25");
    assertThat(text.hasAttribute("text-anchor")).isFalse();
  }

  @Test
  void inlineIsTheSameElement() {
    String file = SvgWriter.write(Specimens.sheet());
    String inline = SvgWriter.inline(Specimens.sheet());
    assertThat(inline).startsWith("<svg ").doesNotContain(" id=");
    assertThat(file).startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n").endsWith(inline);
  }

  @Test
  void refusesWhatXmlForbids() {
    Drawing drawing = new Drawing("a\u0001b", 1, new Extent(0, 0, 1, 1), List.of());
    assertThatThrownBy(() -> SvgWriter.write(drawing)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void markupInTextStaysText() {
    String nasty = "</text><script>alert(\"1\")</script>&amp;";
    Shape label = new Shape.Label(Specimens.NOTES, new Xy(0, 0), nasty, 3, TextAnchor.END, 30);
    Element root = parse(SvgWriter.write(drawing(label)));
    assertThat(elements(root, "script")).isEmpty();
    assertThat(elements(root, "text").get(0).getTextContent()).isEqualTo(nasty);
  }

  @Test
  void paperCoversWhatLiesBelow() {
    Element root =
        parse(
            SvgWriter.write(
                drawing(Specimens.outline(Specimens.BORE, Fill.PAPER, 0, 0, 1, 0, 0, 1))));
    assertThat(elements(root, "polygon").get(0).getAttribute("fill")).isEqualTo("#fff");
  }

  private static Drawing drawing(Shape... shapes) {
    return new Drawing("A test", 1, new Extent(0, 0, 100, 50), List.of(shapes));
  }

  private static List<Element> elements(Element root, String name) {
    NodeList nodes = root.getElementsByTagName(name);
    return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
  }

  private static Element parse(String text) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(text)))
          .getDocumentElement();
    } catch (SAXException | IOException | ParserConfigurationException broken) {
      throw new AssertionError(text, broken);
    }
  }
}
