package plycrag.check.making;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.wall.Facet;
import plycrag.wall.Inserts.Fixing;
import plycrag.wall.room.GivenSupport;

/** An insert that spins or falls out can be put right once the wall stands. */
public final class InsertsReachable implements Rule {
  /** How far an arm reaches in behind a sheet (common practice, no source), mm. */
  private static final double ARM = 600;

  private static final String SPINS =
      ", and an insert that was hammered in and spins cannot be held there";

  private static final String FREE =
      "choose inserts that are screwed on ([inserts] kind), or see that each sheet comes off again:"
          + " screwed alone, without glue, the heads of its screws left free";

  @Override
  public String name() {
    return "inserts-reachable";
  }

  @Override
  public String promise() {
    return "Inserts can be put right from behind, or hold without it.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    boolean hammered = layout.wall().inserts().fastening().kind() == Fixing.HAMMER_IN;
    if (!hammered || layout.inserts().isEmpty()) {
      return List.of();
    }
    return switch (layout.wall().behind()) {
      case WALK_IN -> onBuilding(layout);
      case REACH -> beyondAnArm(layout);
      case NONE -> List.of(finding("nothing reaches the back of the finished wall" + SPINS, FREE));
    };
  }

  /** Where somebody may walk behind the rest of a wall, what lies flat on the building. */
  private List<Finding> onBuilding(Layout layout) {
    List<String> flat =
        layout.wall().facets().stream()
            .filter(facet -> isFlat(layout, facet))
            .map(Facet::name)
            .toList();
    return flat.isEmpty()
        ? List.of()
        : List.of(
            finding(
                "facet " + String.join(", ", flat) + " lies flat on the building's wall" + SPINS,
                FREE));
  }

  private static boolean isFlat(Layout layout, Facet facet) {
    return layout.wall().support(facet).filter(GivenSupport::isFlat).isPresent();
  }

  private List<Finding> beyondAnArm(Layout layout) {
    long beyond =
        layout.facets().stream()
            .flatMap(
                facet ->
                    facet.inserts().stream()
                        .filter(
                            insert ->
                                isFlat(layout, facet.facet())
                                    || isBeyond(insert.centre(), openSides(facet.facet()))))
            .count();
    String count = beyond + " of " + layout.inserts().size() + " inserts";
    return beyond == 0
        ? List.of()
        : List.of(
            finding(
                "an arm does not reach "
                    + count
                    + " from behind: they lie further than "
                    + layout.wall().tape().text(ARM)
                    + " from every open side and top of the frame",
                FREE + ", or leave room to walk in behind"));
  }

  private static boolean isBeyond(Point insert, List<LineString> sides) {
    return sides.stream().noneMatch(side -> side.distance(insert) <= ARM);
  }

  /** The sides that an arm can come in at: not where facets meet, nor where it stands. */
  private static List<LineString> openSides(Facet facet) {
    List<LineString> sides = Shapes.outerEdges(facet.boundary());
    return IntStream.range(0, sides.size())
        .filter(side -> facet.fold(side).isEmpty())
        .mapToObj(sides::get)
        .filter(side -> side.getEnvelopeInternal().getMaxY() > 0)
        .toList();
  }

  private Finding finding(String sentence, String suggestion) {
    return new Finding(
        name(),
        Severity.WARNING,
        new Place.WholeWall(),
        "",
        "",
        Optional.empty(),
        sentence,
        suggestion);
  }
}
