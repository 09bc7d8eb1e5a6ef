package plycrag.drawing.flat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.drawing.template.SheetCut;
import plycrag.drawing.template.SheetTemplate;
import plycrag.layout.sheets.WorkedFace;

class EngravedStrokesTest {
  private static final CheckedLayout CHECKED =
      Walls.judged(
          """
          [[facet]]
          name = "l"
          length = 1200
          width = 1200
          [machine]
          marks = "engraved"
          mark-depth = 0.5
          [[tool]]
          kind = "engraver"
          diameter = 1
          length = 20
          """);

  /** Of single strokes P takes one, 1 takes two and L one: the shaft and foot of 1 are apart. */
  @Test
  void whatARouterEngravesStandsInItsDrawing() {
    WorkedFace face = CHECKED.layout().faces().get(0);
    assertThat(face.marks()).extracting(mark -> mark.text()).containsExactly("P1 L");
    Envelope room = face.marks().get(0).box();
    for (Drawing drawing :
        List.of(
            SheetCut.of(CHECKED, face),
            SheetTemplate.of(CHECKED, face),
            SheetView.of(CHECKED, face.sheet()))) {
      List<Shape.Path> strokes =
          drawing.shapes().stream()
              .filter(shape -> shape.layer().name().equals("ENGRAVE_DEPTH_0_5"))
              .map(Shape.Path.class::cast)
              .toList();
      assertThat(strokes).as(drawing.title()).hasSize(4);
      assertThat(strokes)
          .allMatch(one -> one.points().stream().allMatch(at -> room.contains(at.x(), at.y())));
    }
  }
}
