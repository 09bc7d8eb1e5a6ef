package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.document.Book.Block;
import plycrag.document.Book.Listing;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.standing.Ground;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.room.Room.Floor;

/** How what stands on a floor that falls is packed up from it. */
final class FloorPacking {
  private FloorPacking() {}

  /** How far below each member that stands on it a floor lies; nothing if it is level. */
  static Optional<Block> of(Layout layout) {
    return layout.wall().room().floor().isLevel() ? Optional.empty() : Optional.of(table(layout));
  }

  private static Block table(Layout layout) {
    Tape tape = layout.wall().tape();
    List<List<Cell>> rows = new ArrayList<>();
    for (Ground.Packed packed : Ground.of(layout).packed()) {
      rows.add(
          List.of(
              Cell.of(packed.mark()),
              Cell.of(tape.text(tape.snap(packed.begin()))),
              Cell.of(tape.text(tape.snap(packed.end())))));
    }
    return new Listing(
        new Table(
            "Packing: how far the floor lies below what is set level, at its left and its right"
                + " end, or at its rear and its front end where it runs out from the wall; solid"
                + " along all of it",
            List.of("Mark", "Left or rear", "Right or front"),
            rows));
  }

  /** How a floor that is not level falls. */
  static String words(Floor floor, Tape tape) {
    List<String> ways = new ArrayList<>();
    if (floor.fall() != 0) {
      ways.add(
          "falls by "
              + tape.text(Math.abs(floor.fall()))
              + " to the "
              + (floor.fall() > 0 ? "right" : "left")
              + " end");
    }
    if (floor.pitch() != 0) {
      ways.add(
          (floor.pitch() > 0 ? "rises by " : "falls by ")
              + Decimal.of(Math.abs(floor.pitch()), 2)
              + "° toward the climber");
    }
    return "the floor " + String.join(" and ", ways);
  }
}
