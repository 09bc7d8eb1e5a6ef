package plycrag.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plycrag.finding.Measure;
import plycrag.geometry.SpatialIndex;
import plycrag.params.InsertParameters.WhenBlocked;

/**
 * What becomes of the inserts that were asked for.
 *
 * @param kept those that are set out, in order
 * @param omissions those left out, in order
 */
record InsertSelection(List<Insert> kept, List<Omission> omissions) {
  InsertSelection {
    kept = List.copyOf(kept);
    omissions = List.copyOf(omissions);
  }

  /** Keeps all to be reported, or leaves out what is blocked, as the user chose. */
  static InsertSelection of(
      List<Insert> asked, WhenBlocked whenBlocked, InsertSurroundings surroundings) {
    return switch (whenBlocked) {
      case REPORT -> new InsertSelection(asked, List.of());
      case SHIFT, NUDGE, DROP, SOLVE -> new Dropping(asked, surroundings).result();
    };
  }

  /**
   * Takes the inserts in order and leaves out each that something before it or around it blocks.
   */
  private static final class Dropping {
    private final List<Insert> asked;
    private final SpatialIndex<Insert> neighbours;
    private final double reach;
    private final InsertSurroundings surroundings;
    private final Set<Insert> kept = new HashSet<>();

    Dropping(List<Insert> asked, InsertSurroundings surroundings) {
      this.asked = asked;
      this.neighbours = new SpatialIndex<>(asked, insert -> insert.centre().getEnvelopeInternal());
      this.reach = surroundings.reach();
      this.surroundings = surroundings;
    }

    InsertSelection result() {
      List<Insert> chosen = new ArrayList<>();
      List<Omission> omissions = new ArrayList<>();
      for (Insert insert : asked) {
        Optional<Obstacle> worst = worst(insert);
        worst.ifPresent(obstacle -> omissions.add(new Omission(insert, obstacle)));
        if (worst.isEmpty() && kept.add(insert)) {
          chosen.add(insert);
        }
      }
      return new InsertSelection(chosen, omissions);
    }

    private Optional<Obstacle> worst(Insert insert) {
      List<Obstacle> obstacles = new ArrayList<>(surroundings.all(insert.centre()));
      for (Insert other : neighbours.near(insert.centre().getEnvelopeInternal(), reach)) {
        Measure measure = surroundings.between(insert.centre(), other.centre());
        if (kept.contains(other) && InsertSurroundings.fallsShort(measure)) {
          obstacles.add(new Obstacle(Obstacle.Kind.TWO_FLANGES, other.mark(), measure));
        }
      }
      return obstacles.stream()
          .max(Comparator.comparingDouble(obstacle -> obstacle.measure().shortfall()));
    }
  }
}
