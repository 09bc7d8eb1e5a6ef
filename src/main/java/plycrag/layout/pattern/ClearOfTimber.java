package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Distances;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Axis;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/**
 * An insert's flange and the bolt zone behind it keep clear of the timber; of the two, the one that
 * falls shorter is told. Of another facet's timber only a bolt meets anything.
 */
record ClearOfTimber() implements Hindrance {

  @Override
  public String name() {
    return "insert-timber";
  }

  @Override
  public String promise() {
    return "Every insert's flange, and the space its bolt may reach, is clear of the timber behind.";
  }

  @Override
  public Keeping in(InsertSite site) {
    List<Avoided> things = new ArrayList<>();
    site.frame().members().forEach(member -> things.add(Own.of(member, site)));
    site.neighbours().forEach(neighbour -> things.add(Other.of(neighbour, site)));
    return new KeptOff(this, site.insert(), things);
  }

  @Override
  public String reason(Obstacle obstacle) {
    return obstacle.part() == InsertPart.BOLT_ZONE
        ? "its bolt could reach " + obstacle.mark()
        : Hindrance.super.reason(obstacle);
  }

  /**
   * Timber that slants, or that belongs to another facet, is left behind by going from the fold.
   */
  @Override
  public String remedy(Insert insert, Obstacle obstacle, Facet facet, Tape tape) {
    double away = obstacle.measure().shortfall();
    if (obstacle.thing() instanceof Own own) {
      Member member = own.member();
      if (!member.isUpOrLevel()) {
        return InsertMove.off(member, insert, away).words(insert, tape);
      }
      if (member.hasSquareSides()) {
        double needed = Distances.from(insert.centre(), member.footprint()) + away;
        return InsertMove.clearOf(member, insert, needed).words(insert, member, tape);
      }
    }
    boolean lower = insert.centre().getY() < facet.length() / 2;
    return new InsertMove(Axis.UP, lower ? away : -away).words(insert, tape);
  }

  private static KeptDistance forBolts(TakenRoom extent, InsertSite site) {
    return new KeptDistance(InsertPart.BOLT_ZONE, extent, site.clearance().boltToTimber());
  }

  private static String words(Member member) {
    return member.role().word() + " " + member.mark();
  }

  /** A member of the facet. Whole lines keep off what runs their way, however short it is. */
  record Own(Member member, String called, List<KeptDistance> margins) implements Avoided {
    static Own of(Member member, InsertSite site) {
      TakenRoom flat = new TakenRoom.Flat(member.footprint());
      TakenRoom deep = member.isSquare() ? flat : deep(member, site);
      KeptDistance flange =
          new KeptDistance(InsertPart.FLANGE, flat, site.clearance().flange().toTimber());
      return new Own(member, called(member, site), List.of(flange, forBolts(deep, site)));
    }

    private static TakenRoom deep(Member member, InsertSite site) {
      double thickness = site.wall().sheet().thickness();
      double reach = site.insert().bolt().reach();
      Envelope box = member.box();
      box.expandToInclude(member.section(Math.min(reach, member.depth())).getEnvelopeInternal());
      return new TakenRoom.Deep(member.body(thickness), thickness, thickness + reach, box);
    }

    private static String called(Member member, InsertSite site) {
      Axis beside = member.role().isUpright() ? Axis.ACROSS : Axis.UP;
      return site.wall().tape().placed(member.role().word(), beside.middle(member.box()));
    }

    /** Whether it reaches further across some lines than what of it lies against the sheets. */
    boolean leans(AreaLines lines) {
      Envelope front = member.box();
      Envelope all = box();
      return lines.low(all) < lines.low(front) || lines.high(all) > lines.high(front);
    }

    @Override
    public String mark() {
      return member.mark();
    }

    @Override
    public String words() {
      return ClearOfTimber.words(member);
    }

    @Override
    public boolean keepsOff(Axis lines, Envelope area) {
      return member.direction().isSquare() && member.role().isUpright() == (lines == Axis.UP);
    }
  }

  /** A member of another facet. Whole lines keep off what runs their way along half of them. */
  record Other(Neighbour neighbour, List<KeptDistance> margins) implements Avoided {
    static Other of(Neighbour neighbour, InsertSite site) {
      double thickness = site.wall().sheet().thickness();
      TakenRoom deep =
          new TakenRoom.Deep(
              neighbour.body(),
              thickness,
              thickness + site.insert().bolt().reach(),
              neighbour.shadow());
      return new Other(neighbour, List.of(forBolts(deep, site)));
    }

    @Override
    public String mark() {
      return neighbour.member().mark();
    }

    @Override
    public String words() {
      return ClearOfTimber.words(neighbour.member());
    }

    @Override
    public String called() {
      return "the " + neighbour.member().role().word() + " of the next facet";
    }

    @Override
    public boolean keepsOff(Axis lines, Envelope area) {
      Member member = neighbour.member();
      boolean isNarrow =
          lines.other().size(neighbour.shadow()) <= member.breadth() + member.depth();
      return isNarrow && Avoided.super.keepsOff(lines, area);
    }
  }
}
