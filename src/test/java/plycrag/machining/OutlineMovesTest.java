package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.Walls;
import plycrag.check.ApprovedLayout;
import plycrag.document.DrillProgram;
import plycrag.files.Specimens;
import plycrag.files.ngc.NgcWriter;
import plycrag.machining.Playback.Way;

/**
 * A piece of 1200 by 1200 mm in the corner of a sheet of 2440 by 1220 mm, 18 mm thick, with a
 * window; cut with 6 mm in passes of 5 mm at most: 18.5 mm take four, a skin of 0.5 mm 17.5 mm.
 */
class OutlineMovesTest {
  private static final String WALL =
      """
      [[facet]]
      width = 1200
      length = 1200
      [[cutout]]
      left = 700
      low = 700
      width = 300
      height = 200
      [inserts]
      pattern = "lines"
      columns = [100, 250]
      rows = [100, 250]
      [[tool]]
      diameter = 12
      length = 30
      speed = 4000
      [[tool]]
      kind = "end-mill"
      diameter = 6
      length = 22
      speed = 18000
      pass-depth = 5
      [machine]
      outlines = "%s"
      cut-direction = "%s"
      """;

  private static DrillProgram routing(String outlines, String direction) {
    String toml = WALL.formatted(outlines, direction);
    List<DrillProgram> programs = DrillPrograms.of((ApprovedLayout) Walls.judged(toml));
    assertThat(programs).extracting(DrillProgram::tool).containsExactly(1, 2);
    return programs.get(1);
  }

  private static List<Way> cuts(DrillProgram program) {
    return Playback.of(program.moves()).stream()
        .filter(way -> !way.isRapid() && way.isAcross())
        .toList();
  }

  private static LineString line(Way way) {
    return new GeometryFactory()
        .createLineString(
            new Coordinate[] {
              new Coordinate(way.from().x(), way.from().y()),
              new Coordinate(way.to().x(), way.to().y())
            });
  }

  /** What is kept, drawn by hand. */
  private static Polygon kept() {
    GeometryFactory factory = new GeometryFactory();
    return factory.createPolygon(
        factory.createLinearRing(box(0, 0, 1200, 1200)),
        new org.locationtech.jts.geom.LinearRing[] {
          factory.createLinearRing(box(700, 700, 1000, 900))
        });
  }

  private static Coordinate[] box(double left, double low, double right, double high) {
    return new Coordinate[] {
      new Coordinate(left, low),
      new Coordinate(right, low),
      new Coordinate(right, high),
      new Coordinate(left, high),
      new Coordinate(left, low)
    };
  }

  @ParameterizedTest
  @CsvSource({"tabs, climb", "tabs, conventional", "skin, climb", "skin, conventional"})
  void goesRoundWhatIsKeptByTheRadius(String outlines, String direction) {
    DrillProgram program = routing(outlines, direction);
    assertThat(cuts(program)).isNotEmpty();
    for (Way way : cuts(program)) {
      assertThat(line(way).distance(kept())).isCloseTo(3, within(0.01));
    }
    assertThat(NgcWriter.write(program, Specimens.PLAIN)).contains("OUTLINES ");
  }

  /** Round the window first, then the right and the upper side: those on the sheet's edge stay. */
  @Test
  void cutsOpeningsFirstAndLeavesTheSheetsEdge() {
    List<Way> cuts = cuts(routing("skin", "climb"));
    assertThat(cuts.get(0).to().x()).isBetween(700.0, 1000.0);
    Way last = cuts.get(cuts.size() - 1);
    assertThat(Math.max(last.to().x(), last.from().x())).isCloseTo(1203, within(0.001));
    assertThat(cuts).allMatch(way -> way.to().y() > -5 && way.to().x() > -5);
    assertThat(cuts)
        .noneMatch(way -> way.from().y() < -2 && way.to().y() < -2)
        .noneMatch(way -> way.from().x() < -2 && way.to().x() < -2);
  }

