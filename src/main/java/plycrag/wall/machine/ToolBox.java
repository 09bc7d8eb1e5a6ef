package plycrag.wall.machine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import plycrag.geometry.Tolerance;
import plycrag.wall.machine.Tool.Drive;
import plycrag.wall.machine.Tool.Feeds;
import plycrag.wall.machine.Tool.Kind;
import plycrag.wall.machine.Tool.Point;
import plycrag.wall.machine.Tool.Shape;
import plycrag.wall.machine.Tool.Steps;

/**
 * The tools of a machine, and which of them makes a hole.
 *
 * <p>A drill of the hole's diameter is taken if it may turn at its speed and reaches; otherwise the
 * widest end mill that does, and leaves itself room to circle, bores the hole in a spiral.
 *
 * @param tools in the order in which they are told
 * @param spindle the speeds of the machine
 */
public record ToolBox(List<Tool> tools, SpeedRange spindle) {
  /** Of a hole's diameter; chips must get out beside it (common practice, no source). */
  private static final double WIDEST_CUTTER = 0.9;

  /** Of tools whose point nothing depends on. */
  private static final Point UNTAPERED = new Point(180, 0);

  /** Copies the tools. */
  public ToolBox {
    tools = List.copyOf(tools);
  }

  /**
   * The tools that are told, or where none are, a drill for every diameter, by diameter.
   *
   * @param diameters of all holes, mm
   */
  public static ToolBox of(Machine machine, Collection<Double> diameters) {
    List<Tool> tools = new ArrayList<>(machine.equipment().tools());
    if (tools.isEmpty()) {
      for (double diameter : new TreeSet<>(diameters)) {
        tools.add(drill(tools.size() + 1, diameter, machine));
      }
    }
    return new ToolBox(tools, machine.equipment().limits().spindle());
  }

  private static Tool drill(int number, double diameter, Machine machine) {
    double plunge = machine.spindle().plungeFeed();
    return new Tool(
        number,
        Kind.DRILL,
        new Shape(diameter, Double.POSITIVE_INFINITY, UNTAPERED),
        new Drive(
            machine.spindle().speed(),
            machine.equipment().limits().spindle(),
            new Feeds(plunge, plunge)),
        new Steps(Optional.empty(), diameter));
  }

  /** Whether the machine drives a tool no faster or slower than both bear. */
  public boolean turns(Tool tool) {
    return tool.drive().speeds().holds(tool.drive().speed()) && spindle.holds(tool.drive().speed());
  }

  /** Whether it is long enough. */
  public static boolean reaches(Tool tool, double depth) {
    return Tolerance.atMost(depth, tool.shape().length());
  }

  /**
   * What makes a hole.
   *
   * @param diameter mm
   * @param depth how far the tool goes below the sheet's top, breakthrough included, mm
   */
  public Optional<Tool> forHole(double diameter, double depth) {
    return candidates(diameter).stream()
        .filter(tool -> turns(tool) && reaches(tool, depth))
        .findFirst();
  }

  /**
   * What cuts a recess: the widest end mill that leaves itself room to circle, reaches and may turn
   * so.
   *
   * @param diameter mm
   * @param depth mm
   */
  public Optional<Tool> forRecess(double diameter, double depth) {
    return recessCandidates(diameter).stream()
        .filter(tool -> turns(tool) && reaches(tool, depth))
        .findFirst();
  }

  /** What could cut a recess if it reached and might turn so, best first. */
  public List<Tool> recessCandidates(double diameter) {
    return candidates(diameter).stream().filter(tool -> tool.kind() == Kind.END_MILL).toList();
  }

  /**
   * What cuts pieces out of sheets, if they are cut out and the machine holds it.
   *
   * @param thickness of the sheets, mm
   */
  public static Optional<Tool> cutter(Machine machine, double thickness) {
    double depth = machine.work().routing().depth(thickness, machine.heights().breakthrough());
    return machine.work().routing().cuts()
        ? of(machine, List.of()).forOutlines(depth)
        : Optional.empty();
  }

  /**
   * What cuts pieces out: the first end mill told that may turn so and reaches.
   *
   * @param depth how far it goes below the sheet's top, mm
   */
  public Optional<Tool> forOutlines(double depth) {
    return tools.stream()
        .filter(tool -> tool.kind() == Kind.END_MILL && turns(tool) && reaches(tool, depth))
        .findFirst();
  }

  /**
   * What lets the head of a screw in: the narrowest countersink that is as wide, and may turn so if
   * one may.
   *
   * @param head its diameter, mm
   */
  public Optional<Tool> forHead(double head) {
    return tools.stream()
        .filter(tool -> tool.kind() == Kind.COUNTERSINK)
        .filter(
            tool -> Tolerance.atLeast(tool.diameter(), head) && tool.shape().point().tip() < head)
        .min(Comparator.comparing((Tool tool) -> !turns(tool)).thenComparingDouble(Tool::diameter));
  }

  /**
   * What writes: the first engraver told that reaches and may turn so.
   *
   * @param depth of the letters, mm
   */
  public Optional<Tool> forMarks(double depth) {
    return tools.stream()
        .filter(tool -> tool.kind() == Kind.ENGRAVER && turns(tool) && reaches(tool, depth))
        .findFirst();
  }

  /** What engraves a machine's marks, if they are asked for and it holds one. */
  public static Optional<Tool> engraver(Machine machine) {
    return machine.work().marks().flatMap(marks -> of(machine, List.of()).forMarks(marks.depth()));
  }

  /** What could make a hole if it reached and might turn so, best first. */
  public List<Tool> candidates(double diameter) {
    return tools.stream()
        .filter(tool -> makes(tool, diameter))
        .sorted(
            Comparator.comparing(Tool::kind)
                .thenComparing(Comparator.comparingDouble(Tool::diameter).reversed()))
        .toList();
  }

  private static boolean makes(Tool tool, double diameter) {
    return switch (tool.kind()) {
      case DRILL -> Tolerance.same(tool.diameter(), diameter);
      case END_MILL -> tool.diameter() <= WIDEST_CUTTER * diameter;
      case COUNTERSINK, ENGRAVER -> false;
    };
  }
}
