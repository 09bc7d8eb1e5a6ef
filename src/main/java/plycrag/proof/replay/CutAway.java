package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.SpatialIndex;

/** What tools have cut away down to a height. */
final class CutAway {
  private final SpatialIndex<Swept> swept;
  private final double widest;
  private final double tolerance;

  private record Swept(CutMove cut, double radius) {
    Envelope box() {
      return new Envelope(cut.from().coordinate(), cut.to().coordinate());
    }
  }

  /**
   * What visits have cut away all along.
   *
   * @param height that the tool reached
   * @param tolerance how far off a cut may be, mm
   */
  CutAway(List<Visit> visits, double height, double tolerance) {
    this(visits, visit -> visit.below(height), tolerance);
  }

  /** What they have cut into, on a slant too, as deep as a height. */
  static CutAway into(List<Visit> visits, double height, double tolerance) {
    return new CutAway(visits, visit -> visit.reaching(height), tolerance);
  }

  private CutAway(List<Visit> visits, Function<Visit, List<CutMove>> cuts, double tolerance) {
    List<Swept> all = new ArrayList<>();
    for (Visit visit : visits) {
      cuts.apply(visit).forEach(cut -> all.add(new Swept(cut, visit.cutter().radius())));
    }
    this.swept = new SpatialIndex<>(all, Swept::box);
    this.widest = visits.stream().mapToDouble(visit -> visit.cutter().radius()).max().orElse(0);
    this.tolerance = tolerance;
  }

  /** Whether a place is cut. */
  boolean covers(Coordinate place) {
    return swept.near(new Envelope(place), widest + tolerance).stream()
        .anyMatch(one -> one.cut().distance(place) <= one.radius() + tolerance);
  }
}
