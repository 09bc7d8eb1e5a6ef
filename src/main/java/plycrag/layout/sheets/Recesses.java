package plycrag.layout.sheets;

import java.util.List;
import java.util.Optional;
import plycrag.layout.sheets.MachinedHole.Bore;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.wall.Recess;
import plycrag.wall.Wall;

/** The recesses in the back of sheets, one about every insert's hole, in which its flange lies. */
final class Recesses {
  private Recesses() {}

  /**
   * Those of a sheet, in the order of its inserts; none unless they are asked for.
   *
   * @param back the sheet with its back up
   */
  static List<MachinedHole> of(Wall wall, LaidSheet back) {
    Optional<Recess> wanted = wall.inserts().body().recess();
    return wanted.stream()
        .flatMap(recess -> back.inserts().stream().map(insert -> around(insert, recess)))
        .toList();
  }

  private static MachinedHole around(MachinedHole insert, Recess recess) {
    return new MachinedHole(
        insert.marks(),
        Kind.RECESS,
        insert.place(),
        insert.spot(),
        new Bore(recess.diameter(), recess.depth(), SheetFace.BACK));
  }
}
