package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Shapes;
import plycrag.layout.scatter.Fade;
import plycrag.layout.scatter.Scatter;
import plycrag.layout.scatter.Spread;
import plycrag.params.PatternParameters.Symmetry;
import plycrag.params.Scattering;

/** Places without order over what is clear of all hindrances, so that none is lost to them. */
record ScatterPattern(PatternArea area) {

  /** The inserts, without marks, from below; they belong to no column and no row. */
  List<Insert> inserts(InsertSurroundings around) {
    return over(around.clear(area.own()));
  }

  /** The same where all that is free is clear. */
  List<Insert> over(Geometry free) {
    Envelope box = area.box();
    Scattering scattering = area.pattern().scattering();
    Fade fade =
        new Fade(box.getMinY(), scattering.spacing(), box.getMaxY(), scattering.topSpacing());
    double step = area.wall().tape().unit().markingGrid();
    Spread spread = new Spread(fade, step, scattering.seed(), mirror(box));
    List<Insert> scattered = new ArrayList<>();
    for (Point place : Scatter.over(free, spread)) {
      scattered.add(new Insert("", Shapes.point(place.getX(), place.getY()), 0, 0));
    }
    return scattered;
  }

  private OptionalDouble mirror(Envelope box) {
    return area.pattern().symmetry() == Symmetry.NONE
        ? OptionalDouble.empty()
        : OptionalDouble.of(box.centre().getX());
  }
}
