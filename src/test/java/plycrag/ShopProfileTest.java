package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.drawing.template.SheetCut;
import plycrag.files.dxf.DxfVersion;
import plycrag.files.dxf.DxfWriter;
import plycrag.files.lint.DxfLint;
import plycrag.files.lint.DxfTags;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.WorkedFace;

/**
 * A shop that asks nothing: it profiles every line on a layer named THROUGH with a cutter of 6 mm,
 * on the side that the layer means. No piece may lose anything, and the cutter's centre stays on
 * the sheet.
 */
class ShopProfileTest {
  private static final double CUTTER = 6;
  private static final double CURVE = 0.05;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A raked piece, a window, a notch; whole sheets with edges as bought; offcuts that are used. */
  private static final String RAKED =
      """
      [[facet]]
      name = "low"
      width = 2440
      length = 1500
      angle = 10
      [[facet]]
      name = "high"
      angle = 40
      outline = [[0, 0], [2440, 0], [2440, 1000], [1400, 1000], [1400, 800], [0, 700]]
      [[cutout]]
      facet = "low"
      left = 500
      low = 500
      width = 90
      height = 70
      [inserts]
      when-blocked = "drop"
      [nesting]
      """;

  static Stream<String> walls() {
    return Stream.concat(
        TestFiles.samples().stream().map(TestFiles::read),
        Stream.of(
                "cut-with = \"router\"",
                "cut-with = \"router\"\nedge-trim = 20",
                "cut-with = \"router\"\nface-up = \"back\"\ngrain = \"free\"",
                "cut-with = \"router\"\nedge-trim = 20\n[machine]\nlong-side = \"y\"",
                "cut-with = \"saw\"",
                "cut-with = \"saw\"\nkerf = 0",
                "cut-with = \"saw\"\nedge-trim = 5")
            .map(nesting -> RAKED + nesting + "\n"));
  }

  @ParameterizedTest
  @MethodSource("walls")
  void profilingEveryThroughLayerSparesEveryPiece(String toml) {
    CheckedLayout checked = Walls.judged(toml);
    boolean router = toml.contains("\"router\"");
    for (WorkedFace face : checked.layout().faces()) {
      DxfTags drawing = drawing(SheetCut.of(checked, face), DxfVersion.R12);
      List<Geometry> cuts = cuts(drawing, face.sheet());
      for (LaidPiece laid : face.sheet().pieces()) {
        for (Geometry cut : cuts) {
          assertThat(cut.intersection(laid.kept().buffer(-CURVE)).getArea())
              .as("%s on %s", laid.piece().mark(), face.sheet().fileName())
              .isZero();
        }
      }
      if (!router || !face.isLast()) {
        assertThat(cuts).as(face.sheet().fileName()).isEmpty();
      } else {
        assertFree(face.sheet(), cuts);
      }
    }
  }

  /** What is not the sheet's own edge is cut all along, so that every piece comes out whole. */
  private static void assertFree(LaidSheet sheet, List<Geometry> cuts) {
    Geometry cut = FACTORY.buildGeometry(cuts).buffer(CURVE);
    Geometry edge = FACTORY.toGeometry(sheet.area()).getBoundary().buffer(CURVE);
    for (LaidPiece laid : sheet.pieces()) {
      Geometry standing = laid.kept().getBoundary().difference(cut).difference(edge);
      assertThat(standing.getLength()).as(laid.piece().mark()).isLessThan(1);
    }
  }

  private static DxfTags drawing(Drawing drawing, DxfVersion version) {
    String text = DxfWriter.write(drawing, version);
    assertThat(DxfLint.faults(text)).isEmpty();
    return DxfTags.read(text);
  }

  private static List<Geometry> cuts(DxfTags drawing, LaidSheet sheet) {
    Envelope stock = sheet.area();
    List<Geometry> cuts = new ArrayList<>();
    for (DxfTags.Polyline line : drawing.polylines()) {
      if (line.layer().contains("_THROUGH")) {
        Geometry cut = line.closed() ? profile(line) : beside(line);
        Geometry centre = line.closed() ? cut.buffer(-CUTTER / 2 + CURVE) : path(line);
        assertThat(within(stock, centre)).as(line.toString()).isTrue();
        cuts.add(cut);
      }
    }
    assertThat(drawing.lines()).noneMatch(line -> line.layer().contains("_THROUGH"));
    return cuts;
  }

  private static boolean within(Envelope stock, Geometry centre) {
    Envelope grown = stock.copy();
    grown.expandBy(CURVE);
    return grown.contains(centre.getEnvelopeInternal());
  }

  private static Geometry profile(DxfTags.Polyline line) {
    LinearRing ring = FACTORY.createLinearRing(closed(line));
    Polygon area = FACTORY.createPolygon(ring);
    BufferParameters mitred = new BufferParameters(8, BufferParameters.CAP_FLAT, 2, 5);
    return line.layer().endsWith("_INSIDE")
        ? area.difference(area.buffer(-CUTTER))
        : BufferOp.bufferOp(area, CUTTER, mitred).difference(area);
  }

  /** To the right of the line: negative for a single-sided buffer. */
  private static Geometry beside(DxfTags.Polyline line) {
    assertThat(line.layer()).isEqualTo("EDGE_THROUGH");
    BufferParameters parameters = new BufferParameters(8, BufferParameters.CAP_FLAT, 2, 5);
    parameters.setSingleSided(true);
    return BufferOp.bufferOp(path(line), -CUTTER, parameters);
  }

  private static LineString path(DxfTags.Polyline line) {
    return FACTORY.createLineString(
        line.points().stream()
            .map(point -> new Coordinate(point.x(), point.y()))
            .toArray(Coordinate[]::new));
  }

  private static Coordinate[] closed(DxfTags.Polyline line) {
    return Stream.concat(line.points().stream(), line.points().stream().limit(1))
        .map(point -> new Coordinate(point.x(), point.y()))
        .toArray(Coordinate[]::new);
  }
}
