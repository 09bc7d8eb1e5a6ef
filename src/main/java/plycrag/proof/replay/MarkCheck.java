package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Holds thin lines against the letters that are to be engraved: each cut by a pointed tool, within
 * the letters' box, to their depth and no deeper, from one long side of the box to the other. What
 * the letters are is not read.
 */
final class MarkCheck {
  private final Expected.Mark mark;
  private final List<Visit> strokes;

  private MarkCheck(Expected.Mark mark, List<Visit> visits) {
    this.mark = mark;
    this.strokes = visits.stream().filter(this::isWithin).toList();
  }

  /**
   * What is wrong with the letters.
   *
   * @param where all programs of the face together, for what is missing
   * @param routed what makes no hole; what belongs to letters is taken out
   */
  static List<Fault> faults(String where, List<Expected.Mark> marks, List<Visit> routed) {
    List<Fault> faults = new ArrayList<>();
    for (Expected.Mark mark : marks) {
      MarkCheck check = new MarkCheck(mark, routed);
      routed.removeAll(check.strokes);
      faults.addAll(check.faults(where));
    }
    return faults;
  }

  private boolean isWithin(Visit visit) {
    Envelope allowed = mark.box().copy();
    allowed.expandBy(Accuracy.PLACE);
    return visit.cutter().taper().isPresent() && allowed.contains(box(List.of(visit)));
  }

  private static Envelope box(List<Visit> visits) {
    Envelope box = new Envelope();
    for (Visit visit : visits) {
      for (CutMove cut : visit.cuts()) {
        box.expandToInclude(cut.from().coordinate());
        box.expandToInclude(cut.to().coordinate());
      }
    }
    return box;
  }

  private List<Fault> faults(String where) {
    List<Fault> faults = new ArrayList<>();
    for (Visit stroke : strokes) {
      if (Math.abs(stroke.lowest() - mark.bottom()) > Accuracy.PLACE) {
        faults.add(stroke.fault("engraves " + mark.mark() + " to another depth"));
      }
    }
    if (!spans()) {
      faults.add(new Fault(where, 0, mark.mark() + " is not engraved"));
    }
    return faults;
  }

  /** Letters fill the short way of their box, and lack less than one letter of the long way. */
  private boolean spans() {
    Envelope inked = box(strokes);
    boolean upright = mark.box().getHeight() > mark.box().getWidth();
    double across = upright ? inked.getHeight() : inked.getWidth();
    double up = upright ? inked.getWidth() : inked.getHeight();
    double height = Math.min(mark.box().getHeight(), mark.box().getWidth());
    double length = Math.max(mark.box().getHeight(), mark.box().getWidth());
    return up >= height - 2 * Accuracy.PLACE && across >= length - height - 2 * Accuracy.PLACE;
  }
}
