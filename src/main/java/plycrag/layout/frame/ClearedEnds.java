package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Solid;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Piece;
import plycrag.wall.Wall;

/**
 * Shortens timber where walls meet in a corner. Around a place where several facets of two walls
 * meet, each two halve what is between them; facets across such a place have no plane in common,
 * and their timber may reach into each other by a little. The one of the two that loses least is
 * then cut square before the other.
 */
final class ClearedEnds {
  /**
   * Nobody takes a longer end off a member for a corner; a rule tells of the overlap, mm (a
   * choice).
   */
  private static final int MOST = 60;

  private final double thickness;
  private final List<FramedFacet> frames;
  private final List<Body> bodies = new ArrayList<>();

  /**
   * A member, or part of a sheet, as it stands in the room.
   *
   * @param facet the number of its facet
   * @param member it, if it is timber, which can be made shorter
   * @param solid its body
   */
  private record Body(int facet, Optional<Member> member, Solid solid) {}

  private ClearedEnds(Wall wall, List<FramedFacet> frames) {
    this.thickness = wall.sheet().thickness();
    this.frames = frames;
    for (int at = 0; at < frames.size(); at++) {
      for (Member member : frames.get(at).members()) {
        bodies.add(body(at, member));
      }
    }
    for (int at = 0; at < frames.size(); at++) {
      for (Piece piece : frames.get(at).pieces()) {
        for (Solid part : piece.bodies(thickness)) {
          Solid solid = part.mapped(frames.get(at).facet().plane()::toRoom);
          bodies.add(new Body(at, Optional.empty(), solid));
        }
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
    return new Body(facet, Optional.of(member), solid);
  }

  private List<FramedFacet> cleared() {
    SpatialIndex<Integer> index =
        new SpatialIndex<>(
            IntStream.range(0, bodies.size()).boxed().toList(), at -> shadow(bodies.get(at)));
    for (int at = 0; at < bodies.size(); at++) {
      for (int other : index.near(shadow(bodies.get(at)), 0)) {
        boolean isTimber = bodies.get(at).member().isPresent();
        if (isTimber && other > at && bodies.get(at).facet() != bodies.get(other).facet()) {
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
        bodies.stream()
            .filter(body -> body.facet() == facet)
            .flatMap(body -> body.member().stream())
            .toList());
  }

  private void clear(int one, int other) {
    Solid solid = bodies.get(one).solid();
    Solid against = bodies.get(other).solid();
    if (!solid.overlapsByMoreThan(Tolerance.TOUCH, against)
        || solid.overlapsByMoreThan(MOST, against)) {
      return;
    }
    for (int by = 1; by <= MOST; by++) {
      if (isCleared(one, other, by) || isCleared(other, one, by) || areCleared(one, other, by)) {
        return;
      }
    }
  }

  private boolean isCleared(int at, int against, double by) {
    Optional<Body> shorter = shorter(bodies.get(at), bodies.get(against), by);
    shorter.ifPresent(body -> bodies.set(at, body));
    return shorter.isPresent();
  }

  /** Both lose as much, where that is less than one would alone. */
  private boolean areCleared(int one, int other, double by) {
    for (Body body : shorter(bodies.get(one), by)) {
      Optional<Body> against = shorter(bodies.get(other), body, by);
      if (against.isPresent()) {
        bodies.set(one, body);
        bodies.set(other, against.get());
        return true;
      }
    }
    return false;
  }

  /** A member with so much off either end, if that clears it of another. */
  private Optional<Body> shorter(Body body, Body other, double by) {
    return shorter(body, by).stream()
        .filter(one -> !one.solid().overlapsByMoreThan(Tolerance.TOUCH, other.solid()))
        .findFirst();
  }

  private List<Body> shorter(Body body, double by) {
    return Stream.of(false, true)
        .flatMap(high -> body.member().flatMap(member -> member.shorter(high, by)).stream())
        .map(member -> body(body.facet(), member))
        .toList();
  }
}
