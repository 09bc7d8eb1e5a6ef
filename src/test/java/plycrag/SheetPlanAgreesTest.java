package plycrag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.ApprovedLayout;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.document.Shape;
import plycrag.document.Table;
import plycrag.document.Xy;
import plycrag.drawing.template.SheetCut;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Insert;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.skin.Piece;
import plycrag.lists.HoleTable;
import plycrag.machining.DrillPrograms;
import plycrag.stock.SheetList;

/** The sheet plan against holes, drawings and programs, by arithmetic on its own columns. */
class SheetPlanAgreesTest {
  private static final double EXACT = 2e-3;

  private static final String ODD =
      """
      [[facet]]
      name = "left"
      angle = 10
      outline = [[0, 0], [2300, 0], [2300, 2300], [1200, 2300]]
      [[facet]]
      name = "right"
      beside = "left"
      turn = 30
      angle = 10
      length = 2400
      width = 900
      [sheet]
      least-width = 200
      lay = "%s"
      [[stock-sheet]]
      length = 1500
      width = 900
      at-hand = 1
      [frame]
      stud-spacing = 600
      [inserts]
      when-blocked = "drop"
      [nesting]
      %s
      """;

  private static final String TOOLS =
      """
      [[tool]]
      diameter = 12
      length = 30
      [[tool]]
      kind = "end-mill"
      diameter = 6
      length = 40
      """;

  static Stream<String> walls() {
    Stream<String> odd =
        Stream.of(
                "face-up = \"back\"",
                "grain = \"free\"",
                "edge-trim = 5",
                "grain = \"free\"\nface-up = \"back\"\nedge-trim = 2",
                "cut-with = \"router\"\nhold-down = 8",
                "edge-trim = 5\n[machine]\nlong-side = \"x\"",
                "grain = \"free\"\n[machine]\nlong-side = \"y\"",
                "cut-with = \"router\"\nface-up = \"back\"\n[machine]\nlong-side = \"y\"")
            .map(nesting -> ODD.formatted(nesting.contains("free") ? "up" : "across", nesting));
    Stream<String> recessed =
        Stream.of("face-up = \"back\"", "edge-trim = 20")
            .map(nesting -> ODD.formatted("up", nesting) + TOOLS)
            .map(toml -> toml.replace("[inserts]", "[inserts]\nrecess-depth = 4"));
    return Stream.of(TestFiles.samples().stream().map(TestFiles::read), odd, recessed)
        .flatMap(walls -> walls);
  }

