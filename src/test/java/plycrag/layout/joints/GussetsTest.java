package plycrag.layout.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.CGAlgorithms3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.Walls;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.sheets.LaidGusset;
import plycrag.layout.sheets.OffcutPart;
import plycrag.layout.skin.Piece;
import plycrag.solve.fixing.GussetFit;
import plycrag.solve.fixing.GussetScrew;

/** Gussets on whole walls, measured in the room on the bodies alone. */
class GussetsTest {
  private static final double SLACK = 1e-3;

  /** A wall that leans out, on posts, whose braces and ties meet its studs at odd angles. */
  private static String leaning(int angle, int width, int length, int behind) {
    return """
        [wall]
        width = %d
        raise = 200
        [[facet]]
        angle = %d
        length = %d
        [inserts]
        when-blocked = "drop"
        [support]
        kind = "freestanding"
        behind = %d
        """
        .formatted(width, angle, length, behind);
  }

  @Property(tries = 12)
  void gussetsOnLeaningWallsHold(
      @ForAll @IntRange(min = 10, max = 45) int angle,
      @ForAll @IntRange(min = 1300, max = 3000) int width,
      @ForAll @IntRange(min = 1200, max = 2400) int length,
      @ForAll @IntRange(min = 300, max = 900) int behind,
      @ForAll @IntRange(min = 2, max = 24) int screws) {
    String joints = "[joints]\nbracket-screws = " + screws + "\n";
    measure(Walls.laidOut(leaning(angle, width, length, behind) + joints));
  }

  @Property(tries = 8)
  void gussetsOnRakesHold(@ForAll @IntRange(min = 300, max = 1800) int top) {
    measure(
        Walls.laidOut(
            """
            [[facet]]
            outline = [[0, 0], [2400, 0], [2400, 2400], [%d, 2400], [0, 700]]
            [inserts]
            when-blocked = "drop"
            """
                .formatted(top)));
  }

  /** That there is something to measure. */
  @Test
  void aLeaningWallTakesGussets() {
    assertThat(Walls.laidOut(leaning(25, 2440, 2440, 900)).fixings().gussets()).isNotEmpty();
  }

  private static void measure(Layout layout) {
    Map<String, Solid> bodies = bodies(layout);
    List<Solid> sheets = sheets(layout);
    List<Gusset> gussets = layout.fixings().gussets();
    for (Gusset gusset : gussets) {
      GussetFit fit = gusset.fit();
      bodies.forEach(
          (mark, body) ->
              assertThat(body.overlap(fit.body())).as(gusset + " " + mark).isLessThan(0.2));
      sheets.forEach(sheet -> assertThat(sheet.overlap(fit.body())).isLessThan(0.2));
      assertThat(fit.body().near()).allMatch(corner -> corner.z() > -0.2);
      for (Joint joint : layout.joints()) {
        layout.fixings().steelOf(joint).stream()
            .flatMap(steel -> steel.places().stream())
            .flatMap(place -> place.bodies().stream())
            .forEach(leg -> assertThat(leg.overlap(fit.body())).isLessThan(0.2));
      }
      for (GussetScrew screw : fit.screws()) {
        inTimber(bodies.get(screw.member()), screw, fit, layout);
      }
      apart(fit);
      gussets.stream()
          .filter(other -> !other.mark().equals(gusset.mark()))
          .forEach(other -> areClear(fit, other.fit()));
    }
    onSheets(layout);
    onFurtherSheets(layout);
  }

  /**
   * The plywood of two shares no room. Their screws may pass each other in the timber between two
   * on its sides, as far apart as in one, 0.85 × 3 d.
   */
  private static void areClear(GussetFit one, GussetFit other) {
    assertThat(other.body().overlap(one.body())).isLessThan(SLACK);
    double asked = 0.85 * 3 * Math.max(one.diameter(), other.diameter());
    for (Rod rod : one.rods()) {
      for (Rod another : other.rods()) {
        assertThat(
                CGAlgorithms3D.distanceSegmentSegment(
                    at(rod.from()), at(rod.end()), at(another.from()), at(another.end())))
            .isGreaterThanOrEqualTo(asked - SLACK);
      }
    }
  }

