package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.joints.Hardware;
import plycrag.layout.joints.Hardware.Anchored;
import plycrag.layout.joints.Hardware.Bolted;
import plycrag.layout.joints.Hardware.Plywood;
import plycrag.layout.joints.Hardware.Screwed;
import plycrag.layout.joints.Hardware.Steel;
import plycrag.solve.fixing.GussetFit;
import plycrag.units.Tape;
import plycrag.wall.JointFasteners;
import plycrag.wall.Wall;

/** Every piece of hardware with its place. */
public final class HardwareList {
  private static final List<String> COLUMNS =
      List.of(
          "mark",
          "article",
          "joint",
          "members",
          "x_mm",
          "y_mm",
          "z_mm",
          "dx",
          "dy",
          "dz",
          "fasteners");

  /** Of a direction of length one: an arm of ten metres ends within a tenth of a millimetre. */
  private static final int DIRECTION = 6;

  private HardwareList() {}

  /** A row a piece, in the room's axes. */
  public static Table of(CheckedLayout checked) {
    List<List<Cell>> rows = new ArrayList<>();
    Layout layout = checked.layout();
    layout.hardware().forEach(piece -> rows.add(row(piece, layout)));
    return new Table("Hardware in its place", COLUMNS, rows);
  }

  private static List<Cell> row(Hardware piece, Layout layout) {
    Vector3 place = piece.place();
    Vector3 way = piece.way();
    return List.of(
        Cell.marks(List.of(piece.mark())),
        Cell.of(article(piece, layout)),
        Cell.of(String.join(" ", piece.joints())),
        Cell.of(String.join(" ", piece.members())),
        Cell.number(place.x(), 2),
        Cell.number(place.y(), 2),
        Cell.number(place.z(), 2),
        Cell.number(way.x(), DIRECTION),
        Cell.number(way.y(), DIRECTION),
        Cell.number(way.z(), DIRECTION),
        Cell.of(fasteners(piece, layout.wall().tape())));
  }

  /** As the shopping list names it, with its size; what is cut at home as the list of that does. */
  private static String article(Hardware piece, Layout layout) {
    Wall wall = layout.wall();
    Tape tape = wall.tape();
    JointFasteners joints = wall.joints();
    if (piece.form() instanceof Steel steel) {
      return steelWords(piece.kind()) + ", " + SteelSize.piece(steel.fit());
    }
    if (piece.form() instanceof Bolted) {
      BoltSize size = BoltSize.of(wall);
      return HardwareWords.bolt(size, tape) + ", " + tape.size(size.diameter());
    }
    if (piece.form() instanceof Screwed) {
      return HardwareWords.SCREW
          + ", "
          + tape.bareSize(joints.screws().diameter())
          + " x "
          + tape.size(joints.screws().length());
    }
    if (piece.form() instanceof Plywood plywood) {
      GussetFit fit = plywood.gusset().fit();
      return HardwareWords.GUSSET
          + ", "
          + tape.bareSize(fit.size().along())
          + " x "
          + tape.size(fit.size().across());
    }
    if (piece.form() instanceof Anchored anchored) {
      return HardwareWords.anchor(anchored, layout.wall().tape());
    }
    return piece.kind() == Hardware.Kind.LOCK ? HardwareWords.LOCK : HardwareWords.TETHER;
  }

  private static String steelWords(Hardware.Kind kind) {
    return switch (kind) {
      case STRAP -> HardwareWords.STRAP;
      case HINGE -> HardwareWords.HINGE;
      default -> HardwareWords.BRACKET;
    };
  }

  private static String fasteners(Hardware piece, Tape tape) {
    if (piece.form() instanceof Steel steel) {
      return SteelSize.screws(steel.fit(), tape);
    }
    if (piece.form() instanceof Bolted) {
      return "nut; 2 washers";
    }
    if (piece.form() instanceof Plywood plywood) {
      GussetFit fit = plywood.gusset().fit();
      return fit.screws().size()
          + " screws of "
          + tape.bareSize(fit.diameter())
          + " x "
          + tape.size(fit.screwLength());
    }
    return piece.form() instanceof Anchored ? "washer" : "";
  }
}
