package plycrag.read;

import java.util.List;
import java.util.Optional;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.Screws;
import plycrag.wall.machine.ClearanceHoles;
import plycrag.wall.machine.ClearanceHoles.Sink;

/** The keys of {@code [machine]} that say whether it drills clearance holes for screws. */
final class ScrewHoleKeys {
  /** How much wider than its thread a screw's hole is, mm (common practice, no source). */
  private static final double PLAY = 0.5;

  /** How wide a countersunk head is in diameters of its screw (DIN 7997, from memory). */
  private static final double HEAD = 2;

  /** Which holes are drilled for screws. */
  enum ScrewHoles {
    NONE,
    THROUGH,
    COUNTERSUNK
  }

  static final Parameter<ScrewHoles> SCREW_HOLES =
      new Parameter<>(
          "screw-holes",
          new WordKind<>(List.of(ScrewHoles.values())),
          DefaultValue.word(ScrewHoles.NONE),
          "Whether the machine drills clearance holes through the sheets for the screws that hold"
              + " them, and lets their heads in with a countersink. The frame must then be set by"
              + " the holes; pilot holes in the timber are made by hand.");
  static final Parameter<Double> SCREW_HOLE =
      new Parameter<>(
          "screw-hole",
          LengthKind.length(2, 15),
          DefaultValue.derived("0.5 mm more than the screw's diameter"),
          "Diameter of those clearance holes.");

  static final Parameter<Double> SCREW_HEAD =
      new Parameter<>(
          "screw-head",
          LengthKind.length(3, 30),
          DefaultValue.derived("twice the screw's diameter"),
          "Diameter of the screws' heads; a countersink goes as deep as lets them lie flush.");
  static final Parameter<Double> COUNTERSINK_DEPTH =
      new Parameter<>(
          "countersink-depth",
          LengthKind.length(0.5, 12),
          DefaultValue.length("6 mm", "1/4 in"),
          "The deepest that a countersink may go; what is left under the head holds the sheet.");

  static final List<Parameter<?>> ALL =
      List.of(SCREW_HOLES, SCREW_HOLE, SCREW_HEAD, COUNTERSINK_DEPTH);

  private ScrewHoleKeys() {}

  /** The holes; none where none are drilled. */
  static Optional<ClearanceHoles> record(Values machine, Screws screws) {
    if (machine.get(SCREW_HOLES) == ScrewHoles.NONE) {
      return Optional.empty();
    }
    double diameter = machine.given(SCREW_HOLE).orElse(screws.diameter() + PLAY);
    double head = machine.given(SCREW_HEAD).orElse(HEAD * screws.diameter());
    return Optional.of(
        new ClearanceHoles(
            diameter,
            Optional.of(new Sink(head, machine.get(COUNTERSINK_DEPTH)))
                .filter(sink -> machine.get(SCREW_HOLES) == ScrewHoles.COUNTERSUNK)));
  }
}
