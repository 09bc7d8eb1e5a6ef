package plycrag.layout.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import plycrag.Walls;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Piece;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.WallSupport;

/**
 * Every end of every member of a support meets what it is joined to within 0.1 mm, and nothing cuts
 * into anything, held against the tests' own reckoning in three dimensions.
 */
class SupportEndsTest {
  private static final double CLOSE = 0.1;

  /** A plate stands on the rails to the next mark of a tape; what is left is packed, mm. */
  private static final double PACKED = 1;

  /** They lie on the floor or the building and may end anywhere. */
  private static final Set<MemberRole> LYING = Set.of(MemberRole.RAIL, MemberRole.LEDGER);

  @Property(tries = 40)
  void onPosts(@ForAll("freestanding") String toml) {
    assertSound(toml);
  }

  @Property(tries = 20)
  void tied(@ForAll("fixed") String toml) {
    assertSound(toml);
  }

  @Property(tries = 20)
  void hanging(@ForAll("hung") String toml) {
    assertSound(toml);
  }

  @Property(tries = 20)
  void swinging(@ForAll("hinged") String toml) {
    assertSound(toml);
  }

  @Provide
  Arbitrary<String> freestanding() {
    return StandingWalls.freestanding();
  }

  @Provide
  Arbitrary<String> fixed() {
    return StandingWalls.fixed();
  }

  @Provide
  Arbitrary<String> hung() {
    return StandingWalls.hung();
  }

  @Provide
  Arbitrary<String> hinged() {
    return StandingWalls.hinged();
  }

  private static void assertSound(String toml) {
    Layout layout = Walls.laidOut(toml);
    WallSupport support = layout.support().orElseThrow();
    Assume.that(
        support.parts().stream()
            .allMatch(part -> part.unheld().isEmpty() && part.unmet().isEmpty() && !part.sways()));
    Map<String, Polyhedron> bodies = bodies(layout);
    for (Joint joint : support.joints()) {
      assertMeets(toml, placed(support, joint.first()), joint, bodies);
    }
    for (PlacedMember placed : support.members()) {
      if (!LYING.contains(placed.member().role())) {
        assertEndsHeld(toml, placed, support);
      }
    }
    assertApart(toml, bodies);
  }

  private static void assertMeets(
      String toml, PlacedMember first, Joint joint, Map<String, Polyhedron> bodies) {
    double slack = first.member().role() == MemberRole.RAIL ? PACKED + CLOSE : CLOSE;
    double nearest =
        throughDepth(first, joint.place().getX(), joint.place().getY())
            .mapToDouble(
                place ->
                    Math.max(
                        bodies.get(joint.first()).outside(place), outside(place, joint, bodies)))
            .min()
            .orElseThrow();
    assertThat(nearest).as(joint + "\n" + toml).isLessThanOrEqualTo(slack);
    assertThat(bodies.get(joint.first()).depth(bodies.get(joint.second())))
        .as(joint + "\n" + toml)
        .isGreaterThanOrEqualTo(-slack);
  }

  /** How far from the second member, or where that is a frame's, from any of that frame. */
  private static double outside(double[] place, Joint joint, Map<String, Polyhedron> bodies) {
    boolean frame = isFrame(joint.second());
    return bodies.entrySet().stream()
        .filter(one -> frame ? isFrame(one.getKey()) : one.getKey().equals(joint.second()))
        .mapToDouble(one -> one.getValue().outside(place))
        .min()
        .orElseThrow();
  }

  private static boolean isFrame(String mark) {
    return mark.startsWith("ST") || mark.startsWith("PL");
  }

  /** Places under one of the plane, from the member's front to its back. */
  private static Stream<double[]> throughDepth(PlacedMember placed, double u, double v) {
    return DoubleStream.iterate(0, part -> part <= 1, part -> part + 0.125)
        .mapToObj(part -> placed.plane().toRoom(new Vector3(u, v, part * placed.member().depth())))
        .map(Polyhedron::vector);
  }

