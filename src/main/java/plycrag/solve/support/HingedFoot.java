package plycrag.solve.support;

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
   */
  public static SupportFrame of(SupportSite site, double behind, double height) {
    SupportFrame.Draft draft = new SupportFrame.Draft();
    double ledgerFace = site.hindmost() - behind + site.breadth();
    BackEdge kick = site.backs().get(0);
    if (!kick.takesLevel()) {
      draft.tooSteep(kick);
    } else if (kick.high().z() < site.depth()) {
      draft.notHeld(kick, Unheld.Cause.TOO_LOW, kick.high().z(), site.depth());
    } else {
      FixedTies.addLevel(site, kick, ledgerFace, draft);
    }
    double half = site.depth() / 2;
    site.ledgers(site.stations(), ledgerFace, height - half, height + half, site.breadth())
        .forEach(draft::add);
    return draft.frame();
  }
}
