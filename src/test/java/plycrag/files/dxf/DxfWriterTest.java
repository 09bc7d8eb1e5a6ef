package plycrag.files.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.Pen;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.files.Specimens;
import plycrag.files.lint.DxfLint;
import plycrag.files.lint.DxfTags;

class DxfWriterTest {
  private static final Extent EXTENT = new Extent(0, 0, 100, 50);

  @ParameterizedTest
  @EnumSource
  void theLinterFindsNothing(DxfVersion version) {
    assertThat(DxfLint.faults(DxfWriter.write(Specimens.sheet(), version))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void anIndependentReaderFindsTheModel(DxfVersion version) {
    DxfTags file = DxfTags.read(DxfWriter.write(Specimens.sheet(), version));
    assertThat(file.circles())
        .containsExactly(
            new DxfTags.Circle("BORE_12_0_THROUGH", 200, 300.25, 6),
            new DxfTags.Circle("BORE_12_0_THROUGH", 1000.5, 300.25, 6));
    assertThat(file.polylines())
        .filteredOn(DxfTags.Polyline::closed)
        .contains(
            new DxfTags.Polyline("OUTLINE_THROUGH", true, points(0, 0, 1200, 0, 1200, 600, 0, 600)))
        .hasSize(1);
    assertThat(file.polylines())
        .contains(new DxfTags.Polyline("SETBACK", false, points(100, 100, 1100, 100, 1100, 500)));
    assertThat(file.lines())
        .contains(
            new DxfTags.Line("BEHIND", new DxfTags.Point(600, 50), new DxfTags.Point(600, 550)));
  }

  /** Colours, lineweights and the codes of a layer: ezdxf manual, LAYER and "ACI colors". */
  @Test
  void layersCarryThePens() {
    DxfTags file = DxfTags.read(DxfWriter.write(Specimens.sheet(), DxfVersion.R2000));
    assertThat(file.table("LAYER").stream().map(DxfWriterTest::layer))
        .containsExactly(
            "0 7 CONTINUOUS 25",
            "OUTLINE_THROUGH 7 CONTINUOUS 50",
            "NOT_FOR_CUTTING 7 CONTINUOUS 25",
            "BORE_12_0_THROUGH 7 CONTINUOUS 35",
            "CENTRE_LINES 7 CENTER 25",
            "BEHIND 8 DASHED 18",
            "SETBACK 1 DOT 25");
  }

  @ParameterizedTest
  @EnumSource
  void dashesAreAsLongOnPaperAsTheirPattern(DxfVersion version) {
    DxfTags file = DxfTags.read(DxfWriter.write(Specimens.sheet(), version));
    DxfTags.Entry dashed =
        file.table("LTYPE").stream()
            .filter(entry -> entry.text(2).orElse("").equals("DASHED"))
            .findFirst()
            .orElseThrow();
    assertThat(dashed.numbers(49)).containsExactly(30.0, -15.0);
    assertThat(dashed.number(40)).isEqualTo(45);
    assertThat(dashed.number(73)).isEqualTo(2);
  }

  @ParameterizedTest
  @EnumSource
  void theWindowShowsTheExtent(DxfVersion version) {
    DxfTags file = DxfTags.read(DxfWriter.write(Specimens.sheet(), version));
    assertThat(file.header("$EXTMIN").get(0).value()).isEqualTo("-50");
    assertThat(file.header("$EXTMAX").get(1).value()).isEqualTo("650");
    DxfTags.Entry view = file.table("VPORT").get(0);
    assertThat(view.point(12)).isEqualTo(new DxfTags.Point(600, 300));
    assertThat(view.number(40)).isGreaterThan(700);
    assertThat(view.number(40) * view.number(41)).isGreaterThan(1300);
  }

  /** Codes 72, 73 and 11: ezdxf manual, "Text alignment". */
  @ParameterizedTest
  @EnumSource
  void textIsAsTallOnPaperAsAsked(DxfVersion version) {
    DxfTags file = DxfTags.read(DxfWriter.write(Specimens.sheet(), version));
    DxfTags.Entry first = file.entities("TEXT").get(0);
    assertThat(first.number(40)).isEqualTo(35);
    assertThat(first.point(11)).isEqualTo(new DxfTags.Point(600, 450));
    assertThat(first.number(72)).isEqualTo(1);
    assertThat(first.number(73)).isEqualTo(2);
    DxfTags.Entry second = file.entities("TEXT").get(1);
    assertThat(second.number(50)).isEqualTo(90);
    assertThat(second.number(72)).isZero();
  }

  /** Text is single-byte; other characters as \U+XXXX: ezdxf manual, "DXF file encoding". */
  @ParameterizedTest
  @EnumSource
  void textSurvives(DxfVersion version) {
    DxfTags file = DxfTags.read(DxfWriter.write(Specimens.sheet(), version));
    assertThat(file.entities("TEXT").get(0).text(1)).contains("\\U+00D8 12 & <5>");
    assertThat(file.entities("TEXT").get(1).text(1)).contains("up \\U+005C \\U+005EJ");
    assertThat(DxfText.of("5 % of 100%%d")).isEqualTo("5 % of 100%%%%%%d");
  }

  @ParameterizedTest
  @EnumSource
  void whatLiesOnSomethingEarlierIsLeftOut(DxfVersion version) {
    Layer other = new Layer("OTHER", Pen.PART);
    Drawing drawing =
        drawing(
            new Shape.Circle(Specimens.BORE, new Xy(9.999, 9), 6, Fill.NONE),
            new Shape.Circle(other, new Xy(10.004, 9), 6.004, Fill.NONE),
            new Shape.Circle(other, new Xy(10, 9), 5, Fill.NONE),
            Specimens.outline(other, Fill.NONE, 0, 0, 30, 0, 30, 20),
            Specimens.outline(other, Fill.PAPER, 30, 0, 0, 0, 30, 20),
            new Shape.Line(other, new Xy(1, 40), new Xy(9, 40)),
            new Shape.Path(other, List.of(new Xy(9, 40), new Xy(1, 40))),
            new Shape.Line(other, new Xy(1, 41), new Xy(9, 41)),
            label("A", 50),
            label("A", 50),
            label("B", 50));
    String text = DxfWriter.write(drawing, version);
    DxfTags file = DxfTags.read(text);
    assertThat(DxfLint.faults(text)).isEmpty();
    assertThat(file.circles()).extracting(DxfTags.Circle::radius).containsExactly(6.0, 5.0);
    assertThat(file.polylines()).filteredOn(DxfTags.Polyline::closed).hasSize(1);
    assertThat(file.lines()).hasSize(2);
    assertThat(file.polylines()).hasSize(1);
    assertThat(file.entities("TEXT")).hasSize(2);
  }

  @ParameterizedTest
  @EnumSource
  void everythingMayLieOnLayer0(DxfVersion version) {
    Layer plain = new Layer("0", Pen.PART);
    String text =
        DxfWriter.write(drawing(new Shape.Circle(plain, new Xy(9, 9), 6, Fill.NONE)), version);
    assertThat(DxfLint.faults(text)).isEmpty();
    assertThat(DxfTags.read(text).table("LAYER")).hasSize(1);
  }

  @Test
  void refusesALayerWithTwoPens() {
    Drawing drawing =
        drawing(
            new Shape.Line(new Layer("A", Pen.PART), new Xy(0, 0), new Xy(1, 1)),
            new Shape.Line(new Layer("A", Pen.FINE), new Xy(0, 0), new Xy(1, 2)));
    assertThatThrownBy(() -> DxfWriter.write(drawing, DxfVersion.R12))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two pens");
  }

  @Test
  void aTagIsOneLineOfAscii() {
    TagWriter tags = new TagWriter(DxfVersion.R12);
    assertThatThrownBy(() -> tags.text(1, "A\n0\nEOF"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> tags.text(1, "Ø")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> tags.real(40, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(tags.real(40, -0.00001).toString()).isEqualTo("40\n0\n");
  }

  private static String layer(DxfTags.Entry layer) {
    return String.join(
        " ", List.of(2, 62, 6, 370).stream().map(code -> layer.text(code).orElse("-")).toList());
  }

  private static Shape.Label label(String text, double x) {
    return new Shape.Label(Specimens.NOTES, new Xy(x, 9), text, 3, TextAnchor.END, 0);
  }

  private static Drawing drawing(Shape... shapes) {
    return new Drawing("A test", 1, EXTENT, List.of(shapes));
  }

  private static List<DxfTags.Point> points(double... numbers) {
    return IntStream.range(0, numbers.length / 2)
        .mapToObj(i -> new DxfTags.Point(numbers[2 * i], numbers[2 * i + 1]))
        .toList();
  }
}
