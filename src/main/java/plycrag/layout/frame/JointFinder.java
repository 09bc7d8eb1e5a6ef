package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.wall.Wall;

/**
 * Finds where members meet: those of one facet where their footprints touch over more than a
 * corner, and those on both sides of a fold.
 */
public final class JointFinder {
  private JointFinder() {}

  /** The joints of each facet, those at the folds to later facets last. */
  public static List<List<Joint>> of(Wall wall, List<FramedFacet> facets) {
    List<List<Joint>> joints = new ArrayList<>();
    int last = 0;
    for (int at = 0; at < facets.size(); at++) {
      List<Joint> found = new ArrayList<>(within(facets.get(at).members()));
      for (FramedFacet later : facets.subList(at + 1, facets.size())) {
        found.addAll(FoldJoints.between(wall, facets.get(at), later));
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
    SpatialIndex<Integer> index =
        new SpatialIndex<>(
            IntStream.range(0, members.size()).boxed().toList(), at -> members.get(at).box());
    List<Joint> joints = new ArrayList<>();
    for (int at = 0; at < members.size(); at++) {
      for (int other : index.near(members.get(at).box(), Tolerance.TOUCH)) {
        if (other != at) {
          meeting(members.get(at), members.get(other), at < other).ifPresent(joints::add);
        }
      }
    }
    return joints;
  }

  /** How one member meets another; empty where they do not, or where the other way round tells. */
  private static Optional<Joint> meeting(Member member, Member other, boolean isEarlier) {
    Optional<Contact> contact = Contact.of(member, other);
    if (contact.isEmpty()) {
      return Optional.empty();
    }
    boolean ends = contact.get().endsFirst();
    boolean otherEnds = contact.get().endsSecond();
    boolean alike = ends == otherEnds;
    if (!alike) {
      return ends ? joint(Joint.Kind.END, member, other, contact.get()) : Optional.empty();
    }
    if (!isEarlier) {
      return Optional.empty();
    }
    boolean parallel = member.direction().isParallel(other.direction());
    Joint.Kind splice = member.role().isUpright() ? Joint.Kind.STUD_SPLICE : Joint.Kind.SPLICE;
    Joint.Kind together = parallel ? splice : Joint.Kind.END;
    return ends || liesFlat(member, other)
        ? joint(ends ? together : Joint.Kind.SIDE, member, other, contact.get())
        : Optional.empty();
  }

  /** Whether the sides of two members touch behind the sheets as well, and not in a line only. */
  private static boolean liesFlat(Member member, Member other) {
    double behind = Math.min(member.depth(), other.depth()) / 2;
    return member.section(behind).distance(other.section(behind)) < Tolerance.TOUCH;
  }

  private static Optional<Joint> joint(
      Joint.Kind kind, Member first, Member second, Contact contact) {
    LineString stretch = contact.stretch();
    Point middle = stretch.getCentroid();
    return Optional.of(
        new Joint("", kind, first.mark(), second.mark(), middle, stretch.getLength()));
  }
}
