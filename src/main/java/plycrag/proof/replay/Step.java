package plycrag.proof.replay;

import java.util.List;

/** What a controller does on reading a line, cycles and arcs resolved into straight ways. */
sealed interface Step {
  /** The line that asks for it, counted from 1. */
  int line();

  /** As fast as the machine can; not always on the straight way. */
  record Rapid(int line, TipPlace to) implements Step {}

  /**
   * Cutting.
   *
   * @param way two spots or more; an arc's chords stand off it by half a micrometre at most
   * @param rate mm/min
   */
  record Feed(int line, List<TipPlace> way, double rate) implements Step {
    /** Copies the way. */
    public Feed {
      way = List.copyOf(way);
    }
  }

  /** Waiting. */
  record Wait(int line, double seconds) implements Step {}

  /**
   * Starting the spindle clockwise.
   *
   * @param speed revolutions per minute
   */
  record Start(int line, double speed) implements Step {}

  /** Stopping the spindle. */
  record Stop(int line) implements Step {}

  /** Switching what runs beside the spindle, on or off. */
  record Beside(int line, boolean on) implements Step {}

  /** Changing the tool by word. */
  record Change(int line, int tool) implements Step {}

  /** Counting with the length of a tool from now on. */
  record Length(int line, int tool) implements Step {}

  /** Waiting for a person. */
  record Pause(int line) implements Step {}

  /** The program's end. */
  record End(int line) implements Step {}
}
