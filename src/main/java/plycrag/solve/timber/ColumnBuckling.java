package plycrag.solve.timber;

import java.util.List;

/**
 * Compression with buckling, EN 1995-1-1, 6.3.2: λ_rel = λ/π √(f_c,0,k/E_0,05) (6.21), k = 0.5 (1 +
 * β_c (λ_rel − 0.3) + λ_rel²) (6.27), k_c = 1/(k + √(k² − λ_rel²)) (6.25), and σ_c/(k_c f_c) with
 * bending (6.23), (6.24). Up to λ_rel = 0.3 nothing buckles and 6.2.4 asks. Lengths in mm.
 */
public final class ColumnBuckling {
  private static final double STOCKY = 0.3;

  private final TimberStrength strength;

  /** Of timber with characteristic values. */
  public ColumnBuckling(TimberStrength strength) {
    this.strength = strength;
  }

  /** k_c about one axis: of a buckling length over the radius of gyration. */
  public Worked factor(double length, double radius) {
    double slender = length / radius;
    double relative =
        slender / Math.PI * Math.sqrt(strength.compression() / strength.fifthElasticity());
    double beta = strength.kind().straightness();
    double k = (1 + beta * (relative - STOCKY) + relative * relative) / 2;
    double factor = relative <= STOCKY ? 1 : 1 / (k + Math.sqrt(k * k - relative * relative));
    return Worked.of("(6.21), (6.25), (6.27), (6.29)", "k_c = 1/(k + √(k² − λ_rel²))")
        .with("λ", slender)
        .stress("f_c,0,k", strength.compression())
        .stress("E_0,05", strength.fifthElasticity())
        .with("λ_rel", relative)
        .with("β_c", beta)
        .with("k", k)
        .is(factor);
  }

  /** Both utilisations, each axis with its own factor from {@link #factor}. */
  public List<Worked> utilisations(
      SectionStress stress, DesignStrength design, Worked aboutY, Worked aboutZ) {
    return List.of(
        StressSum.both(
                List.of("(6.23)", "(6.23)"),
                "σ_c/(k_c,y f_c) + ",
                axial("k_c,y", stress, design, aboutY),
                stress.axial() / (aboutY.value() * design.compression()),
                stress,
                design)
            .get(0),
        StressSum.both(
                List.of("(6.24)", "(6.24)"),
                "σ_c/(k_c,z f_c) + ",
                axial("k_c,z", stress, design, aboutZ),
                stress.axial() / (aboutZ.value() * design.compression()),
                stress,
                design)
            .get(1));
  }

  private static Worked.Draft axial(
      String name, SectionStress stress, DesignStrength design, Worked factor) {
    return Worked.of("", "")
        .stress("σ_c", stress.axial())
        .with(name, factor.value())
        .stress("f_c", design.compression());
  }
}