  /** The rows of a table, by the names of its columns. */
  private static List<Map<String, String>> rows(Table table) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (List<Cell> cells : table.rows()) {
      Map<String, String> row = new TreeMap<>();
      for (int at = 0; at < cells.size(); at++) {
        row.put(table.columns().get(at), cells.get(at).text());
      }
      rows.add(row);
    }
    return rows;
  }

  private static List<Map<String, String>> rows(CheckedLayout checked, String what) {
    return rows(SheetList.of(checked)).stream()
        .filter(row -> row.get("what").equals(what))
        .toList();
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static Envelope box(Map<String, String> row) {
    double x = number(row, "x_mm");
    double y = number(row, "y_mm");
    return new Envelope(x, x + number(row, "length_mm"), y, y + number(row, "width_mm"));
  }

  private static Map<String, Map<String, String>> byPiece(CheckedLayout checked) {
    Map<String, Map<String, String>> pieces = new TreeMap<>();
    rows(checked, "piece").forEach(row -> assertThat(pieces.put(row.get("piece"), row)).isNull());
    return pieces;
  }

  /** Where an insert of a piece lies by the piece's row: turned in its box, case by case. */
  private static Xy expected(Insert insert, Piece piece, Map<String, String> row, boolean back) {
    Envelope built = piece.blank().getEnvelopeInternal();
    double u = insert.centre().getX();
    double across = back ? built.getMaxX() - u : u - built.getMinX();
    double up = insert.centre().getY() - built.getMinY();
    Envelope cut = box(row);
    return switch (row.get("turn_deg")) {
      case "0" -> new Xy(cut.getMinX() + across, cut.getMinY() + up);
      case "90" -> new Xy(cut.getMaxX() - up, cut.getMinY() + across);
      case "180" -> new Xy(cut.getMaxX() - across, cut.getMaxY() - up);
      default -> new Xy(cut.getMinX() + up, cut.getMaxY() - across);
    };
  }

  @ParameterizedTest
  @MethodSource("walls")
  void everythingAgrees(String toml) {
    CheckedLayout checked = Walls.judged(toml);
    assertHolesAtTheirPlaces(toml, checked);
    assertDrawingsAndProgramsBoreThem(toml, checked);
    assertCutsLeaveThePieces(toml, checked);
  }

  private static void assertHolesAtTheirPlaces(String toml, CheckedLayout checked) {
    Map<String, Map<String, String>> pieces = byPiece(checked);
    Map<String, Xy> expected = new TreeMap<>();
    for (FacetLayout facet : checked.layout().facets()) {
      for (Piece piece : facet.pieces()) {
        for (Insert insert : facet.inserts()) {
          if (piece.outline().covers(insert.centre())) {
            boolean back = toml.contains("face-up = \"back\"");
            expected.put(insert.mark(), expected(insert, piece, pieces.get(piece.mark()), back));
          }
        }
      }
    }
    List<Map<String, String>> holes =
        rows(HoleTable.of(checked)).stream()
            .filter(row -> row.get("kind").equals("insert"))
            .toList();
    assertThat(holes).extracting(row -> row.get("mark")).hasSameSizeAs(expected.keySet());
    for (Map<String, String> hole : holes) {
      Xy place = expected.get(hole.get("mark"));
      assertThat(number(hole, "sheet_x_mm")).isCloseTo(place.x(), within(EXACT));
      assertThat(number(hole, "sheet_y_mm")).isCloseTo(place.y(), within(EXACT));
      assertThat(hole).containsEntry("sheet", pieces.get(hole.get("piece")).get("sheet"));
    }
  }

  private static void assertDrawingsAndProgramsBoreThem(String toml, CheckedLayout checked) {
    Map<String, List<Xy>> listed = new TreeMap<>();
    for (Map<String, String> hole : rows(HoleTable.of(checked))) {
      Xy place = new Xy(number(hole, "sheet_x_mm"), number(hole, "sheet_y_mm"));
      String face = hole.get("sheet") + " " + hole.get("side");
      listed.computeIfAbsent(face, unseen -> new ArrayList<>()).add(place);
    }
    for (WorkedFace worked : checked.layout().faces()) {
      String face = worked.sheet().mark() + " " + worked.sheet().faceUp().word();
      assertThat(
              SheetCut.of(checked, worked).shapes().stream().filter(Shape.Circle.class::isInstance))
          .extracting(shape -> ((Shape.Circle) shape).centre())
          .containsExactlyInAnyOrderElementsOf(listed.getOrDefault(face, List.of()));
    }
    if (checked instanceof ApprovedLayout approved) {
      boolean cutsOut = toml.contains("outlines = ");
      Map<String, List<Xy>> made = new TreeMap<>();
      for (DrillProgram program : DrillPrograms.of(approved)) {
        String face = program.sheet() + " " + program.side();
        left(program.moves()).stream()
            .filter(place -> !cutsOut || listed.get(face).contains(place))
            .forEach(place -> made.computeIfAbsent(face, unseen -> new ArrayList<>()).add(place));
      }
      assertThat(made.keySet()).isEqualTo(listed.keySet());
      made.forEach(
          (sheet, places) ->
              assertThat(places).containsExactlyInAnyOrderElementsOf(listed.get(sheet)));
    }
  }

  /** Where a tool comes out of the work: a hole's centre, or somewhere on a way round a piece. */
  private static List<Xy> left(List<Move> moves) {
    List<Xy> left = new ArrayList<>();
    Optional<Xy> last = Optional.empty();
    for (Move move : moves) {
      if (move instanceof Move.DrillCycle cycle) {
        left.add(cycle.place());
      } else if (move instanceof Move.Cut cut) {
        last = Optional.of(new Xy(cut.to().x(), cut.to().y()));
      } else if (move instanceof Move.RapidZ) {
        last.ifPresent(left::add);
        last = Optional.empty();
      }
    }
    return left;
  }

  /** Sawing by the rows, cut after cut, leaves parts that hold each piece, and the offcuts. */
  private static void assertCutsLeaveThePieces(String toml, CheckedLayout checked) {
    for (Map<String, String> sheet : rows(checked, "sheet")) {
      String mark = sheet.get("sheet");
      List<Envelope> parts = new ArrayList<>(List.of(box(sheet)));
      List<Map<String, String>> cuts = on(mark, rows(checked, "cut"));
      cuts.forEach(cut -> saw(cut, parts));
      for (Map<String, String> piece : on(mark, rows(checked, "piece"))) {
        assertThat(parts).anyMatch(part -> grown(part).contains(box(piece)));
      }
      if (!toml.contains("router")) {
        for (Map<String, String> offcut : on(mark, rows(checked, "offcut"))) {
          assertThat(parts)
              .anyMatch(
                  part -> grown(part).contains(box(offcut)) && grown(box(offcut)).contains(part));
        }
      }
    }
  }

  private static List<Map<String, String>> on(String sheet, List<Map<String, String>> rows) {
    return rows.stream().filter(row -> row.get("sheet").equals(sheet)).toList();
  }

  private static Envelope grown(Envelope box) {
    Envelope grown = new Envelope(box);
    grown.expandBy(EXACT);
    return grown;
  }

  private static void saw(Map<String, String> cut, List<Envelope> parts) {
    boolean upright = cut.get("turn_deg").equals("90");
    double x = number(cut, "x_mm");
    double y = number(cut, "y_mm");
    double length = number(cut, "length_mm");
    double kerf = number(cut, "width_mm");
    Envelope blade =
        upright
            ? new Envelope(x, x + kerf, y, y + length)
            : new Envelope(x, x + length, y, y + kerf);
    List<Envelope> met =
        parts.stream().filter(part -> part.intersection(blade).getArea() > EXACT).toList();
    assertThat(met).as("parts that cut " + cut + " meets").hasSize(1);
    Envelope part = met.get(0);
    assertThat(length).isCloseTo(upright ? part.getHeight() : part.getWidth(), within(EXACT));
    parts.remove(part);
    if (upright) {
      add(parts, part.getMinX(), x, part.getMinY(), part.getMaxY());
      add(parts, x + kerf, part.getMaxX(), part.getMinY(), part.getMaxY());
    } else {
      add(parts, part.getMinX(), part.getMaxX(), part.getMinY(), y);
      add(parts, part.getMinX(), part.getMaxX(), y + kerf, part.getMaxY());
    }
  }

  private static void add(
      List<Envelope> parts, double left, double right, double low, double high) {
    if (right > left && high > low) {
      parts.add(new Envelope(left, right, low, high));
    }
  }

  /** Sheets of two formats, some of which would stand upright as their pieces do on the wall. */
  @ParameterizedTest
  @ValueSource(strings = {"x", "y"})
  void sheetsOfAllFormatsLieAsTheBedDoes(String side) {
    String machine = "grain = \"free\"\n[machine]\nlong-side = \"" + side + "\"";
    List<Map<String, String>> sheets = rows(Walls.judged(ODD.formatted("up", machine)), "sheet");
    assertThat(sheets).hasSizeGreaterThan(1);
    assertThat(sheets)
        .allMatch(
            sheet -> number(sheet, "length_mm") > number(sheet, "width_mm") == side.equals("x"));
  }

  @Test
  void sheetsThatAreMadeAlikeSayWhichTheyAreLike() {
    CheckedLayout checked =
        Walls.judged(
            """
            [[facet]]
            length = 2442
            width = 2440
            [sheet]
            lay = "across"
            [inserts]
            pattern = "lines"
            columns = [200, 600]
            rows = [300, 1522]
            setback = 50
            when-blocked = "report"
            """);
    assertThat(rows(checked, "sheet")).extracting(row -> row.get("same_as")).contains("S1");
  }
}
