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
import plycrag.layout.skin.Piece;
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
   * A part as a body.
   *
   * @param mark its name
   * @param owner what a person calls what it belongs to: its facet, or itself by its role
   * @param facet whose it is; empty for what holds facets up
   * @param solid where it is, openings and notches not taken out
   * @param parts the same in convex parts, around openings and notches
   */
  public record Body(
      String mark, String owner, Optional<FacetAtAngle> facet, Solid solid, List<Solid> parts) {
    /** Copies the parts. */
    public Body {
      parts = List.copyOf(parts);
    }

    static Body of(Piece piece, FacetAtAngle facet, double thickness) {
      Solid whole = Solid.joining(piece.outline(), 0, piece.back(), thickness).mapped(facet::at);
      List<Solid> parts =
          piece.bodies(thickness).stream().map(part -> part.mapped(facet::at)).toList();
      return new Body(piece.mark(), words(facet), Optional.of(facet), whole, parts);
    }

    static Body of(Member member, FacetAtAngle facet, double thickness) {
      Solid solid = member.body(thickness).mapped(facet::at);
      return new Body(member.mark(), words(facet), Optional.of(facet), solid, List.of(solid));
    }

    private static String words(FacetAtAngle facet) {
      return "facet " + facet.facet().name();
    }

    static Body of(PlacedMember placed) {
      Member member = placed.member();
      String owner = member.role().word() + " " + member.mark();
      Solid solid = placed.body();
      return new Body(member.mark(), owner, Optional.empty(), solid, List.of(solid));
    }

    /** How far it reaches into another body, mm; zero or less where they are apart. */
    public double overlap(Solid other) {
      return parts.stream().mapToDouble(part -> part.overlap(other)).max().orElse(0);
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
        facet.pieces().stream().map(piece -> Body.of(piece, turnedFacet, thickness));
    Stream<Body> members =
        facet.members().stream().map(member -> Body.of(member, turnedFacet, thickness));
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
