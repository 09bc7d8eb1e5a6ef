package plycrag.machining;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plycrag.layout.sheets.EngravedMark;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.WorkedFace;
import plycrag.wall.Wall;

/** What is done to a sheet, in words for its set-up sheet. */
final class SheetWork {
  private final Wall wall;
  private final WorkedFace face;
  private final MachineLengths lengths;

  SheetWork(Wall wall, WorkedFace face, MachineLengths lengths) {
    this.lengths = lengths;
    this.wall = wall;
    this.face = face;
  }

  /** What its holes are for. */
  String holes() {
    if (!face.isLast()) {
      return pins();
    }
    String inserts = face.sheet().inserts().size() + " for inserts";
    int screws = face.sheet().holes(Kind.SCREW).size();
    return screws == 0
        ? inserts
        : inserts
            + ", "
            + screws
            + " for screws to pass through; drill the pilot holes in the timber by hand";
  }

  /** How flanges are let in, if they are, and what remains under them. */
  Optional<String> recesses() {
    List<MachinedHole> recesses = face.sheet().holes(Kind.RECESS);
    double thickness = wall.sheet().thickness();
    return recesses.stream()
        .findFirst()
        .map(
            first ->
                recesses.size()
                    + ", "
                    + lengths.words(first.bore().diameter())
                    + " across and "
                    + lengths.words(first.bore().depth())
                    + " deep in the back: "
                    + lengths.words(thickness - first.bore().depth())
                    + " of the sheet's "
                    + lengths.words(thickness)
                    + " remain; measure that at the first, and try an insert in it");
  }

  /** What is engraved, if something is. */
  Optional<String> marks() {
    List<EngravedMark> marks = face.marks();
    return wall.machine()
        .work()
        .marks()
        .filter(wanted -> !marks.isEmpty())
        .map(
            wanted ->
                marks.stream().map(EngravedMark::text).collect(Collectors.joining(", "))
                    + ", "
                    + lengths.words(wanted.height())
                    + " high and "
                    + lengths.words(wanted.depth())
                    + " deep, in the "
                    + face.sheet().faceUp().word());
  }

  /** How the heads of screws are let in, if they are. */
  Optional<String> heads() {
    List<MachinedHole> sunk = face.sheet().holes(Kind.COUNTERSINK);
    return sunk.stream()
        .findFirst()
        .map(
            first ->
                sunk.size()
                    + ", "
                    + lengths.words(first.bore().diameter())
                    + " across and "
                    + lengths.words(first.bore().depth())
                    + " deep; try a screw in the first: its head must lie flush, not deeper");
  }

  private String pins() {
    double deeper = wall.machine().work().pins().depth();
    return face.sheet().holes(Kind.PIN).size()
        + " for pins, "
        + lengths.words(deeper)
        + " further into the board";
  }

  /** How a sheet that is worked on both faces is turned over. */
  Optional<String> turning() {
    double axis =
        face.axis() - SheetOrigin.of(wall.machine().zero().corner(), face.sheet().stock()).x();
    String about = "over from left to right, about the upright line X " + lengths.number(axis);
    return switch (face.order()) {
      case ONLY -> Optional.empty();
      case FIRST ->
          Optional.of(
              "first of two. Afterwards put pins of "
                  + lengths.words(wall.machine().work().pins().diameter())
                  + " through both holes into the board, and turn the sheet "
                  + about
                  + "; leave X and Y zero as they are"
                  + fitting());
      case SECOND ->
          Optional.of(
              "second of two, on the pins: the sheet was turned "
                  + about
                  + "; X and Y zero stay as they were for the first"
                  + fitting());
    };
  }

  private String fitting() {
    return face.fitsPinsOneWay(wall)
        ? ". Turned any other way the sheet does not go on the pins"
        : ". The sheet goes on the pins turned from below upward as well: mark its lower edge, and"
            + " see that it lies below again";
  }
}
