package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Hardware;
import plycrag.layout.skin.Piece;
import plycrag.layout.standing.BuildStep;
import plycrag.layout.standing.BuildStep.Work;

/** What is seen of a wall in one step of building it: what stands already, and what is added. */
final class StepBodies {
  private final Layout layout;
  private final List<BuildStep> steps;
  private final int number;
  private final List<Seen> bodies = new ArrayList<>();

  /**
   * A body.
   *
   * @param mark its part's
   * @param solid where it is in the room
   * @param isSheet whether it is of plywood
   * @param isAdded whether it is added in this step
   */
  record Seen(String mark, Solid solid, boolean isSheet, boolean isAdded) {}

  private StepBodies(Layout layout, List<BuildStep> steps, int number) {
    this.layout = layout;
    this.steps = steps;
    this.number = number;
  }

  /**
   * The bodies of a step; none of one in which nothing is set.
   *
   * @param number of the step, from 0
   */
  static List<Seen> of(Layout layout, List<BuildStep> steps, int number) {
    StepBodies found = new StepBodies(layout, steps, number);
    if (steps.get(number).work() == Work.BUILD_FLAT) {
      found.addFlat();
    } else {
      found.addStanding();
    }
    boolean anything = found.bodies.stream().anyMatch(Seen::isAdded);
    return anything ? List.copyOf(found.bodies) : List.of();
  }

  /** A frame as it lies on the floor, its front up and its lower edge toward the viewer. */
  private void addFlat() {
    BuildStep step = steps.get(number);
    FacetLayout facet = layout.facet(step.facet());
    double thickness = layout.wall().sheet().thickness();
    double depth = layout.wall().frame().depth();
    UnaryOperator<Vector3> flat =
        place -> new Vector3(place.x(), -place.y(), thickness + depth - place.z());
    for (Member member : facet.members()) {
      bodies.add(new Seen(member.mark(), member.body(thickness).mapped(flat), false, true));
    }
    UnaryOperator<Vector3> down = place -> flat.apply(facet.facet().plane().fromRoom(place));
    addHardware(new HashSet<>(step.parts().hardware()), down);
  }

  private void addStanding() {
    Set<String> before = new HashSet<>();
    steps.subList(0, number).forEach(step -> addStanding(step, before));
    Set<String> now = new HashSet<>();
    addStanding(steps.get(number), now);
    now.removeAll(before);
    double thickness = layout.wall().sheet().thickness();
    for (FacetLayout facet : layout.facets()) {
      UnaryOperator<Vector3> inRoom = facet.facet().plane()::toRoom;
      for (Member member : facet.members()) {
        add(member.mark(), member.body(thickness).mapped(inRoom), before, now);
      }
      for (Piece piece : facet.pieces()) {
        for (Solid part : piece.bodies(thickness)) {
          addSheet(piece.mark(), part.mapped(inRoom), before, now);
        }
      }
    }
    layout.standing().forEach(one -> add(one.member().mark(), one.body(), before, now));
    addHardware(new HashSet<>(steps.get(number).parts().hardware()), UnaryOperator.identity());
  }

  /** What stands once a step is done: a frame that was built flat does when it is raised. */
  private void addStanding(BuildStep step, Set<String> marks) {
    if (step.work() == Work.RAISE) {
      layout.facet(step.facet()).members().forEach(member -> marks.add(member.mark()));
    } else if (step.work() != Work.BUILD_FLAT) {
      marks.addAll(step.parts().members());
      marks.addAll(step.parts().pieces());
    }
  }

  private void add(String mark, Solid solid, Set<String> before, Set<String> now) {
    if (before.contains(mark) || now.contains(mark)) {
      bodies.add(new Seen(mark, solid, false, now.contains(mark)));
    }
  }

  private void addSheet(String mark, Solid solid, Set<String> before, Set<String> now) {
    if (before.contains(mark) || now.contains(mark)) {
      bodies.add(new Seen(mark, solid, true, now.contains(mark)));
    }
  }

  private void addHardware(Set<String> marks, UnaryOperator<Vector3> mapped) {
    for (Hardware piece : layout.hardware()) {
      if (marks.contains(piece.mark())) {
        for (Solid part : piece.form().parts()) {
          bodies.add(new Seen("", part.mapped(mapped), false, true));
        }
      }
    }
  }
}
