package plycrag.read;

import java.util.List;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.SectionKind;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.Frame;
import plycrag.wall.Frame.EdgeStuds;
import plycrag.wall.Frame.LongStuds;
import plycrag.wall.Frame.SeamBacking;
import plycrag.wall.buying.Section;

/** The keys of {@code [frame]}. */
final class FrameTable {
  static final Parameter<Section> SECTION =
      new Parameter<>(
          "section",
          new SectionKind(LengthKind.length(15, 300)),
          DefaultValue.section("45 90 mm", "1.5 3.5 in"),
          "Section of the framing as measured, the side against the sheet first; or its name.");
  static final Parameter<Double> STUD_SPACING =
      new Parameter<>(
          "stud-spacing",
          LengthKind.length(100, 1200),
          DefaultValue.length("400 mm", "16 in"),
          "Greatest distance between neighbouring studs, centre to centre.");
  static final Parameter<SeamBacking> SEAMS =
      new Parameter<>(
          "seams",
          new WordKind<>(List.of(SeamBacking.values())),
          DefaultValue.word(SeamBacking.DOUBLED),
          "What backs a seam: two members side by side, one laid flat, or one on edge for both.");

  static final Parameter<EdgeStuds> EDGE_STUDS =
      new Parameter<>(
          "edge-studs",
          new WordKind<>(List.of(EdgeStuds.values())),
          DefaultValue.word(EdgeStuds.SINGLE),
          "How many studs stand at each side of a facet: one, or two side by side.");
  static final Parameter<LongStuds> LONG_STUDS =
      new Parameter<>(
          "long-studs",
          new WordKind<>(List.of(LongStuds.values())),
          DefaultValue.word(LongStuds.REFUSED),
          "What becomes of a stud longer than is sold: it is refused, or spliced from lengths end to"
              + " end, at blocking where there is some, neighbours at different heights.");
  static final Parameter<Double> BLOCKING_SPACING =
      new Parameter<>(
          "blocking-spacing",
          LengthKind.length(200, 5000),
          DefaultValue.derived("none: blocking at seams alone"),
          "Greatest distance between rows of blocking, middle to middle, plates and seams counted.");

  static final TableSpec TABLE =
      new TableSpec(
          "frame",
          false,
          "The framing behind the sheets.",
          List.of(SECTION, STUD_SPACING, SEAMS, EDGE_STUDS, LONG_STUDS, BLOCKING_SPACING),
          List.of());

  private FrameTable() {}

  static Frame record(Values values) {
    Section section = values.get(SECTION);
    return new Frame(
        section.breadth(),
        section.depth(),
        values.get(STUD_SPACING),
        values.get(SEAMS),
        values.get(EDGE_STUDS),
        values.get(LONG_STUDS),
        values.given(BLOCKING_SPACING));
  }
}
