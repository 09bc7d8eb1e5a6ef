package plycrag.files.ngc;

import plycrag.document.Move;
import plycrag.document.Xyz;

/**
 * Follows a program and refuses what would break a tool, a sheet or a hand.
 *
 * <p>The first motion, also after a change of tool, is Z alone. Nothing is cut before a place is
 * reached, and before the spindle turns and has been waited for. A rapid never goes below the
 * bottom of the hole it is in. The tool travels, starts and stops only at the height at which its
 * last hole began, or above.
 */
final class SafeOrder {
  private boolean raised;
  private boolean placed;
  private boolean turning;
  private boolean waited;
  private double z;
  private double clear = Double.NEGATIVE_INFINITY;
  private double bottom = Double.POSITIVE_INFINITY;

  /**
   * Takes the next move.
   *
   * @throws IllegalStateException if it is not safe after those before
   */
  void follow(Move move) {
    if (move instanceof Move.DrillCycle cycle) {
      cycle.steps(z).forEach(this::follow);
    } else if (move instanceof Move.Cut cut) {
      cut(cut.to(), cut.feed());
    } else if (move instanceof Move.Arc arc) {
      cut(arc.to(), arc.feed());
    } else if (move instanceof Move.RapidZ rapid) {
      rapid(rapid);
    } else if (move instanceof Move.RapidXy) {
      travel();
    } else if (move instanceof Move.Plunge plunge) {
      plunge(plunge);
    } else if (move instanceof Move.Dwell dwell) {
      require(dwell.seconds() >= 0, "a wait of less than nothing");
      waited = turning;
    } else if (move instanceof Move.ToolChange) {
      change();
    } else {
      spindle(move instanceof Move.SpindleOn);
    }
  }

  /**
   * Takes the end.
   *
   * @throws IllegalStateException if the tool turns or is down
   */
  void end() {
    require(!turning, "the spindle turns at the end");
    require(z >= clear, "the tool is down at the end");
  }

  private void rapid(Move.RapidZ rapid) {
    boolean inHole = Double.isFinite(bottom);
    require(!inHole || rapid.z() >= bottom, "a rapid goes below the bottom of its hole");
    raised = true;
    z = rapid.z();
  }

  private void travel() {
    require(raised, "the first motion is not Z alone");
    require(z >= clear, "the tool travels before it is out of its hole");
    placed = true;
    bottom = Double.POSITIVE_INFINITY;
    clear = Double.NEGATIVE_INFINITY;
  }

  private void plunge(Move.Plunge plunge) {
    require(raised && placed, "a plunge before a place is reached");
    require(turning && waited, "a plunge before the spindle turns at speed");
    require(plunge.z() < z, "a plunge that does not go down");
    require(plunge.feed() > 0, "a plunge without feed");
    clear = Math.max(clear, z);
    bottom = Math.min(bottom, plunge.z());
    z = plunge.z();
  }

  /** Once the tool has cut its way across, it has a bottom only where it is. */
  private void cut(Xyz to, double feed) {
    require(raised && placed, "a cut before a place is reached");
    require(turning && waited, "a cut before the spindle turns at speed");
    require(feed > 0, "a cut without feed");
    clear = Math.max(clear, z);
    bottom = to.z();
    z = to.z();
  }

  /** A changer moves as it likes, so that the tool must be raised anew. */
  private void change() {
    require(!turning, "the tool is changed while it turns");
    require(z >= clear, "the tool is changed in a hole");
    raised = false;
  }

  private void spindle(boolean on) {
    require(on != turning, on ? "the spindle turns already" : "the spindle stands already");
    require(z >= clear, "the spindle starts or stops in a hole");
    turning = on;
    waited = false;
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalStateException("unsafe program: " + otherwise);
    }
  }
}
