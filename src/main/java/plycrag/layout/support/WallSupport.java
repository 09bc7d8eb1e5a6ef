package plycrag.layout.support;

import java.util.List;
import java.util.function.Function;
import plycrag.layout.frame.Joint;

/**
 * What holds a wall up.
 *
 * @param parts run by run from the left, each from the floor up
 */
public record WallSupport(List<SupportPart> parts) {
  /** Copies the list. */
  public WallSupport {
    parts = List.copyOf(parts);
  }

  /** All timber, part by part, station by station from the left. */
  public List<PlacedMember> members() {
    return each(SupportPart::members);
  }

  /** All joints between that, and with the frame. */
  public List<Joint> joints() {
    return each(SupportPart::joints);
  }

  /** All anchors in the building. */
  public List<Anchor> anchors() {
    return each(SupportPart::anchors);
  }

  /** The tethers of a hinged wall. */
  public List<Tether> tethers() {
    return each(SupportPart::tethers);
  }

  /** The part that some timber of it belongs to. */
  public SupportPart holding(PlacedMember placed) {
    return parts.stream().filter(part -> part.members().contains(placed)).findFirst().orElseThrow();
  }

  private <T> List<T> each(Function<SupportPart, List<T>> what) {
    return parts.stream().flatMap(part -> what.apply(part).stream()).toList();
  }
}
