package plycrag.read;

import java.util.List;
import java.util.stream.IntStream;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Needed;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.read.text.Faults;
import plycrag.wall.machine.KeepOut;
import plycrag.wall.machine.KeepOut.Corner;
import plycrag.wall.machine.KeepOut.Size;

/** The keys of {@code [[keep-out]]}. */
final class KeepOutTable {
  static final Parameter<String> NAME =
      new Parameter<>(
          "name",
          TextKind.NAME,
          DefaultValue.derived("keep-out 1, keep-out 2 and so on"),
          "What stands there, printed beside it: clamp, screw, stop.");
  static final Parameter<Double> LEFT =
      place("left", "Where it begins, from the sheet's left edge; below zero beside the sheet.");
  static final Parameter<Double> LOW =
      place("low", "Where it begins, from the sheet's lower edge; below zero beside the sheet.");
  static final Parameter<Double> WIDTH = size("width", "Its width.");
  static final Parameter<Double> HEIGHT = size("height", "How far it goes up the sheet.");
  static final Parameter<Double> RISE =
      new Parameter<>(
          "rise",
          LengthKind.length(0, 299),
          Needed.NONE,
          "How far it stands above the sheet's top; the machine's `safe-height` must be more.");

  static final TableSpec TABLE =
      new TableSpec(
          "keep-out",
          true,
          "A place on every sheet, as it lies on the machine, where a clamp or a screw holds it. No"
              + " tool cuts there, and all go over it at the safe height. Tell it wider by what the"
              + " spindle's nut needs.",
          List.of(NAME, LEFT, LOW, WIDTH, HEIGHT, RISE),
          List.of());

  private KeepOutTable() {}

  private static Parameter<Double> place(String key, String meaning) {
    return new Parameter<>(key, LengthKind.length(-1000, 10_000), Needed.NONE, meaning);
  }

  private static Parameter<Double> size(String key, String meaning) {
    return new Parameter<>(key, LengthKind.length(1, 10_000), Needed.NONE, meaning);
  }

  /** Reports places that are half told. */
  static void check(List<Values> places, Faults faults) {
    for (Values place : places) {
      Needed.check(place, TABLE, "place", List.of(LEFT, LOW, WIDTH, HEIGHT, RISE), faults);
    }
  }

  /** The records, in order. */
  static List<KeepOut> records(List<Values> places) {
    return IntStream.range(0, places.size())
        .mapToObj(at -> record(places.get(at), "keep-out " + (at + 1)))
        .toList();
  }

  private static KeepOut record(Values place, String name) {
    return new KeepOut(
        place.given(NAME).orElse(name),
        new Corner(place.get(LEFT), place.get(LOW)),
        new Size(place.get(WIDTH), place.get(HEIGHT)),
        place.get(RISE));
  }
}
