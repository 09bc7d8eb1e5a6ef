package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import plycrag.layout.Framing.Backing;
import plycrag.params.FrameParameters;
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
    double breadth = frame.breadth();
    List<Stud> studs = new ArrayList<>();
    studs.add(new Stud(0, breadth, frame.depth(), Hold.EDGE));
    double from = 0;
    for (Seam seam : seams) {
      if (seam.axis() == Axis.UP) {
        List<Stud> backing = Backing.of(seam, frame).stream().map(Stud::of).toList();
        addBetween(new Course.Span(from, seam.middle()), backing.get(0), frame, tape, studs);
        studs.addAll(backing);
        from = seam.middle();
      }
    }
    Stud last = new Stud(width - breadth, width, frame.depth(), Hold.EDGE);
    addBetween(new Course.Span(from, width), last, frame, tape, studs);
    studs.add(last);
    return new StudPlan(studs);
  }

  /** As few as keep the spacing once their middles lie on the marking grid. */
  private static void addBetween(
      Course.Span field, Stud next, FrameParameters frame, Tape tape, List<Stud> studs) {
    double before = studs.get(studs.size() - 1).middle();
    int bays = (int) Math.ceil((field.high() - field.low()) / frame.studSpacing() - TOLERANCE);
    List<Double> middles = middles(field, bays, tape);
    while (widest(before, middles, next.middle()) > frame.studSpacing() + TOLERANCE) {
      bays++;
      middles = middles(field, bays, tape);
    }
    for (double middle : middles) {
      double low = middle - frame.breadth() / 2;
      studs.add(new Stud(low, low + frame.breadth(), frame.depth(), Hold.FREE));
    }
  }

  private static List<Double> middles(Course.Span field, int bays, Tape tape) {
    List<Double> middles = new ArrayList<>();
    for (int bay = 1; bay < bays; bay++) {
      middles.add(tape.snap(field.low() + (field.high() - field.low()) * bay / bays));
    }
    return middles;
  }

  private static double widest(double before, List<Double> middles, double after) {
    double widest = 0;
    double from = before;
    for (double middle : middles) {
      widest = Math.max(widest, middle - from);
      from = middle;
    }
    return Math.max(widest, after - from);
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
