package plycrag.solve.support;

import plycrag.geometry.Direction.Span;

/**
 * What holds the lowest facet of a hinged run, and the ledger that the moving part is held by: ties
 * to the building where there is room under its upper edge, else raking braces from the floor.
 */
public final class HingedFoot {
  private HingedFoot() {}

  /**
   * The support.
   *
   * @param behind from the hindmost of the frame to the building's wall, mm
   * @param height where the moving part is held on the building, mm
   * @param past how far the ledger for that goes on beyond the outer stations, so that nothing is
   *     held at its very ends, mm to the left and to the right
   */
  public static SupportFrame of(SupportSite site, double behind, double height, Span past) {
    SupportFrame.Draft draft = new SupportFrame.Draft();
    double ledgerFace = site.hindmost() - behind + site.timber().ledger();
    BackEdge kick = lowest(site);
    if (!kick.takesLevel()) {
      draft.tooSteep(kick);
    } else if (site.level(kick) < site.timber().tie()) {
      double edge = kick.high().z();
      double required = site.edgeFor(kick, site.timber().tie());
      draft.notHeld(kick, Unheld.Cause.TOO_LOW, edge, required);
    } else {
      FixedTies.addLevels(site, kick, ledgerFace, draft);
    }
    double half = site.timber().ledgerDepth() / 2;
    Span over = site.over(site.stations());
    site.along(
            TimberUse.LEDGER,
            new Span(over.low() - past.low(), over.high() + past.high()),
            site.stations(),
            ledgerFace,
            height - half,
            height + half,
            site.timber().ledger())
        .forEach(draft::add);
    return draft.frame();
  }

  private static BackEdge lowest(SupportSite site) {
    BackEdge kick = site.backs().get(0);
    return kick.atAll(site.stations(kick));
  }
}
