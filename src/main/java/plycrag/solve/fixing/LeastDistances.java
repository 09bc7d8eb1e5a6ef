package plycrag.solve.fixing;

/** The least distances of screws or bolts of one diameter that are loaded across their length. */
sealed interface LeastDistances permits ScrewDistances, BoltDistances {

  /**
   * Between two along the grain, a1, mm.
   *
   * @param cosine of the angle between the force and the grain
   */
  double alongGrain(double cosine);

  /**
   * Between rows across the grain, a2, mm.
   *
   * @param sine of the angle between the force and the grain
   */
  double acrossGrain(double sine);

  /** To an end that the force may point at, a3,t, mm. */
  double loadedEnd(double cosine);

  /** To a side that the force may point at, a4,t; a4,c where the sine is 0; mm. */
  double loadedEdge(double sine);
}
