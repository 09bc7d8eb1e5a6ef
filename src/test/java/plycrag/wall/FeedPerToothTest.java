package plycrag.wall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.Tool.Kind;

/**
 * The samples for router shops take chips as a published chart asks: "Recommended Feeds and Speeds
 * for Solid Carbide Router Bits", a tool merchant's (asttooling.com, speeds-and-feeds charts),
 * column plywood, for cuts as deep as the bit is wide, which no pass of a sample exceeds.
 */
class FeedPerToothTest {
  private static final double INCH = 25.4;

  /** From the chart: a bit's diameter, and the least and the greatest feed per tooth, inches. */
  private static final NavigableMap<Double, double[]> PLYWOOD =
      new TreeMap<>(
          Map.of(
              0.125, new double[] {0.003, 0.005},
              0.25, new double[] {0.006, 0.009},
              0.375, new double[] {0.015, 0.018},
              0.5, new double[] {0.018, 0.021}));

  private static List<Tool> mills(String text) {
    List<Tool> mills = new ArrayList<>(Walls.laidOut(text).wall().machine().equipment().tools());
    mills.removeIf(tool -> tool.kind() != Kind.END_MILL);
    return mills;
  }

  @ParameterizedTest
  @ValueSource(strings = {"barge-room", "scull-rack"})
  void isAsTheChartAsks(String sample) {
    List<Tool> mills = mills(TestFiles.read(Path.of("params", sample + ".toml")));
    assertThat(mills).isNotEmpty();
    for (Tool mill : mills) {
      assertThat(mill.feedPerTooth().orElseThrow() / INCH)
          .isBetween(charted(mill.diameter(), 0), charted(mill.diameter(), 1));
      assertThat(mill.steps().pass()).isLessThanOrEqualTo(mill.diameter());
    }
  }

  /** Evenly between the chart's diameters, inches. */
  private static double charted(double diameter, int which) {
    Map.Entry<Double, double[]> below = PLYWOOD.floorEntry(diameter / INCH);
    Map.Entry<Double, double[]> above = PLYWOOD.higherEntry(diameter / INCH);
    double part = (diameter / INCH - below.getKey()) / (above.getKey() - below.getKey());
    return below.getValue()[which] + part * (above.getValue()[which] - below.getValue()[which]);
  }

  @Test
  void isNotKnownWithoutEdges() {
    String tool = "[[facet]]\n[[tool]]\nkind = \"end-mill\"\ndiameter = 6\nlength = 22\n";
    assertThat(mills(tool).get(0).feedPerTooth()).isEmpty();
    assertThat(mills(tool + "flutes = 2\nspeed = 15000\n").get(0).feedPerTooth()).contains(0.05);
  }
}
