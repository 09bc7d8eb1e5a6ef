package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.sheets.OffcutStore.Room;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.Wall;

/**
 * Lays cover strips on what the sheets leave over: each whole on the smallest offcut that takes it,
 * the longest strips first; joined from the longest offcuts where none does; on a further sheet
 * where all of them together do not.
 */
final class CoverStrips {
  /** How far a strip lies on either sheet (common practice, no source), mm. */
  private static final double LAP = 30;

  /** A shorter length is not worth a joint (common practice, no source), mm. */
  private static final double LEAST = 300;

  private CoverStrips() {}

  /** A strip that has no place yet. */
  private record Wanted(Facet facet, Fold fold, double gap, double width, double length) {}

  /**
   * The strips of a wall, facet by facet; none where its sheets leave no gap.
   *
   * @param store which they are cut from
   */
  static List<CoverStrip> laid(Wall wall, OffcutStore store) {
    List<Wanted> wanted = wanted(wall);
    CoverStrip[] laid = new CoverStrip[wanted.size()];
    List<Integer> longestFirst = new ArrayList<>();
    for (int at = 0; at < laid.length; at++) {
      longestFirst.add(at);
    }
    longestFirst.sort(Comparator.comparingDouble((Integer at) -> -wanted.get(at).length()));
    for (int at : longestFirst) {
      laid[at] = lay(wanted.get(at), "CS" + (at + 1), store);
    }
    return List.of(laid);
  }

  private static List<Wanted> wanted(Wall wall) {
    List<Wanted> wanted = new ArrayList<>();
    for (Facet facet : wall.facets()) {
      for (Fold fold : facet.folds()) {
        double gap = wall.foldGap(fold);
        boolean once = fold.place() == Fold.Place.ABOVE || fold.place() == Fold.Place.RIGHT;
        boolean meets = fold.length() >= Tolerance.MARKED;
        if (gap > 0 && once && meets) {
          double width = wall.tape().snapUp(2 * LAP + gap);
          wanted.add(new Wanted(facet, fold, gap, width, Shapes.onGrid(fold.length())));
        }
      }
    }
    return wanted;
  }

  private static CoverStrip lay(Wanted wanted, String mark, OffcutStore store) {
    Optional<List<Room>> found = lengths(wanted, store);
    while (found.isEmpty()) {
      store.addFurther();
      found = lengths(wanted, store);
    }
    List<OffcutPart> parts = new ArrayList<>();
    for (Room room : found.get()) {
      String letter = found.get().size() > 1 ? String.valueOf((char) ('a' + parts.size())) : "";
      parts.add(new OffcutPart(mark + letter, room.sheet(), room.box()));
    }
    return new CoverStrip(
        mark, wanted.facet().name(), wanted.fold().isCorner(), wanted.gap(), wanted.width(), parts);
  }

  /** Where the lengths of a strip lie; none if the offcuts do not take it. */
  private static Optional<List<Room>> lengths(Wanted wanted, OffcutStore store) {
    Optional<Room> whole = store.take(wanted.length(), wanted.width());
    if (whole.isPresent()) {
      return whole.map(List::of);
    }
    OffcutStore trial = store.copy();
    List<Room> lengths = new ArrayList<>();
    double rest = wanted.length();
    while (Tolerance.isSome(rest)) {
      double run = Math.min(rest, trial.longest(wanted.width()));
      double length = Tolerance.isSome(rest - run) ? Math.min(run, rest - LEAST) : run;
      if (length < Math.min(LEAST, rest)) {
        return Optional.empty();
      }
      lengths.add(trial.take(length, wanted.width()).orElseThrow());
      rest = Shapes.onGrid(rest - length);
    }
    store.become(trial);
    return Optional.of(lengths);
  }
}
