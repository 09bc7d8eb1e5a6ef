package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plycrag.geometry.Solid;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.skin.Piece;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Shortens timber where walls meet in a corner. Around a place where several facets of two walls
 * meet, each two halve what is between them; facets across such a place have no plane in common,
 * and their timber may reach into each other by a little. What loses least is then cut before the
 * other: timber before sheets first, which lose nothing, and then before timber.
 */
final class ClearedEnds {
  private final List<FramedFacet> frames;
  private final ClearCut cut;
  private final List<StandingBody> bodies = new ArrayList<>();

  private ClearedEnds(Wall wall, List<FramedFacet> frames) {
    double thickness = wall.sheet().thickness();
    this.frames = frames;
    this.cut = new ClearCut(thickness);
    for (FramedFacet frame : frames) {
      for (Member member : frame.members()) {
        bodies.add(StandingBody.of(frame.facet(), member, thickness));
      }
    }
    for (FramedFacet frame : frames) {
      for (Piece piece : frame.pieces()) {
        for (Solid part : piece.bodies(thickness)) {
          bodies.add(StandingBody.of(frame.facet(), part));
        }
      }
    }
  }

  /** The frames of a wall, clear of each other where they can be. */
  static List<FramedFacet> of(Wall wall, List<FramedFacet> frames) {
    boolean isOneWall = Facet.runs(frames, FramedFacet::facet).size() < 2;
    return isOneWall ? frames : new ClearedEnds(wall, frames).cleared();
  }

  private List<FramedFacet> cleared() {
    SpatialIndex<Integer> index =
        new SpatialIndex<>(
            IntStream.range(0, bodies.size()).boxed().toList(), at -> bodies.get(at).shadow());
    clear(index, false);
    clear(index, true);
    return frames.stream().map(this::frame).toList();
  }

  /** Clears all timber of the timber of other facets, or of their sheets. */
  private void clear(SpatialIndex<Integer> index, boolean ofTimber) {
    for (int at = 0; at < bodies.size(); at++) {
      for (int other : index.near(bodies.get(at).shadow(), 0)) {
        StandingBody one = bodies.get(at);
        StandingBody against = bodies.get(other);
        if (other > at
            && one.isTimber()
            && against.isTimber() == ofTimber
            && !one.facet().name().equals(against.facet().name())) {
          clear(at, other);
        }
      }
    }
  }

  private void clear(int one, int other) {
    Optional<ClearCut.Pair> cleared =
        cut.cleared(new ClearCut.Pair(bodies.get(one), bodies.get(other)));
    cleared.ifPresent(
        pair -> {
          bodies.set(one, pair.one());
          bodies.set(other, pair.other());
        });
  }

  private FramedFacet frame(FramedFacet frame) {
    return new FramedFacet(
        frame.facet(),
        frame.footing(),
        frame.pieces(),
        frame.seams(),
        bodies.stream()
            .filter(body -> body.facet().name().equals(frame.facet().name()))
            .flatMap(body -> body.member().stream())
            .toList());
  }
}
