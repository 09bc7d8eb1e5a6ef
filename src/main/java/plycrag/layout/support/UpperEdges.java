package plycrag.layout.support;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import plycrag.geometry.Shapes;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;

/** Where frames end above, stud by stud: an upper edge may slant or step. */
final class UpperEdges {
  private static final double FLUSH = 1;
  private static final double FAR = 1e6;

  /** A shorter stud under a slanting edge bears nothing (a choice), mm. */
  private static final double SHORTEST = 500;

  private final double breadth;

  /**
   * @param breadth of studs, mm
   */
  UpperEdges(double breadth) {
    this.breadth = breadth;
  }

  /** Whether an upright goes up to what lies along the edge over it. */
  boolean isReached(FacetLayout facet, Member upright) {
    double middle = upright.box().centre().x;
    Optional<Member> over =
        facet.members().stream()
            .filter(member -> on(member, middle).isPresent())
            .max(Comparator.comparingDouble(member -> on(member, middle).orElseThrow().getMaxY()));
    return over.filter(edge -> isUnder(upright, edge)).isPresent();
  }

  private static boolean isUnder(Member upright, Member edge) {
    double top = upright.box().getMaxY() + FLUSH;
    return switch (edge.role()) {
      case PLATE -> edge.box().getMinY() <= top;
      case RAKE ->
          upright.box().getHeight() >= SHORTEST
              && on(edge, upright.box().centre().x)
                  .filter(along -> along.getMinY() <= top)
                  .isPresent();
      default -> false;
    };
  }

  /** How much shorter the frame is at a stud than where it is longest, mm. */
  double fall(FacetLayout facet, double stud) {
    double fall = longest(facet) - lowest(facet, stud);
    return fall < FLUSH ? 0 : fall;
  }

  /** Where the frame ends at a stud, v in mm. */
  double end(FacetLayout facet, double stud) {
    return longest(facet) - fall(facet, stud);
  }

  private double lowest(FacetLayout facet, double stud) {
    double low = stud - facet.facet().plane().left();
    return Stream.of(low + FLUSH, low + breadth - FLUSH)
        .mapToDouble(
            along ->
                facet.members().stream()
                    .flatMap(member -> on(member, along).stream())
                    .mapToDouble(Envelope::getMaxY)
                    .max()
                    .orElse(0))
        .min()
        .orElse(0);
  }

  private static double longest(FacetLayout facet) {
    return facet.members().stream()
        .mapToDouble(member -> member.far().getEnvelopeInternal().getMaxY())
        .max()
        .orElse(0);
  }

  /** What of a member lies on an upright line, at its back. */
  private static Optional<Envelope> on(Member member, double along) {
    Envelope box = member.far().getEnvelopeInternal();
    if (along <= box.getMinX() || along >= box.getMaxX()) {
      return Optional.empty();
    }
    LineString upright = Shapes.line(along, -FAR, along, FAR);
    Envelope part = member.far().intersection(upright).getEnvelopeInternal();
    return part.isNull() ? Optional.empty() : Optional.of(part);
  }
}
