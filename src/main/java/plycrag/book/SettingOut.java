package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Point;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.PatternOutcome;
import plycrag.layout.screws.ScrewPoint;
import plycrag.layout.skin.Axis;
import plycrag.units.Count;
import plycrag.units.Tape;
import plycrag.wall.Inserts;

/**
 * Tells how the inserts of each facet came to their places: what was asked for, what stood in the
 * way, what was moved and by how much, and what it would have cost not to.
 */
public final class SettingOut {
  private final Layout layout;
  private final Inserts inserts;
  private final Tape tape;

  private SettingOut(Layout layout) {
    this.layout = layout;
    this.inserts = layout.wall().inserts();
    this.tape = layout.wall().tape();
  }

  /**
   * What is to be told of a facet.
   *
   * @param facet its name
   * @param summary in a few sentences
   * @param lines one for each line or member that moved or is in the way
   */
  public record Told(String facet, String summary, List<String> lines) {
    /** Copies the lines. */
    public Told {
      lines = List.copyOf(lines);
    }
  }

  /** What is to be told, facet by facet. */
  public static List<Told> of(Layout layout) {
    SettingOut settingOut = new SettingOut(layout);
    return layout.facets().stream().map(settingOut::told).toList();
  }

  private Told told(FacetLayout facet) {
    List<String> summaries = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (PatternOutcome outcome : facet.settings()) {
      String zone = outcome.zone().isEmpty() ? "" : "Zone " + outcome.zone() + ": ";
      summaries.add(zone + summary(outcome));
      lines(outcome).forEach(line -> lines.add(zone + line));
    }
    String points = screwPoints(facet);
    return new Told(
        facet.facet().name(), String.join(" ", summaries) + lost(facet) + points, lines);
  }

  private List<String> lines(PatternOutcome outcome) {
    List<String> lines = new ArrayList<>();
    outcome.moves().forEach(move -> lines.add(line(move)));
    for (PatternOutcome.OfAxis axis : outcome.axes()) {
      axis.moves().forEach(move -> lines.add(line(axis, move)));
      members(axis).forEach(lines::add);
      axis.advice().ifPresent(advice -> lines.add(advice(outcome, axis, advice)));
    }
    return lines;
  }

  private String line(PatternOutcome.Move move) {
    return "The insert asked for at "
        + reading(move.wanted())
        + " is set at "
        + reading(move.place())
        + ", "
        + tape.size(move.wanted().distance(move.place()))
        + " away.";
  }

  private String reading(Point place) {
    return tape.reading(place.getX()) + " / " + tape.text(place.getY());
  }

  private String summary(PatternOutcome outcome) {
    return switch (outcome.pattern().kind()) {
      case NONE -> "No insert is asked for.";
      case SCATTER ->
          Count.of(outcome.asked(), "insert")
              + " scattered where nothing is in the way, none nearer to another than "
              + tape.text(outcome.pattern().scattering().least())
              + ".";
      case FILE ->
          Count.of(outcome.asked(), "insert")
              + " asked for at listed places, on the marking grid. "
              + blocked(outcome);
      case GRID, OFFSET, DENSITY, LINES ->
          Count.of(outcome.asked(), "insert")
              + " asked for, in "
              + Count.of(outcome.axes().get(0).count(), "column")
              + " and "
              + Count.of(outcome.axes().get(1).count(), "row")
              + ". "
              + blocked(outcome);
    };
  }

  private static String screwPoints(FacetLayout facet) {
    List<ScrewPoint> points = facet.screwPoints();
    long backed = points.stream().filter(point -> point.member().isPresent()).count();
    return points.isEmpty()
        ? ""
        : " "
            + Count.of(points.size(), "screw point")
            + " between them, "
            + (backed == 0 ? "none" : backed)
            + " with timber behind; elsewhere a screw has the sheet alone to hold in.";
  }

  private static String blocked(PatternOutcome outcome) {
    return outcome.blocked() == 0
        ? "Nothing stands in their way."
        : "Had nothing been moved, "
            + Count.of(outcome.blocked(), "insert")
            + " would have had something in the way.";
  }

