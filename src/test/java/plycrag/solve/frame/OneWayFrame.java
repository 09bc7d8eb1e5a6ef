package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import plycrag.geometry.Vector3;

/** A beam on feet that only push, tied down by what only pulls or pushes, under random loads. */
final class OneWayFrame {
  static final int PARTS = 5;

  private final double[] places = new double[PARTS];
  private final Acting[] acting = new Acting[PARTS];
  private final double[] stiffness = new double[PARTS];
  private final double[] loads = new double[2 * PARTS];

  OneWayFrame(long seed) {
    Random random = new Random(seed);
    double place = 0;
    for (int i = 0; i < PARTS; i++) {
      place += 300 + 900 * random.nextDouble();
      places[i] = place;
      acting[i] = random.nextInt(4) == 0 ? Acting.NEGATIVE_ONLY : Acting.POSITIVE_ONLY;
      stiffness[i] =
          random.nextInt(3) == 0 ? 50 + 500 * random.nextDouble() : Double.POSITIVE_INFINITY;
    }
    for (int i = 0; i < loads.length; i++) {
      loads[i] = random.nextInt(3) == 0 ? 0 : 1000 * (random.nextDouble() - 0.7);
    }
  }

  private PlaneFrame frame(BitSet slack, boolean oneWay) {
    PlaneFrame frame = new PlaneFrame().node("start", 0, 0).hold("start", Freedom.ALONG_X);
    String[] names = new String[PARTS + 1];
    names[0] = "start";
    for (int i = 0; i < PARTS; i++) {
      names[i + 1] = "p" + i;
      frame.node(names[i + 1], places[i], 0);
      Acting its = oneWay ? acting[i] : Acting.BOTH_WAYS;
      if (!slack.get(i)) {
        frame.support(
            new FrameSupport(frame.node(names[i + 1]), Freedom.ALONG_Y, stiffness[i], its));
      }
    }
    return frame.chain(Timber.S1, names);
  }

  FrameModel model() {
    return frame(new BitSet(), true).model();
  }

  LoadCase loadCase() {
    return loadCase(frame(new BitSet(), true));
  }

  private LoadCase loadCase(PlaneFrame frame) {
    List<FrameLoad> all = new ArrayList<>();
    all.add(frame.push("start", 0, loads[0]));
    for (int i = 0; i < PARTS; i++) {
      all.add(frame.push("p" + i, 0, loads[i + 1]));
    }
    return new LoadCase("random", all);
  }

  /** Whether it stands with some parts away, the others take their sign and none is run into. */
  boolean rests(BitSet slack) {
    PlaneFrame frame = frame(slack, false);
    FrameOutcome outcome = FrameAnalysis.of(frame.model()).firstOrder(loadCase(frame));
    if (!(outcome instanceof FrameSolution solution)) {
      return false;
    }
    for (int i = 0; i < PARTS; i++) {
      double wrong =
          slack.get(i) ? -frame.motion(solution, "p" + i)[1] : frame.reaction(solution, "p" + i)[1];
      double sign = slack.get(i) ? 1 : -1;
      if (sign * acting[i].sign() * wrong > 1e-6) {
        return false;
      }
    }
    return true;
  }

  BitSet slack(FrameSolution solution) {
    BitSet slack = new BitSet();
    for (int i = 0; i < PARTS; i++) {
      slack.set(i, solution.slack().contains("p" + i + " ALONG_Y"));
    }
    return slack;
  }

  /** For what fails. */
  @Override
  public String toString() {
    return new Vector3(places[0], loads[0], stiffness[0]).toString();
  }
}
