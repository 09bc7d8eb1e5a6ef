package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Holds thin lines against the letters that are to be engraved: each cut by a pointed tool, within
 * the letters' box, to their depth and no deeper, from one long side of the box to the other, and
 * stroke by stroke as asked.
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
    if (!spans() || !isWritten()) {
      faults.add(new Fault(where, 0, mark.mark() + " is not engraved"));
    }
    return faults;
  }

  /** Each stroke is cut once, along its corners or back. */
  private boolean isWritten() {
    if (mark.strokes().isEmpty()) {
      return true;
    }
    List<List<Coordinate>> cut = new ArrayList<>(strokes.stream().map(MarkCheck::way).toList());
    for (List<Coordinate> stroke : mark.strokes()) {
      Optional<List<Coordinate>> same = cut.stream().filter(way -> isSame(way, stroke)).findFirst();
      if (same.isEmpty()) {
        return false;
      }
      cut.remove(same.get());
    }
    return cut.isEmpty();
  }

  /** Where a stroke begins and its corners, ways down and up left out. */
  private static List<Coordinate> way(Visit visit) {
    List<Coordinate> way = new ArrayList<>(List.of(visit.start().coordinate()));
    visit.cuts().stream()
        .filter(cut -> !cut.isPlunge())
        .forEach(cut -> way.add(cut.to().coordinate()));
    return way;
  }

  private static boolean isSame(List<Coordinate> one, List<Coordinate> other) {
    boolean same = one.size() == other.size();
    boolean back = same;
    for (int at = 0; at < one.size() && (same || back); at++) {
      same &= one.get(at).distance(other.get(at)) <= Accuracy.PLACE;
      back &= one.get(at).distance(other.get(other.size() - 1 - at)) <= Accuracy.PLACE;
    }
    return same || back;
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
