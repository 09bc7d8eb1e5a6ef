package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.DraftMember;
import plycrag.layout.frame.Footing;
import plycrag.layout.frame.FramePlan;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Framing;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.JointFinder;
import plycrag.layout.frame.MemberNumbers;
import plycrag.layout.joints.Fixings;
import plycrag.layout.joints.HardwarePlan;
import plycrag.layout.pattern.AreaSetOut;
import plycrag.layout.pattern.AskedInserts;
import plycrag.layout.pattern.Hindrance;
import plycrag.layout.pattern.InsertHindrances;
import plycrag.layout.pattern.InsertSelection;
import plycrag.layout.pattern.InsertSite;
import plycrag.layout.pattern.InsertSurroundings;
import plycrag.layout.pattern.Neighbour;
import plycrag.layout.pattern.PatternArea;
import plycrag.layout.screws.FastenerLine;
import plycrag.layout.screws.Fastening;
import plycrag.layout.screws.MarkedHoles;
import plycrag.layout.screws.ScrewPoints;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.OffcutParts;
import plycrag.layout.sheets.SheetPlan;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Seam;
import plycrag.layout.skin.Skin;
import plycrag.layout.support.SupportPlan;
import plycrag.layout.support.WallSupport;
import plycrag.wall.Facet;
import plycrag.wall.Inserts.WhenBlocked;
import plycrag.wall.Sheet.Lay;
import plycrag.wall.Wall;

/**
 * Lays a wall out.
 *
 * <ol>
 *   <li>Every facet's pieces, and its frame with the members between others evenly apart.
 *   <li>The facets' columns and rows against that frame, and its movable members with them.
 *   <li>The frame with the members where they were set out, and its joints.
 *   <li>The inserts of zones and of lists, against that frame.
 *   <li>Screws, which slide off the inserts; and what becomes of inserts still blocked.
 *   <li>What holds the frame up, and what holds each joint.
 *   <li>The pieces on stock sheets, what is done to those, and cover strips on what they leave.
 * </ol>
 */
public final class LayoutPlan {
  private final Wall wall;
  private final List<Hindrance> hindrances;
  private final List<Skin> skins;
  private final List<List<PatternArea>> areas;
  private final List<Framing> framings;
  private final List<FramedFacet> frames;
  private final List<Optional<AreaSetOut>> setOuts;

  private LayoutPlan(Wall wall, List<Hindrance> hindrances) {
    this.wall = wall;
    this.hindrances = hindrances;
    this.skins = skins(wall);
    this.areas = areas(wall);
    this.framings = framings(wall, skins);
    List<FramePlan> plans = framings.stream().map(Framing::plan).toList();
    List<FramedFacet> first = framed(plans);
    this.setOuts = setOuts(plans, first);
    List<FramePlan> settled = settled(plans);
    this.frames = settled.equals(plans) ? first : framed(settled);
  }

  /** The layout of a wall, right or wrong. */
  public static Layout of(Wall wall) {
    return of(wall, InsertHindrances.ALL);
  }

  /** The same with inserts kept clear of some hindrances. */
  public static Layout of(Wall wall, List<Hindrance> hindrances) {
    return new LayoutPlan(wall, hindrances).layout();
  }

  private Layout layout() {
    List<List<Joint>> joints = JointFinder.of(wall, frames);
    List<FacetLayout> facets = each(frames.size(), at -> facet(at, joints.get(at)));
    List<Lay> lays = skins.stream().map(Skin::lay).toList();
    int last = joints.stream().mapToInt(List::size).sum();
    List<LaidSheet> sheets = SheetPlan.of(wall, facets, lays);
    Optional<WallSupport> support = SupportPlan.of(wall, facets, last);
    Fixings fixings = Fixings.of(wall, facets, support);
    return new Layout(
        wall,
        facets,
        support,
        sheets,
        sheets.stream().flatMap(sheet -> WorkedFace.of(wall, sheet).stream()).toList(),
        OffcutParts.of(wall, sheets, fixings.gussets()),
        fixings,
        HardwarePlan.of(wall, facets, support, fixings));
  }

  private static List<Skin> skins(Wall wall) {
    List<Skin> skins = new ArrayList<>();
    int pieces = 0;
    for (Skin skin : each(wall.facets().size(), at -> Skin.of(wall.facets().get(at), wall))) {
      skins.add(skin.numberedFrom(pieces + 1));
      pieces += skin.pieces().size();
    }
    return skins;
  }

  private static List<Framing> framings(Wall wall, List<Skin> skins) {
    return each(
        skins.size(),
        at -> {
          Facet facet = wall.facets().get(at);
          List<Seam> seams = skins.get(at).seams();
          return new Framing(wall, facet, seams, seamsInLine(wall, facet, skins));
        });
  }

