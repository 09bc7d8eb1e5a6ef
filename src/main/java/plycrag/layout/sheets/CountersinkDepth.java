package plycrag.layout.sheets;

import plycrag.geometry.Trig;
import plycrag.wall.Wall;
import plycrag.wall.machine.ClearanceHoles;
import plycrag.wall.machine.ClearanceHoles.Sink;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Tool.Point;
import plycrag.wall.machine.ToolBox;

/** How deep a tool that tapers goes. */
public final class CountersinkDepth {
  /** Of the heads of screws for wood (ISO 7721 and DIN 7997, from memory). */
  private static final Point USUAL = new Point(90, 0);

  private CountersinkDepth() {}

  /** How deep a point goes until it cuts so wide, mm. */
  public static double depth(Point point, double width) {
    return (width - point.tip()) / 2 / Trig.tan(point.angle() / 2);
  }

  /** How deep a machine lets a head in until it is flush; without a tool for it, as is usual. */
  static double depth(Machine machine, Sink sink) {
    return depth(point(machine, sink), sink.head());
  }

  /** Between the sides of the cones that a wall's screws lie in, degrees. */
  public static double angle(Wall wall) {
    Machine machine = wall.machine();
    return machine
        .work()
        .screwHoles()
        .flatMap(ClearanceHoles::sink)
        .map(sink -> point(machine, sink))
        .orElse(USUAL)
        .angle();
  }

  private static Point point(Machine machine, Sink sink) {
    ToolBox tools =
        new ToolBox(machine.equipment().tools(), machine.equipment().limits().spindle());
    return tools.forHead(sink.head()).map(one -> one.shape().point()).orElse(USUAL);
  }
}
