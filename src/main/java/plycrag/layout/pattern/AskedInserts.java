package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Point;

/**
 * The inserts that the patterns of a facet ask for, where they are set out.
 *
 * @param inserts without marks, from below
 * @param settings how they came to their places: the facet's own, then zone by zone
 */
public record AskedInserts(List<Insert> inserts, List<PatternOutcome> settings) {
  /** In the order of reading. */
  static final Comparator<Insert> FROM_BELOW =
      Comparator.comparingDouble((Insert insert) -> insert.centre().getY())
          .thenComparingDouble(insert -> insert.centre().getX());

  public AskedInserts {
    inserts = List.copyOf(inserts);
    settings = List.copyOf(settings);
  }

  /**
   * Those of a facet and its zones.
   *
   * @param areas the facet's own, then its zones
   * @param setOut of the facet's own pattern, if it has lines
   * @param around what stands in their way, with the frame as it is
   */
  public static AskedInserts of(
      List<PatternArea> areas, Optional<AreaSetOut> setOut, InsertSurroundings around) {
    List<AskedInserts> asked = new ArrayList<>();
    for (PatternArea area : areas) {
      Optional<AreaSetOut> own =
          area.zone().isPresent() && area.pattern().hasLines()
              ? Optional.of(AreaSetOut.ofZone(area, around))
              : setOut.filter(one -> one.area().equals(area));
      asked.add(
          own.filter(one -> area.pattern().hasLines())
              .map(one -> of(one.keepingMost(around)))
              .orElseGet(() -> of(area, own, around)));
    }
    return areas.size() == 1 ? asked.get(0) : together(areas, asked);
  }

  private static AskedInserts together(List<PatternArea> areas, List<AskedInserts> parts) {
    return new AskedInserts(
        IntStream.range(0, parts.size())
            .boxed()
            .flatMap(
                at ->
                    parts.get(at).inserts().stream()
                        .map(insert -> insert.countedIn(areas.get(at).words())))
            .sorted(FROM_BELOW)
            .toList(),
        parts.stream().flatMap(part -> part.settings().stream()).toList());
  }

  private static AskedInserts of(AreaSetOut setOut) {
    return new AskedInserts(setOut.lines().inserts(), List.of(setOut.told()));
  }

  /** Those of a pattern without lines, for which members may have moved all the same. */
  private static AskedInserts of(
      PatternArea area, Optional<AreaSetOut> setOut, InsertSurroundings around) {
    return switch (area.pattern().kind()) {
      case SCATTER -> scattered(area, new ScatterPattern(area).inserts(around));
      case FILE -> placed(area, setOut, new PlacedPattern(area, around));
      case NONE -> new AskedInserts(List.of(), List.of(setting(area, 0)));
      case GRID, OFFSET, DENSITY, LINES ->
          throw new IllegalStateException("a pattern with lines was not set out");
    };
  }

  private static AskedInserts scattered(PatternArea area, List<Insert> inserts) {
    return new AskedInserts(inserts, List.of(setting(area, inserts.size())));
  }

  private static AskedInserts placed(
      PatternArea area, Optional<AreaSetOut> setOut, PlacedPattern pattern) {
    List<Point> asked = area.listed();
    List<Point> places = pattern.places();
    List<PatternOutcome.Move> moves = new ArrayList<>();
    List<Insert> inserts = new ArrayList<>();
    for (int at = 0; at < asked.size(); at++) {
      inserts.add(new Insert(places.get(at), 0, 0));
      if (!asked.get(at).equals(places.get(at))) {
        moves.add(new PatternOutcome.Move(asked.get(at), places.get(at)));
      }
    }
    PatternOutcome setting =
        new PatternOutcome(
            area.name(),
            area.pattern(),
            setOut.map(AreaSetOut::membersTold).orElse(List.of()),
            moves,
            asked.size(),
            setOut.map(AreaSetOut::blocked).orElseGet(() -> pattern.blocked(asked)));
    return new AskedInserts(inserts.stream().sorted(FROM_BELOW).toList(), List.of(setting));
  }

  private static PatternOutcome setting(PatternArea area, int asked) {
    return new PatternOutcome(area.name(), area.pattern(), List.of(), List.of(), asked, 0);
  }
}