  /**
   * Where a support meets facets that stand on each other, the seams of the others: studs stand at
   * those too, so that those of all are in line.
   */
  private static List<Seam> seamsInLine(Wall wall, Facet facet, List<Skin> skins) {
    if (wall.support(facet).isEmpty()) {
      return List.of();
    }
    return Facet.runs(wall.facets(), Function.identity()).stream()
        .filter(run -> run.contains(facet))
        .flatMap(List::stream)
        .filter(one -> !one.equals(facet))
        .flatMap(from -> uprightSeams(from, facet, wall, skins))
        .toList();
  }

  /** One facet's seams that run up, as another has them. */
  private static Stream<Seam> uprightSeams(Facet from, Facet to, Wall wall, List<Skin> skins) {
    double aside = from.plane().left() - to.plane().left();
    return skins.get(wall.facets().indexOf(from)).seams().stream()
        .filter(seam -> seam.axis() == Axis.UP)
        .map(seam -> seam.moved(aside));
  }

  private List<FramedFacet> framed(List<FramePlan> plans) {
    MemberNumbers numbers = new MemberNumbers();
    List<FramedFacet> framed = new ArrayList<>();
    List<List<DraftMember>> drafts =
        each(plans.size(), at -> framings.get(at).members(plans.get(at)));
    for (int at = 0; at < drafts.size(); at++) {
      Facet facet = wall.facets().get(at);
      Skin skin = skins.get(at);
      framed.add(
          new FramedFacet(
              facet,
              Footing.of(facet, wall),
              skin.pieces(),
              skin.seams(),
              drafts.get(at).stream()
                  .map(draft -> draft.marked(numbers.next(draft.wished().role())))
                  .toList()));
    }
    return Framing.clearOfEachOther(wall, framed);
  }

  private static List<List<PatternArea>> areas(Wall wall) {
    return wall.facets().stream().map(facet -> PatternArea.of(wall, facet)).toList();
  }

  /** The facets' own patterns set out, where members move for them. */
  private List<Optional<AreaSetOut>> setOuts(List<FramePlan> plans, List<FramedFacet> first) {
    return each(
        first.size(),
        at -> {
          PatternArea own = areas.get(at).get(0);
          FramedFacet frame = first.get(at);
          return own.isSetOutWithMembers()
              ? Optional.of(AreaSetOut.ofFacet(own, around(frame, first), plans.get(at)))
              : Optional.empty();
        });
  }

  /** What is made of each facet by itself, side by side, in their order. */
  private static <T> List<T> each(int facets, IntFunction<T> made) {
    return IntStream.range(0, facets).parallel().mapToObj(made).toList();
  }

  private List<FramePlan> settled(List<FramePlan> plans) {
    List<FramePlan> settled = new ArrayList<>();
    for (int at = 0; at < plans.size(); at++) {
      FramePlan plan = plans.get(at);
      settled.add(setOuts.get(at).map(setOut -> setOut.settled(plan)).orElse(plan));
    }
    return settled;
  }

  private FacetLayout facet(int at, List<Joint> joints) {
    FramedFacet frame = frames.get(at);
    InsertSurroundings bare = around(frame, frames);
    AskedInserts asked = AskedInserts.of(areas.get(at), setOuts.get(at), bare);
    InsertSelection unscrewed =
        InsertSelection.of(asked.inserts(), wall.inserts().blocked().answer(), bare);
    MarkedHoles marked =
        MarkedHoles.of(frame.facet(), unscrewed.asked(), lines(frame, unscrewed), wall.tape());
    InsertSurroundings around = bare.with(marked.screws());
    InsertSelection selection = unscrewed.again(marked.inserts(), around);
    return new FacetLayout(
        frame,
        joints,
        marked.lines(),
        selection.kept(),
        selection.omissions(),
        ScrewPoints.of(wall, frame, selection.kept(), marked.screws()),
        asked.settings(),
        around);
  }

  /** What hinders inserts on a facet before it is screwed. */
  private InsertSurroundings around(FramedFacet frame, List<FramedFacet> all) {
    List<Neighbour> neighbours = Neighbour.of(frame, all, wall);
    return InsertSurroundings.of(new InsertSite(wall, frame, neighbours, List.of()), hindrances);
  }

  /** The screws; where nothing is to be changed they do not slide either. */
  private List<FastenerLine> lines(FramedFacet frame, InsertSelection selection) {
    boolean isReport = wall.inserts().blocked().answer() == WhenBlocked.REPORT;
    return Fastening.of(wall, frame, isReport ? List.of() : selection.kept());
  }
}
