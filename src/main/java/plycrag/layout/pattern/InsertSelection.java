package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plycrag.finding.Measure;
import plycrag.geometry.SpatialIndex;
import plycrag.wall.Inserts.WhenBlocked;

/**
 * What becomes of the inserts that were asked for.
 *
 * @param asked in order
 * @param obstacles for each what stands in its way, other inserts apart; empty lists where nothing
 *     is to be left out
 * @param kept those that are set out, in order
 * @param omissions those left out, in order
 */
public record InsertSelection(
    List<Insert> asked,
    List<List<Obstacle>> obstacles,
    List<Insert> kept,
    List<Omission> omissions) {
  public InsertSelection {
    asked = List.copyOf(asked);
    obstacles = List.copyOf(obstacles);
    kept = List.copyOf(kept);
    omissions = List.copyOf(omissions);
  }

  /** Keeps all to be reported, or leaves out what is blocked, as the user chose. */
  public static InsertSelection of(
      List<Insert> asked, WhenBlocked whenBlocked, InsertSurroundings surroundings) {
    return switch (whenBlocked) {
      case REPORT -> new InsertSelection(asked, List.of(), asked, List.of());
      case SHIFT, NUDGE, DROP, SOLVE ->
          dropping(
              asked,
              asked.stream().map(insert -> surroundings.all(insert.centre())).toList(),
              surroundings);
    };
  }

  /**
   * The same once there are screws as well.
   *
   * @param marked the same inserts in the same order
   * @param screwed what stood in their way, and the screws
   */
  public InsertSelection again(List<Insert> marked, InsertSurroundings screwed) {
    if (obstacles.isEmpty()) {
      return new InsertSelection(marked, List.of(), marked, List.of());
    }
    List<List<Obstacle>> more = new ArrayList<>();
    for (int at = 0; at < marked.size(); at++) {
      List<Obstacle> all = new ArrayList<>(obstacles.get(at));
      all.addAll(screwed.later(marked.get(at).centre()));
      more.add(all);
    }
    return dropping(marked, more, screwed);
  }

  private static InsertSelection dropping(
      List<Insert> asked, List<List<Obstacle>> obstacles, InsertSurroundings surroundings) {
    Dropping dropping = new Dropping(asked, surroundings);
    for (int at = 0; at < asked.size(); at++) {
      dropping.take(asked.get(at), obstacles.get(at));
    }
    return new InsertSelection(asked, obstacles, dropping.chosen, dropping.omissions);
  }

  /**
   * Takes the inserts in order and leaves out each that something before it or around it blocks.
   */
  private static final class Dropping {
    private final SpatialIndex<Insert> neighbours;
    private final InsertSurroundings surroundings;
    private final Set<Insert> kept = new HashSet<>();
    private final List<Insert> chosen = new ArrayList<>();
    private final List<Omission> omissions = new ArrayList<>();

    Dropping(List<Insert> asked, InsertSurroundings surroundings) {
      this.neighbours = new SpatialIndex<>(asked, insert -> insert.centre().getEnvelopeInternal());
      this.surroundings = surroundings;
    }

    void take(Insert insert, List<Obstacle> around) {
      Optional<Omission> worst = worst(insert, around);
      worst.ifPresent(omissions::add);
      if (worst.isEmpty() && kept.add(insert)) {
        chosen.add(insert);
      }
    }

    private Optional<Omission> worst(Insert insert, List<Obstacle> around) {
      List<Omission> reasons = new ArrayList<>();
      around.forEach(obstacle -> reasons.add(Omission.of(insert, obstacle)));
      for (Insert other :
          neighbours.near(insert.centre().getEnvelopeInternal(), surroundings.reach())) {
        Measure measure = surroundings.between(insert.centre(), other.centre());
        if (kept.contains(other) && InsertSurroundings.fallsShort(measure)) {
          reasons.add(Omission.of(insert, other, measure));
        }
      }
      return reasons.stream()
          .max(Comparator.comparingDouble(omission -> omission.measure().shortfall()));
    }
  }
}
