package plycrag.layout.pattern;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Point;
import plycrag.finding.Measure;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/**
 * A hole lies wholly inside one piece. Lines that keep a flange off the seams ({@link ClearOfEdge})
 * keep the hole off them too, since no flange is less than its hole.
 */
record WithinPiece() implements Hindrance {
  @Override
  public String name() {
    return "hole-outside";
  }

  @Override
  public String promise() {
    return "Every hole lies wholly inside one piece.";
  }

  @Override
  public Keeping in(InsertSite site) {
    return new Inside(this, site, new Cores(site));
  }

  @Override
  public String reason(Obstacle obstacle) {
    return "its hole would not lie inside one piece";
  }

  @Override
  public String sentence(Insert insert, Obstacle obstacle, Tape tape) {
    return "the hole of insert " + insert.mark() + " " + obstacle.thing().words();
  }

  @Override
  public String remedy(Insert insert, Obstacle obstacle, Facet facet, Tape tape) {
    return "move it inward by "
        + tape.text(tape.snapUp(obstacle.measure().shortfall()))
        + " or more";
  }

  /** What a hole leaves: the piece around its centre, if there is one. */
  private record Left(String mark) implements MarkedThing {
    @Override
    public String words() {
      return mark.isEmpty() ? "lies in no piece" : "lies across the edge of piece " + mark;
    }
  }

  private static final class Inside extends KeptWithin {
    private final Hindrance hindrance;
    private final Cores cores;

    Inside(Hindrance hindrance, InsertSite site, Cores cores) {
      super(cores.areas(), cores.box(), InsertPart.HOLE.radius(site.insert()));
      this.hindrance = hindrance;
      this.cores = cores;
    }

    @Override
    public List<Obstacle> at(Point place) {
      Optional<Cores.Core> core = cores.at(place);
      Measure measure = cores.hole(place, core);
      return InsertSurroundings.fallsShort(measure)
          ? List.of(
              new Obstacle(
                  hindrance,
                  InsertPart.HOLE,
                  new Left(core.map(Cores.Core::mark).orElse("")),
                  measure))
          : List.of();
    }
  }
}
