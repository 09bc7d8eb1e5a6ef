package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.files.OutputFile;

/** What pieces are cut to is checked as strictly as where their holes are. */
class OutlineCheckTest {
  /** A raked piece with a round window and a square one with an oblong window, on one sheet. */
  private static final String WALL =
      """
      [[facet]]
      name = "low"
      width = 1100
      length = 900
      [[facet]]
      name = "high"
      outline = [[0, 0], [1100, 0], [1100, 1000], [0, 800]]
      [[cutout]]
      facet = "high"
      centre = [500, 420]
      diameter = 160
      [[cutout]]
      facet = "low"
      left = 400
      low = 400
      width = 99
      height = 60
      [inserts]
      pattern = "lines"
      columns = [100, 250]
      rows = [120, 250]
      when-blocked = "drop"
      [nesting]
      cut-with = "router"
      %s
      [[tool]]
      kind = "end-mill"
      diameter = 6
      length = 22
      speed = 18000
      [machine]
      """;

  private static Design.Judged wall(String nesting, String machine) {
    String text = WALL.formatted(nesting) + machine;
    return (Design.Judged) Designs.of("wall.toml", text);
  }

  private static void check(Design.Judged wall, List<OutputFile> files) {
    ProgramRelease.require(wall.checked().layout(), files);
  }

  private static List<OutputFile> changed(List<OutputFile> files, UnaryOperator<String> change) {
    List<OutputFile> all = new ArrayList<>();
    for (OutputFile file : files) {
      String text = new String(file.content(), StandardCharsets.UTF_8);
      all.add(
          file.path().endsWith(".ngc") ? OutputFile.text(file.path(), change.apply(text)) : file);
    }
    return all;
  }

  /** Delivering checks; the programs do cut sideways. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "outlines = \"tabs\"",
        "outlines = \"skin\"",
        "outlines = \"tabs\"\ncut-direction = \"conventional\"",
        "outlines = \"tabs\"\nz-zero = \"sheet-top\"\norigin = \"upper-right\"",
        "outlines = \"skin\"\nprogram-unit = \"in\"\narcs = true"
      })
  void whatIsCutOutPasses(String machine) {
    for (String nesting : List.of("", "face-up = \"back\"", "grain = \"free\"")) {
      Design.Judged wall = wall(nesting, machine);
      assertThat(wall.checked().findings()).noneMatch(finding -> finding.isError());
      assertThat(Deliverable.programs(wall).stream().filter(file -> file.path().endsWith(".ngc")))
          .isNotEmpty()
          .allMatch(
              file -> new String(file.content(), StandardCharsets.UTF_8).contains("OUTLINES"));
    }
  }

  /** Of each kind of fault one, the places by hand: 0.02 mm is twice what is allowed. */
  @Test
  void whatIsNotToSizeIsRefused() {
    Design.Judged wall = wall("", "outlines = \"skin\"");
    List<OutputFile> files = Deliverable.programs(wall);
    refuses(wall, changed(files, text -> moved(text, "0.02")), "piece P");
    refuses(wall, changed(files, text -> moved(text, "-0.02")), "piece P");
    refuses(wall, changed(files, text -> text.replace("Z0.5", "Z0.6")), "is not cut at ");
    refuses(wall, changed(files, text -> text.replace("Z0.5", "Z0.4")), " to Z0.4");
  }

  private static void refuses(Design.Judged wall, List<OutputFile> files, String sentence) {
    assertThatThrownBy(() -> check(wall, files))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(sentence);
  }

  /** The farthest X of a program moved to the right. */
  private static String moved(String text, String by) {
    Matcher x = Pattern.compile("X(-?[0-9.]+)").matcher(text);
    BigDecimal greatest = BigDecimal.ZERO;
    while (x.find()) {
      greatest = greatest.max(new BigDecimal(x.group(1)));
    }
    String there = "X" + greatest.stripTrailingZeros().toPlainString();
    String moved = "X" + greatest.add(new BigDecimal(by)).toPlainString();
    return text.replaceAll(Pattern.quote(there) + "\\.?(?![0-9])", moved);
  }

  /** Between the holes and between the pieces' windows; the way across is lifted, or it fails. */
  @Test
  void whatLeadsOverAClampIsLifted() {
    String clamp =
        "\n[[keep-out]]\nname = \"screw\"\nleft = 165\nlow = 100\nwidth = 20\nheight = 200\nrise = 8\n";
    Design.Judged wall = wall("", "outlines = \"skin\"" + clamp);
    List<OutputFile> files = Deliverable.programs(wall);
    refuses(
        wall,
        changed(files, text -> text.replaceAll("(?<=\n)G0 Z43.\n(?=G0 X)", "G0 Z23.\n")),
        "the tool meets what it must keep out of");
  }
}
