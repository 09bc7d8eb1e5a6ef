package plycrag.solve.timber;

import java.util.List;

/** Sums of bending about two axes, one of them lessened by k_m = 0.7, and an axial part. */
final class StressSum {
  /** EN 1995-1-1, 6.1.6 (2), for rectangles. */
  static final double K_M = 0.7;

  private StressSum() {}

  /**
   * Both sums.
   *
   * @param places the two equations
   * @param term the axial part as a formula
   * @param begun one with the axial part's symbols
   * @param axial the axial part
   */
  static List<Worked> both(
      List<String> places,
      String term,
      Worked.Draft begun,
      double axial,
      SectionStress stress,
      DesignStrength strength) {
    double y = stress.bendingY() / strength.bendingY();
    double z = stress.bendingZ() / strength.bendingZ();
    return List.of(
        draft(places.get(0), term + "σ_m,y/f_m,y + k_m σ_m,z/f_m,z", begun, stress, strength)
            .is(axial + y + K_M * z),
        draft(places.get(1), term + "k_m σ_m,y/f_m,y + σ_m,z/f_m,z", begun, stress, strength)
            .is(axial + K_M * y + z));
  }

  private static Worked.Draft draft(
      String place,
      String formula,
      Worked.Draft begun,
      SectionStress stress,
      DesignStrength strength) {
    Worked.Draft draft = Worked.of(place, formula);
    for (Worked.Symbol symbol : begun.symbols()) {
      draft = draft.with(symbol.name(), symbol.value(), symbol.unit());
    }
    return draft
        .stress("σ_m,y", stress.bendingY())
        .stress("f_m,y", strength.bendingY())
        .with("k_m", K_M)
        .stress("σ_m,z", stress.bendingZ())
        .stress("f_m,z", strength.bendingZ());
  }
}
