package plycrag.params;

import java.util.List;
import java.util.Optional;

/** The keys of {@code [machine]} that say whether it engraves the marks of pieces. */
final class MarkKeys {
  /** How pieces are marked. */
  enum Marks {
    NONE,
    ENGRAVED
  }

  static final Parameter<Marks> MARKS =
      new Parameter<>(
          "marks",
          new WordKind<>(List.of(Marks.values())),
          Standard.word(Marks.NONE),
          "Whether the machine engraves every piece's mark and facet in the face that lies up. With"
              + " `[nesting]` `face-up = \"back\"` they stand behind the wall, where nobody climbs.");
  static final Parameter<Double> MARK_HEIGHT =
      new Parameter<>(
          "mark-height",
          LengthKind.length(4, 60),
          Standard.length("12 mm", "1/2 in"),
          "Height of those letters.");
  static final Parameter<Double> MARK_DEPTH =
      new Parameter<>(
          "mark-depth",
          LengthKind.length(0.1, 2),
          Standard.length("0.4 mm", "1/64 in"),
          "How deep they are.");

  static final List<Parameter<?>> ALL = List.of(MARKS, MARK_HEIGHT, MARK_DEPTH);

  private MarkKeys() {}

  /** How pieces are marked; not at all unless asked for. */
  static Optional<MarkParameters> record(Values values) {
    return values.get(MARKS) == Marks.NONE
        ? Optional.empty()
        : Optional.of(new MarkParameters(values.get(MARK_HEIGHT), values.get(MARK_DEPTH)));
  }
}
