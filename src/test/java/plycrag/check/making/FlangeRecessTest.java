package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Sheets of 18 mm, flanges of 26 mm: a recess may be 9 mm deep, half of the sheet. */
class FlangeRecessTest {
  private static final String MILL =
      "[[tool]]\nkind = \"end-mill\"\ndiameter = 6\nlength = 22\nspeed = 18000\n";

  private static Found found(String inserts, String more) {
    return Found.by("flange-recess", Found.bay("100, 300", "100, 250", inserts) + more);
  }

  @Test
  void passesWithoutRecesses() {
    found("", "").isNothing();
  }

  @Test
  void passesWithAMillAndEnoughLeft() {
    found("recess-depth = 5", MILL).isNothing();
  }

  @Test
  void tellsOfTooLittleSheetUnderAFlange() {
    found("recess-depth = 9.5\nbarrel = 6", MILL)
        .times(1)
        .isError(true)
        .says("recesses of 9.5 mm leave 8.5 mm of sheets of 18 mm; 9 mm must remain")
        .suggests(
            "make them at most 9 mm deep ([inserts] recess-depth), or allow less to remain"
                + " ([inserts] recess-leaves)");
    found("recess-depth = 9.5\nbarrel = 6\nrecess-leaves = 8", MILL).isNothing();
    found("recess-depth = 4\nrecess-leaves = 15", MILL)
        .times(1)
        .says("recesses of 4 mm leave 14 mm of sheets of 18 mm; 15 mm must remain");
  }

  /** A recess is 27 mm wide; a mill wider than nine tenths of that, 24.3 mm, cannot circle. */
  @Test
  void tellsOfRecessesThatNoToolMakes() {
    found("recess-depth = 4", "")
        .times(1)
        .isError(true)
        .says(
            "4 recesses of 27 mm are to be cut, and no end mill is told that is narrow enough to"
                + " circle in them")
        .suggests(
            "add a [[tool]] of kind end-mill narrower than 27 mm, or leave recesses out ([inserts]"
                + " recess-depth)");
    found("recess-depth = 4", "[[tool]]\ndiameter = 27\nlength = 30\n").times(1);
    found("recess-depth = 4", MILL.replace("= 6", "= 25")).times(1);
    found("recess-depth = 4", MILL.replace("= 22", "= 3"))
        .times(1)
        .says("4 recesses of 27 mm: end mill T1 reaches 3 mm deep and 4 mm is needed");
    found("recess-depth = 4", MILL + "greatest-speed = 12000\n")
        .times(1)
        .says(
            "4 recesses of 27 mm: end mill T1 would turn at 18000 rpm; it bears 100 to 12000 rpm and"
                + " the spindle turns at 100 to 60000 rpm");
  }

  /** 12 mm wider is 6 mm all round; a screw may stand 5 mm from a flange. */
  @Test
  void tellsOfRecessesWiderThanFlangesKeepClear() {
    found("recess-depth = 4\nrecess-clearance = 10", MILL).isNothing();
    found("recess-depth = 4\nrecess-clearance = 10", MILL + "[clearance]\nscrew-to-insert = 4\n")
        .times(1)
        .isError(true)
        .says(
            "recesses reach 5 mm beyond flanges all round, and flanges need not be further than that"
                + " from edges, screws and each other");
    found("recess-depth = 4\nrecess-clearance = 10", MILL + "[clearance]\ninsert-to-insert = 9\n")
        .times(1);
  }
}
