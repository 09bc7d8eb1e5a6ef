package plycrag.params;

import java.util.List;
import plycrag.params.FrameParameters.SeamBacking;

/** The keys of {@code [frame]}. */
final class FrameTable {
  static final Parameter<Section> SECTION =
      new Parameter<>(
          "section",
          new SectionKind(LengthKind.length(15, 300)),
          Standard.section("45 90 mm", "1.5 3.5 in"),
          "Section of the framing as measured, the side against the sheet first; or its name.");
  static final Parameter<Double> STUD_SPACING =
      new Parameter<>(
          "stud-spacing",
          LengthKind.length(100, 1200),
          Standard.length("400 mm", "16 in"),
          "Greatest distance between neighbouring studs, centre to centre.");
  static final Parameter<SeamBacking> SEAMS =
      new Parameter<>(
          "seams",
          new WordKind<>(List.of(SeamBacking.values()), List.of()),
          Standard.word(SeamBacking.DOUBLED),
          "What backs a seam: two members side by side, one laid flat, or one on edge for both.");

  static final TableSpec TABLE =
      new TableSpec(
          "frame",
          false,
          "The framing behind the sheets.",
          List.of(SECTION, STUD_SPACING, SEAMS),
          List.of());

  private FrameTable() {}

  static FrameParameters record(Values values) {
    Section section = values.get(SECTION);
    return new FrameParameters(
        section.breadth(), section.depth(), values.get(STUD_SPACING), values.get(SEAMS));
  }
}