  /** With what is kept on the right: round the window to the left, round the piece to the right. */
  @Test
  void climbsWithWhatIsKeptOnItsRight() {
    assertThat(cuts(routing("skin", "climb"))).allMatch(way -> turnsAway(way, -1));
    assertThat(cuts(routing("skin", "conventional"))).allMatch(way -> turnsAway(way, 1));
  }

  /** Whether what is kept lies to a side of the middle of a way, 1 left. */
  private static boolean turnsAway(Way way, int side) {
    double dx = (way.to().x() - way.from().x()) / way.length();
    double dy = (way.to().y() - way.from().y()) / way.length();
    Coordinate beside =
        new Coordinate(
            (way.from().x() + way.to().x()) / 2 - side * dy * 3.5,
            (way.from().y() + way.to().y()) / 2 + side * dx * 3.5);
    boolean offTheSheet = beside.x < 0 || beside.y < 0;
    return offTheSheet || kept().contains(new GeometryFactory().createPoint(beside));
  }

  @Test
  void aSkinStaysEverywhere() {
    DrillProgram program = routing("skin", "climb");
    assertThat(Playback.of(program.moves()).stream().mapToDouble(way -> way.to().z()).min())
        .hasValueCloseTo(0.5, within(1e-9));
    assertThat(cuts(program).stream().map(way -> Math.round(way.to().z() * 1000)).distinct())
        .contains(13_625L, 9250L, 4875L, 500L);
  }

  /** Of the lowest level three tabs at least are left out round the window, 12 and 6 mm long. */
  @Test
  void tabsStayUp() {
    List<Way> held =
        cuts(routing("tabs", "climb")).stream()
            .filter(way -> way.from().z() == 4 && way.to().z() == 4)
            .toList();
    assertThat(held).hasSizeGreaterThanOrEqualTo(5);
    assertThat(held).allMatch(way -> way.length() <= 18.001);
    assertThat(cuts(routing("tabs", "climb")).stream().mapToDouble(way -> way.to().z()).min())
        .hasValueCloseTo(-0.5, within(1e-9));
  }

  /** A ramp of one in ten goes down 1 mm in 10. */
  @Test
  void entersAlongARamp() {
    for (Way way : cuts(routing("skin", "climb"))) {
      if (way.to().z() < way.from().z()) {
        assertThat((way.from().z() - way.to().z()) / way.length()).isLessThan(0.101);
      }
    }
  }

  /** Both windows before both outlines; the pieces are held by nothing else. */
  @Test
  void cutsTheOpeningsOfAllPiecesBeforeAnyOutline() {
    String window = "[[cutout]]\nfacet = \"%s\"\nleft = 400\nlow = 400\nwidth = 99\nheight = 99\n";
    String toml =
        """
        [[facet]]
        name = "low"
        width = 900
        length = 900
        [[facet]]
        name = "high"
        width = 900
        length = 900
        [inserts]
        pattern = "lines"
        columns = [100, 150]
        rows = [120, 150]
        [nesting]
        cut-with = "router"
        [[tool]]
        kind = "end-mill"
        diameter = 6
        length = 22
        [machine]
        outlines = "skin"
        """;
    String both = toml + window.formatted("low") + window.formatted("high");
    DrillProgram program = DrillPrograms.of((ApprovedLayout) Walls.judged(both)).get(0);
    List<Double> lengths =
        cuts(program).stream()
            .filter(way -> way.from().z() == 0.5 && way.to().z() == 0.5)
            .map(Way::length)
            .toList();
    assertThat(lengths).filteredOn(length -> length > 500).hasSizeGreaterThanOrEqualTo(4);
    int firstOutline = 0;
    while (lengths.get(firstOutline) < 94) {
      firstOutline++;
    }
    long around = lengths.stream().skip(firstOutline).filter(length -> length < 50).count();
    assertThat(around).isLessThan(firstOutline);
  }
}
