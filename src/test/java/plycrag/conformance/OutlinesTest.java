package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;
import plycrag.HoleList;
import plycrag.TestFiles;
import plycrag.app.Deliverable;
import plycrag.app.Design;
import plycrag.app.Designs;
import plycrag.files.OutputFile;
import plycrag.files.lint.DxfTags;

/**
 * The sample that is cut out, in many dialects: what the interpreter cuts makes the holes of the
 * list and leaves the pieces of the drawing, to size, held as was asked.
 */
@Tag("conformance")
class OutlinesTest {
  private static final double RADIUS = 3;
  private static final double SIZE = 0.01;
  private static final double DEPTH = 0.003;
  private static final double THICKNESS = 18;
  private static final double FLOOR = -0.5;
  private static final double TAB_LENGTH = 12;
  private static final double TAB_HEIGHT = 4;

  /**
   * The cutter is round: along the piece a tab is longer by its width than at its narrowest. Within
   * an opening of 80 mm the cutter's way is a circle of 74 mm.
   */
  private static final double LONGEST_TAB = (TAB_LENGTH + 2 * RADIUS) * 80 / 74;

  private static final double SKIN = 0.5;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  @TempDir private Path folder;

  static Stream<String> dialects() {
    return Stream.of(
        "outlines = \"tabs\"",
        "outlines = \"skin\"",
        "outlines = \"tabs\"\nentry = \"helix\"\npercent-lines = true\nsafe-start = true",
        "outlines = \"tabs\"\ncut-direction = \"conventional\"",
        "outlines = \"tabs\"\narcs = true\ndrill-cycles = \"canned\"\nline-numbers = true",
        "outlines = \"skin\"\narcs = true\nprogram-unit = \"in\"\ntool-change = \"word\"",
        "outlines = \"tabs\"\nprogram-unit = \"in\"\ntool-change = \"pause\"",
        "outlines = \"skin\"\ncomments = \"semicolon\"\norigin = \"upper-right\"",
        "outlines = \"tabs\"\nz-zero = \"sheet-top\"\ncomments = \"none\"\nline-length = 70");
  }

  @ParameterizedTest
  @MethodSource("dialects")
  void theInterpreterLeavesThePiecesOfTheDrawing(String dialect) {
    String text =
        TestFiles.read(Path.of("params/plank-store.toml"))
            .replaceFirst("outlines = \"tabs\"", dialect);
    Design.Judged judged = (Design.Judged) Designs.of("plank-store.toml", text);
    List<OutputFile> files = Deliverable.of(judged);
    String drawing = text(named(files, "drawings/sheet-S1-front.dxf"));
    HoleList list = HoleList.of(new StringReader(text(named(files, "lists/holes.csv"))));
    List<CutPath> outlines = withoutHoles(paths(files, "front", dialect), list.on("S1", "front"));
    kept(drawing).forEach(piece -> assertCutOut(piece, outlines, dialect.contains("skin")));
    List<CutPath> back =
        paths(files, "back", dialect).stream().map(OutlinesTest::turnedOver).toList();
    assertPinned(back.stream().filter(path -> !isShallow(path)).toList(), kept(drawing));
    assertWritten(back.stream().filter(OutlinesTest::isShallow).toList(), list.on("S1", "front"));
  }

  private List<CutPath> paths(List<OutputFile> files, String side, String dialect) {
    List<CutPath> paths = new ArrayList<>();
    for (OutputFile file : files) {
      if (file.path().matches("cnc/sheet-S1-" + side + "-t[0-9]+\\.ngc")) {
        Path program = folder.resolve("test.ngc");
        Tools.write(program, text(file));
        CutPath.of(program, dialect.contains("program-unit")).stream()
            .map(path -> onSheet(path, dialect))
            .forEach(paths::add);
      }
    }
    return paths;
  }

  /** As one sees it from the front: left and right change places about the middle of 2440 mm. */
  private static CutPath turnedOver(CutPath path) {
    return new CutPath(
        path.places().stream()
            .map(place -> new Coordinate(2440 - place.x, place.y, place.z))
            .toList());
  }

  /** Two pins on the middle line, 8 mm deeper than other holes, in the waste. */
  private static void assertPinned(List<CutPath> pins, List<Geometry> pieces) {
    assertThat(pins).hasSize(2);
    for (CutPath pin : pins) {
      assertThat(pin.isRouted()).isFalse();
      assertThat(pin.last().x).isCloseTo(1220, within(DEPTH));
      assertThat(pin.lowest()).isCloseTo(FLOOR - 8, within(DEPTH));
      Geometry hole = FACTORY.createPoint(pin.last()).buffer(3 + 2 * RADIUS);
      assertThat(pieces).noneMatch(hole::intersects);
    }
    assertThat(pins.get(0).last().distance(pins.get(1).last())).isGreaterThan(610);
  }

