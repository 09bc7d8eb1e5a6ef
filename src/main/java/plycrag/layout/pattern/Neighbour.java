package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Member;
import plycrag.wall.Wall;

/**
 * A member of another facet, as it lies behind this one, where bolts may reach it.
 *
 * @param member the member
 * @param body in this facet's (u, v, w)
 * @param shadow the smallest box around the part of it that bolts may reach, seen square to this
 *     facet
 */
public record Neighbour(Member member, Solid body, Envelope shadow) {
  /** So far beside a facet nothing is any of its business, mm. */
  private static final double BESIDE = 1000;

  /** The members of all other facets that bolts through this one may reach. */
  public static List<Neighbour> of(FramedFacet facet, List<FramedFacet> all, Wall wall) {
    Behind behind = Behind.of(facet, wall);
    List<Neighbour> neighbours = new ArrayList<>();
    for (FramedFacet other : all) {
      if (!other.facet().name().equals(facet.facet().name())) {
        UnaryOperator<Vector3> axes =
            place -> facet.facet().plane().fromRoom(other.facet().plane().toRoom(place));
        if (behind.mayHold(frame(other, wall).mapped(axes))) {
          other.members().forEach(member -> behind.add(member, axes, neighbours));
        }
      }
    }
    return neighbours;
  }

  /** A box around all members of a facet, in its own (u, v, w). */
  private static Solid frame(FramedFacet facet, Wall wall) {
    double thickness = wall.sheet().thickness();
    Envelope box = new Envelope(facet.facet().boundary().getEnvelopeInternal());
    double depth = 0;
    for (Member member : facet.members()) {
      box.expandToInclude(member.shadow());
      depth = Math.max(depth, member.depth());
    }
    return Solid.between(
        Shapes.rectangle(box), thickness, Shapes.rectangle(box), thickness + depth);
  }

  /**
   * Where bolts may reach behind a facet.
   *
   * @param across in (u, v)
   * @param low where bolts come out of the sheets, mm behind the climbing face
   * @param high where they end, likewise
   */
  private record Behind(Envelope across, double low, double high) {
    static Behind of(FramedFacet facet, Wall wall) {
      Envelope across = new Envelope(facet.facet().boundary().getEnvelopeInternal());
      across.expandBy(BESIDE);
      double thickness = wall.sheet().thickness();
      return new Behind(across, thickness, thickness + wall.inserts().bolt().reach());
    }

    boolean mayHold(Solid body) {
      Envelope shadow = new Envelope();
      Envelope depths = new Envelope();
      for (List<Vector3> face : List.of(body.near(), body.far())) {
        for (Vector3 corner : face) {
          shadow.expandToInclude(corner.x(), corner.y());
          depths.expandToInclude(corner.z(), 0);
        }
      }
      return shadow.intersects(across) && depths.getMaxX() >= low && depths.getMinX() <= high;
    }

    void add(Member member, UnaryOperator<Vector3> axes, List<Neighbour> neighbours) {
      Solid body = member.body(low).mapped(axes);
      if (mayHold(body)) {
        Envelope shadow = body.shadow(low, high);
        if (shadow.intersects(across)) {
          neighbours.add(new Neighbour(member, body, shadow));
        }
      }
    }
  }
}
