package plycrag.wall;

import plycrag.units.LengthUnit;

/**
 * The wall as a whole.
 *
 * @param name printed everywhere
 * @param unit what bare numbers in the file mean and what a tape reads
 * @param raise height of the lowest facet's lower edge above the floor, vertical, mm
 * @param foldEdges how what meets at a fold is cut
 * @param behind what reaches the back of the finished wall
 * @param mirrored whether it is built the other way round, left for right
 */
public record GivenWall(
    String name,
    LengthUnit unit,
    double raise,
    FoldEdges foldEdges,
    Behind behind,
    boolean mirrored) {

  /** What reaches the back of a finished wall. */
  public enum Behind {
    /** A person. */
    WALK_IN,
    /** An arm, from the sides. */
    REACH,
    /** Nothing. */
    NONE
  }

  /** How what meets at a fold is cut. */
  public enum FoldEdges {
    /** In the plane that halves the fold, so that everything meets. */
    MITRED,
    /** Square; what would meet behind the fold stops short of it. */
    SQUARE
  }
}
