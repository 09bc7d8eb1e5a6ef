package plycrag.check.structure;

import plycrag.layout.structure.Combination;
import plycrag.layout.structure.JointPath;

/** What holds a joint, held against the forces that go through it. */
interface JointCheck {
  /** In words. */
  String words();

  /** Where its formula stands. */
  String clause();

  /**
   * What it has to bear of forces on a way through the joint, N.
   *
   * @param path the way
   * @param passed what goes it
   */
  double demand(JointPath path, JointPath.Passed passed);

  /** What it bears as a design value, N. */
  double capacity(Combination combination);

  /** Where what it bears is from. */
  String source();

  /** Of a utilisation. */
  LineStatus status(double utilisation);
}
