package plycrag.layout.sheets;

import java.util.Optional;
import org.locationtech.jts.geom.Point;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/**
 * A hole that a machine makes, or a hand with a drill.
 *
 * @param marks of it and of what it is in
 * @param kind what it is for
 * @param place in the facet's (u, v), mm
 * @param spot on the sheet
 * @param bore how wide and how deep it is
 */
public record MachinedHole(Marks marks, Kind kind, Point place, OnSheet spot, Bore bore) {

  /**
   * The marks of a hole and of what it is in.
   *
   * @param mark the mark of what goes in
   * @param facet the facet's name
   * @param piece the piece's mark
   * @param sheet the stock sheet's mark
   */
  public record Marks(String mark, String facet, String piece, String sheet) {}

  /**
   * A place on the sheet as it lies on the machine, from its lower left corner.
   *
   * @param x to the right, mm
   * @param y up, mm
   */
  public record OnSheet(double x, double y) {}

  /**
   * How wide and how deep a hole is.
   *
   * @param diameter mm
   * @param depth from the drilled face, breakthrough not counted, mm
   * @param side the face it is drilled from
   */
  public record Bore(double diameter, double depth, SheetFace side) {}

  /** The mark of what goes in. */
  public String mark() {
    return marks.mark();
  }

  /** What a hole is for. */
  public enum Kind {
    /** The barrel of a threaded insert. */
    INSERT("insert"),
    /** The flange of a threaded insert, which lies below the back then; it does not go through. */
    RECESS("recess"),
    /** The thread of a screw, which is not to bite in the sheet. */
    SCREW("screw"),
    /** The head of a screw, a cone of the hole's diameter on the face. */
    COUNTERSINK("countersink"),
    /** A pin on which the sheet is turned over; it is in no piece, and its place is the sheet's. */
    PIN("pin");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in lists. */
    public String word() {
      return word;
    }
  }

  /** The same once the sheet is turned over from left to right, mm. */
  MachinedHole turnedOver(double width) {
    return new MachinedHole(marks, kind, place, new OnSheet(width - spot.x(), spot.y()), bore);
  }

  /** The same from a face, so deep, mm. */
  MachinedHole from(SheetFace face, double depth) {
    return new MachinedHole(marks, kind, place, spot, new Bore(bore.diameter(), depth, face));
  }

  /** How a person tells it from others: the recess and the hole of an insert share a mark. */
  public String name() {
    return (kind == Kind.RECESS ? "recess " : "hole ") + mark();
  }

  /** Whether it is a cone at the end of another hole. */
  public boolean isSunk() {
    return kind == Kind.COUNTERSINK;
  }

  /**
   * What makes it, if one of the tools does.
   *
   * @param reach how far the tool goes below the sheet's top, breakthrough included, mm
   */
  public Optional<Tool> tool(ToolBox tools, double reach) {
    return switch (kind) {
      case COUNTERSINK -> tools.forHead(bore.diameter());
      case RECESS -> tools.forRecess(bore.diameter(), reach);
      case INSERT, SCREW, PIN -> tools.forHole(bore.diameter(), reach);
    };
  }
}
