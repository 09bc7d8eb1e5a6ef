package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plycrag.geometry.Vector3;

/**
 * Bodies in an order in which each may be painted over those before it: whatever it may hide comes
 * before it. Where bodies hide each other in a ring, the nearest of them comes last.
 */
final class BackToFront {
  private final List<SeenBody> bodies;
  private final Vector3 toViewer;
  private final Set<Integer> met = new HashSet<>();
  private final List<Integer> order = new ArrayList<>();

  private BackToFront(List<SeenBody> bodies, Vector3 toViewer) {
    this.bodies = bodies;
    this.toViewer = toViewer;
  }

  /** The places of the bodies in their list, in that order. */
  static List<Integer> of(List<SeenBody> bodies, Axonometry view) {
    BackToFront painting = new BackToFront(bodies, view.toViewer());
    List<Integer> far = new ArrayList<>();
    for (int at = 0; at < bodies.size(); at++) {
      far.add(at);
    }
    far.sort(Comparator.comparingDouble(at -> bodies.get(at).depth(view.toViewer())));
    far.forEach(painting::visit);
    return List.copyOf(painting.order);
  }

  private void visit(int at) {
    if (!met.add(at)) {
      return;
    }
    for (int other = 0; other < bodies.size(); other++) {
      if (!met.contains(other) && bodies.get(at).mayHide(bodies.get(other), toViewer)) {
        visit(other);
      }
    }
    order.add(at);
  }
}
