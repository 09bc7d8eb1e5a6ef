package plycrag.read;

import java.util.List;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.machine.Routing;
import plycrag.wall.machine.Routing.Direction;
import plycrag.wall.machine.Routing.Entry;
import plycrag.wall.machine.Routing.Manner;
import plycrag.wall.machine.Routing.Outlines;

/** The keys of {@code [machine]} that say how pieces are cut from their sheets. */
final class RoutingKeys {
  static final Parameter<Outlines> OUTLINES =
      new Parameter<>(
          "outlines",
          new WordKind<>(List.of(Outlines.values())),
          DefaultValue.word(Outlines.NONE),
          "Whether an end mill cuts pieces and openings out: not at all, held by tabs, or down to a"
              + " thin skin.");
  static final Parameter<Direction> CUT_DIRECTION =
      new Parameter<>(
          "cut-direction",
          new WordKind<>(List.of(Direction.values())),
          DefaultValue.word(Direction.CLIMB),
          "How the end mill goes along a piece: climbing leaves the cleaner edge, conventional asks"
              + " less of a machine with play.");
  static final Parameter<Double> TAB_LENGTH =
      new Parameter<>(
          "tab-length",
          LengthKind.length(3, 60),
          DefaultValue.length("12 mm", "1/2 in"),
          "How long a tab is.");
  static final Parameter<Double> TAB_HEIGHT =
      new Parameter<>(
          "tab-height",
          LengthKind.length(0.5, 20),
          DefaultValue.length("4 mm", "3/16 in"),
          "How much of the sheet a tab leaves, from below.");
  static final Parameter<Double> SKIN =
      new Parameter<>(
          "skin",
          LengthKind.length(0.1, 3),
          DefaultValue.length("0.5 mm", "1/32 in"),
          "How thick the skin is that holds the pieces; a knife cuts it.");

  static final Parameter<Entry> ENTRY =
      new Parameter<>(
          "entry",
          new WordKind<>(List.of(Entry.values())),
          DefaultValue.word(Entry.RAMP),
          "How the end mill gets down to the next pass round a piece or an opening: on a short"
              + " ramp, or as a helix, falling evenly all the way round.");
  static final Parameter<Double> TAB_RAMP =
      new Parameter<>(
          "tab-ramp",
          LengthKind.length(0, 60),
          DefaultValue.length("0 mm", "0 in"),
          "Over what length the end mill comes down after a tab, for one that must not plunge; what"
              + " it leaves there makes the tab so much longer. 0 is straight down.");

  static final List<Parameter<?>> ALL =
      List.of(OUTLINES, CUT_DIRECTION, TAB_LENGTH, TAB_HEIGHT, SKIN, ENTRY, TAB_RAMP);

  private RoutingKeys() {}

  static Routing record(Values values) {
    return new Routing(
        values.get(OUTLINES),
        values.get(CUT_DIRECTION),
        values.get(TAB_LENGTH),
        values.get(TAB_HEIGHT),
        values.get(SKIN),
        new Manner(values.get(ENTRY), values.get(TAB_RAMP)));
  }
}
