package plycrag.layout.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.Walls;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Piece;
import plycrag.layout.standing.Assembly.Step;
import plycrag.layout.standing.Assembly.Task;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.PlacedMember;

/** Everything can be set in the order that the book gives. */
class AssemblyTest {
  private static final double CLOSE = 0.1;

  /** Packing between rails and plates, and the gap of a seam or an edge of a sheet, mm. */
  private static final double NEAR = 4;

  @Test
  void aFreestandingWallByHand() {
    Layout layout =
        Walls.laidOut(
            """
            [wall]
            raise = 250
            [[facet]]
            name = "main"
            angle = 20
            length = 2000
            width = 1200
            [frame]
            stud-spacing = 700
            [support]
            kind = "freestanding"
            lateral = "knee-braces"
            behind = 800
            """);
    assertThat(Assembly.of(layout).steps())
        .extracting(step -> step.task() + " " + step.marks())
        .containsExactly(
            "BUILD_FLAT [PL1, ST1, PL2, ST2, ST3, BL1, BL2]",
            "SIDE_FRAME [RA1, PO1, HE1, TI1, BC1]",
            "SIDE_FRAME [RA2, PO2, HE2, TI2, BC2]",
            "SUPPORT [BM1]",
            "SUPPORT [KB1, KB2]",
            "RAISE []",
            "SHEETS [P1]");
  }

  /** 2400 mm up the slope and 90 mm deep: more than 2402 mm on the way up. */
  @Test
  void whatCannotBeTiltedUpIsBuiltInPlace() {
    Layout layout =
        Walls.laidOut("[[facet]]\nlength = 2400\nwidth = 600\n[room]\nceiling = 2401\n");
    assertThat(Assembly.of(layout).steps())
        .extracting(Step::task)
        .containsExactly(Task.BUILD_IN_PLACE, Task.SHEETS);
  }

  @ParameterizedTest
  @MethodSource("plycrag.TestFiles#samples")
  void samplesGoTogether(Path sample) {
    new Building(Walls.sample(sample), sample.toString()).build();
  }

  @Property(tries = 40)
  void anyWallGoesTogether(@ForAll("walls") String toml) {
    new Building(Walls.laidOut(toml), toml).build();
  }

  @Provide
  Arbitrary<String> walls() {
    return StandingWalls.any();
  }

  /** A wall as it grows; what is set must touch what stands and must have had a way there. */
  private static final class Building {
    private final Layout layout;
    private final String what;
    private final Map<String, Polyhedron> bodies;
    private final Map<String, Polyhedron> standing = new LinkedHashMap<>();
    private final List<String> set = new ArrayList<>();

    Building(Layout layout, String what) {
      this.layout = layout;
      this.what = what;
      this.bodies = SupportEndsTest.bodies(layout);
    }

    void build() {
      for (Step step : Assembly.of(layout).steps()) {
        switch (step.task()) {
          case BUILD_FLAT -> join(step);
          case BUILD_IN_PLACE -> {
            join(step);
            raise(step);
          }
          case RAISE -> raise(step);
          case SIDE_FRAME -> stand(step);
          case SUPPORT -> step.marks().forEach(this::setSupport);
          case FIX -> fix(step);
          case HOLD -> assertThat(set).as(what).contains(facet(step).members().get(0).mark());
          case SHEETS -> step.marks().forEach(mark -> setPiece(mark, facet(step)));
        }
      }
      assertThat(set).as(what).doesNotHaveDuplicates().hasSameSizeAs(bodies.keySet());
    }

    /** Through plates that stand, before any sheet lies over their heads. */
    private void fix(Step step) {
      assertThat(step.marks()).as(what).isNotEmpty();
      List<String> fixed =
          layout.support().orElseThrow().anchors().stream()
              .filter(anchor -> step.marks().contains(anchor.mark()))
              .map(Anchor::member)
              .toList();
      assertThat(fixed).as(what).hasSameSizeAs(step.marks());
      assertThat(set).as(what).containsAll(fixed);
      assertThat(set)
          .as(what)
          .doesNotContainAnyElementsOf(facet(step).pieces().stream().map(Piece::mark).toList());
    }

    private FacetLayout facet(Step step) {
      return layout.facets().stream()
          .filter(one -> one.facet().name().equals(step.facet()))
          .findFirst()
          .orElseThrow();
    }

    /** By themselves on the floor, from the front or from behind, but not through the floor. */
    private void join(Step step) {
      FacetLayout facet = facet(step);
      assertThat(step.marks())
          .as(what)
          .containsExactlyInAnyOrderElementsOf(facet.members().stream().map(Member::mark).toList());
      Map<String, Polyhedron> lying = new LinkedHashMap<>();
      for (String mark : step.marks()) {
        assertFree(mark, List.of(bodies.get(mark)), lying, ways(facet.facet().plane(), mark));
        lying.put(mark, bodies.get(mark));
      }
    }

