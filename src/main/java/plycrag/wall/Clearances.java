package plycrag.wall;

/**
 * The least distances that must remain, mm.
 *
 * @param flange round an insert's flange
 * @param boltToTimber from the bolt zone to the timber behind
 * @param barrelToFace from the end of an insert's barrel to the climbing face
 * @param screw round a screw
 * @param point round its point
 */
public record Clearances(
    Flange flange, double boltToTimber, double barrelToFace, Screw screw, ScrewPoint point) {

  /**
   * What must remain round an insert's flange, mm.
   *
   * @param toTimber behind
   * @param toEdge of its piece
   * @param toFlange of another insert
   */
  public record Flange(double toTimber, double toEdge, double toFlange) {}

  /**
   * What must remain round a screw, mm.
   *
   * @param toFlange from its thread to an insert's flange
   * @param toSheetEdge from its centre to the edge of its piece
   * @param toMemberEdge from its centre to the edge of its member
   * @param toMemberEnd from its centre to the end of its member
   */
  public record Screw(
      double toFlange, double toSheetEdge, double toMemberEdge, double toMemberEnd) {}

  /**
   * What must remain before and behind a screw's point, mm.
   *
   * @param penetration into the timber
   * @param toFarSide of the timber
   */
  public record ScrewPoint(double penetration, double toFarSide) {}
}
