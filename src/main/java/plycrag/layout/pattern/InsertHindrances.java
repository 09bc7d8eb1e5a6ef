package plycrag.layout.pattern;

import java.util.List;

/**
 * All that an insert keeps clear of. The set-out, the scatter, what {@code when-blocked} leaves out
 * and the rules read this list and no other.
 *
 * <p>Two things are none of it, because they are no places where an insert may not be:
 *
 * <ul>
 *   <li>Other inserts. Which of two too near to each other is in the way depends on which was
 *       chosen first, so each chooser keeps that distance by itself ({@link
 *       InsertSurroundings#between}), and a rule of its own judges pairs.
 *   <li>The border of a zone. It says whose a place is, and blocks nothing ({@link PatternArea}).
 * </ul>
 */
public final class InsertHindrances {
  /** In the order of their rules. */
  public static final List<Hindrance> ALL =
      List.of(
          new ClearOfTimber(),
          new ClearOfEdge(),
          new WithinPiece(),
          new WithinSetback(),
          new ClearOfScrews());

  private InsertHindrances() {}
}
