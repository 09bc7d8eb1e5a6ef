package plycrag.layout.frame;

import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Direction;
import plycrag.geometry.Solid;
import plycrag.wall.Facet;

/**
 * A member, or a convex part of a sheet, as it stands in the room.
 *
 * @param facet whose it is
 * @param whole the member as it was, if it is timber, which can be made shorter
 * @param member the same as it has become
 * @param solid its body
 */
record StandingBody(Facet facet, Optional<Member> whole, Optional<Member> member, Solid solid) {
  /** Timber behind sheets of a thickness, mm. */
  static StandingBody of(Facet facet, Member member, double thickness) {
    Solid solid = member.body(thickness).mapped(facet.plane()::toRoom);
    return new StandingBody(facet, Optional.of(member), Optional.of(member), solid);
  }

  /** Part of a sheet. */
  static StandingBody of(Facet facet, Solid part) {
    Solid solid = part.mapped(facet.plane()::toRoom);
    return new StandingBody(facet, Optional.empty(), Optional.empty(), solid);
  }

  boolean isTimber() {
    return member.isPresent();
  }

  /** The smallest box around it, seen from the front. */
  Envelope shadow() {
    return solid.elevation();
  }

  /** The same without what an end loses, if it can lose that. */
  Optional<StandingBody> without(EndLoss loss, double thickness) {
    return member
        .flatMap(one -> one.without(loss))
        .map(
            one ->
                new StandingBody(
                    facet, whole, Optional.of(one), of(facet, one, thickness).solid()));
  }

  /** How much it has lost against the sheets at either end, mm. */
  double lost() {
    return member.map(one -> lost(one, whole.orElseThrow())).orElse(0.0);
  }

  private static double lost(Member one, Member whole) {
    Direction.Span now = one.direction().span(one.footprint());
    Direction.Span then = one.direction().span(whole.footprint());
    return Math.max(now.low() - then.low(), then.high() - now.high());
  }
}
