package plycrag.finding;

/** Where a finding is. */
public sealed interface Place {

  /**
   * A place in a file that a user wrote.
   *
   * @param file the file as the user named it
   * @param line from 1
   * @param column from 1
   */
  record InFile(String file, int line, int column) implements Place {}

  /**
   * A place on a facet.
   *
   * @param facet the facet's name
   * @param u across from the facet's left edge, mm
   * @param v up from its lower edge, mm
   */
  record OnFacet(String facet, double u, double v) implements Place {}

  /** The wall as a whole. */
  record WholeWall() implements Place {}
}
