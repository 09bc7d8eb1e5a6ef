package plycrag.layout;

import plycrag.geometry.Trig;
import plycrag.params.MachineParameters;
import plycrag.params.ScrewHoleParameters.Sink;
import plycrag.params.ToolBox;
import plycrag.params.ToolParameters;
import plycrag.params.ToolParameters.Point;

/** How deep a tool that tapers goes. */
public final class Sinking {
  /** Of the heads of screws for wood (ISO 7721 and DIN 7997, from memory). */
  private static final Point USUAL = new Point(90, 0);

  private Sinking() {}

  /** How deep a point goes until it cuts so wide, mm. */
  public static double depth(Point point, double width) {
    return (width - point.tip()) / 2 / Trig.tan(point.angle() / 2);
  }

  /** How deep a machine lets a head in until it is flush; without a tool for it, as is usual. */
  static double depth(MachineParameters machine, Sink sink) {
    ToolBox tools = new ToolBox(machine.tools(), machine.limits().spindle());
    Point point = tools.forHead(sink.head()).map(ToolParameters::point).orElse(USUAL);
    return depth(point, sink.head());
  }
}
