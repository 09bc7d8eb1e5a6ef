package plycrag.layout.standing;

import java.util.List;
import java.util.Optional;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.MemberRole;

/**
 * The order in which a wall is put together.
 *
 * <p>Frames are built first, flat on the floor unless there is no height to tilt them up. Then, run
 * by run: what lies on the floor or the building, or side frames, which are made flat and stood,
 * and what ties them together; the facets from the floor up, and after each what of the support
 * meets only what stands already; last the sheets from the floor up. So nothing is set before what
 * it stands on or ends on.
 *
 * @param steps in order
 */
record Assembly(List<Step> steps) {
  /** Copies the steps. */
  public Assembly {
    steps = List.copyOf(steps);
  }

  /** What is done in a step. */
  public enum Task {
    /** The members of a facet's frame are joined flat on the floor. */
    BUILD_FLAT,
    /** They are joined where they stay. */
    BUILD_IN_PLACE,
    /** A frame that was built flat is brought to where it stays. */
    RAISE,
    /** Members of a support in one plane are joined flat on the floor, and stood. */
    SIDE_FRAME,
    /** Members of the support are set. */
    SUPPORT,
    /** A frame that lies flat on the building's wall is fixed to it. */
    FIX,
    /** What holds a hinged facet is fixed. */
    HOLD,
    /** Pieces are screwed to a frame. */
    SHEETS
  }

  /**
   * One step.
   *
   * @param task what is done
   * @param facet whose it is; empty for the support
   * @param role of a support's members; none for a facet
   * @param marks of what is set, in order; empty where the whole frame is
   */
  public record Step(Task task, String facet, Optional<MemberRole> role, List<String> marks) {
    /** Copies the marks. */
    public Step {
      marks = List.copyOf(marks);
    }

    static Step ofFacet(Task task, FacetLayout facet, List<String> marks) {
      return new Step(task, facet.facet().name(), Optional.empty(), marks);
    }

    static Step ofSideFrame(List<String> marks) {
      return new Step(Task.SIDE_FRAME, "", Optional.empty(), marks);
    }

    static Step ofSupport(MemberRole role, List<String> marks) {
      return new Step(Task.SUPPORT, "", Optional.of(role), marks);
    }
  }

  /** The order for a wall. */
  public static Assembly of(Layout layout) {
    return new AssemblyPlan(layout).assembly();
  }
}
