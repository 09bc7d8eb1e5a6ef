package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.LapScrews;
import plycrag.solve.fixing.SteelChoice;
import plycrag.wall.Wall;

/**
 * What holds each joint: where the screws between members side by side and the bolts across folds
 * are, and which bracket, strap or hinge it takes; where none of the catalogue does, members beside
 * it or a gusset.
 *
 * @param through screws and bolts through both members, by the mark of the joint
 * @param steel by the mark of the joint
 * @param others the marks of members beside a joint that hold it, by its mark
 * @param gussets in the order of their joints
 * @param narrow the marks of joints whose timber takes no plywood on both sides, whatever is around
 */
public record Fixings(
    Map<String, LapScrews> through,
    Map<String, SteelChoice> steel,
    Map<String, List<String>> others,
    List<Gusset> gussets,
    List<String> narrow) {
  static final Fixings NONE = new Fixings(Map.of(), Map.of(), Map.of(), List.of(), List.of());

  /** Keeps the order of the joints. */
  public Fixings {
    through = new LinkedHashMap<>(through);
    steel = new LinkedHashMap<>(steel);
    others = new LinkedHashMap<>(others);
    gussets = List.copyOf(gussets);
    narrow = List.copyOf(narrow);
  }

  /**
   * The screws between members side by side or through one into the other's end, or the bolts
   * across a fold; empty for others.
   */
  public Optional<LapScrews> throughOf(Joint joint) {
    return Optional.ofNullable(through.get(joint.mark()));
  }

  /** The bracket, strap or hinge of a joint; empty for those that take none. */
  public Optional<SteelChoice> steelOf(Joint joint) {
    return Optional.ofNullable(steel.get(joint.mark()));
  }

  /** The gussets that hold a joint, two where one lies on either side; none for most. */
  public List<Gusset> gussetsOf(Joint joint) {
    return gussets.stream().filter(one -> one.joints().contains(joint.mark())).toList();
  }

  /** Whether plywood on either side holds it. */
  public boolean isPaired(Joint joint) {
    return gussetsOf(joint).size() > 1;
  }

  /** The marks of the members beside a joint that hold it; none where none do or need to. */
  public List<String> othersOf(Joint joint) {
    return others.getOrDefault(joint.mark(), List.of());
  }

  /** Whether it would take a bracket, a strap or a hinge, and nothing holds it. */
  public boolean isUnheld(Joint joint) {
    return isWithoutSteel(joint)
        && othersOf(joint).isEmpty()
        && gussetsOf(joint).isEmpty()
        && throughOf(joint).isEmpty();
  }

  private boolean isWithoutSteel(Joint joint) {
    return steelOf(joint).filter(choice -> choice.fit().isEmpty()).isPresent();
  }

  /** The same with these screws and bolts through both members. */
  Fixings having(Map<String, LapScrews> screws) {
    return new Fixings(screws, steel, others, gussets, narrow);
  }

  /** The same with this steel. */
  Fixings with(Map<String, SteelChoice> pieces) {
    return new Fixings(through, pieces, others, gussets, narrow);
  }

  /** The same with further gussets, which are marked on from those that are there. */
  Fixings with(List<Gusset> further) {
    List<Gusset> all = new ArrayList<>(gussets);
    for (Gusset one : further) {
      all.add(one.withMark("GU" + (all.size() + 1)));
    }
    return new Fixings(through, steel, others, all, narrow);
  }

  /**
   * What holds the joints of a wall.
   *
   * @param wall the wall
   * @param facets with their joints
   * @param support with its joints
   */
  public static Fixings of(Wall wall, List<FacetLayout> facets, Optional<WallSupport> support) {
    return new FixingPlan(wall, facets, support).fixings();
  }
}