  private static Coordinate at(Vector3 place) {
    return new Coordinate(place.x(), place.y(), place.z());
  }

  private static Map<String, Solid> bodies(Layout layout) {
    Map<String, Solid> bodies = new LinkedHashMap<>();
    double thickness = layout.wall().sheet().thickness();
    for (FacetLayout facet : layout.facets()) {
      FacetPlane plane = facet.facet().plane();
      facet
          .members()
          .forEach(one -> bodies.put(one.mark(), one.body(thickness).mapped(plane::toRoom)));
    }
    layout.standing().forEach(placed -> bodies.put(placed.member().mark(), placed.body()));
    return bodies;
  }

  private static List<Solid> sheets(Layout layout) {
    List<Solid> sheets = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      for (Piece piece : facet.pieces()) {
        Solid body =
            Solid.joining(piece.outline(), 0, piece.back(), layout.wall().sheet().thickness());
        sheets.add(body.mapped(facet.facet().plane()::toRoom));
      }
    }
    return sheets;
  }

  /**
   * Three diameters from every side of the member at least (EN 1995-1-1 Table 8.2: the least of a4;
   * a side that slants is measured across the grain and along it), the point of the screw inside it
   * and 5 mm before the far side, six diameters deep (8.7.2).
   */
  private static void inTimber(Solid member, GussetScrew screw, GussetFit fit, Layout layout) {
    Vector3 head = at(fit, screw);
    Vector3 inward = fit.body().near().get(0).minus(fit.body().far().get(0)).unit();
    double bite = fit.screwLength() - layout.wall().sheet().thickness();
    assertThat(bite).isGreaterThanOrEqualTo(6 * fit.diameter() - SLACK);
    Vector3 point = head.plus(inward.times(bite));
    for (List<Vector3> face : member.faces().toList()) {
      Vector3 normal = Solid.normal(face);
      if (normal.length() > SLACK) {
        Vector3 out = outward(normal.unit(), face, member);
        double depth = face.get(0).minus(head).dot(out);
        boolean isEntered = Math.abs(out.dot(inward)) > 0.99;
        double asked = isEntered ? -0.2 : 2.9 * fit.diameter();
        assertThat(depth).as(screw + " of " + fit).isGreaterThanOrEqualTo(asked - SLACK);
        boolean isFarSide = out.dot(inward) > 0.99;
        assertThat(face.get(0).minus(point).dot(out))
            .isGreaterThanOrEqualTo((isFarSide ? 5 : isEntered ? 0 : 3) - SLACK);
      }
    }
  }

  private static Vector3 outward(Vector3 normal, List<Vector3> face, Solid body) {
    Vector3 inside = body.near().get(0).plus(body.far().get(2)).times(0.5);
    return normal.dot(face.get(0).minus(inside)) < 0 ? normal.times(-1) : normal;
  }

  /** Where a screw enters the timber, from the corners of the gusset's body. */
  private static Vector3 at(GussetFit fit, GussetScrew screw) {
    Vector3 corner = fit.body().near().get(0);
    Vector3 along = fit.body().near().get(1).minus(corner).unit();
    Vector3 across = fit.body().near().get(3).minus(corner).unit();
    return corner.plus(along.times(screw.spot().along())).plus(across.times(screw.spot().across()));
  }

  /** 0.85 × 3 d between any two at least, 3 d from the edges of the plywood at least. */
  private static void apart(GussetFit fit) {
    for (GussetScrew one : fit.screws()) {
      for (GussetScrew other : fit.screws()) {
        double apart =
            Math.hypot(
                one.spot().along() - other.spot().along(),
                one.spot().across() - other.spot().across());
        assertThat(one.equals(other) || apart >= 0.85 * 3 * fit.diameter()).isTrue();
      }
      assertThat(
              Math.min(
                  Math.min(one.spot().along(), fit.size().along() - one.spot().along()),
                  Math.min(one.spot().across(), fit.size().across() - one.spot().across())))
          .isGreaterThanOrEqualTo(3 * fit.diameter() - SLACK);
    }
  }

  /** Each as large as it is, on what a sheet leaves over, clear of the others by a kerf. */
  private static void onSheets(Layout layout) {
    double kerf = layout.wall().nesting().gap();
    for (LaidGusset laid : layout.offcuts().gussets()) {
      Envelope place = laid.part().place();
      assertThat(place.getArea())
          .isCloseTo(
              laid.gusset().fit().size().along() * laid.gusset().fit().size().across(),
              within(1.0));
      layout.sheets().stream()
          .filter(sheet -> laid.part().isFrom(sheet))
          .forEach(
              sheet ->
                  assertThat(sheet.stock().cutting().offcuts())
                      .anyMatch(offcut -> offcut.contains(place)));
      for (OffcutPart other : layout.offcuts().parts()) {
        if (isOnSame(other, laid.part()) && !other.equals(laid.part())) {
          Envelope around = new Envelope(place);
          around.expandBy(kerf - 0.01);
          assertThat(around.intersects(other.place())).isFalse();
        }
      }
    }
  }

  /** Of further sheets nothing says which is which. */
  private static boolean isOnSame(OffcutPart other, OffcutPart part) {
    return part.sheet().isPresent() && other.sheet().equals(part.sheet());
  }

  /** No place of a further sheet is taken more often than there are such sheets. */
  private static void onFurtherSheets(Layout layout) {
    double reach = layout.wall().nesting().gap() - 0.01;
    List<Envelope> places =
        layout.offcuts().parts().stream()
            .filter(part -> part.sheet().isEmpty())
            .map(OffcutPart::place)
            .toList();
    for (Envelope one : places) {
      for (Envelope other : places) {
        assertThat(
                places.stream()
                    .filter(place -> covers(place, one.getMinX(), other.getMinY(), reach)))
            .hasSizeLessThanOrEqualTo(layout.offcuts().furtherSheets());
      }
    }
  }

  private static boolean covers(Envelope place, double x, double y, double reach) {
    return place.getMinX() <= x
        && x < place.getMaxX() + reach
        && place.getMinY() <= y
        && y < place.getMaxY() + reach;
  }

  /** The rakes along the corner are bracketed to each other and to the plates that end there. */
  @Test
  void rakesAlongACornerHoldThePlatesThatEndThere() {
    Layout layout = Walls.sample(Path.of("params", "rigger-nook.toml"));
    List<Joint> plates =
        layout.joints().stream()
            .filter(joint -> joint.kind() == Joint.Kind.FOLD_EDGES)
            .filter(joint -> joint.first().startsWith("PL"))
            .toList();
    assertThat(plates).hasSize(2);
    assertThat(plates)
        .allSatisfy(
            joint -> assertThat(layout.fixings().othersOf(joint)).containsExactly("RK1", "RK2"));
  }

  /** A bracket on a stud between blocks that fill the corners would have no room. */
  @Test
  void blocksOnAPlateHoldTheStudBetweenThem() {
    Layout layout = Walls.sample(Path.of("params", "cox-slab.toml"));
    List<Joint> held =
        layout.joints().stream()
            .filter(joint -> !layout.fixings().othersOf(joint).isEmpty())
            .toList();
    assertThat(held).isNotEmpty();
    for (Joint joint : held) {
      for (String block : layout.fixings().othersOf(joint)) {
        assertThat(layout.joints())
            .anyMatch(
                one ->
                    one.kind() == Joint.Kind.SIDE
                        && List.of(one.first(), one.second())
                            .containsAll(List.of(block, joint.second())))
            .anyMatch(
                one ->
                    one.kind() == Joint.Kind.END
                        && one.first().equals(block)
                        && one.second().equals(joint.first())
                        && layout.fixings().steelOf(one).orElseThrow().fit().isPresent());
      }
    }
  }
}
