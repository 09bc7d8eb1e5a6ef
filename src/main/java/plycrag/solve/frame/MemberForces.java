package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/** What goes on along a beam. Places are from its start, mm; all in the beam's own axes. */
public final class MemberForces {
  private final List<Stretch> stretches;

  /**
   * A stretch of a beam between places that have freedoms.
   *
   * @param spans in order along it
   * @param end how its end moves
   */
  record Stretch(List<Span> spans, NodeMotion end) {
    private Span last() {
      return spans.get(spans.size() - 1);
    }

    private double from() {
      return spans.get(0).from();
    }

    private double length() {
      return last().from() + last().length() - from();
    }

    private Span span(double place) {
      Span span = spans.get(0);
      for (Span one : spans) {
        span = one.from() <= place ? one : span;
      }
      return span;
    }

    /**
     * As its spans bend from its start, with what its end misses spread over it: what tension does
     * inside it, which the forces leave out, bends it too.
     */
    private NodeMotion motion(double place) {
      Span span = span(place);
      NodeMotion bent = span.motion(place - span.from());
      NodeMotion ends = last().motion(last().length());
      Vector3 missed = end.translation().minus(ends.translation());
      Vector3 turned = end.rotation().minus(ends.rotation());
      double part = (place - from()) / length();
      double cubic = part * part * (3 - 2 * part);
      double slope = 6 * part * (1 - part) / length();
      double inner = part * (3 * part - 2);
      Vector3 leant = new Vector3(0, turned.z(), -turned.y());
      return new NodeMotion(
          bent.translation()
              .plus(missed.times(cubic))
              .plus(leant.times(part * part * (part - 1) * length())),
          bent.rotation()
              .plus(new Vector3(turned.x() * part, turned.y() * inner, turned.z() * inner))
              .plus(new Vector3(0, -missed.z() * slope, missed.y() * slope)));
    }
  }

  /**
   * The forces at a place.
   *
   * @param at from the beam's start, mm
   * @param forces there, before or after what acts there
   */
  public record Station(double at, SectionForces forces) {}

  MemberForces(List<Stretch> stretches) {
    this.stretches = List.copyOf(stretches);
  }

  /**
   * Every place where a force or a moment can be greatest, in order along the beam: its ends, both
   * sides of what acts at a point, and where shear changes its sign.
   */
  public List<Station> stations() {
    List<Station> stations = new ArrayList<>();
    for (Stretch stretch : stretches) {
      for (Span span : stretch.spans()) {
        span.stations().forEach(s -> stations.add(new Station(span.from() + s, span.forces(s))));
      }
    }
    return stations;
  }

  /** The station at which something of the forces is greatest, whatever its sign; the first. */
  public Station greatest(ToDoubleFunction<SectionForces> what) {
    Station greatest = null;
    for (Station one : stations()) {
      if (greatest == null || size(what, one) > size(what, greatest)) {
        greatest = one;
      }
    }
    return greatest;
  }

  private static double size(ToDoubleFunction<SectionForces> what, Station station) {
    return Math.abs(what.applyAsDouble(station.forces()));
  }

  /** The forces at a place; where something acts, after it. */
  public SectionForces at(double place) {
    Span span = stretch(place).span(place);
    return span.forces(place - span.from());
  }

  /** How a place moves. */
  public NodeMotion motion(double place) {
    return stretch(place).motion(place);
  }

  private Stretch stretch(double place) {
    Stretch last = stretches.get(stretches.size() - 1);
    if (!Tolerance.atLeast(place, 0) || Tolerance.isMore(place, last.from() + last.length())) {
      throw new IllegalArgumentException("not on the beam: " + place);
    }
    Stretch stretch = stretches.get(0);
    for (Stretch one : stretches) {
      stretch = one.from() <= place ? one : stretch;
    }
    return stretch;
  }
}
