package plycrag.wall;

import java.util.Optional;

/**
 * The stock sheets and how they are laid.
 *
 * @param length the longer side as bought, mm
 * @param width the shorter side, mm
 * @param thickness as measured, mm
 * @param laying which way and where they begin
 * @param seams between their pieces
 */
public record Sheet(double length, double width, double thickness, Laying laying, Seams seams) {

  /**
   * How sheets are laid.
   *
   * @param lay which way, if the user has a wish
   * @param bond how the seams of neighbouring rows stand to each other
   * @param start the corner where whole sheets begin, if the user has a wish
   * @param grain which way the face grain runs
   */
  public record Laying(Optional<Lay> lay, Bond bond, Optional<Start> start, Grain grain) {}

  /**
   * The seams between pieces.
   *
   * @param gap left between neighbouring pieces, mm
   * @param leastWidth no piece narrower than this is made where two can share, mm
   * @param drift by how much each sheet of a row may move the next seam, mm; 0 where pieces are
   *     trimmed true
   */
  public record Seams(double gap, double leastWidth, double drift) {}

  /** The same with whole sheets beginning on the other side, where a side is told. */
  Sheet mirrored() {
    Laying image =
        new Laying(
            laying.lay(), laying.bond(), laying.start().map(Start::mirrored), laying.grain());
    return new Sheet(length, width, thickness, image, seams);
  }

  /** How the seams across the long side of the sheets stand to those of the next row. */
  public enum Bond {
    /** On one line. */
    ALIGNED,
    /** Moved by half a sheet. */
    STAGGERED
  }

  /** The corner of a facet where whole sheets begin. */
  public enum Start {
    /** Below, on the left. */
    LOWER_LEFT,
    /** Below, on the right. */
    LOWER_RIGHT,
    /** On top, on the left. */
    UPPER_LEFT,
    /** On top, on the right. */
    UPPER_RIGHT;

    /** Whether whole sheets begin on the left. */
    public boolean isLeft() {
      return this == LOWER_LEFT || this == UPPER_LEFT;
    }

    /** The corner on the other side. */
    public Start mirrored() {
      return switch (this) {
        case LOWER_LEFT -> LOWER_RIGHT;
        case LOWER_RIGHT -> LOWER_LEFT;
        case UPPER_LEFT -> UPPER_RIGHT;
        case UPPER_RIGHT -> UPPER_LEFT;
      };
    }

    /** Whether they begin below. */
    public boolean isLower() {
      return this == LOWER_LEFT || this == LOWER_RIGHT;
    }
  }

  /** What is done to the edges of whole sheets. */
  public enum Edges {
    /** They are trimmed true to the piece's size. */
    TRIMMED,
    /** They are left as bought. */
    AS_BOUGHT
  }

  /** Which way the face grain runs on a sheet as bought. */
  public enum Grain {
    /** Along its long side. */
    ALONG,
    /** Across it. */
    ACROSS
  }

  /** Which way the long side of a sheet runs. */
  public enum Lay {
    /** Along u. */
    ACROSS,
    /** Along v. */
    UP
  }
}
