package plycrag.drawing.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Layer;
import plycrag.document.Shape;
import plycrag.drawing.pen.OperationLayers;
import plycrag.files.dxf.DxfVersion;
import plycrag.files.dxf.DxfWriter;
import plycrag.files.lint.DxfLint;
import plycrag.layout.sheets.WorkedFace;

class SheetCutTest {
  /** A piece that is cut from a sheet by a router, with heads let in and written behind. */
  private static final String WALL =
      """
      [[facet]]
      name = "low"
      width = 1100
      length = 900
      [[cutout]]
      left = 400
      low = 400
      width = 99
      height = 60
      [inserts]
      when-blocked = "drop"
      [nesting]
      cut-with = "router"
      edge-trim = 40
      [machine]
      outlines = "skin"
      screw-holes = "countersunk"
      marks = "behind"
      spindle-speed = 18000
      [[tool]]
      diameter = 12
      length = 30
      [[tool]]
      diameter = 5
      length = 30
      [[tool]]
      kind = "end-mill"
      diameter = 6
      length = 22
      [[tool]]
      kind = "countersink"
      diameter = 12
      length = 10
      point-angle = 82.5
      [[tool]]
      kind = "engraver"
      diameter = 6
      length = 6
      [[tool]]
      diameter = 6
      length = 30
      [output]
      """;

  private static Drawing drawing(String output, boolean last) {
    CheckedLayout checked = Walls.judged(WALL + output);
    WorkedFace face =
        checked.layout().faces().stream()
            .filter(one -> one.isLast() == last)
            .findFirst()
            .orElseThrow();
    return SheetCut.of(
        checked,
        face,
        new OperationLayers(Walls.parameters(WALL + output).output().layers()),
        "0123ABCD");
  }

  private static Set<String> layers(Drawing drawing) {
    Set<String> names = new TreeSet<>();
    drawing.layers().forEach(layer -> names.add(layer.name()));
    return names;
  }

  @Test
  void everyOperationHasItsLayer() {
    assertThat(layers(drawing("", true)))
        .containsExactly(
            "BORE_12_0_THROUGH",
            "BORE_5_0_THROUGH",
            "CSK_9_0_ANGLE_82_5",
            "NOT_FOR_CUTTING",
            "NOT_FOR_CUTTING_SHEET",
            "OPENING_THROUGH_INSIDE",
            "OUTLINE_THROUGH");
    assertThat(layers(drawing("", false)))
        .containsExactly(
            "ENGRAVE_DEPTH_0_4",
            "NOT_FOR_CUTTING",
            "NOT_FOR_CUTTING_SHEET",
            "PIN_6_0_THROUGH_BOARD_8_0");
  }

  @Test
  void theUserNamesAndColoursLayers() {
    Drawing drawing =
        drawing(
            "layer-bore = \"DRILL_{diameter}\"\nlayer-outline = \"PROFILE\"\ndxf-colours = true",
            true);
    assertThat(layers(drawing))
        .contains("DRILL_12_0", "DRILL_5_0", "PROFILE")
        .doesNotContain("OUTLINE_THROUGH");
    Set<Integer> colours = new TreeSet<>();
    drawing.layers().stream()
        .filter(layer -> !layer.name().startsWith("NOT_FOR_CUTTING"))
        .map(Layer::colour)
        .forEach(colours::add);
    assertThat(colours).hasSize(4).doesNotContain(0);
  }

  /** A shop may want all cuts on one layer; a layer has one pen and one colour. */
  @Test
  void operationsMayShareALayer() {
    Drawing drawing =
        drawing(
            "layer-bore = \"CUT\"\nlayer-outline = \"CUT\"\nlayer-opening = \"CUT\"\n"
                + "dxf-colours = true",
            true);
    assertThat(layers(drawing)).contains("CUT");
    assertThat(DxfLint.faults(DxfWriter.write(drawing, DxfVersion.R2000))).isEmpty();
  }

  @Test
  void plainHasAllCutsOnLayerZeroAndNothingElse() {
    Drawing plain = drawing("dxf-layers = \"plain\"", true);
    assertThat(layers(plain)).containsExactly("0");
    long cuts =
        drawing("", true).shapes().stream()
            .filter(shape -> !shape.layer().name().startsWith("NOT_FOR_CUTTING"))
            .count();
    assertThat(plain.shapes()).hasSize((int) cuts).noneMatch(Shape.Label.class::isInstance);
    assertThat(plain.remarks()).isNotEmpty();
  }

  /** In words that nothing cuts, and in comments. */
  @Test
  void aDrawingSaysWhatItIs() {
    Drawing drawing = drawing("", true);
    assertThat(drawing.remarks())
        .contains(
            "wall, revision 0123ABCD",
            "Sheet S1, front face up, face 2 of 2, turned over left to right",
            "Stock 2440 x 1220 x 18 thick, all in millimetres");
    assertThat(drawing.shapes().stream().filter(Shape.Label.class::isInstance))
        .allMatch(label -> label.layer().name().equals("NOT_FOR_CUTTING"))
        .extracting(label -> ((Shape.Label) label).text())
        .containsExactlyElementsOf(drawing.remarks());
    assertThat(DxfWriter.write(drawing, DxfVersion.R12))
        .startsWith("999\nwall, revision 0123ABCD\n");
  }
}
