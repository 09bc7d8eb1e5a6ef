package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import plycrag.files.OutputFile;
import plycrag.layout.sheets.OffcutPart;
import plycrag.units.Decimal;

/** Strips that were laid on what sheets leave over are cut with the pieces. */
class OffcutsCutTest {
  private static final double RADIUS = 3;

  /** The sheets part at a fold by 9.3 mm: a strip covers that. */
  private static final String WALL =
      """
      [wall]
      name = "Boat shed"
      fold-edges = "square"
      width = 2000
      [[facet]]
      name = "low"
      angle = 30
      length = 1000
      [[facet]]
      name = "high"
      angle = 0
      length = 1000
      [inserts]
      when-blocked = "drop"
      [nesting]
      cut-with = "router"
      [machine]
      outlines = "tabs"
      [[tool]]
      kind = "end-mill"
      diameter = 6
      length = 22
      speed = 18000
      """;

  private static final Design.Judged JUDGED = (Design.Judged) Designs.of("shed.toml", WALL);
  private static final List<OutputFile> FILES = Deliverable.programs(JUDGED);

  private static OffcutPart part() {
    List<OffcutPart> parts = JUDGED.checked().layout().offcuts().parts();
    assertThat(parts).hasSize(1);
    assertThat(parts.get(0).sheet()).isPresent();
    return parts.get(0);
  }

  private static String text(OutputFile file) {
    return new String(file.content(), StandardCharsets.UTF_8);
  }

  /** Where the cutter turns round the corner that lies within the sheet, as programs write it. */
  private static String corner() {
    Envelope place = part().place();
    return " X"
        + written(place.getMaxX() + RADIUS)
        + " Y"
        + written(place.getMaxY() + RADIUS)
        + " ";
  }

  private static String written(double length) {
    String number = Decimal.of(length, 3);
    return number.contains(".") ? number : number + ".";
  }

  @Test
  void aCoverStripIsCutOut() {
    String cuts =
        FILES.stream()
            .filter(file -> file.path().contains("sheet-" + part().sheet().orElseThrow() + "-"))
            .map(OffcutsCutTest::text)
            .reduce("", String::concat);
    assertThat(cuts).contains(corner());
  }

  @Test
  void oneThatIsNotCutIsTold() {
    List<OutputFile> changed = new ArrayList<>();
    for (OutputFile file : FILES) {
      String text = text(file);
      int at = text.indexOf(corner());
      int begin = text.lastIndexOf("\nG0 X", Math.max(at, 0));
      int end = text.indexOf("\nG0 Z43.\nM5", Math.max(at, 0));
      changed.add(
          at < 0 || !file.path().endsWith(".ngc")
              ? file
              : OutputFile.text(file.path(), text.substring(0, begin) + text.substring(end)));
    }
    assertThat(changed).isNotEqualTo(FILES);
    assertThatThrownBy(() -> ProgramRelease.require(JUDGED.checked().layout(), changed))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("offcut " + part().mark() + " is not cut");
  }
}
