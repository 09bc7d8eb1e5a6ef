package plycrag.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plycrag.layout.Framing.Backing;
import plycrag.params.FrameParameters;
import plycrag.params.FrameParameters.EdgeStuds;
import plycrag.units.Tape;

/**
 * Where the studs of a facet stand: flush with its two sides, at every seam that runs up, and in
 * between evenly, on the marking grid, no further apart than the greatest spacing.
 *
 * @param studs from left to right
 */
record StudPlan(List<Stud> studs) {
  private static final double TOLERANCE = 1e-6;

  /**
   * A stud's place across.
   *
   * @param low its left side, mm
   * @param high its right side, mm
   * @param depth behind the sheets, mm
   * @param hold what keeps it there
   */
  record Stud(double low, double high, double depth, Hold hold) {
    /** The middle of its breadth, mm. */
    double middle() {
      return (low + high) / 2;
    }

    private static Stud of(Backing backing) {
      return new Stud(backing.low(), backing.high(), backing.depth(), backing.hold());
    }
  }

  StudPlan {
    studs = List.copyOf(studs);
  }

  static StudPlan of(double width, FrameParameters frame, List<Seam> seams, Tape tape) {
    List<Stud> left = edge(frame, 0, 1);
    List<Stud> right = edge(frame, width - frame.breadth(), -1);
    Collections.reverse(right);
    List<Stud> studs = new ArrayList<>(left);
    double from = 0;
    for (Seam seam : seams) {
      if (seam.axis() == Axis.UP) {
        List<Stud> backing = Backing.of(seam, frame).stream().map(Stud::of).toList();
        addBetween(new Course.Span(from, seam.middle()), backing.get(0), frame, tape, studs);
        studs.addAll(backing);
        from = seam.middle();
      }
    }
    addBetween(new Course.Span(from, width), right.get(0), frame, tape, studs);
    studs.addAll(right);
    return new StudPlan(studs);
  }

  /** The studs at one side, the outermost first. */
  private static List<Stud> edge(FrameParameters frame, double outermost, int inward) {
    List<Stud> studs = new ArrayList<>();
    int count = frame.edgeStuds() == EdgeStuds.DOUBLED ? 2 : 1;
    for (int at = 0; at < count; at++) {
      double low = outermost + at * inward * frame.breadth();
      studs.add(new Stud(low, low + frame.breadth(), frame.depth(), Hold.EDGE));
    }
    return studs;
  }

  /** As few as keep the spacing once their middles lie on the marking grid. */
  private static void addBetween(
      Course.Span field, Stud next, FrameParameters frame, Tape tape, List<Stud> studs) {
    double before = studs.get(studs.size() - 1).middle();
    EvenSpacing spacing = new EvenSpacing(field.low(), field.high(), frame.studSpacing(), tape);
    for (double middle : spacing.middles(before, next.middle())) {
      double low = middle - frame.breadth() / 2;
      studs.add(new Stud(low, low + frame.breadth(), frame.depth(), Hold.FREE));
    }
  }

  /** The free spaces between neighbouring studs. */
  List<Course.Span> bays() {
    List<Course.Span> bays = new ArrayList<>();
    for (int next = 1; next < studs.size(); next++) {
      double low = studs.get(next - 1).high();
      double high = studs.get(next).low();
      if (high - low > TOLERANCE) {
        bays.add(new Course.Span(low, high));
      }
    }
    return bays;
  }
}
