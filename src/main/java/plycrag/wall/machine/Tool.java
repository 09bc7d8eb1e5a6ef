package plycrag.wall.machine;

import java.util.Optional;

/**
 * A tool that the machine holds.
 *
 * @param number told to the machine and named in files
 * @param kind what it is
 * @param shape of it
 * @param drive how it is driven
 * @param steps how it takes the wood away
 */
public record Tool(int number, Kind kind, Shape shape, Drive drive, Steps steps) {

  /**
   * The shape of a tool.
   *
   * @param diameter mm
   * @param length how deep it can go into the work, mm
   * @param point of a tool that tapers
   */
  public record Shape(double diameter, double length, Point point) {}

  /**
   * How a tool is driven.
   *
   * @param speed at which it is, rpm
   * @param speeds at which it may be
   * @param feeds how fast it goes through the work
   */
  public record Drive(double speed, SpeedRange speeds, Feeds feeds) {}

  /**
   * How a tool takes the wood away: how deep it goes at a time, with how many edges.
   *
   * @param peck how deep a drill goes before it comes out to clear its chips, mm; empty in one go
   * @param pass how deep an end mill cuts, mm
   * @param flutes how many edges it cuts with, if that is told
   */
  public record Steps(Optional<Double> peck, double pass, Optional<Integer> flutes) {
    /** Of a tool of whose edges nothing is told. */
    public Steps(Optional<Double> peck, double pass) {
      this(peck, pass, Optional.empty());
    }
  }

  /**
   * How much wood each edge takes at a turn, as fast as it is driven: sideways, but straight down
   * where it only drills. Mm; empty where nobody told how many edges it has.
   */
  public Optional<Double> feedPerTooth() {
    boolean sideways = kind == Kind.END_MILL || kind == Kind.ENGRAVER;
    double feed = sideways ? drive.feeds().cut() : drive.feeds().plunge();
    return steps.flutes().map(flutes -> feed / drive.speed() / flutes);
  }

  /** Of what it makes when it goes straight down, mm. */
  public double diameter() {
    return shape.diameter();
  }

  /** What a tool is. */
  public enum Kind {
    /** Goes straight down and makes holes of its own diameter. */
    DRILL("drill"),
    /** Goes straight down into a hole and widens it to a cone. */
    COUNTERSINK("countersink"),
    /** Tapers to a point and cuts thin lines. */
    ENGRAVER("engraver"),
    /** Goes down slowly and cuts sideways. */
    END_MILL("end mill");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** In a sentence. */
    public String words() {
      return words;
    }
  }

  /**
   * How fast it goes through the work.
   *
   * @param plunge straight down, mm/min
   * @param cut sideways, mm/min
   */
  public record Feeds(double plunge, double cut) {}

  /**
   * How a tool tapers.
   *
   * @param angle between its sides, degrees
   * @param tip how wide it is at its end, mm
   */
  public record Point(double angle, double tip) {}

  /** How a person names it, with its number. */
  public String name() {
    return kind.words() + " T" + number;
  }
}
