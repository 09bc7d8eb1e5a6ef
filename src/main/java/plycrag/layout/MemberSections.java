package plycrag.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.layout.frame.Member;
import plycrag.layout.support.PlacedMember;
import plycrag.wall.Wall;
import plycrag.wall.buying.Section;

/**
 * The section of the timber that each member is cut from. A facet's members are of the frame's
 * timber. A support's are as they measure across their grain; what is bevelled, a wedge or thinner
 * comes from the least section that holds it among those that the wall takes anyway.
 */
public final class MemberSections {
  private final Layout layout;
  private final Map<String, Section> ofSupport = new LinkedHashMap<>();

  MemberSections(Layout layout) {
    this.layout = layout;
    List<PlacedMember> standing = layout.standing();
    List<Section> taken = taken(layout.wall(), standing);
    List<Section> others = new ArrayList<>();
    for (PlacedMember placed : standing) {
      Section measured = placed.section();
      Section section = cutFrom(measured, taken).orElseGet(() -> alike(measured, others));
      ofSupport.put(placed.member().mark(), section);
    }
  }

  /** The frame's, and those asked for the support that a member of it measures. */
  private static List<Section> taken(Wall wall, List<PlacedMember> standing) {
    double breadth = wall.frame().breadth();
    Stream<Section> asked =
        wall.supports().all().stream()
            .flatMap(support -> support.timber().sections(breadth).stream())
            .filter(section -> standing.stream().anyMatch(one -> section.isLike(one.section())));
    return Stream.concat(Stream.of(wall.frame().section()), asked).toList();
  }

  private static Optional<Section> cutFrom(Section measured, List<Section> taken) {
    return taken.stream()
        .filter(section -> section.holds(measured))
        .min(Comparator.comparingDouble(Section::area));
  }

  /** The first that measured the same, so that what the grid adds makes no section of its own. */
  private static Section alike(Section measured, List<Section> others) {
    others.add(measured);
    return others.stream().filter(measured::isLike).findFirst().orElseThrow();
  }

  /** The section that a member is cut from, as it is told. */
  public Section of(Member member) {
    return ofSupport.getOrDefault(member.mark(), layout.wall().frame().section());
  }

  /** All members by their section, the frame's first, in the layout's order. */
  public Map<Section, List<Member>> members() {
    Map<Section, List<Member>> members = new LinkedHashMap<>();
    members.put(layout.wall().frame().section(), new ArrayList<>());
    for (Member member : layout.members()) {
      members.computeIfAbsent(of(member), unseen -> new ArrayList<>()).add(member);
    }
    return members;
  }
}
