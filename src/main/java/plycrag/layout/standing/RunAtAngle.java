package plycrag.layout.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.support.PlacedMember;
import plycrag.wall.Facet;
import plycrag.wall.FacetAtAngle;
import plycrag.wall.Swing;
import plycrag.wall.Wall;

/**
 * The bodies of a run as they stand at one of its angles, in the room.
 *
 * @param still what does not move: the support, and of a hinged run the lowest facet
 * @param moving what swings; empty where nothing does
 */
public record RunAtAngle(List<Body> still, List<Body> moving) {
  /** Copies the lists. */
  public RunAtAngle {
    still = List.copyOf(still);
    moving = List.copyOf(moving);
  }

  /**
   * A part as a body; openings in it are not taken out.
   *
   * @param mark its name
   * @param owner what a person calls what it belongs to: its facet, or itself by its role
   * @param facet whose it is; empty for what holds facets up
   * @param solid where it is
   */
  public record Body(String mark, String owner, Optional<FacetAtAngle> facet, Solid solid) {
    static Body of(String mark, FacetAtAngle facet, Solid solid) {
      return new Body(mark, "facet " + facet.facet().name(), Optional.of(facet), solid);
    }

    static Body of(PlacedMember placed) {
      Member member = placed.member();
      String owner = member.role().word() + " " + member.mark();
      return new Body(member.mark(), owner, Optional.empty(), placed.body());
    }
  }

  /**
   * A run at an angle.
   *
   * @param number of the run, from 0
   * @param angle of the facet that is hinged, degrees; without meaning where none is
   */
  public static RunAtAngle of(Layout layout, int number, double angle) {
    List<Body> still = new ArrayList<>();
    List<Body> moving = new ArrayList<>();
    List<FacetLayout> run = layout.runs().get(number);
    List<FacetAtAngle> turnedFacets = FacetAtAngle.of(layout.wall(), facets(run), angle);
    for (int at = 0; at < run.size(); at++) {
      FacetAtAngle turnedFacet = turnedFacets.get(at);
      (turnedFacet.swing().isPresent() ? moving : still)
          .addAll(bodies(layout.wall(), run.get(at), turnedFacet));
    }
    layout.standing().stream()
        .filter(placed -> placed.run() == number)
        .forEach(placed -> still.add(Body.of(placed)));
    return new RunAtAngle(still, moving);
  }

  /** The angles a run is used at; a single one without meaning where nothing swings. */
  public static List<Double> angles(Layout layout, int number) {
    List<Facet> facets = facets(layout.runs().get(number));
    return Swing.of(layout.wall(), facets)
        .map(swing -> Swing.angles(layout.wall(), swing.hinged()))
        .orElse(List.of(0.0));
  }

  private static List<Facet> facets(List<FacetLayout> run) {
    return run.stream().map(FacetLayout::facet).toList();
  }

  private static List<Body> bodies(Wall wall, FacetLayout facet, FacetAtAngle turnedFacet) {
    double thickness = wall.sheet().thickness();
    Stream<Body> pieces =
        facet.pieces().stream()
            .map(
                piece ->
                    Body.of(
                        piece.mark(),
                        turnedFacet,
                        Solid.joining(piece.outline(), 0, piece.back(), thickness)
                            .mapped(turnedFacet::at)));
    Stream<Body> members =
        facet.members().stream()
            .map(
                member ->
                    Body.of(
                        member.mark(),
                        turnedFacet,
                        member.body(thickness).mapped(turnedFacet::at)));
    return Stream.concat(pieces, members).toList();
  }

  /** All bodies. */
  public List<Body> bodies() {
    return Stream.concat(still.stream(), moving.stream()).toList();
  }

  /** All their corners. */
  public Stream<Vector3> corners() {
    return bodies().stream()
        .flatMap(body -> Stream.concat(body.solid().near().stream(), body.solid().far().stream()));
  }
}
