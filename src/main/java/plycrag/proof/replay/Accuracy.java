package plycrag.proof.replay;

/**
 * How true a program has to be: what the self-check lets pass, the only place for it. These are
 * bounds that are promised, no roundings of ours; what counts as nothing is in {@link
 * plycrag.geometry.Tolerance}.
 */
final class Accuracy {
  /** More than half of the last of three decimals, in inches of four, mm: for one coordinate. */
  static final double DIGIT = 0.002;

  /**
   * How far a centre, a bottom or a letter may be off, mm: programs have three decimals in
   * millimetres, four in inches, which is 0.0018 mm aslant, and places lie on a grid of 1 µm.
   */
  static final double PLACE = 0.003;

  /** To what size holes bored by arcs or short moves, pieces and openings are cut, mm. */
  static final double SIZE = 0.01;

  /** How near the bottom is the bottom, and how near a bored circle on it, mm. */
  static final double ON = 0.005;

  /** How far a straight move may stand off the circle that it bores, mm. */
  static final double SHORT = 0.05;

  /**
   * How much farther one end of an arc may be from the centre than the other, mm. Three decimals
   * may come to 0.002; common controllers refuse more than this (from memory).
   */
  static final double OUT_OF_ROUND = 0.005;

  /** How far a chord may stand off the arc that it is read as, mm. */
  static final double CHORD = 0.0005;

  /** Half of the last digit of feeds and speeds, of inches too, mm/min and turns a minute. */
  static final double RATE = 0.02;

  /** Half of the last digit of a wait, seconds. */
  static final double WAIT = 0.0005;

  private Accuracy() {}
}
