package plycrag.solve.frame;

/** A part that has stiffness. Matrices are square, row by row, over its own freedoms. */
sealed interface Element permits BeamPiece, Link {
  /** The numbers of its freedoms; one may come twice. */
  int[] freedoms();

  /** How it resists, N/mm and N mm. */
  double[] stiffness();

  /** How a tension of 1 N in it resists besides. */
  double[] stressStiffness();

  /** Its mean tension under motions of all freedoms, N. */
  double axial(double[] motions);
}
