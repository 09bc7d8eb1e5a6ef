package plycrag.book;

import java.util.List;
import plycrag.document.Book.Block;
import plycrag.document.Book.Caution;
import plycrag.drawing.TitleLines;

/** The cautions, each with the work that it belongs to. */
public final class Cautions {
  /** At the foot of every page. */
  static final String FOOTER =
      TitleLines.BOULDERING
          + " A preliminary design, not a certified one: local codes and a"
          + " licensed engineer come first.";

  /** What this program does not look at yet. */
  public static final List<String> NOT_CHECKED =
      List.of(
          "the strength and stiffness of frame, sheets and screws",
          "the support: what holds the frame up and the building it is fixed to",
          "the strength of the joints between the members of the frame",
          "the router: how firmly it holds a sheet, and its bed where no travel is told",
          "the room: whether the frame can be brought in, turned and stood up",
          "the fall space, the matting and anything a person could be caught or cut by");

  private Cautions() {}

  static List<Block> cover() {
    return List.of(
        new Caution(
            "Support.",
            TitleLines.FRAME_ONLY
                + ". A frame that leans or stands free will fall on people unless it is held. Have"
                + " its support, its fixings and the building behind them designed and approved"
                + " before anybody stands in front of it."),
        new Caution(
            "Strength.",
            "Nothing here has been calculated for load. Follow your local codes and ask a licensed"
                + " engineer before you build."),
        new Caution(
            "Falling.",
            "For bouldering only, over mats chosen and laid as their maker and the local standard"
                + " ask. No rope, no belay, no anchor for either."));
  }

  static Block timber() {
    return new Caution(
        "Sawing.",
        "Wear eye and ear protection, extract the dust, and hold the timber and not the offcut.");
  }

  static Block lifting() {
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

  static Block use() {
    return new Caution(
        "In use.",
        "Before every season and after every change, tighten the bolts, look for cracked sheets,"
            + " pulled inserts, loose screws and moved mats, and close the wall until it is"
            + " mended.");
  }
}
