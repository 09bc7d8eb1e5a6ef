package plycrag.layout.pattern;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Point;
import plycrag.finding.Measure;
import plycrag.layout.skin.Seam;
import plycrag.solve.setout.ForbiddenStretch;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/**
 * An insert's flange keeps clear of the edge of its piece, at a seam or not. It is not told of a
 * hole that leaves its piece ({@link WithinPiece}).
 */
record ClearOfEdge() implements Hindrance {

  @Override
  public String name() {
    return "insert-edge";
  }

  @Override
  public String promise() {
    return "Every insert's flange is clear of the edges and seams of its sheet.";
  }

  @Override
  public Keeping in(InsertSite site) {
    return new Inside(this, site, new Cores(site));
  }

  @Override
  public String reason(Obstacle obstacle) {
    return "its flange would be too near to an edge of " + obstacle.mark();
  }

  @Override
  public String remedy(Insert insert, Obstacle obstacle, Facet facet, Tape tape) {
    return "move it inward by " + tape.text(tape.snapUp(obstacle.measure().shortfall()));
  }

  private static final class Inside extends KeptWithin {
    private final Hindrance hindrance;
    private final InsertSite site;
    private final Cores cores;

    Inside(Hindrance hindrance, InsertSite site, Cores cores) {
      super(cores.areas(), cores.box(), toEdge(site));
      this.hindrance = hindrance;
      this.site = site;
      this.cores = cores;
    }

    private static double toEdge(InsertSite site) {
      return InsertPart.FLANGE.radius(site.insert()) + site.clearance().flange().toEdge();
    }

    @Override
    public List<Obstacle> at(Point place) {
      Optional<Cores.Core> core = cores.at(place);
      if (core.isEmpty() || InsertSurroundings.fallsShort(cores.hole(place, core))) {
        return List.of();
      }
      double found = core.get().inside(place) - InsertPart.FLANGE.radius(site.insert());
      Measure measure = new Measure(found, site.clearance().flange().toEdge());
      return InsertSurroundings.fallsShort(measure)
          ? List.of(new Obstacle(hindrance, InsertPart.FLANGE, core.get(), measure))
          : List.of();
    }

    /** A line keeps off the seams that run its way, however short. */
    @Override
    public List<ForbiddenStretch> keepouts(AreaLines lines) {
      double toEdge = toEdge(site);
      return site.frame().seams().stream()
          .filter(seam -> seam.axis() == lines.axis())
          .filter(seam -> lines.meet(seam.low(), seam.high(), toEdge))
          .map(seam -> keepout(seam, seam.gap() / 2 + toEdge))
          .toList();
    }

    private ForbiddenStretch keepout(Seam seam, double half) {
      String called = site.wall().tape().placed("seam", seam.middle());
      return new ForbiddenStretch(called, seam.middle() - half, seam.middle() + half);
    }
  }
}
