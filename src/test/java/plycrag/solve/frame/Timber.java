package plycrag.solve.frame;

/** The sections of solid timber that the cases are made of: C24, mean values. */
final class Timber {
  static final double ELASTICITY = 11_000;
  static final double SHEAR_MODULUS = 690;

  /** 45 × 145 on edge. */
  static final BeamSection S1 = BeamSection.rectangle(145, 45, ELASTICITY, SHEAR_MODULUS);

  /** 45 × 95 on edge. */
  static final BeamSection S2 = BeamSection.rectangle(95, 45, ELASTICITY, SHEAR_MODULUS);

  private Timber() {}

  /** The other way round: its weak axis in the plane. */
  static BeamSection flat(BeamSection section) {
    return BeamSection.bending(
        section.elasticity(),
        section.shearModulus(),
        section.area(),
        section.inertiaZ(),
        section.inertiaY(),
        section.torsion());
  }
}
