package plycrag.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.drawing.pen.Layers;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.Member;

class ExplodedViewTest {
  private static final Axonometry VIEW = Axonometry.USUAL;

  private static Solid box(double left, double behind, double low, double size) {
    return Solid.between(
            Shapes.rectangle(left, low, left + size, low + size),
            behind,
            Shapes.rectangle(left, low, left + size, low + size),
            behind + size)
        .mapped(place -> new Vector3(place.x(), -place.z(), place.y()));
  }

  private static SeenBody seen(Solid solid) {
    return SeenBody.of("A", false, solid, List.of(), VIEW);
  }

  /** Right is to the right, up is up, and what comes nearer sinks, seen from above. */
  @Test
  void theRoomStandsUpright() {
    Coordinate origin = VIEW.project(new Vector3(0, 0, 0));
    assertThat(VIEW.project(new Vector3(1, 0, 0)).x).isGreaterThan(origin.x);
    assertThat(VIEW.project(new Vector3(0, 0, 1)).y).isGreaterThan(origin.y);
    assertThat(VIEW.project(new Vector3(0, 1, 0)).y).isLessThan(origin.y);
    assertThat(VIEW.toViewer().length()).isCloseTo(1, within(1e-9));
  }

  /** Three faces of a box are seen, with twelve edges among them, three of them shared. */
  @Test
  void aBoxShowsThreeFaces() {
    assertThat(seen(box(0, 0, 0, 100)).edges()).hasSize(12);
  }

  @Test
  void whatStandsBeforeHidesAndNotTheOtherWay() {
    SeenBody before = seen(box(0, 0, 0, 100));
    SeenBody behind = seen(box(0, 100, 0, 100));
    SeenBody away = seen(box(5000, 0, 0, 100));
    assertThat(before.mayHide(behind, VIEW.toViewer())).isTrue();
    assertThat(behind.mayHide(before, VIEW.toViewer())).isFalse();
    assertThat(before.mayHide(away, VIEW.toViewer())).isFalse();
  }

  /** No two lines of parts cross: where one passes behind another it is left out. */
  @Test
  void linesOfPartsEndWhereOthersPassInFront() {
    CheckedLayout wall = Walls.judged(TestFiles.text("must-fail/layout/top-row-in-plate.toml"));
    List<LineSegment> lines = new ArrayList<>();
    for (Shape shape : ExplodedView.of(wall).shapes()) {
      boolean part = shape.layer().equals(Layers.PARTS) || shape.layer().equals(Layers.OUTLINE);
      if (part && shape instanceof Shape.Line line) {
        lines.add(new LineSegment(line.from().x(), line.from().y(), line.to().x(), line.to().y()));
      }
    }
    assertThat(lines).hasSizeGreaterThan(20);
    for (int at = 0; at < lines.size(); at++) {
      for (LineSegment other : lines.subList(0, at)) {
        Coordinate cross = lines.get(at).intersection(other);
        assertThat(cross == null || nearEnd(cross, lines.get(at)) || nearEnd(cross, other))
            .as(lines.get(at) + " crosses " + other)
            .isTrue();
      }
    }
  }

  private static boolean nearEnd(Coordinate place, LineSegment line) {
    return Math.min(place.distance(line.p0), place.distance(line.p1)) < 0.1;
  }

  @Test
  void partsThatAreSeenHaveTheirMarks() {
    CheckedLayout wall = Walls.judged("[[facet]]\n");
    Drawing drawing = ExplodedView.of(wall);
    List<String> words =
        drawing.shapes().stream()
            .filter(Shape.Label.class::isInstance)
            .map(shape -> ((Shape.Label) shape).text())
            .toList();
    wall.layout().facets().stream()
        .flatMap(facet -> facet.pieces().stream())
        .forEach(piece -> assertThat(words).contains(piece.mark()));
    assertThat(words).contains("PL2", "ST1");
  }

  /** From before or from behind, each sheet and each member is seen and has its mark. */
  @ParameterizedTest
  @MethodSource("plycrag.TestFiles#samples")
  void everyPartHasItsMarkOnOneSide(Path sample) {
    CheckedLayout checked = Walls.judged(sample);
    Set<String> marks = new TreeSet<>();
    for (Drawing drawing : List.of(ExplodedView.of(checked), ExplodedView.fromBehind(checked))) {
      for (Shape shape : drawing.shapes()) {
        if (shape instanceof Shape.Label label) {
          marks.add(label.text());
        }
      }
    }
    assertThat(marks).containsAll(checked.layout().members().stream().map(Member::mark).toList());
    checked.layout().facets().stream()
        .flatMap(facet -> facet.pieces().stream())
        .forEach(piece -> assertThat(marks).contains(piece.mark()));
  }
}
