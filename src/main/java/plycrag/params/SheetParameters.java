package plycrag.params;

import java.util.Optional;

/**
 * The stock sheets and how they are laid.
 *
 * @param length the longer side as bought, mm
 * @param width the shorter side, mm
 * @param thickness as measured, mm
 * @param lay which way, if the user has a wish
 * @param seamGap left between neighbouring pieces, mm
 * @param leastWidth no piece narrower than this is made where two can share, mm
 */
public record SheetParameters(
    double length,
    double width,
    double thickness,
    Optional<Lay> lay,
    double seamGap,
    double leastWidth) {

  /** Which way the long side of a sheet runs. */
  public enum Lay {
    /** Along u. */
    ACROSS,
    /** Along v. */
    UP
  }
}
