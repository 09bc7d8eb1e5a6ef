package plycrag.layout.joints;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Envelope;
import plycrag.WallTexts;
import plycrag.Walls;
import plycrag.catalog.FlatSteel;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.solve.fixing.FacePlace;
import plycrag.solve.fixing.LapScrews;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.SteelFit;

/** Screws and brackets on walls at random, measured on the footprints alone. */
class FixingsTest {
  private static final double TINY = 1e-3;

  /** A leg with the heads of its screws, mm. */
  private static final double THICK = 5;

  @Provide
  Arbitrary<String> walls() {
    return WallTexts.roomy();
  }

  private static Map<String, Member> members(Layout layout) {
    return layout.members().stream().collect(Collectors.toMap(Member::mark, Function.identity()));
  }

  /** 12 d to ends, 3 d to sides, 5 d between (EN 1995-1-1 Table 8.2, predrilled, 5 mm). */
  @Property(tries = 40)
  void screwsBetweenSquareMembersKeepTheirDistances(@ForAll("walls") String toml) {
    Layout layout = Walls.laidOut(toml);
    Map<String, Member> members = members(layout);
    for (Joint joint : layout.joints()) {
      LapScrews screws = layout.fixings().throughOf(joint).orElse(null);
      if (joint.kind() == Joint.Kind.SIDE) {
        assertThat(screws).as(joint.mark()).isNotNull();
        assertThat(screws.spots()).hasSizeGreaterThanOrEqualTo(2);
        if (screws.holds()) {
          measure(members.get(joint.first()), members.get(joint.second()), screws);
        }
      } else if (joint.kind() == Joint.Kind.END && screws != null) {
        measureIntoEnd(members.get(joint.second()), members.get(joint.first()), screws);
      } else if (joint.kind() != Joint.Kind.FOLD) {
        assertThat(screws).isNull();
      }
    }
  }

  private static void measure(Member first, Member second, LapScrews screws) {
    if (!first.isSquare() || !second.isSquare()) {
      return;
    }
    double from = first.direction().span(first.footprint()).low();
    double last = Double.NEGATIVE_INFINITY;
    for (FacePlace spot : screws.spots()) {
      double place = from + spot.along();
      for (Member member : new Member[] {first, second}) {
        assertThat(place - member.direction().span(member.footprint()).low())
            .isGreaterThanOrEqualTo(60 - TINY);
        assertThat(member.direction().span(member.footprint()).high() - place)
            .isGreaterThanOrEqualTo(60 - TINY);
        assertThat(spot.across()).isBetween(15 - TINY, member.depth() - 15 + TINY);
      }
      assertThat(place - last).isGreaterThanOrEqualTo(25 - TINY);
      last = place;
    }
  }

  /**
   * Two into an end: 5 d from the ends of what they go through, 3 d from the sides of both and 4 d
   * apart across the grain of that.
   */
  private static void measureIntoEnd(Member through, Member into, LapScrews screws) {
    assertThat(screws.spots()).hasSize(2);
    if (!through.isSquare() || !into.isSquare() || !into.isUpOrLevel()) {
      return;
    }
    Span whole = through.direction().span(through.footprint());
    Span end = through.direction().span(into.footprint());
    for (FacePlace spot : screws.spots()) {
      double place = whole.low() + spot.along();
      assertThat(place).isBetween(whole.low() + 25 - TINY, whole.high() - 25 + TINY);
      assertThat(place).isBetween(end.low() + 15 - TINY, end.high() - 15 + TINY);
      assertThat(spot.across()).isBetween(15 - TINY, through.depth() - 15 + TINY);
    }
    assertThat(screws.spots().get(1).across() - screws.spots().get(0).across())
        .isGreaterThanOrEqualTo(20 - TINY);
  }

  /** Where a square member ends on one across, a side of it has room for both legs. */
  @Property(tries = 40)
  void bracketsLieClearOfOtherTimber(@ForAll("walls") String toml) {
    Layout layout = Walls.laidOut(toml);
    Map<String, Member> members = members(layout);
    for (Joint joint : layout.joints()) {
      SteelFit fit = layout.fixings().steelOf(joint).flatMap(SteelChoice::fit).orElse(null);
      Member first = members.get(joint.first());
      Member second = members.get(joint.second());
      if (fit != null && first.isSquare() && second.isSquare()) {
        assertThat(fit.bite(0)).isGreaterThanOrEqualTo(6 * fit.diameter() - TINY);
        assertThat(fit.bite(0))
            .isLessThanOrEqualTo(Math.min(first.breadth(), second.breadth()) - 5 + TINY);
        assertThat(hasRoom(layout, joint, first, second, fit.steel())).as(joint.mark()).isTrue();
      }
    }
  }

  private static boolean hasRoom(
      Layout layout, Joint joint, Member first, Member second, FlatSteel steel) {
    boolean upright = first.direction().v() == 1;
    boolean isSquare = first.isUpOrLevel() && second.isUpOrLevel();
    return !isSquare
        || isClear(layout, joint, upright, 1, first, second, steel)
        || isClear(layout, joint, upright, -1, first, second, steel);
  }

  private static boolean isClear(
      Layout layout,
      Joint joint,
      boolean upright,
      int side,
      Member first,
      Member second,
      FlatSteel steel) {
    Envelope box = first.box();
    double u = joint.place().getX();
    double v = joint.place().getY();
    double middle = upright ? box.centre().y : box.centre().x;
    double way = Math.signum(middle - (upright ? v : u));
    double edge =
        upright
            ? (side > 0 ? box.getMaxX() : box.getMinX())
            : (side > 0 ? box.getMaxY() : box.getMinY());
    Envelope onFirst =
        upright
            ? new Envelope(edge, edge + side * THICK, v, v + way * steel.legs().length())
            : new Envelope(u, u + way * steel.legs().length(), edge, edge + side * THICK);
    Envelope onSecond =
        upright
            ? new Envelope(edge, edge + side * steel.legs().length(), v, v + way * THICK)
            : new Envelope(u, u + way * THICK, edge, edge + side * steel.legs().length());
    boolean along =
        upright
            ? second.box().getMinX() <= onSecond.getMinX() + TINY
                && second.box().getMaxX() >= onSecond.getMaxX() - TINY
            : second.box().getMinY() <= onSecond.getMinY() + TINY
                && second.box().getMaxY() >= onSecond.getMaxY() - TINY;
    return along
        && layout.members().stream()
            .filter(other -> !other.mark().equals(joint.first()))
            .filter(other -> !other.mark().equals(joint.second()))
            .allMatch(other -> isApart(other, onFirst) && isApart(other, onSecond));
  }

  private static boolean isApart(Member other, Envelope leg) {
    return Shapes.shared(other.footprint(), Shapes.rectangle(leg)).getArea() < 1;
  }
}
