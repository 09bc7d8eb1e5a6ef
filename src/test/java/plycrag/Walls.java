package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import plycrag.check.CheckedLayout;
import plycrag.check.Inspection;
import plycrag.drawing.Portfolio;
import plycrag.layout.Layout;
import plycrag.layout.LayoutPlan;
import plycrag.prices.PriceList;
import plycrag.read.ParameterFile;
import plycrag.read.Parameters;
import plycrag.read.Reading;
import plycrag.read.WallMaker;
import plycrag.read.lists.PositionFile;
import plycrag.stock.StickPlan;
import plycrag.wall.InsertPosition;

/** Makes walls from the text of parameter files. */
public final class Walls {
  private static final Map<Path, Layout> SAMPLES = new ConcurrentHashMap<>();
  private static final Map<Path, CheckedLayout> JUDGED = new ConcurrentHashMap<>();

  private static final Map<Path, StickPlan> STICKS = new ConcurrentHashMap<>();
  private static final Map<Path, Portfolio> PORTFOLIOS = new ConcurrentHashMap<>();

  private Walls() {}

  /** What a text says; it must say nothing wrong. */
  public static Parameters parameters(String toml) {
    Reading<Parameters> reading = ParameterFile.read("wall.toml", TestFiles.bytes(toml));
    assertThat(reading.findings()).isEmpty();
    return reading.value().orElseThrow();
  }

  /** The layout of a text's wall; a list of positions that it names lies beside the samples. */
  public static Layout laidOut(String toml) {
    Parameters parameters = parameters(toml);
    return LayoutPlan.of(WallMaker.of(parameters, positions(parameters)));
  }

  /** The layout of a published parameter file, made once. */
  public static Layout sample(Path file) {
    return SAMPLES.computeIfAbsent(file, path -> laidOut(TestFiles.read(path)));
  }

  private static List<InsertPosition> positions(Parameters parameters) {
    return parameters
        .inserts()
        .positions()
        .map(file -> TestFiles.read(Path.of("params", file)))
        .map(text -> PositionFile.read("list.csv", TestFiles.bytes(text), parameters))
        .flatMap(Reading::value)
        .orElse(List.of());
  }

  /** A text whose pattern stays where it asks to be, unless it says otherwise itself. */
  public static String asAsked(String toml) {
    return toml.contains("when-blocked")
        ? toml
        : (toml.contains("[inserts]") ? toml : toml + "\n[inserts]\n")
            .replace("[inserts]", "[inserts]\nwhen-blocked = \"report\"");
  }

  /** The verdict on a text's wall. */
  public static CheckedLayout judged(String toml) {
    return Inspection.of(laidOut(toml));
  }

  /** All views of a wall, its sticks planned without prices. */
  public static Portfolio portfolio(CheckedLayout checked) {
    return Portfolio.of(checked, StickPlan.of(checked, PriceList.empty()));
  }

  /** All views of a published parameter file's wall, drawn once. */
  public static Portfolio portfolio(Path sample) {
    return PORTFOLIOS.computeIfAbsent(sample, path -> Portfolio.of(judged(path), sticks(path)));
  }

  /** How its sticks are cut, planned once without prices. */
  public static StickPlan sticks(Path sample) {
    return STICKS.computeIfAbsent(sample, path -> StickPlan.of(judged(path), PriceList.empty()));
  }

  /** The verdict on a published parameter file's wall, given once. */
  public static CheckedLayout judged(Path sample) {
    return JUDGED.computeIfAbsent(sample, path -> Inspection.of(sample(path)));
  }
}
