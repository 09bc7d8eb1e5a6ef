package plycrag.layout.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.layout.facet.FacetLayout;
import plycrag.solve.support.FixedTies;
import plycrag.solve.support.Freestanding;
import plycrag.solve.support.Hangers;
import plycrag.solve.support.HingedFoot;
import plycrag.solve.support.HingedOnPosts;
import plycrag.solve.support.Stiffening;
import plycrag.solve.support.SupportFrame;
import plycrag.solve.support.SupportSite;
import plycrag.wall.Facet;
import plycrag.wall.Wall;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Across;
import plycrag.wall.room.GivenSupport.Lateral;

/** Sets what holds each part of the wall up, and finds what of the frame it meets. */
public final class SupportPlan {
  private final Wall wall;
  private final SupportNumbers numbers;

  private SupportPlan(Wall wall, int lastJoint) {
    this.wall = wall;
    this.numbers = new SupportNumbers(lastJoint);
  }

  /**
   * The support that a wall asks for.
   *
   * @param facets all of them, run by run from the floor up
   * @param lastJoint the number of the frame's last joint
   */
  public static Optional<WallSupport> of(Wall wall, List<FacetLayout> facets, int lastJoint) {
    return wall.supports().isEmpty()
        ? Optional.empty()
        : Optional.of(new SupportPlan(wall, lastJoint).support(facets));
  }

  private WallSupport support(List<FacetLayout> facets) {
    List<List<FacetLayout>> runs = Facet.runs(facets, FacetLayout::facet);
    List<SupportPart> parts = new ArrayList<>();
    for (int number = 0; number < runs.size(); number++) {
      for (List<FacetLayout> held : heldAlike(runs.get(number))) {
        boolean stands = held.get(0).equals(runs.get(number).get(0));
        parts.add(part(number, held, stands, runs.size() == 1));
      }
    }
    return new WallSupport(parts);
  }

  /** Neighbours in a run that are held by the same; those that nothing holds are left out. */
  private List<List<FacetLayout>> heldAlike(List<FacetLayout> run) {
    List<List<FacetLayout>> parts = new ArrayList<>();
    Optional<GivenSupport> before = Optional.empty();
    for (FacetLayout facet : run) {
      Optional<GivenSupport> asked = wall.support(facet.facet());
      if (asked.isPresent() && !asked.equals(before)) {
        parts.add(new ArrayList<>());
      }
      asked.ifPresent(unseen -> parts.get(parts.size() - 1).add(facet));
      before = asked;
    }
    return parts;
  }

  /**
   * What holds a part of a run.
   *
   * @param stands whether the part begins where the run does; what stands on a facet has no foot
   *     for posts or for a kick
   * @param isAlone whether there is no other run
   */
  private SupportPart part(int run, List<FacetLayout> held, boolean stands, boolean isAlone) {
    GivenSupport asked = wall.support(held.get(0).facet()).orElseThrow();
    RunSite site = new RunSite(wall, asked, held, stands);
    PartDraft draft = new PartDraft(wall, site, run, numbers);
    if (!stands && asked.needsFoot()) {
      return draft.part();
    }
    if (asked.isFlat()) {
      return draft.flat();
    }
    if (!site.isBearing()) {
      return draft.part(site.unmet());
    }
    return draft.part(frame(asked, site, isAlone));
  }

  private SupportFrame frame(GivenSupport asked, RunSite run, boolean isAlone) {
    SupportSite site = run.site();
    return switch (asked.kind()) {
      case FREESTANDING ->
          Freestanding.of(site, asked.behind(), run.railFront(), stiffening(asked.bracing()));
      case FIXED -> FixedTies.of(site, asked.behind());
      case HUNG -> Hangers.of(site, run.ceiling(), new JoistReach(wall, run).of(isAlone));
      case HINGED -> hinged(asked, run);
    };
  }

  private static SupportFrame hinged(GivenSupport asked, RunSite run) {
    double height = run.anchorHeight();
    boolean braced = asked.bracing().lateral() == Lateral.BRACES;
    return asked.hasPosts()
        ? HingedOnPosts.of(run.site(), asked.behind(), run.railFront(), height, braced)
        : HingedFoot.of(run.site(), asked.behind(), height, run.pastStations());
  }

  private static Stiffening stiffening(GivenSupport.Bracing bracing) {
    Stiffening.Along along =
        switch (bracing.lateral()) {
          case BRACES -> Stiffening.Along.BRACES;
          case KNEE_BRACES -> Stiffening.Along.KNEES;
          case SHEETS, NONE -> Stiffening.Along.NOTHING;
        };
    return new Stiffening(along, bracing.across() == Across.KNEE_BRACES, bracing.knee());
  }
}