  /** A heel lies against its stud for most of its length, and stands on its rail. */
  private static void assertLiesAlong(String toml, Member heel, WallSupport support) {
    List<Joint> joints =
        support.joints().stream()
            .filter(one -> one.first().equals(heel.mark()) || one.second().equals(heel.mark()))
            .toList();
    double length = heel.direction().span(heel.footprint()).size();
    assertThat(joints.stream().mapToDouble(Joint::length).max().orElse(0))
        .as(heel.mark() + " " + joints + "\n" + toml)
        .isGreaterThanOrEqualTo(length / 2);
    assertThat(joints).as(heel.mark() + "\n" + toml).hasSizeGreaterThanOrEqualTo(2);
  }

  /** A brace that lies on a post of 45 mm goes 40 past it, so that screws keep off its end, mm. */
  private static final double PAST = 40 + 45.0 / 2;

  /**
   * At each end, no further from it than the timber is deep and its cut is long, something is
   * joined or it stands on the floor; what lies across posts runs past them.
   */
  private static void assertEndsHeld(String toml, PlacedMember placed, WallSupport support) {
    Member member = placed.member();
    List<double[]> held = new ArrayList<>();
    for (Joint joint : support.joints()) {
      if (joint.first().equals(member.mark()) || joint.second().equals(member.mark())) {
        PlacedMember first = placed(support, joint.first());
        throughDepth(first, joint.place().getX(), joint.place().getY()).forEach(held::add);
      }
    }
    if (member.role() == MemberRole.HEEL) {
      assertLiesAlong(toml, member, support);
      return;
    }
    double along = held.stream().mapToDouble(place -> along(placed, place)).min().orElseThrow();
    double last = held.stream().mapToDouble(place -> along(placed, place)).max().orElseThrow();
    double low = member.direction().span(member.footprint()).low();
    double high = member.direction().span(member.footprint()).high();
    double steep = Math.abs(member.direction().v() / member.direction().u());
    double slant = Math.max(steep, 1 / steep);
    boolean lies =
        member.role() == MemberRole.BRACE
            && support.joints().stream()
                .anyMatch(
                    one -> one.first().equals(member.mark()) && one.kind() == Joint.Kind.SIDE);
    double past = lies ? PAST / Math.abs(member.direction().u()) : 0;
    double reach = past + member.breadth() * (1 + (Double.isFinite(slant) ? slant : 1) / 2);
    boolean onFloor = member.box().getMinY() < CLOSE;
    assertThat(along - low <= reach || onFloor).as(member.mark() + " low\n" + toml).isTrue();
    assertThat(high - last).as(member.mark() + " high\n" + toml).isLessThanOrEqualTo(reach);
  }

  private static double along(PlacedMember placed, double[] place) {
    Vector3 inPlane = placed.plane().fromRoom(new Vector3(place[0], place[1], place[2]));
    return inPlane.x() * placed.member().direction().u()
        + inPlane.y() * placed.member().direction().v();
  }

  private static void assertApart(String toml, Map<String, Polyhedron> bodies) {
    List<Map.Entry<String, Polyhedron>> all = List.copyOf(bodies.entrySet());
    for (int at = 0; at < all.size(); at++) {
      for (int other = 0; other < at; other++) {
        assertThat(all.get(at).getValue().depth(all.get(other).getValue()))
            .as(all.get(at).getKey() + " in " + all.get(other).getKey() + "\n" + toml)
            .isLessThanOrEqualTo(CLOSE);
      }
    }
  }

  private static PlacedMember placed(WallSupport support, String mark) {
    return support.members().stream()
        .filter(one -> one.member().mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  /** Everything that is timber or a sheet, by its mark. */
  static Map<String, Polyhedron> bodies(Layout layout) {
    Map<String, Polyhedron> bodies = new LinkedHashMap<>();
    double thickness = layout.wall().sheet().thickness();
    for (FacetLayout facet : layout.facets()) {
      for (Member member : facet.members()) {
        Solid body = member.body(thickness).mapped(facet.facet().plane()::toRoom);
        bodies.put(member.mark(), Polyhedron.of(body));
      }
      for (Piece piece : facet.pieces()) {
        Solid body =
            Solid.joining(piece.outline(), 0, piece.back(), thickness)
                .mapped(facet.facet().plane()::toRoom);
        bodies.put(piece.mark(), Polyhedron.of(body));
      }
    }
    for (PlacedMember placed : layout.standing()) {
      bodies.put(placed.member().mark(), Polyhedron.of(placed.body()));
    }
    return bodies;
  }
}
