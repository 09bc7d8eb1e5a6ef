package plycrag.machining;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plycrag.layout.LaidSheet;
import plycrag.layout.MachinedHole;
import plycrag.layout.MachinedHole.Kind;
import plycrag.layout.PartMark;
import plycrag.layout.PartMarks;
import plycrag.units.Decimal;
import plycrag.wall.Wall;

/** What is done to a sheet, in words for its set-up sheet. */
record SheetWork(Wall wall, LaidSheet sheet) {

  /** What its holes are for. */
  String holes() {
    String inserts = sheet.inserts().size() + " for inserts";
    long screws = sheet.holes().stream().filter(hole -> hole.kind() == Kind.SCREW).count();
    return screws == 0
        ? inserts
        : inserts
            + ", "
            + screws
            + " for screws to pass through; drill the pilot holes in the timber by hand";
  }

  /** What is engraved, if something is. */
  Optional<String> marks() {
    List<PartMark> marks = PartMarks.of(wall, sheet);
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
                    + " mm deep, in the face that lies up");
  }

  /** How the heads of screws are let in, if they are. */
  Optional<String> heads() {
    List<MachinedHole> sunk = sheet.holes().stream().filter(MachinedHole::isSunk).toList();
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

  private static String mm(double length) {
    return Decimal.of(length, 1);
  }
}