    private void raise(Step step) {
      FacetLayout facet = facet(step);
      List<String> marks = facet.members().stream().map(Member::mark).toList();
      List<Polyhedron> frame = marks.stream().map(bodies::get).toList();
      boolean joined =
          layout.joints().stream()
              .anyMatch(
                  joint ->
                      (marks.contains(joint.first()) && set.contains(joint.second()))
                          || (marks.contains(joint.second()) && set.contains(joint.first())));
      assertThat(joined || !facet.facet().standsOnFacet()).as(step + "\n" + what).isTrue();
      assertFree(step.facet(), frame, standing, ways(facet.facet().plane(), marks.get(0)));
      marks.forEach(this::stand);
    }

    /** Flat on the floor as one, then brought to where it stays as one. */
    private void stand(Step step) {
      List<PlacedMember> members =
          layout.standing().stream()
              .filter(one -> step.marks().contains(one.member().mark()))
              .toList();
      FacetPlane plane = members.get(0).plane();
      assertThat(members).as(what).hasSameSizeAs(step.marks());
      assertThat(members).as(what).allMatch(one -> one.plane().equals(plane));
      List<Polyhedron> frame = step.marks().stream().map(bodies::get).toList();
      assertFree(step.toString(), frame, standing, ways(plane, step.marks().get(0)));
      step.marks().forEach(this::stand);
    }

    private void setSupport(String mark) {
      boolean ground =
          bodies.get(mark).corners().stream().anyMatch(corner -> corner[2] < CLOSE)
              || layout.support().orElseThrow().anchors().stream()
                  .anyMatch(anchor -> anchor.member().equals(mark));
      assertThat(ground || touches(bodies.get(mark))).as(mark + "\n" + what).isTrue();
      PlacedMember placed =
          layout.standing().stream()
              .filter(one -> one.member().mark().equals(mark))
              .findFirst()
              .orElseThrow();
      MemberRole role = placed.member().role();
      if (role == MemberRole.BRACE
          || role == MemberRole.KNEE
          || role == MemberRole.HANGER
          || role == MemberRole.BEAM) {
        assertWhatItMeetsStands(mark);
      }
      assertFree(mark, List.of(bodies.get(mark)), standing, ways(placed.plane(), mark));
      stand(mark);
    }

    private void assertWhatItMeetsStands(String mark) {
      for (Joint joint : layout.support().orElseThrow().joints()) {
        if (joint.first().equals(mark)) {
          assertThat(set).as(mark + "\n" + what).contains(joint.second());
        }
      }
    }

    private void setPiece(String mark, FacetLayout facet) {
      assertThat(touches(bodies.get(mark))).as(mark + "\n" + what).isTrue();
      assertFree(mark, List.of(bodies.get(mark)), standing, ways(facet.facet().plane(), mark));
      stand(mark);
    }

    private void stand(String mark) {
      set.add(mark);
      standing.put(mark, bodies.get(mark));
    }

    private boolean touches(Polyhedron body) {
      return standing.values().stream().anyMatch(one -> one.depth(body) > -NEAR);
    }

    /** Along its own edges, those of its plane, and half way between these. */
    private List<double[]> ways(FacetPlane plane, String mark) {
      List<double[]> ways = new ArrayList<>();
      Vector3 origin = plane.toRoom(new Vector3(0, 0, 0));
      for (int u = -1; u <= 1; u++) {
        for (int v = -1; v <= 1; v++) {
          for (int w = -1; w <= 1; w++) {
            if (u != 0 || v != 0 || w != 0) {
              ways.add(Polyhedron.vector(plane.toRoom(new Vector3(u, v, w)).minus(origin)));
            }
          }
        }
      }
      for (double[] edge : bodies.get(mark).edges()) {
        ways.add(edge);
        ways.add(new double[] {-edge[0], -edge[1], -edge[2]});
      }
      return ways;
    }

    private void assertFree(
        String mark, List<Polyhedron> parts, Map<String, Polyhedron> there, List<double[]> ways) {
      boolean free =
          ways.stream()
              .anyMatch(
                  way ->
                      parts.stream()
                          .noneMatch(
                              part ->
                                  there.values().stream()
                                      .anyMatch(one -> part.runsInto(one, way, CLOSE))));
      assertThat(free).as(mark + " is enclosed\n" + what).isTrue();
    }
  }
}
