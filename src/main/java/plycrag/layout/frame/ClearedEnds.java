package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Solid;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.wall.Wall;

/**
 * Shortens timber where walls meet in a corner. Around a place where several facets of two walls
 * meet, each two halve what is between them; facets across such a place have no plane in common,
 * and their timber may reach into each other by a little. The one of the two that loses least is
 * then cut square before the other.
 */
final class ClearedEnds {
  /** Nobody takes a longer end off a member for a corner; a rule tells of the overlap, mm. */
  private static final int MOST = 60;

  private final double thickness;
  private final List<FramedFacet> frames;
  private final List<Body> bodies = new ArrayList<>();

  /**
   * A member as it stands in the room.
   *
   * @param facet the number of its facet
   * @param member it
   * @param solid its body
   */
  private record Body(int facet, Member member, Solid solid) {}

  private ClearedEnds(Wall wall, List<FramedFacet> frames) {
    this.thickness = wall.sheet().thickness();
    this.frames = frames;
    for (int at = 0; at < frames.size(); at++) {
      for (Member member : frames.get(at).members()) {
        bodies.add(body(at, member));
      }
    }
  }

  /** The frames of a wall, clear of each other where they can be. */
  static List<FramedFacet> of(Wall wall, List<FramedFacet> frames) {
    boolean hasCorners =
        frames.stream()
            .flatMap(frame -> frame.facet().folds().stream())
            .anyMatch(f -> f.isCorner());
    return hasCorners ? new ClearedEnds(wall, frames).cleared() : frames;
  }

  private Body body(int facet, Member member) {
    Solid solid = member.body(thickness).mapped(frames.get(facet).facet().plane()::toRoom);
    return new Body(facet, member, solid);
  }

  private List<FramedFacet> cleared() {
    SpatialIndex<Integer> index =
        new SpatialIndex<>(
            IntStream.range(0, bodies.size()).boxed().toList(), at -> shadow(bodies.get(at)));
    for (int at = 0; at < bodies.size(); at++) {
      for (int other : index.near(shadow(bodies.get(at)), 0)) {
        if (other > at && bodies.get(at).facet() != bodies.get(other).facet()) {
          clear(at, other);
        }
      }
    }
    return IntStream.range(0, frames.size()).mapToObj(this::frame).toList();
  }

  private static Envelope shadow(Body body) {
    return body.solid().elevation();
  }

  private FramedFacet frame(int facet) {
    FramedFacet frame = frames.get(facet);
    return new FramedFacet(
        frame.facet(),
        frame.footing(),
        frame.pieces(),
        frame.seams(),
        bodies.stream().filter(body -> body.facet() == facet).map(Body::member).toList());
  }

  private void clear(int one, int other) {
    double overlap = bodies.get(one).solid().overlap(bodies.get(other).solid());
    if (overlap <= Tolerance.TOUCH || overlap > MOST) {
      return;
    }
    for (int by = 1; by <= MOST; by++) {
      for (int at : new int[] {one, other}) {
        int against = at == one ? other : one;
        Optional<Body> shorter = shorter(bodies.get(at), bodies.get(against), by);
        if (shorter.isPresent()) {
          bodies.set(at, shorter.get());
          return;
        }
      }
    }
  }

  /** A member with so much off either end, if that clears it of another. */
  private Optional<Body> shorter(Body body, Body other, double by) {
    return List.of(false, true).stream()
        .flatMap(high -> body.member().shorter(high, by).stream())
        .map(member -> body(body.facet(), member))
        .filter(one -> !one.solid().overlapsByMoreThan(Tolerance.TOUCH, other.solid()))
        .findFirst();
  }
}
