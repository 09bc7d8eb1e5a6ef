package plycrag.layout.standing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Hardware;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.sheets.CoverStrip;
import plycrag.layout.skin.Piece;
import plycrag.layout.standing.Assembly.Step;
import plycrag.layout.standing.Assembly.Task;
import plycrag.layout.standing.BuildStep.Parts;
import plycrag.layout.standing.BuildStep.Work;
import plycrag.layout.support.PlacedMember;

/**
 * All steps of building a wall in the order of {@link Assembly}, from the first mark on timber to
 * the first use. What is done alike one after the other is one step: side frames of a run, members
 * of one role.
 *
 * <p>Hardware goes in as soon as all that it holds is where the hardware holds it: within one frame
 * or one side frame when that is joined, else when the last of its members stands.
 */
public final class BuildOrder {
  private final Layout layout;
  private final List<Draft> drafts = new ArrayList<>();
  private final Map<String, Integer> joined = new HashMap<>();
  private final Map<String, Integer> standing = new HashMap<>();

  private BuildOrder(Layout layout) {
    this.layout = layout;
  }

  /** The steps. */
  public static List<BuildStep> of(Layout layout) {
    return new BuildOrder(layout).steps();
  }

  /** Steps that are one, and the hardware that goes in. */
  private record Draft(Work work, List<Step> steps, List<String> hardware) {
    Step first() {
      return steps.get(0);
    }
  }

  private List<BuildStep> steps() {
    for (Step step : Assembly.of(layout).steps()) {
      if (step.task() != Task.SHEETS) {
        add(step);
      }
    }
    layout.hardware().forEach(this::place);
    List<BuildStep> steps = new ArrayList<>();
    steps.add(plain(Work.MARK_OUT, Parts.NONE));
    drafts.forEach(draft -> steps.add(step(draft)));
    layout.facets().forEach(facet -> steps.add(inserts(facet)));
    layout.facets().forEach(facet -> steps.add(sheets(facet)));
    steps.add(plain(Work.EDGES, strips()));
    steps.add(plain(Work.MATS, Parts.NONE));
    steps.add(plain(Work.FIRST_USE, Parts.NONE));
    return List.copyOf(steps);
  }

  private void add(Step step) {
    Draft last = drafts.isEmpty() ? null : drafts.get(drafts.size() - 1);
    if (last == null || !isAlike(last.first(), step)) {
      last = new Draft(work(step.task()), new ArrayList<>(), new ArrayList<>());
      drafts.add(last);
    }
    last.steps().add(step);
    int number = drafts.size() - 1;
    step.marks().forEach(mark -> joined.putIfAbsent(mark, number));
    if (step.task() == Task.RAISE) {
      facet(step).members().forEach(member -> standing.put(member.mark(), number));
    } else if (step.task() != Task.BUILD_FLAT) {
      step.marks().forEach(mark -> standing.putIfAbsent(mark, number));
    }
  }

  private static boolean isAlike(Step one, Step other) {
    return one.task() == other.task()
        && (one.task() == Task.SIDE_FRAME
            || (one.task() == Task.SUPPORT && one.role().equals(other.role())));
  }

  private static Work work(Task task) {
    return switch (task) {
      case BUILD_FLAT -> Work.BUILD_FLAT;
      case BUILD_IN_PLACE -> Work.BUILD_IN_PLACE;
      case RAISE -> Work.RAISE;
      case SIDE_FRAME -> Work.SIDE_FRAMES;
      case SUPPORT -> Work.SUPPORT;
      case FIX -> Work.FIX;
      case HOLD -> Work.HOLD;
      case SHEETS -> Work.SHEETS;
    };
  }

  /** Some is named by a step; other goes in with the last of what it holds. */
  private void place(Hardware piece) {
    int last = drafts.size() - 1;
    Map<String, Integer> when = isOfOneFrame(piece) ? joined : standing;
    int own =
        piece.members().stream().mapToInt(mark -> when.getOrDefault(mark, last)).max().orElse(last);
    drafts.get(joined.getOrDefault(piece.mark(), own)).hardware().add(piece.mark());
  }

  private boolean isOfOneFrame(Hardware piece) {
    return layout.facets().stream()
        .map(facet -> facet.members().stream().map(Member::mark).collect(Collectors.toSet()))
        .anyMatch(frame -> frame.containsAll(piece.members()));
  }

  private BuildStep step(Draft draft) {
    Step first = draft.first();
    List<String> hardware = layout.hardware().stream().map(Hardware::mark).toList();
    List<String> members =
        draft.steps().stream()
            .flatMap(step -> step.marks().stream())
            .filter(mark -> !hardware.contains(mark))
            .toList();
    Parts parts = new Parts(members, draft.hardware(), List.of(), List.of(), List.of());
    return new BuildStep(draft.work(), first.facet(), first.role(), parts, heaviest(draft));
  }

  private double heaviest(Draft draft) {
    return switch (draft.work()) {
      case RAISE -> Mass.ofFrame(layout.wall(), facet(draft.first())).kilograms();
      case SIDE_FRAMES ->
          draft.steps().stream().mapToDouble(step -> mass(step.marks())).max().orElse(0);
      case SUPPORT ->
          draft.first().marks().stream().mapToDouble(mark -> mass(List.of(mark))).max().orElse(0);
      default -> 0;
    };
  }

  private double mass(List<String> marks) {
    List<PlacedMember> members =
        layout.standing().stream().filter(one -> marks.contains(one.member().mark())).toList();
    return Mass.ofSupport(layout.wall(), members).kilograms();
  }

  private FacetLayout facet(Step step) {
    return layout.facet(step.facet());
  }

  private BuildStep inserts(FacetLayout facet) {
    List<String> marks = facet.inserts().stream().map(Insert::mark).toList();
    Parts parts = new Parts(List.of(), List.of(), List.of(), marks, List.of());
    return new BuildStep(Work.INSERTS, facet.facet().name(), Optional.empty(), parts, 0);
  }

  private BuildStep sheets(FacetLayout facet) {
    List<String> pieces = AssemblyPlan.upward(facet);
    List<String> screws = facet.screws().stream().map(Screw::mark).toList();
    Parts parts = new Parts(List.of(), List.of(), pieces, List.of(), screws);
    double heaviest =
        facet.pieces().stream().mapToDouble(piece -> mass(facet, piece)).max().orElse(0);
    return new BuildStep(Work.SHEETS, facet.facet().name(), Optional.empty(), parts, heaviest);
  }

  private double mass(FacetLayout facet, Piece piece) {
    return Mass.ofPiece(layout.wall(), facet, piece).kilograms();
  }

  private Parts strips() {
    List<String> marks = layout.offcuts().strips().stream().map(CoverStrip::mark).toList();
    return new Parts(List.of(), List.of(), marks, List.of(), List.of());
  }

  private static BuildStep plain(Work work, Parts parts) {
    return new BuildStep(work, "", Optional.empty(), parts, 0);
  }
}
