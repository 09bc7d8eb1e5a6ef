package plycrag.solve.support;

import java.util.List;

/**
 * A ledger on the building's wall at every level, and from it a tie to the frame at each station.
 */
public final class FixedTies {
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
      double high = site.level(back);
      if (!back.takesLevel()) {
        draft.tooSteep(back);
      } else if (high - site.timber().tie() >= floor) {
        addLevel(site, back, ledgerFace, draft);
        floor = high;
      }
    }
    return draft.frame();
  }

  static void addLevel(
      SupportSite site, BackEdge back, double ledgerFace, SupportFrame.Draft draft) {
    double high = site.level(back);
    List<Double> stations = site.stations(back);
    List<SupportTimber> ledgers =
        site.along(
            TimberUse.LEDGER,
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
