package plycrag.trial;

import java.util.Random;

/**
 * Parameter files at random: mild ones as people draw their rooms, wild ones with anything that the
 * parameters allow within a few metres. One number makes one file, on every machine.
 */
final class TrialFile {
  private TrialFile() {}

  /** The text of a file: of even numbers a mild one, of odd ones a wild one. */
  static String of(long number) {
    return of(number, true);
  }

  /** The same, all of whose facets stand on each other unless there are to be corners. */
  static String of(long number, boolean hasCorners) {
    Random random = new Random(number * 0x9E3779B97F4A7C15L);
    Draft draft = new Draft(random, number % 2 != 0);
    draft.table("wall");
    if (draft.isInInches()) {
      draft.word("unit", "in");
    }
    draft.perhapsLength("raise", 0.4, () -> draft.length(0, draft.isWild() ? 1500 : 400));
    draft.perhaps(0.15, () -> draft.word("fold-edges", draft.of("mitred", "square")));
    draft.perhaps(0.2, () -> draft.word("behind", draft.of("walk-in", "reach", "none")));
    new FacetDrafts(draft, hasCorners && draft.chance(0.5)).write();
    new RoomDrafts(draft).write();
    // Few files ask for everything at once: most faults need little, and hide behind each other.
    if (draft.chance(0.7)) {
      new WorkshopDrafts(draft).write();
    }
    return draft.text();
  }
}
