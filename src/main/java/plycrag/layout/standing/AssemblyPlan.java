package plycrag.layout.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plycrag.geometry.FacetPlane;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Piece;
import plycrag.layout.standing.Assembly.Step;
import plycrag.layout.standing.Assembly.Task;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.Tether;
import plycrag.wall.room.GivenSupport;

/** Finds the order in which a wall is put together. */
final class AssemblyPlan {
  /** What waits for nothing: it lies on the floor or the building. */
  private static final List<MemberRole> GROUND = List.of(MemberRole.RAIL, MemberRole.LEDGER);

  /** In this order where several could be set; each may wait for those before it alone. */
  private static final List<MemberRole> ORDER =
      List.of(
          MemberRole.POST,
          MemberRole.TIE,
          MemberRole.HANGER,
          MemberRole.BEAM,
          MemberRole.SILL,
          MemberRole.BRACE,
          MemberRole.KNEE);

  private final Layout layout;
  private final Set<String> placed = new HashSet<>();
  private final List<Step> steps = new ArrayList<>();

  AssemblyPlan(Layout layout) {
    this.layout = layout;
  }

  Assembly assembly() {
    for (FacetLayout facet : layout.facets()) {
      if (Raising.passes(layout, List.of(facet))) {
        steps.add(Step.ofFacet(Task.BUILD_FLAT, facet, FrameOrder.of(facet)));
      }
    }
    for (int run = 0; run < layout.runs().size(); run++) {
      addRun(run);
    }
    for (FacetLayout facet : layout.facets()) {
      steps.add(Step.ofFacet(Task.SHEETS, facet, upward(facet)));
    }
    return new Assembly(steps);
  }

  private void addRun(int run) {
    addSideFrames(run);
    for (MemberRole role : GROUND) {
      add(role, members(run, role));
    }
    addAllReady(run);
    List<FacetLayout> facets = layout.runs().get(run);
    for (FacetLayout facet : facets) {
      addFrame(facet);
      addFlat(facet);
      addAllReady(run);
    }
    List<String> tethers =
        layout.support().stream()
            .flatMap(support -> support.tethers().stream())
            .map(Tether::mark)
            .toList();
    if (!tethers.isEmpty()) {
      steps.add(Step.ofFacet(Task.HOLD, facets.get(facets.size() - 1), tethers));
    }
  }

  /** What lies in one plane with a post. */
  private void addSideFrames(int run) {
    Map<FacetPlane, List<Member>> planes = new LinkedHashMap<>();
    layout.standing().stream()
        .filter(one -> one.run() == run)
        .forEach(
            one ->
                planes.computeIfAbsent(one.plane(), unseen -> new ArrayList<>()).add(one.member()));
    for (List<Member> members : planes.values()) {
      if (members.stream().anyMatch(one -> one.role() == MemberRole.POST)) {
        List<String> marks = members.stream().map(Member::mark).toList();
        steps.add(Step.ofSideFrame(marks));
        placed.addAll(marks);
      }
    }
  }

  private void addAllReady(int run) {
    boolean more = true;
    while (more) {
      more = addReady(run);
    }
  }

  private void addFrame(FacetLayout facet) {
    steps.add(
        Raising.passes(layout, List.of(facet))
            ? Step.ofFacet(Task.RAISE, facet, List.of())
            : Step.ofFacet(Task.BUILD_IN_PLACE, facet, FrameOrder.of(facet)));
    facet.members().forEach(member -> placed.add(member.mark()));
  }

  /** A frame that lies on the building's wall is fixed to it before anything else is. */
  private void addFlat(FacetLayout facet) {
    if (layout.wall().support(facet.facet()).filter(GivenSupport::isFlat).isPresent()) {
      Set<String> members = facet.members().stream().map(Member::mark).collect(Collectors.toSet());
      List<String> anchors =
          layout.support().orElseThrow().anchors().stream()
              .filter(anchor -> members.contains(anchor.member()))
              .map(Anchor::mark)
              .toList();
      steps.add(Step.ofFacet(Task.FIX, facet, anchors));
    }
  }

  /** Sets what of the first role that has something ready is ready. */
  private boolean addReady(int run) {
    for (MemberRole role : ORDER) {
      List<String> ready = members(run, role).filter(this::isReady).toList();
      if (!ready.isEmpty()) {
        add(role, ready.stream());
        return true;
      }
    }
    return false;
  }

  private void add(MemberRole role, Stream<String> marks) {
    List<String> each = marks.toList();
    if (!each.isEmpty()) {
      steps.add(Step.ofSupport(role, each));
      placed.addAll(each);
    }
  }

  private Stream<String> members(int run, MemberRole role) {
    return layout.standing().stream()
        .filter(one -> one.run() == run && one.member().role() == role)
        .map(one -> one.member().mark())
        .filter(mark -> !placed.contains(mark));
  }

  /** Whether everything that it meets stands, apart from what comes after its kind. */
  private boolean isReady(String mark) {
    Set<String> later =
        layout.standing().stream()
            .filter(one -> rank(one.member().role()) > rank(roleOf(mark)))
            .map(one -> one.member().mark())
            .collect(Collectors.toSet());
    return layout.support().orElseThrow().joints().stream()
        .filter(joint -> joint.first().equals(mark) || joint.second().equals(mark))
        .map(joint -> joint.first().equals(mark) ? joint.second() : joint.first())
        .allMatch(other -> placed.contains(other) || later.contains(other));
  }

  private MemberRole roleOf(String mark) {
    return layout.standing().stream()
        .map(PlacedMember::member)
        .filter(one -> one.mark().equals(mark))
        .findFirst()
        .orElseThrow()
        .role();
  }

  private static int rank(MemberRole role) {
    return ORDER.indexOf(role);
  }

  /** A facet's pieces, from the floor up. */
  static List<String> upward(FacetLayout facet) {
    return facet.pieces().stream()
        .sorted(
            Comparator.comparingDouble((Piece piece) -> piece.box().getMinY())
                .thenComparing(piece -> piece.box().getMinX()))
        .map(Piece::mark)
        .toList();
  }
}
