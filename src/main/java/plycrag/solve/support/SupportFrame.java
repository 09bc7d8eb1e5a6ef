package plycrag.solve.support;

import java.util.ArrayList;
import java.util.List;

/**
 * The timber of one run's support.
 *
 * @param timbers station by station from the left, what runs along the wall last
 * @param meetings where they meet each other and the frame
 * @param unheld the facets whose upper edge it does not hold, for each what it fails for
 * @param sways whether what is to keep it from swaying along the wall has no room
 */
public record SupportFrame(
    List<SupportTimber> timbers, List<Meeting> meetings, List<Unheld> unheld, boolean sways) {
  /** None. */
  public static final SupportFrame NONE = new SupportFrame(List.of(), List.of(), List.of(), false);

  /** Copies the lists. */
  public SupportFrame {
    timbers = List.copyOf(timbers);
    meetings = List.copyOf(meetings);
    unheld = List.copyOf(unheld);
  }

  /** Collects a support while it is set. */
  static final class Draft {
    private final List<SupportTimber> timbers = new ArrayList<>();
    private final List<Meeting> meetings = new ArrayList<>();
    private final List<Unheld> unheld = new ArrayList<>();
    private boolean sways;

    SupportTimber add(SupportTimber timber) {
      timbers.add(timber);
      return timber;
    }

    void add(Meeting meeting) {
      meetings.add(meeting);
    }

    void notHeld(BackEdge back, Unheld.Cause cause, double found, double required) {
      Unheld one = new Unheld(back.facet(), cause, found, required);
      if (!unheld.contains(one)) {
        unheld.add(one);
      }
    }

    /** Nothing level holds it. */
    void tooSteep(BackEdge back) {
      notHeld(back, Unheld.Cause.TOO_STEEP, back.angle(), BackEdge.STEEPEST);
    }

    void sway() {
      sways = true;
    }

    SupportFrame frame() {
      return new SupportFrame(timbers, meetings, unheld, sways);
    }
  }
}
