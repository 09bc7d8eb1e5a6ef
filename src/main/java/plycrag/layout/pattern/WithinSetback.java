package plycrag.layout.pattern;

import java.util.List;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.finding.Measure;
import plycrag.geometry.Distances;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/** An insert's centre keeps the setback from the facet's outline. */
record WithinSetback() implements Hindrance {

  @Override
  public String name() {
    return "setback";
  }

  @Override
  public String promise() {
    return "Every insert keeps the setback from the facet's outline.";
  }

  @Override
  public Keeping in(InsertSite site) {
    return new Inside(this, site);
  }

  @Override
  public String reason(Obstacle obstacle) {
    return "it would be nearer to the outline than the setback";
  }

  @Override
  public String sentence(Insert insert, Obstacle obstacle, Tape tape) {
    return "insert "
        + insert.mark()
        + " stands "
        + tape.text(Math.max(0, obstacle.measure().found()))
        + " inside the facet's outline";
  }

  @Override
  public String remedy(Insert insert, Obstacle obstacle, Facet facet, Tape tape) {
    return "move it inward by "
        + tape.text(tape.snapUp(obstacle.measure().shortfall()))
        + ", or make the setback smaller";
  }

  private record Outline(String mark) implements MarkedThing {
    @Override
    public String words() {
      return "the outline of " + mark;
    }
  }

  private static final class Inside extends KeptWithin {
    private final Hindrance hindrance;
    private final Facet facet;
    private final Polygon outline;
    private final double setback;

    Inside(Hindrance hindrance, InsertSite site) {
      this(hindrance, site.frame().facet(), site.insert().setback());
    }

    private Inside(Hindrance hindrance, Facet facet, double setback) {
      super(List.of(facet.outline()), facet.boundary().getEnvelopeInternal(), setback);
      this.hindrance = hindrance;
      this.facet = facet;
      this.outline = facet.outline();
      this.setback = setback;
    }

    @Override
    public List<Obstacle> at(Point place) {
      Measure measure = new Measure(-Distances.from(place, outline), setback);
      return InsertSurroundings.fallsShort(measure)
          ? List.of(new Obstacle(hindrance, InsertPart.CENTRE, new Outline(facet.name()), measure))
          : List.of();
    }
  }
}
