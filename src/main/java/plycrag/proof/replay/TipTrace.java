package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;

/** Where the tool went so far. */
final class TipTrace {
  private final List<Step> steps = new ArrayList<>();
  private TipPlace at = TipPlace.UNKNOWN;

  /** Where the tool is. */
  TipPlace at() {
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
  void rapid(int line, TipPlace to) {
    if (!at.isAt(to)) {
      steps.add(new Step.Rapid(line, to));
      at = to;
    }
  }

  /** Cuts to a place if the tool isn't there. */
  void feed(int line, TipPlace to, double rate) {
    if (!at.isAt(to)) {
      feed(line, List.of(at, to), rate);
    }
  }

  /** Cuts along a way that begins where the tool is. */
  void feed(int line, List<TipPlace> way, double rate) {
    steps.add(new Step.Feed(line, way, rate));
    at = way.get(way.size() - 1);
  }
}
