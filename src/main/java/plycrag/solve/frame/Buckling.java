package plycrag.solve.frame;

import java.util.Arrays;
import java.util.Optional;
import plycrag.geometry.Tolerance;
import plycrag.solve.sparse.Factor;
import plycrag.solve.sparse.Lanczos;
import plycrag.solve.sparse.SparsePattern;

/**
 * The factor by which axial forces grow until a frame no longer resists some motion. What they take
 * off the stiffness is held against it: the greatest such part, by C. Lanczos, is the factor's
 * inverse. Whether it is the greatest is then asked of the pivots: just below the factor all must
 * be positive.
 */
final class Buckling {
  private static final int HALVINGS = 60;
  private static final int TURNS = 4;

  private final Equations equations;
  private final HeldFrame frame;

  Buckling(Equations equations, HeldFrame frame) {
    this.equations = equations;
    this.frame = frame;
  }

  /** Under tensions of its elements, N. */
  Optional<CriticalLoad> under(double[] tensions) {
    double[] stress = frame.moving(equations.stressEntries(tensions));
    Factor factor = frame.factor().orElseThrow();
    SparsePattern pattern = equations.pattern();
    Lanczos softest =
        new Lanczos(
            half -> {
              double[] softened = pattern.times(stress, factor.otherHalf(half));
              for (int i = 0; i < softened.length; i++) {
                softened[i] = -softened[i];
              }
              return factor.half(softened);
            },
            equations.freedoms());
    if (!(softest.value() > Tolerance.VANISHING * softest.largest())) {
      return Optional.empty();
    }
    double found = 1 / softest.value();
    double[] mode = factor.otherHalf(softest.vector());
    return Optional.of(
        stands(stress, found * (1 - FrameAccuracy.BESIDE))
            ? told(found, mode)
            : halved(stress, found, mode));
  }

  private CriticalLoad told(double factor, double[] mode) {
    return new CriticalLoad(factor, Motion.eitherWay(equations.nodes(), mode));
  }

  private boolean stands(double[] stress, double times) {
    return Factor.of(equations.pattern(), frame.with(stress, times)).isPresent();
  }

  /**
   * The slow way: the greatest factor below one at which the frame still stands, by halving, and
   * what it resists least there, from any motion.
   */
  CriticalLoad halved(double[] stress, double above, double[] any) {
    double stands = 0;
    double falls = above;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (stands + falls) / 2;
      if (stands(stress, middle)) {
        stands = middle;
      } else {
        falls = middle;
      }
    }
    Factor last = Factor.of(equations.pattern(), frame.with(stress, stands)).orElseThrow();
    double[] mode = any;
    for (int i = 0; i < TURNS; i++) {
      mode = ofSizeOne(last.solve(mode));
    }
    return told(stands, mode);
  }

  private static double[] ofSizeOne(double[] motion) {
    double size = CaseLoads.greatest(motion);
    return Arrays.stream(motion).map(one -> one / size).toArray();
  }
}
