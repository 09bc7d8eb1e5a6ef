package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.PointLocation;

/** Whether all that a piece takes is made before it is cut loose. */
final class OrderCheck {
  private final List<Visit> inOrder;

  private OrderCheck(List<Visit> inOrder) {
    this.inOrder = inOrder;
  }

  /**
   * What is made too late.
   *
   * @param inOrder all visits, as they are made
   */
  static List<Fault> faults(Expected expected, List<Visit> inOrder) {
    OrderCheck check = new OrderCheck(inOrder);
    List<Fault> faults = new ArrayList<>();
    for (Expected.Contour contour : expected.contours()) {
      if (contour.keeps()) {
        check
            .late(contour)
            .forEach(
                visit ->
                    faults.add(
                        visit.fault("cuts in " + contour.mark() + " after that is cut out")));
      }
    }
    return faults;
  }

  /** What lies within a piece and follows the first cut along its edge. */
  private List<Visit> late(Expected.Contour contour) {
    OutlineRing outline = new OutlineRing(contour);
    List<Visit> late = new ArrayList<>();
    boolean cut = false;
    for (Visit visit : inOrder) {
      boolean within = isWithin(visit, contour);
      if (within && cut) {
        late.add(visit);
      }
      cut |= !within && visit.cutter().sideways() && isAlong(visit, outline);
    }
    return late;
  }

  private static boolean isWithin(Visit visit, Expected.Contour contour) {
    return PointLocation.isInRing(
        visit.start().coordinate(), contour.area().getExteriorRing().getCoordinates());
  }

  private static boolean isAlong(Visit visit, OutlineRing outline) {
    double near = visit.cutter().radius() + Accuracy.SIZE;
    return visit.cuts().stream()
        .map(CutMove::middle)
        .anyMatch(middle -> outline.nearest(middle) <= near);
  }
}
