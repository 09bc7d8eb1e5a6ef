package plycrag.params;

import java.util.List;
import java.util.Optional;

/** The keys of {@code [machine]} that say whether it drills clearance holes for screws. */
final class ScrewHoleKeys {
  /** How much wider than its thread a screw's hole is, mm (common practice, no source). */
  private static final double PLAY = 0.5;

  /** Which holes are drilled for screws. */
  enum ScrewHoles {
    NONE,
    THROUGH
  }

  static final Parameter<ScrewHoles> SCREW_HOLES =
      new Parameter<>(
          "screw-holes",
          new WordKind<>(List.of(ScrewHoles.values())),
          Standard.word(ScrewHoles.NONE),
          "Whether the machine drills clearance holes through the sheets for the screws that hold"
              + " them. The frame must then be set by the holes; pilot holes in the timber and"
              + " countersinks are made by hand.");
  static final Parameter<Double> SCREW_HOLE =
      new Parameter<>(
          "screw-hole",
          LengthKind.length(2, 15),
          Standard.derived("0.5 mm more than the screw's diameter"),
          "Diameter of those clearance holes.");

  static final List<Parameter<?>> ALL = List.of(SCREW_HOLES, SCREW_HOLE);

  private ScrewHoleKeys() {}

  /** The diameter of the holes, mm; none where none are drilled. */
  static Optional<Double> diameter(Values machine, ScrewParameters screws) {
    return machine.get(SCREW_HOLES) == ScrewHoles.NONE
        ? Optional.empty()
        : Optional.of(machine.given(SCREW_HOLE).orElse(screws.diameter() + PLAY));
  }
}
