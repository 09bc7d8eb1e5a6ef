package plycrag.drawing.flat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.document.TextSize;
import plycrag.drawing.WordsApart;
import plycrag.geometry.Shapes;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;

class FrameLabelsTest {

  /** A front view has the facet's own coordinates. */
  @ParameterizedTest
  @ValueSource(strings = {"window-bay", "cox-slab", "oar-loft"})
  void marksStandOnNoOtherTimberAndOnNoOtherMark(String sample) throws IOException {
    CheckedLayout checked = Walls.judged(Files.readString(Path.of("params", sample + ".toml")));
    for (FacetLayout facet : checked.layout().facets()) {
      Drawing drawing = FrameView.of(checked, facet);
      WordsApart.check(drawing);
      for (Member member : facet.members()) {
        Polygon words = Shapes.rectangle(box(drawing, member.mark()));
        assertThat(facet.members())
            .filteredOn(other -> !other.equals(member))
            .allSatisfy(
                other ->
                    assertThat(other.footprint().intersects(words))
                        .as(member.mark() + " on " + other.mark())
                        .isFalse());
      }
    }
  }

  private static Envelope box(Drawing drawing, String mark) {
    List<Shape.Label> labels =
        drawing.shapes().stream()
            .filter(Shape.Label.class::isInstance)
            .map(Shape.Label.class::cast)
            .filter(label -> label.text().equals(mark))
            .toList();
    assertThat(labels).as(mark).hasSize(1);
    Shape.Label label = labels.get(0);
    double width = TextSize.width(mark, label.height()) * drawing.scale();
    double height = label.height() * drawing.scale();
    Envelope box = new Envelope(label.at().x(), label.at().x(), label.at().y(), label.at().y());
    boolean upright = Math.abs(label.turn()) > 45;
    box.expandBy((upright ? height : width) / 2, (upright ? width : height) / 2);
    return box;
  }
}
