package plycrag.solve.fixing;

/** What goes through one member into another beside it, or through both. */
public enum ThroughFastener {
  /** Screws into predrilled timber. */
  SCREW,
  /** Bolts with washers. */
  BOLT;

  LeastDistances of(double diameter) {
    return this == SCREW ? new ScrewDistances(diameter, true) : new BoltDistances(diameter);
  }

  /**
   * The radius of a head, or of a washer (EN 1995-1-1, 10.4.3, from memory: three diameters
   * across), in diameters.
   */
  double head() {
    return this == SCREW ? 1 : 1.5;
  }

  /** None is thinner, mm. */
  double thinnest() {
    return this == SCREW ? 3 : 6;
  }

  /**
   * The sine of the angle at which the force may lie across two parallel members: bolts across a
   * fold hand on what people make on a face as well.
   */
  double acrossParallel() {
    return this == SCREW ? 0 : 1;
  }
}
