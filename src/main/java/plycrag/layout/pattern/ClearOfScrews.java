package plycrag.layout.pattern;

import java.util.List;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * An insert's flange keeps clear of the screws through its sheet. Those slide off inserts first
 * (the fastening of sheets).
 */
public record ClearOfScrews() implements Hindrance {

  @Override
  public String name() {
    return "screw-insert";
  }

  @Override
  public String promise() {
    return "Every screw is clear of the inserts' flanges.";
  }

  @Override
  public boolean comesLater() {
    return true;
  }

  /** From an insert's centre to a screw's, mm. */
  public static double reach(Wall wall) {
    return InsertPart.FLANGE.radius(wall.inserts())
        + wall.screws().diameter() / 2
        + wall.clearance().screw().toFlange();
  }

  @Override
  public Keeping in(InsertSite site) {
    double thread = site.wall().screws().diameter() / 2;
    double required = site.clearance().screw().toFlange();
    return new KeptOff(
        this,
        site.insert(),
        site.screws().stream()
            .map(
                screw ->
                    new Driven(
                        screw,
                        new KeptDistance(
                            InsertPart.FLANGE,
                            new TakenRoom.Round(screw.centre(), thread),
                            required)))
            .toList());
  }

  @Override
  public String reason(Obstacle obstacle) {
    return "its flange would be too near to screw " + obstacle.mark();
  }

  @Override
  public String remedy(Insert insert, Obstacle obstacle, Facet facet, Tape tape) {
    if (obstacle.thing() instanceof Driven driven) {
      double needed =
          insert.centre().distance(driven.screw().centre()) + obstacle.measure().shortfall();
      return InsertMove.clearOf(driven.screw().centre(), insert, needed).words(insert, tape);
    }
    return Hindrance.super.remedy(insert, obstacle, facet, tape);
  }

  private record Driven(Screw screw, KeptDistance margin) implements Avoided {
    @Override
    public String mark() {
      return screw.mark();
    }

    @Override
    public String words() {
      return "screw " + screw.mark() + " in " + screw.member();
    }

    @Override
    public List<KeptDistance> margins() {
      return List.of(margin);
    }
  }
}