  private String lost(FacetLayout facet) {
    int lost = facet.omissions().size();
    return switch (inserts.blocked().answer()) {
      case REPORT -> " Nothing is moved or left out.";
      case SHIFT, NUDGE, DROP, SOLVE ->
          lost == 0 ? " None is lost." : " Left out: " + Count.of(lost, "insert") + ".";
    };
  }

  private String line(PatternOutcome.OfAxis axis, PatternOutcome.LineMove move) {
    String name = (axis.lines() == Axis.UP ? "Column " : "Row ") + move.number();
    String asked = name + ", asked for at " + tape.text(move.wanted()) + ", ";
    String moved =
        move.move() == 0
            ? "stays there"
            : "is set at " + tape.text(move.place()) + ", " + way(axis, move.move());
    return asked + moved + "." + inTheWay(move) + conflict(move);
  }

  private String way(PatternOutcome.OfAxis axis, double move) {
    String way =
        axis.lines() == Axis.UP ? (move > 0 ? "to the right" : "to the left") : upOrDown(move);
    return tape.text(Math.abs(move)) + " " + way;
  }

  private static String upOrDown(double move) {
    return move > 0 ? "up" : "down";
  }

  private String inTheWay(PatternOutcome.LineMove move) {
    return move.blockers().isEmpty()
        ? " It makes room for others."
        : " In its way: "
            + move.blockers().stream().map(this::blocker).collect(Collectors.joining(", "))
            + ".";
  }

  private String blocker(PatternOutcome.InTheWay blocker) {
    return blocker.name() + " (" + tape.text(blocker.shortfall()) + " short)";
  }

  private String conflict(PatternOutcome.LineMove move) {
    return move.isClear() || move.conflict().isEmpty()
        ? ""
        : " No place within "
            + tape.text(inserts.blocked().greatestMove())
            + " is clear of "
            + listed(move.conflict())
            + " all along.";
  }

  private Stream<String> members(PatternOutcome.OfAxis axis) {
    if (axis.members().equals(axis.settled())) {
      return Stream.empty();
    }
    String what = axis.lines() == Axis.UP ? "Studs between others" : "Blocking between others";
    return Stream.of(
        what
            + ", middles: "
            + places(axis.settled())
            + "; evenly they would stand at "
            + places(axis.members())
            + ".");
  }

  private String places(List<Double> places) {
    return places.isEmpty()
        ? "none"
        : places.stream().map(tape::reading).collect(Collectors.joining(", "))
            + " "
            + tape.unit().word();
  }

  private String advice(
      PatternOutcome outcome, PatternOutcome.OfAxis axis, PatternOutcome.Advice advice) {
    String pitch = axis.lines() == Axis.UP ? "pitch across" : "pitch up";
    String nearest =
        advice
            .nearest()
            .map(
                even ->
                    "A "
                        + pitch
                        + " of "
                        + tape.text(even.pitch())
                        + " from "
                        + tape.text(even.start())
                        + " clears everything "
                        + (outcome.zone().isEmpty()
                            ? "with the members evenly apart."
                            : "in the zone."))
            .orElse("No even " + pitch + " clears everything.");
    String conflict =
        advice.conflict().isEmpty()
            ? ""
            : "No "
                + tape.text(advice.pitch())
                + " "
                + pitch
                + ", from any start, clears "
                + listed(advice.conflict())
                + " with a flange of "
                + tape.size(inserts.body().flange())
                + ", "
                + tape.size(layout.wall().clearance().flange().toTimber())
                + " to timber and a setback of "
                + tape.size(outcome.pattern().fit().setback())
                + ". ";
    return conflict + nearest;
  }

  private static String listed(List<String> names) {
    List<String> distinct = names.stream().distinct().toList();
    int last = distinct.size() - 1;
    return last == 0
        ? distinct.get(0)
        : String.join(", ", distinct.subList(0, last)) + " and " + distinct.get(last);
  }
}
