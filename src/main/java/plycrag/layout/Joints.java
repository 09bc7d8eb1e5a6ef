package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;

/**
 * Finds where members meet: those of one facet where their footprints touch over more than a
 * corner, and the plates on both sides of a fold.
 */
final class Joints {
  /** Footprints nearer than this touch, mm. */
  private static final double TOUCH = 0.01;

  /** A contact shorter than this is a corner, mm. */
  private static final double LEAST = 5;

  private Joints() {}

  /** The joints of each facet, those at the fold above it last. */
  static List<List<Joint>> of(List<FramedFacet> facets) {
    List<List<Joint>> joints = new ArrayList<>();
    int last = 0;
    for (int at = 0; at < facets.size(); at++) {
      List<Joint> found = new ArrayList<>(within(facets.get(at).members()));
      if (at + 1 < facets.size()) {
        found.addAll(across(facets.get(at), facets.get(at + 1)));
      }
      List<Joint> marked = new ArrayList<>();
      for (Joint joint : found) {
        marked.add(joint.withMark("J" + ++last));
      }
      joints.add(marked);
    }
    return joints;
  }

  private static List<Joint> within(List<Member> members) {
    SpatialIndex<Member> index = new SpatialIndex<>(members, Member::box);
    List<Joint> joints = new ArrayList<>();
    for (Member member : members) {
      for (Member other : index.near(member.box(), TOUCH)) {
        meeting(member, other).ifPresent(joints::add);
      }
    }
    return joints;
  }

  /** How one member meets another; empty where they do not, or where the other way round tells. */
  private static Optional<Joint> meeting(Member member, Member other) {
    Axis along = member.axis();
    double apart = gap(along, member, other);
    double beside = gap(along.other(), member, other);
    boolean ends = Math.abs(apart) < TOUCH && beside < -LEAST;
    if (other.axis() != along) {
      return ends ? Optional.of(joint(Joint.Kind.END, member, other)) : Optional.empty();
    }
    boolean isFirst = along.low(member.box()) < along.low(other.box()) - TOUCH;
    if (ends && isFirst) {
      return Optional.of(joint(Joint.Kind.SPLICE, member, other));
    }
    boolean isBefore = along.other().low(member.box()) < along.other().low(other.box()) - TOUCH;
    boolean sides = Math.abs(beside) < TOUCH && apart < -LEAST && isBefore;
    return sides ? Optional.of(joint(Joint.Kind.SIDE, member, other)) : Optional.empty();
  }

  /** How far two members are apart along an axis, mm; below zero by how much they overlap. */
  private static double gap(Axis axis, Member one, Member other) {
    return Math.max(axis.low(one.box()), axis.low(other.box()))
        - Math.min(axis.high(one.box()), axis.high(other.box()));
  }

  private static Joint joint(Joint.Kind kind, Member first, Member second) {
    double across = -gap(Axis.ACROSS, first, second);
    double up = -gap(Axis.UP, first, second);
    double u = Math.min(first.box().getMaxX(), second.box().getMaxX()) - across / 2;
    double v = Math.min(first.box().getMaxY(), second.box().getMaxY()) - up / 2;
    return new Joint(
        "", kind, first.mark(), second.mark(), Shapes.point(u, v), Math.max(across, up));
  }

  /** The plates at the upper edge of one facet against those at the lower edge of the next. */
  private static List<Joint> across(FramedFacet lower, FramedFacet upper) {
    List<Joint> joints = new ArrayList<>();
    for (Member under : plates(lower, true)) {
      for (Member over : plates(upper, false)) {
        double low = Math.max(under.box().getMinX(), over.box().getMinX());
        double high = Math.min(under.box().getMaxX(), over.box().getMaxX());
        if (high - low > LEAST) {
          double v = Axis.UP.middle(under.box());
          joints.add(
              new Joint(
                  "",
                  Joint.Kind.FOLD,
                  under.mark(),
                  over.mark(),
                  Shapes.point((low + high) / 2, v),
                  high - low));
        }
      }
    }
    return joints;
  }

  private static List<Member> plates(FramedFacet facet, boolean atTop) {
    return facet.members().stream()
        .filter(member -> member.role() == Role.PLATE)
        .filter(plate -> plate.box().getMinY() > facet.facet().length() / 2 == atTop)
        .toList();
  }
}
