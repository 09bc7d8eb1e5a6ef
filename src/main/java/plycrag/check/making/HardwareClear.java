package plycrag.check.making;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Solid;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Hardware;
import plycrag.layout.joints.MarkedBody;
import plycrag.layout.joints.SheetFasteners;
import plycrag.layout.support.PlacedMember;
import plycrag.solve.fixing.LapScrews;

/**
 * No two pieces of hardware share room, and none lies in timber that it does not hold. A piece is
 * taken with its screws and their heads; screws through sheets and inserts with their bolts keep
 * their room too. Room for a driver is seen to where a piece is chosen. What goes through members
 * that have no place for it is told by {@link JointScrewRoom} and not here.
 */
public final class HardwareClear implements Rule {
  /** Timber and what lies on it may reach into each other by less, mm. */
  private static final double TOUCH = 0.5;

  @Override
  public String name() {
    return "hardware-clear";
  }

  @Override
  public String promise() {
    return "No two pieces of hardware share room, nor any with screws and bolts of the sheets or with"
        + " timber that it does not hold.";
  }

  /** A body, and the piece whose it is; the piece holds some members. */
  private record Owned(
      String mark, String word, List<String> holds, boolean isOfSupport, Solid body) {
    boolean mayShare(Owned other) {
      return mark.equals(other.mark) || holds.contains(other.mark);
    }
  }

  /** Two pieces that share room, in the order of reading. */
  private record Pair(Owned one, Owned other) {
    String words() {
      return one.word() + " and " + other.word();
    }

    /**
     * What holds the wall up must lie as it is drawn; in the frame itself some other place does.
     */
    Severity severity() {
      return one.isOfSupport() || other.isOfSupport() ? Severity.ERROR : Severity.WARNING;
    }

    List<String> group() {
      return List.of(words(), severity().name());
    }

    List<String> marks() {
      return List.of(one.mark(), other.mark());
    }
  }

  @Override
  public List<Finding> findings(Layout layout) {
    Map<List<String>, Double> depths = new LinkedHashMap<>();
    Map<List<String>, List<Pair>> groups = new LinkedHashMap<>();
    List<Owned> pieces = pieces(layout);
    SpatialIndex<Owned> index =
        new SpatialIndex<>(
            Stream.concat(pieces.stream(), Stream.concat(sheets(layout), timber(layout))).toList(),
            owned -> owned.body().elevation());
    for (Owned one : pieces) {
      for (Owned other : index.near(one.body().elevation(), 0)) {
        boolean isTold = depths.containsKey(List.of(other.mark(), one.mark()));
        double limit = other.word().equals(TIMBER) ? TOUCH : Tolerance.MARKED;
        if (!isTold && !one.mayShare(other) && one.body().overlapsByMoreThan(limit, other.body())) {
          Pair pair = new Pair(one, other);
          if (depths.put(pair.marks(), one.body().overlap(other.body())) == null) {
            groups.computeIfAbsent(pair.group(), unseen -> new ArrayList<>()).add(pair);
          }
        }
      }
    }
    return groups.values().stream()
        .map(alike -> finding(alike, depths.get(alike.get(0).marks()), layout))
        .toList();
  }

  private static final String TIMBER = "timber";

  private static List<Owned> pieces(Layout layout) {
    Set<String> standing = new HashSet<>();
    layout.standing().forEach(placed -> standing.add(placed.member().mark()));
    return layout.hardware().stream()
        .filter(piece -> hasPlace(piece, layout))
        .flatMap(piece -> pieces(piece, piece.members().stream().anyMatch(standing::contains)))
        .toList();
  }

  private static Stream<Owned> pieces(Hardware piece, boolean isOfSupport) {
    return piece.form().taken().stream()
        .map(
            body ->
                new Owned(piece.mark(), piece.kind().word(), piece.members(), isOfSupport, body));
  }

  private static boolean hasPlace(Hardware piece, Layout layout) {
    return layout.joints().stream()
        .filter(joint -> piece.joints().contains(joint.mark()))
        .flatMap(joint -> layout.fixings().throughOf(joint).stream())
        .allMatch(LapScrews::holds);
  }

  private static Stream<Owned> sheets(Layout layout) {
    return layout.facets().stream()
        .flatMap(
            facet ->
                Stream.concat(
                    SheetFasteners.screws(layout.wall(), facet)
                        .map(screw -> owned(screw, "screw of a sheet")),
                    SheetFasteners.inserts(layout.wall(), facet)
                        .map(insert -> owned(insert, "insert with its bolt"))));
  }

  private static Owned owned(MarkedBody taken, String word) {
    return new Owned(taken.mark(), word, List.of(), false, taken.body());
  }

  private static Stream<Owned> timber(Layout layout) {
    double thickness = layout.wall().sheet().thickness();
    return Stream.concat(
        layout.facets().stream().flatMap(facet -> timber(facet, thickness)),
        layout.standing().stream().map(HardwareClear::timber));
  }

  private static Stream<Owned> timber(FacetLayout facet, double thickness) {
    return facet.members().stream()
        .map(
            member -> timber(member, member.body(thickness).mapped(facet.facet().plane()::toRoom)));
  }

  private static Owned timber(PlacedMember placed) {
    return new Owned(placed.member().mark(), TIMBER, List.of(), true, placed.body());
  }

  private static Owned timber(Member member, Solid body) {
    return new Owned(member.mark(), TIMBER, List.of(), false, body);
  }

  private Finding finding(List<Pair> alike, double depth, Layout layout) {
    Owned one = alike.get(0).one();
    Owned other = alike.get(0).other();
    String sentence =
        one.word()
            + " "
            + one.mark()
            + " and "
            + other.word()
            + " "
            + other.mark()
            + " share room, "
            + layout.wall().tape().size(depth)
            + " deep"
            + AlikeCount.of(alike.size(), "pair");
    return new WholeWall(name(), alike.get(0).severity())
        .finding(one.mark(), other.mark(), new Measure(-depth, 0), sentence, cure(one, other));
  }

  private static String cure(Owned one, Owned other) {
    String screws =
        "ask for fewer screws in brackets ([joints] bracket-screws), for thinner or fewer ones between"
            + " members ([joints] screw-diameter, screw-spacing, bolt-diameter, bolt-spacing)";
    return switch (other.word()) {
      case TIMBER -> "choose deeper timber ([frame] depth), or " + screws;
      case "insert with its bolt" ->
          "leave out or move insert " + other.mark() + " ([pattern] or a zone), or " + screws;
      default ->
          one.word().equals("anchor") || other.word().equals("anchor")
              ? "move the anchors ([support] anchor-spacing), or " + screws
              : screws + ", or choose deeper timber ([frame] depth)";
    };
  }
}
