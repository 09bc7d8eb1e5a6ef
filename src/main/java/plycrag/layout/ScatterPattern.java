package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.layout.scatter.Fade;
import plycrag.layout.scatter.Scatter;
import plycrag.layout.scatter.Spread;
import plycrag.params.PatternParameters.Symmetry;
import plycrag.params.Scattering;

/** Places without order, clear of the timber behind and of the seams, so that none is lost. */
record ScatterPattern(PatternArea area, FramedFacet frame) {

  /** The inserts, without marks, from below; they belong to no column and no row. */
  List<Insert> inserts() {
    return over(Shapes.without(area.free(), Shapes.together(taken())));
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

  /** Where a centre would be too near to timber or to a seam. */
  private List<Polygon> taken() {
    AxisReach reach = AxisReach.of(area.wall());
    List<Polygon> taken = new ArrayList<>();
    for (Member member : frame.members()) {
      taken.addAll(Shapes.widened(Shapes.hull(member.footprint(), member.far()), reach.toTimber()));
    }
    for (Seam seam : frame.seams()) {
      double low = seam.middle() - seam.gap() / 2 - reach.toEdge();
      double high = seam.middle() + seam.gap() / 2 + reach.toEdge();
      taken.add(
          seam.axis() == Axis.UP
              ? Shapes.rectangle(low, seam.low(), high, seam.high())
              : Shapes.rectangle(seam.low(), low, seam.high(), high));
    }
    return taken;
  }
}
