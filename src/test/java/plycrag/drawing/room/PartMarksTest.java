package plycrag.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Shape;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.skin.Piece;

class PartMarksTest {

  /** A mark that stands on a sheet is the sheet's own; the faces are projected anew. */
  @Test
  void noMarkStandsOnAnothersSheet() {
    CheckedLayout checked =
        Walls.judged(
            """
            [wall]
            width = 3600
            [[facet]]
            name = "kick"
            length = 300
            [[facet]]
            name = "main"
            angle = 20
            length = 2400
            """);
    Map<String, Polygon> faces = faces(checked);
    List<Shape.Label> marks =
        ExplodedView.of(checked).shapes().stream()
            .filter(Shape.Label.class::isInstance)
            .map(Shape.Label.class::cast)
            .filter(label -> label.text().matches("[A-Z]+[0-9]+"))
            .toList();
    assertThat(marks).extracting(Shape.Label::text).containsAll(faces.keySet());
    for (Shape.Label mark : marks) {
      List<String> under =
          faces.entrySet().stream()
              .filter(face -> face.getValue().covers(Shapes.point(mark.at().x(), mark.at().y())))
              .map(Map.Entry::getKey)
              .toList();
      assertThat(under.isEmpty() || under.contains(mark.text()))
          .as(mark.text() + " on " + under)
          .isTrue();
    }
  }

  private static Map<String, Polygon> faces(CheckedLayout checked) {
    Explosion explosion = Explosion.of(checked);
    Map<String, Polygon> faces = new TreeMap<>();
    for (List<FacetLayout> run : checked.layout().runs()) {
      for (int level = 0; level < run.size(); level++) {
        UnaryOperator<Vector3> axes = explosion.sheets(run.get(level), level);
        run.get(level).pieces().forEach(piece -> faces.put(piece.mark(), face(piece, axes)));
      }
    }
    return faces;
  }

  private static Polygon face(Piece piece, UnaryOperator<Vector3> axes) {
    return Shapes.polygon(
        Stream.of(piece.outline().getExteriorRing().getCoordinates())
            .skip(1)
            .map(at -> Axonometry.USUAL.project(axes.apply(new Vector3(at.x, at.y, 0))))
            .toList());
  }
}
