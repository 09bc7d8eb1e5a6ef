package plycrag.check.clearance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Fixity;
import plycrag.units.Tape;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;

/** Where an opening may go so that the timber round it keeps clear of other timber of its facet. */
final class OpeningMove {
  /** What is smaller is a rounding, mm². */
  private static final double CRUMB = 1;

  private final Overlap overlap;
  private final Facet facet;
  private final Tape tape;

  OpeningMove(Overlap overlap, Tape tape) {
    this.overlap = overlap;
    this.facet = overlap.one().facet().orElseThrow();
    this.tape = tape;
  }

  /** What to do, in words; empty where neither of two members that overlap is round an opening. */
  Optional<String> words() {
    List<Member> round = Stream.of(one(), other()).filter(OpeningMove::isRound).toList();
    return switch (round.size()) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of(clear(round.get(0)));
      default -> Optional.of(apart(nearest(one()).name(), nearest(other()).name()));
    };
  }

  private Member one() {
    return overlap.one().member();
  }

  private Member other() {
    return overlap.other().member();
  }

  private static boolean isRound(Member member) {
    return member.fixity() == Fixity.OPENING;
  }

  /** The opening that a member goes round. */
  private Cutout nearest(Member round) {
    return facet.cutouts().stream()
        .min(Comparator.comparingDouble(one -> one.shape().distance(round.footprint())))
        .orElseThrow();
  }

  private static String apart(String one, String other) {
    return one.equals(other)
        ? "make cutout " + one + " larger, so that the timber round it finds room"
        : "set cutouts " + one + " and " + other + " further apart, or give one outline for both";
  }

  /** The way out that is shorter or, where the facet ends there, the other one. */
  private String clear(Member round) {
    Member fixed = round.equals(one()) ? other() : one();
    Envelope box = round.box();
    boolean sideways = round.role().isUpright();
    double away =
        sideways
            ? box.centre().x - fixed.box().centre().x
            : box.centre().y - fixed.box().centre().y;
    double nearer = away > 0 ? 1 : -1;
    Cutout cutout = nearest(round);
    return Stream.of(nearer, -nearer)
        .map(way -> sideways ? new Vector3(way, 0, 0) : new Vector3(0, way, 0))
        .flatMap(way -> moved(cutout, way, round).stream())
        .findFirst()
        .map(move -> move + ", so that the timber round it stands beside " + fixed.mark())
        .orElse(
            "set cutout "
                + cutout.name()
                + " elsewhere or make it smaller, so that the timber round it stands clear of "
                + fixed.mark());
  }

  private Optional<String> moved(Cutout cutout, Vector3 way, Member round) {
    Vector3 inRoom = facet.plane().toRoom(way).minus(facet.plane().toRoom(new Vector3(0, 0, 0)));
    double by = tape.snapUp(overlap.apart(round.equals(one()) ? inRoom.times(-1) : inRoom));
    return staysOn(cutout.shape(), way.times(by))
        ? Optional.of("move cutout " + cutout.name() + " " + words(way) + " by " + tape.text(by))
        : Optional.empty();
  }

  private boolean staysOn(Polygon shape, Vector3 by) {
    List<Coordinate> moved =
        Stream.of(shape.getExteriorRing().getCoordinates())
            .map(corner -> new Coordinate(corner.x + by.x(), corner.y + by.y()))
            .toList();
    Polygon there = Shapes.ring(moved);
    return facet.boundary().getEnvelopeInternal().covers(there.getEnvelopeInternal())
        && Shapes.without(there, facet.boundary()).getArea() <= CRUMB;
  }

  private static String words(Vector3 way) {
    if (way.y() != 0) {
      return way.y() > 0 ? "up" : "down";
    }
    return way.x() > 0 ? "to the right" : "to the left";
  }
}
