package plycrag.layout.pattern;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.finding.Measure;
import plycrag.geometry.Distances;
import plycrag.geometry.SpatialIndex;
import plycrag.wall.Inserts;

/** The pieces of a facet, as far as what goes through them must stay inside. */
final class Cores {
  private final Inserts insert;
  private final List<Core> all;
  private final SpatialIndex<Core> index;

  Cores(InsertSite site) {
    this.insert = site.insert();
    this.all =
        site.frame().pieces().stream().map(piece -> new Core(piece.mark(), piece.core())).toList();
    this.index = new SpatialIndex<>(all, core -> core.area().getEnvelopeInternal());
  }

  /** What goes through a piece may not leave this. */
  record Core(String mark, Polygon area) implements MarkedThing {
    /** How far a place is from its edge, mm. */
    double inside(Point place) {
      return -Distances.from(place, area);
    }

    @Override
    public String words() {
      return "the edge of piece " + mark;
    }
  }

  List<Polygon> areas() {
    return all.stream().map(Core::area).toList();
  }

  /** The smallest box around them all. */
  Envelope box() {
    Envelope box = new Envelope();
    all.forEach(core -> box.expandToInclude(core.area().getEnvelopeInternal()));
    return box;
  }

  /** The one around a place; of two at whose edge it lies, the first. */
  Optional<Core> at(Point place) {
    return index.near(place.getEnvelopeInternal(), 0).stream()
        .filter(core -> Distances.covers(core.area(), place))
        .findFirst();
  }

  /** How far a hole is inside, from its rim; without a piece, as if its centre lay at an edge. */
  Measure hole(Point place, Optional<Core> around) {
    double inside = around.map(core -> core.inside(place)).orElse(0.0);
    return new Measure(inside - InsertPart.HOLE.radius(insert), 0);
  }
}
