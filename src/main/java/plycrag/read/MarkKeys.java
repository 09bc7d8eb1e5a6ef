package plycrag.read;

import java.util.List;
import java.util.Optional;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.machine.MarkEngraving;
import plycrag.wall.machine.Pins;

/** The keys of {@code [machine]} that say whether it engraves the marks of pieces. */
final class MarkKeys {
  /** How pieces are marked. */
  enum Marks {
    NONE,
    ENGRAVED,
    BEHIND
  }

  static final Parameter<Marks> MARKS =
      new Parameter<>(
          "marks",
          new WordKind<>(List.of(Marks.values())),
          DefaultValue.word(Marks.NONE),
          "Whether the machine engraves every piece's mark and facet: in the face that lies up, or"
              + " behind the wall, where nobody climbs. Sheets whose front lies up are then worked"
              + " on both faces, the back first, and turned over on two pins.");
  static final Parameter<Double> MARK_HEIGHT =
      new Parameter<>(
          "mark-height",
          LengthKind.length(4, 60),
          DefaultValue.length("12 mm", "1/2 in"),
          "Height of those letters.");
  static final Parameter<Double> MARK_DEPTH =
      new Parameter<>(
          "mark-depth",
          LengthKind.length(0.1, 2),
          DefaultValue.length("0.4 mm", "1/64 in"),
          "How deep they are.");

  static final Parameter<Double> PIN_DIAMETER =
      new Parameter<>(
          "pin-diameter",
          LengthKind.length(3, 20),
          DefaultValue.length("6 mm", "1/4 in"),
          "Diameter of the pins that a sheet is turned over on, and of their holes; they stand two of"
              + " these from its edges at least.");
  static final Parameter<Double> PIN_DEPTH =
      new Parameter<>(
          "pin-depth",
          LengthKind.length(2, 30),
          DefaultValue.length("8 mm", "5/16 in"),
          "How much deeper than others their holes go into the board under the sheet.");

  static final List<Parameter<?>> ALL =
      List.of(MARKS, MARK_HEIGHT, MARK_DEPTH, PIN_DIAMETER, PIN_DEPTH);

  private MarkKeys() {}

  /** How pieces are marked; not at all unless asked for. */
  static Optional<MarkEngraving> record(Values values) {
    return values.get(MARKS) == Marks.NONE
        ? Optional.empty()
        : Optional.of(
            new MarkEngraving(
                values.get(MARK_HEIGHT),
                values.get(MARK_DEPTH),
                values.get(MARKS) == Marks.BEHIND));
  }

  /** What sheets are turned over on, where they are worked on both faces. */
  static Pins pins(Values values) {
    return new Pins(values.get(PIN_DIAMETER), values.get(PIN_DEPTH));
  }
}
