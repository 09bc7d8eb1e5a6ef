package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Shapes;
import plycrag.solve.scatter.Fade;
import plycrag.solve.scatter.Scatter;
import plycrag.solve.scatter.Spread;
import plycrag.wall.Pattern.Symmetry;
import plycrag.wall.Scattering;

/** Places without order over what is clear of all hindrances, so that none is lost to them. */
public final class ScatterPattern {
  private final PatternArea area;

  /** Places over one area. */
  public ScatterPattern(PatternArea area) {
    this.area = area;
  }

  /** The inserts, without marks, from below; they belong to no column and no row. */
  List<Insert> inserts(InsertSurroundings around) {
    return over(around.clear(area.own()));
  }

  /** The same where all that is free is clear. */
  public List<Insert> over(Geometry free) {
    Envelope box = area.box();
    Scattering scattering = area.pattern().scattering();
    Fade fade =
        new Fade(box.getMinY(), scattering.spacing(), box.getMaxY(), scattering.topSpacing());
    double step = area.wall().tape().unit().markingGrid();
    Spread spread = new Spread(fade, step, scattering.seed(), mirror(box));
    List<Insert> scattered = new ArrayList<>();
    if (!area.wall().isMirrored()) {
      Scatter.over(free, spread).forEach(place -> scattered.add(insert(place.getX(), place)));
      return scattered;
    }
    double about = area.wall().tape().snapUp(box.getMinX() + box.getMaxX());
    Spread image =
        new Spread(
            fade,
            step,
            scattering.seed(),
            mirror(box).isPresent()
                ? OptionalDouble.of(about - box.centre().getX())
                : OptionalDouble.empty());
    Scatter.over(Shapes.mirrored(free, about), image)
        .forEach(place -> scattered.add(insert(about - place.getX(), place)));
    scattered.sort(AskedInserts.FROM_BELOW);
    return scattered;
  }

  private static Insert insert(double across, Point place) {
    return new Insert(Shapes.point(across, place.getY()), 0, 0);
  }

  private OptionalDouble mirror(Envelope box) {
    return area.pattern().fit().symmetry() == Symmetry.NONE
        ? OptionalDouble.empty()
        : OptionalDouble.of(box.centre().getX());
  }
}
