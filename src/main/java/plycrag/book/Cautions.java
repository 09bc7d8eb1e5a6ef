package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.check.structure.StructureReport;
import plycrag.document.Book.Block;
import plycrag.document.Book.Caution;
import plycrag.drawing.pen.TitleLines;
import plycrag.layout.Layout;

/** The cautions, each with the work that it belongs to. */
public final class Cautions {
  /** At the foot of every page. */
  static final String FOOTER =
      TitleLines.BOULDERING
          + " A preliminary design, not a certified one: local codes and a"
          + " licensed engineer come first.";

  private Cautions() {}

  /** What this program has not looked at for a wall. */
  public static List<String> notChecked(CheckedLayout checked) {
    Layout layout = checked.layout();
    List<String> things = new ArrayList<>();
    boolean isReckoned = checked.isReckoned();
    things.add(
        isReckoned
            ? "the strength of sheets, their screws, inserts and brackets; that of members and"
                + " other joints is reckoned beforehand and not judged"
            : "the strength and stiffness of frame, sheets and screws");
    things.add(
        layout.support().isPresent()
            ? "the strength of the support, its anchors and the building, wind and uplift"
            : "the support: what holds the frame up and the building it is fixed to");
    if (!isReckoned) {
      things.add("the strength of the joints between the members of the frame");
    }
    things.add("the router: how firmly it holds a sheet, and its bed where no travel is told");
    if (!layout.wall().room().ceiling().isTold()) {
      things.add("the room: whether the frame can be brought in, turned and stood up");
    }
    things.add(
        layout.wall().room().sides().front().isPresent()
            ? "the matting, and edges a person could be cut by"
            : "the fall space, the matting, and edges a person could be cut by");
    return List.copyOf(things);
  }

  static List<Block> cover(CheckedLayout checked) {
    return List.of(
        new Caution(
            "Support.",
            TitleLines.support(checked)
                + ". A frame that leans or stands free will fall on people unless it is held. Have"
                + " its support, its fixings and the building behind them designed and approved"
                + " before anybody stands in front of it."),
        new Caution("Strength.", strength(checked.structure())),
        new Caution(
            "Falling.",
            "For bouldering only, over mats chosen and laid as their maker and the local standard"
                + " ask. No rope, no belay, no anchor for either."));
  }

  private static String strength(StructureReport report) {
    String ask = "Follow your local codes and ask a licensed engineer before you build.";
    if (report.lines().isEmpty()) {
      return "Nothing here has been calculated for load. " + ask;
    }
    return "A first reckoning of strength found "
        + report.failing()
        + " lines that fail and "
        + report.unchecked()
        + " that cannot be checked; its chapter tells them, and refuses nothing yet. "
        + ask;
  }

  static Caution timber() {
    return new Caution(
        "Sawing.",
        "Wear eye and ear protection, extract the dust, and hold the timber and not the offcut.");
  }

  static Caution lifting() {
    return new Caution(
        "Lifting.",
        "Sheets and frames are heavy and catch the wind. Lift together, prop a standing frame before"
            + " you let go of it, and keep people out from under it.");
  }

  static Block drilling() {
    return new Caution(
        "Drilling.",
        "Wood dust harms the lungs: extract it and wear a mask. Eye and ear protection on. Clamp"
            + " the sheet, back it with a board, and try the first hole with a real insert in an"
            + " offcut. A router program is run above the work first.");
  }

  static Block fixing() {
    return new Caution(
        "Fixing to a building.",
        "Find cables and pipes, and rule out asbestos, before you drill into a wall, a floor or a"
            + " ceiling.");
  }

  static Caution matting() {
    return new Caution(
        "Matting.",
        "How thick mats must be, of what and how they are joined is a matter for their maker and"
            + " the local standard. Keep the space to fall into clear of people and things.");
  }

  static Caution hinge() {
    return new Caution(
        "Moving the wall.",
        "Nobody stands under it or near its hinges. Two people move it; what holds it is fast, and"
            + " the backups with it, before anybody lets go.");
  }

  static Block screwedHolds() {
    return new Caution(
        "Holds that are screwed on.",
        "Use as many screws as the hold's maker says, at least two, so that it cannot turn, and of"
            + " a length that does not come out where hands reach behind. Pull on it before you"
            + " climb.");
  }

  static Block use() {
    return new Caution(
        "In use.",
        "Before every season and after every change, tighten the bolts, look for cracked sheets,"
            + " pulled inserts, loose screws and moved mats, and close the wall until it is"
            + " mended.");
  }
}
