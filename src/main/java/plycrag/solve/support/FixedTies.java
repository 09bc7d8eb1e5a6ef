package plycrag.solve.support;

import java.util.List;
import plycrag.geometry.Direction.Span;

/**
 * A ledger on the building's wall at every level, and from it a tie to the frame at each station.
 */
public final class FixedTies {
  /** By so much more than at the lowest station a frame may reach above its ties (a choice), mm. */
  private static final double FREE = 450;

  /** What a ledger for one station reaches to its sides (a choice), mm. */
  private static final double BESIDE = 200;

  private FixedTies() {}

  /**
   * The support.
   *
   * @param behind from the hindmost of the frame to the building's wall, mm
   */
  public static SupportFrame of(SupportSite site, double behind) {
    SupportFrame.Draft draft = new SupportFrame.Draft();
    double ledgerFace = site.hindmost() - behind + site.timber().ledger();
    double floor = 0;
    for (BackEdge back : site.backs()) {
      double high = site.level(back.atAll(site.stations(back)));
      if (!back.takesLevel()) {
        draft.tooSteep(back);
      } else if (high - site.timber().tie() >= floor) {
        addLevels(site, back, ledgerFace, draft);
        floor = high;
      }
    }
    return draft.frame();
  }

  /**
   * Ties to one facet: level with where it is lowest, and where it rises from there by more than
   * studs may reach freely, once more.
   */
  static void addLevels(
      SupportSite site, BackEdge back, double ledgerFace, SupportFrame.Draft draft) {
    List<Double> stations = site.stations(back);
    while (!stations.isEmpty()) {
      BackEdge lowest = back.atAll(stations);
      addLevel(site, lowest, stations, ledgerFace, draft);
      double held = stations.stream().mapToDouble(back::fall).max().orElse(0);
      stations = stations.stream().filter(x -> held - back.fall(x) > FREE).toList();
    }
  }

  /** A ledger for one station goes on to both sides, so that it can be fixed at two places. */
  private static Span ends(SupportSite site, List<Double> stations) {
    Span over = site.over(stations);
    return stations.size() > 1 ? over : new Span(over.low() - BESIDE, over.high() + BESIDE);
  }

  private static void addLevel(
      SupportSite site,
      BackEdge back,
      List<Double> stations,
      double ledgerFace,
      SupportFrame.Draft draft) {
    double high = site.level(back);
    List<SupportTimber> ledgers =
        site.along(
            TimberUse.LEDGER,
            ends(site, stations),
            stations,
            ledgerFace,
            high - site.timber().ledgerDepth(),
            high,
            site.timber().ledger());
    ledgers.forEach(draft::add);
    for (double x : stations) {
      SupportTimber tie = draft.add(site.tie(x, ledgerFace, back, high));
      draft.add(
          Meeting.end(
              tie,
              site.under(x, ledgers),
              new SectionPlace(ledgerFace, high - site.timber().tie() / 2),
              site.timber().tie()));
      draft.add(site.onFrame(tie, back, high));
    }
  }
}
