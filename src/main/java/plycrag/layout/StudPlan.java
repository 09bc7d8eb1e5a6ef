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
        addBetween(from, seam.middle(), frame, tape, studs);
        Backing.of(seam, frame).forEach(backing -> studs.add(Stud.of(backing)));
        from = seam.middle();
      }
    }
    addBetween(from, width, frame, tape, studs);
    studs.add(new Stud(width - breadth, width, frame.depth(), Hold.EDGE));
    return new StudPlan(studs);
  }

  private static void addBetween(
      double from, double to, FrameParameters frame, Tape tape, List<Stud> studs) {
    double greatest = tape.snapDown(frame.studSpacing());
    int bays = (int) Math.ceil((to - from) / greatest - TOLERANCE);
    for (int bay = 1; bay < bays; bay++) {
      double centre = tape.snap(from + (to - from) * bay / bays);
      double low = centre - frame.breadth() / 2;
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