  /** Counted from the sheet's lower left corner and from the board. */
  private static CutPath onSheet(CutPath path, String dialect) {
    double x = dialect.contains("upper-right") ? 2440 : 0;
    double y = dialect.contains("upper-right") ? 1220 : 0;
    double z = dialect.contains("sheet-top") ? THICKNESS : 0;
    return new CutPath(
        path.places().stream()
            .map(place -> new Coordinate(place.x + x, place.y + y, place.z + z))
            .toList());
  }

  /** Each hole of the list is made once, of its size and depth; what is left over. */
  private static List<CutPath> withoutHoles(List<CutPath> paths, List<HoleList.Row> rows) {
    List<CutPath> left = new ArrayList<>(paths);
    assertThat(rows).isNotEmpty();
    for (HoleList.Row row : rows) {
      Coordinate centre = new Coordinate(row.x(), row.y());
      double bottom = row.depth() < THICKNESS ? THICKNESS - row.depth() : FLOOR;
      List<CutPath> own =
          left.stream()
              .filter(path -> path.farthest(centre) < row.diameter() / 2)
              .filter(path -> Math.abs(path.lowest() - bottom) < DEPTH)
              .toList();
      assertThat(own).as(row.mark()).hasSize(1);
      CutPath made = own.get(0);
      assertThat(made.last().distance(centre)).isLessThan(DEPTH);
      double reach = made.isRouted() ? row.diameter() / 2 - RADIUS : 0;
      assertThat(made.farthest(centre)).as(row.mark()).isCloseTo(reach, within(SIZE));
      // Places are equal where X and Y are: a head over its hole is told apart by its depth.
      left.removeIf(path -> path.equals(made) && path.lowest() == made.lowest());
    }
    return left;
  }

  private static boolean isShallow(CutPath path) {
    return path.lowest() > THICKNESS - 1;
  }

  /** Letters of 12 mm, 0.4 mm deep, on one line and apart from all holes. */
  private static void assertWritten(List<CutPath> letters, List<HoleList.Row> rows) {
    assertThat(letters).hasSizeGreaterThan(5);
    assertThat(letters).allMatch(path -> Math.abs(path.lowest() - 17.6) < DEPTH);
    Geometry written = CutPath.swept(letters, 0.1, THICKNESS);
    assertThat(written.getEnvelopeInternal().getHeight()).isCloseTo(12.2, within(SIZE));
    for (HoleList.Row row : rows) {
      assertThat(written.distance(FACTORY.createPoint(new Coordinate(row.x(), row.y()))))
          .as(row.mark())
          .isGreaterThan(row.diameter() / 2 + 3);
    }
  }

  /** The pieces of a drawing: what lies within an outline, openings left out. */
  private static List<Geometry> kept(String drawing) {
    List<Geometry> areas =
        DxfTags.read(drawing).polylines().stream()
            .filter(DxfTags.Polyline::closed)
            .filter(outline -> !outline.layer().startsWith("NOT_FOR_CUTTING"))
            .map(
                outline ->
                    Stream.concat(outline.points().stream(), outline.points().stream().limit(1))
                        .map(point -> new Coordinate(point.x(), point.y()))
                        .toArray(Coordinate[]::new))
            .<Geometry>map(FACTORY::createPolygon)
            .toList();
    return areas.stream()
        .filter(
            area -> areas.stream().noneMatch(other -> !other.equals(area) && other.covers(area)))
        .map(area -> withoutOpenings(area, areas))
        .toList();
  }

  private static Geometry withoutOpenings(Geometry area, List<Geometry> areas) {
    Geometry kept = area;
    for (Geometry opening : areas) {
      kept = !opening.equals(area) && area.covers(opening) ? kept.difference(opening) : kept;
    }
    return kept;
  }

  private static void assertCutOut(Geometry piece, List<CutPath> paths, boolean skin) {
    double bottom = skin ? SKIN : FLOOR;
    assertThat(paths).allMatch(path -> path.lowest() >= bottom - DEPTH);
    Geometry touched = CutPath.swept(paths, RADIUS, THICKNESS - DEPTH);
    assertThat(touched.intersects(piece.buffer(-SIZE))).isFalse();
    List<LineString> standing = standing(piece, paths, bottom + DEPTH);
    if (skin) {
      assertThat(standing).isEmpty();
    } else {
      assertThat(standing).hasSizeGreaterThanOrEqualTo(3);
      assertThat(standing).allMatch(one -> one.getLength() <= LONGEST_TAB);
      assertThat(standing(piece, paths, TAB_HEIGHT + DEPTH)).isEmpty();
    }
  }

  /** Where the piece still hangs on the sheet above a height. */
  private static List<LineString> standing(Geometry piece, List<CutPath> paths, double height) {
    Geometry cut = CutPath.swept(paths, RADIUS, height).buffer(2 * SIZE);
    LineMerger merger = new LineMerger();
    merger.add(piece.getBoundary().difference(cut));
    List<LineString> lines = new ArrayList<>();
    for (Object line : merger.getMergedLineStrings()) {
      lines.add((LineString) line);
    }
    return lines;
  }

  private static OutputFile named(List<OutputFile> files, String path) {
    return files.stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow();
  }

  private static String text(OutputFile file) {
    return new String(file.content(), StandardCharsets.UTF_8);
  }
}
