package plycrag.machining;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plycrag.layout.MachinedHole;
import plycrag.layout.MachinedHole.Kind;
import plycrag.layout.PartMark;
import plycrag.layout.WorkedFace;
import plycrag.units.Decimal;
import plycrag.wall.Wall;

/** What is done to a sheet, in words for its set-up sheet. */
record SheetWork(Wall wall, WorkedFace face) {

  /** What its holes are for. */
  String holes() {
    if (!face.isLast()) {
      return pins(face.sheet().holes());
    }
    String inserts = face.sheet().inserts().size() + " for inserts";
    long screws = face.sheet().holes().stream().filter(hole -> hole.kind() == Kind.SCREW).count();
    return screws == 0
        ? inserts
        : inserts
            + ", "
            + screws
            + " for screws to pass through; drill the pilot holes in the timber by hand";
  }

  /** What is engraved, if something is. */
  Optional<String> marks() {
    List<PartMark> marks = face.marks();
    return wall.machine()
        .marks()
        .filter(wanted -> !marks.isEmpty())
        .map(
            wanted ->
                marks.stream().map(PartMark::text).collect(Collectors.joining(", "))
                    + ", "
                    + mm(wanted.height())
                    + " mm high and "
                    + mm(wanted.depth())
                    + " mm deep, in the "
                    + face.sheet().faceUp().word());
  }

  /** How the heads of screws are let in, if they are. */
  Optional<String> heads() {
    List<MachinedHole> sunk = face.sheet().holes().stream().filter(MachinedHole::isSunk).toList();
    return sunk.stream()
        .findFirst()
        .map(
            first ->
                sunk.size()
                    + ", "
                    + mm(first.diameter())
                    + " mm across and "
                    + mm(first.depth())
                    + " mm deep; try a screw in the first: its head must lie flush, not deeper");
  }

  private String pins(List<MachinedHole> holes) {
    double deeper = holes.get(0).depth() - wall.sheet().thickness();
    return holes.size() + " for pins, " + mm(deeper) + " mm further into the board";
  }

  /** How a sheet that is worked on both faces is turned over. */
  Optional<String> turning() {
    double axis = face.axis() - SheetOrigin.of(wall.machine().origin(), face.sheet().stock()).x();
    String about = "over from left to right, about the upright line X " + mm(axis);
    return switch (face.order()) {
      case ONLY -> Optional.empty();
      case FIRST ->
          Optional.of(
              "first of two. Afterwards put pins of "
                  + mm(face.sheet().holes().get(0).diameter())
                  + " mm through both holes into the board, and turn the sheet "
                  + about
                  + "; leave X and Y zero as they are");
      case SECOND ->
          Optional.of(
              "second of two, on the pins: the sheet was turned "
                  + about
                  + "; X and Y zero stay as they were for the first");
    };
  }

  private static String mm(double length) {
    return Decimal.of(length, 1);
  }
}
