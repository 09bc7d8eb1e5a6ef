package plycrag.machining.replay;

import java.util.ArrayList;
import java.util.List;

/** Where the tool went so far. */
final class Track {
  private final List<Step> steps = new ArrayList<>();
  private Spot at = Spot.UNKNOWN;

  /** Where the tool is. */
  Spot at() {
    return at;
  }

  List<Step> steps() {
    return steps;
  }

  void add(Step step) {
    steps.add(step);
  }

  /** Another tool may be longer or shorter. */
  void forgetHeight() {
    at = at.atUnknownHeight();
  }

  /** Goes to a place if the tool isn't there. */
  void rapid(int line, Spot to) {
    if (!at.isAt(to)) {
      steps.add(new Step.Rapid(line, to));
      at = to;
    }
  }

  /** Cuts to a place if the tool isn't there. */
  void feed(int line, Spot to, double rate) {
    if (!at.isAt(to)) {
      feed(line, List.of(at, to), rate);
    }
  }

  /** Cuts along a way that begins where the tool is. */
  void feed(int line, List<Spot> way, double rate) {
    steps.add(new Step.Feed(line, way, rate));
    at = way.get(way.size() - 1);
  }
}
