package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Offsets;
import plycrag.geometry.Shapes;
import plycrag.solve.setout.ForbiddenStretch;

/** Areas inside one of which inserts stay, and away from its edge. */
abstract class KeptWithin implements Keeping {
  private final List<Polygon> areas;
  private final Envelope box;
  private final double distance;

  /**
   * Keeps inserts inside areas.
   *
   * @param areas apart from each other
   * @param box from whose sides the outermost lines keep the distance too
   * @param distance of centres from the edges, mm
   */
  KeptWithin(List<Polygon> areas, Envelope box, double distance) {
    this.areas = List.copyOf(areas);
    this.box = new Envelope(box);
    this.distance = distance;
  }

  @Override
  public final Geometry clear(Geometry area) {
    List<Polygon> inside = new ArrayList<>();
    areas.forEach(one -> inside.addAll(Offsets.narrowed(one, distance)));
    return Shapes.shared(area, Shapes.together(inside));
  }

  @Override
  public List<ForbiddenStretch> keepouts(AreaLines lines) {
    return List.of();
  }

  @Override
  public final Span bounds(AreaLines lines) {
    return new Span(lines.low(box) + distance, lines.high(box) - distance);
  }
}
