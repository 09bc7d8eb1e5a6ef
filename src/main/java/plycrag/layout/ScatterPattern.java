package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.layout.scatter.Fade;
import plycrag.layout.scatter.Scatter;
import plycrag.layout.scatter.Spread;
import plycrag.params.ClearanceParameters;
import plycrag.params.InsertParameters;
import plycrag.params.InsertParameters.Symmetry;
import plycrag.params.Scattering;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/** Places without order, clear of the timber behind and of the seams, so that none is lost. */
record ScatterPattern(Wall wall, FramedFacet frame) {

  /** The inserts, without marks, from below; they belong to no column and no row. */
  List<Insert> inserts() {
    Facet facet = frame.facet();
    InsertParameters inserts = wall.inserts();
    Scattering scattering = inserts.scattering();
    Fade fade = new Fade(0, scattering.spacing(), facet.length(), scattering.topSpacing());
    double step = wall.tape().unit().markingGrid();
    Spread spread = new Spread(fade, step, scattering.seed(), mirror(facet));
    Geometry free = Shapes.together(facet.setback(inserts.setback()));
    free = Shapes.without(free, Shapes.together(taken()));
    List<Insert> scattered = new ArrayList<>();
    for (Point place : Scatter.over(free, spread)) {
      scattered.add(new Insert("", Shapes.point(place.getX(), place.getY()), 0, 0));
    }
    return scattered;
  }

  private OptionalDouble mirror(Facet facet) {
    return wall.inserts().symmetry() == Symmetry.NONE
        ? OptionalDouble.empty()
        : OptionalDouble.of(facet.width() / 2);
  }

  /** Where a centre would be too near to timber or to a seam. */
  private List<Polygon> taken() {
    InsertParameters inserts = wall.inserts();
    ClearanceParameters clearance = wall.clearance();
    double timber =
        Math.max(
            inserts.flange() / 2 + clearance.insertToTimber(),
            inserts.boltZone() / 2 + clearance.boltToTimber());
    double edge = inserts.flange() / 2 + clearance.insertToEdge();
    List<Polygon> taken = new ArrayList<>();
    for (Member member : frame.members()) {
      taken.addAll(Shapes.widened(Shapes.hull(member.footprint(), member.far()), timber));
    }
    for (Seam seam : frame.seams()) {
      double low = seam.middle() - seam.gap() / 2 - edge;
      double high = seam.middle() + seam.gap() / 2 + edge;
      taken.add(
          seam.axis() == Axis.UP
              ? Shapes.rectangle(low, seam.low(), high, seam.high())
              : Shapes.rectangle(seam.low(), low, seam.high(), high));
    }
    return taken;
  }
}
