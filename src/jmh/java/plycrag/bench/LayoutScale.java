package plycrag.bench;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plycrag.check.Inspection;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.layout.Layout;
import plycrag.layout.LayoutPlan;
import plycrag.read.ParameterFile;
import plycrag.read.Parameters;
import plycrag.read.WallMaker;
import plycrag.wall.Wall;

/**
 * A hall of about so many inserts in a grid: facets of a thousand inserts on ten sheets each, one
 * beside the other, a hundred at most. Its columns and studs are solved and all else of the layout
 * is made; then the rules of clearance judge it.
 */
@State(Scope.Benchmark)
public class LayoutScale {
  private static final int FACET = 1000;
  private static final int WARM_FACETS = 2;
  private static final int WARM_ROUNDS = 20;
  private static final String CLEARANCE = "clearance";

  @Param({"1000", "3000", "10000", "30000", "100000"})
  int size;

  private Wall wall;

  /** Makes the hall, once small ones have warmed the machine up. */
  @Setup
  public void hall() {
    wall = hall(WARM_FACETS);
    for (int round = 0; round < WARM_ROUNDS; round++) {
      solveAndJudge();
    }
    wall = hall(size / FACET);
  }

  private static Wall hall(int facets) {
    StringBuilder text = new StringBuilder("[inserts]\npattern = \"grid\"\n");
    text.append("pitch-across = 169\npitch-up = 170\nsetback = 80\nwhen-blocked = \"solve\"\n");
    for (int at = 0; at < facets; at++) {
      text.append(
          String.format(
              Locale.ROOT,
              "[[facet]]\nname = \"f%d\"\nangle = 10\nlength = 2440\nwidth = 12200\n",
              at));
      if (at > 0) {
        text.append(
            String.format(
                Locale.ROOT, "beside = \"f%d\"\nturn = %d\n", at - 1, at % 2 == 0 ? 45 : -45));
      }
    }
    byte[] file = text.toString().getBytes(StandardCharsets.UTF_8);
    Parameters parameters = ParameterFile.read("hall.toml", file).value().orElseThrow();
    return WallMaker.of(parameters, List.of());
  }

  /**
   * The layout and what is wrong with its clearances.
   *
   * @throws IllegalStateException if something is, or a tenth of the inserts was left out
   */
  @Benchmark
  public List<Finding> solveAndJudge() {
    Layout layout = LayoutPlan.of(wall);
    List<Finding> findings =
        Inspection.rules().parallelStream()
            .filter(LayoutScale::isOfClearance)
            .flatMap(rule -> rule.findings(layout).stream())
            .toList();
    int inserts = layout.facets().stream().mapToInt(facet -> facet.inserts().size()).sum();
    if (inserts < 0.9 * FACET * layout.facets().size()
        || findings.stream().anyMatch(Finding::isError)) {
      throw new IllegalStateException(inserts + " inserts, " + findings);
    }
    return findings;
  }

  private static boolean isOfClearance(Rule rule) {
    return rule.getClass().getPackageName().endsWith(CLEARANCE);
  }
}
