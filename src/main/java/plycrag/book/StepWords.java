package plycrag.book;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.standing.BuildStep;
import plycrag.layout.standing.FallZone;
import plycrag.layout.standing.Raising;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Inserts.Fixing;

/** What is done in each step, in at most three sentences, and what ends it. */
final class StepWords {
  /** A prop meets a frame at this part of its height, at 45° (common practice, no source). */
  private static final double PROPPED = 2.0 / 3;

  private static final double DIAGONAL = Math.sqrt(2);

  private final Layout layout;
  private final Tape tape;

  StepWords(Layout layout) {
    this.layout = layout;
    this.tape = layout.wall().tape();
  }

  /** In a few words. */
  String heading(BuildStep step) {
    String facet = step.facet();
    return switch (step.work()) {
      case MARK_OUT -> "Mark and cut the timber";
      case BUILD_FLAT -> "Join the frame of " + facet + ", flat on the floor";
      case BUILD_IN_PLACE -> "Join the frame of " + facet + " where it stays";
      case RAISE -> "Raise the frame of " + facet;
      case SIDE_FRAMES -> "Make the side frames flat, and stand them";
      case SUPPORT -> support(step.role().orElseThrow());
      case FIX -> "Fix the frame of " + facet + " to the building";
      case HOLD -> "Fix what holds " + facet;
      case INSERTS -> "Finish the sheets of " + facet + ", and set their inserts";
      case SHEETS -> "Screw the sheets on to " + facet;
      case EDGES -> "Edges, ends and gaps";
      case MATS -> "Lay the mats";
      case FIRST_USE -> "Look it over before anybody climbs";
    };
  }

  /** A support's role with what is done with it. */
  static String support(MemberRole role) {
    return switch (role) {
      case RAIL -> "Lay the base rails and pack them level";
      case LEDGER -> "Fix the ledgers to the building";
      case POST -> "Stand the posts on their rails";
      case TIE -> "Fit the ties";
      case HANGER -> "Fit the hangers";
      case BEAM -> "Screw the beam across the posts";
      case SILL -> "Screw the sill across the posts";
      case KNEE -> "Fit the knee braces";
      default -> "Fit the braces";
    };
  }

  /** In the order in which it is done. */
  List<String> sentences(BuildStep step) {
    return switch (step.work()) {
      case MARK_OUT ->
          List.of(
              "Cut by the cutting plan; mark each stick at once.",
              "Make a story rod of each row of readings, and mark plates, studs and columns from"
                  + " it together.");
      case BUILD_FLAT ->
          List.of(
              "Lay the plates out, then the studs on their marks, then what goes between them.",
              "Join it, square it by its diagonals, and only then tighten the last fasteners.");
      case BUILD_IN_PLACE ->
          List.of(
              "There is no height to tilt it up, so each member is held where it stays until it is"
                  + " fixed: plates first, then studs, then what goes between them.");
      case RAISE ->
          List.of(
              "It needs " + height(step) + " of free height on its way up.",
              prop(top(step)),
              "Fasten it to what stands, from below upward.");
      case SIDE_FRAMES ->
          List.of(
              "Lay one out on the floor and join it; make the others on top of it, so that all are"
                  + " alike.",
              prop(posts()));
      case SUPPORT -> supporting(step.role().orElseThrow());
      case FIX ->
          List.of(
              "Pack it solid at each anchor until it stands plumb.",
              "Anchor it through its plates.");
      case HOLD ->
          List.of("Fix the backups first, then what holds it, then what keeps it from lifting.");
      case INSERTS -> finishing();
      case SHEETS ->
          List.of(
              "From the floor up. Stand each sheet on two blocks screwed to the frame, and drive a"
                  + " screw near each corner before anybody lets go.",
              "Then the edges, then the field; heads flush and not through the first layer.");
      case EDGES ->
          List.of(
              "Round every edge and corner within reach of a climber, and the ends of rails.",
              "Cap bolts and screws that stand out where somebody may reach or fall.",
              "Cover gaps that could hold a finger.");
      case MATS ->
          List.of(
              "They reach at least "
                  + reach()
                  + " from the foot of the face; no joint lies where people land.");
      case FIRST_USE ->
          List.of(
              "Bolt a few holds on, by hand at first, and load each slowly before anybody falls"
                  + " on it.");
    };
  }

  private List<String> supporting(MemberRole role) {
    return switch (role) {
      case LEDGER ->
          List.of(
              "Find cables and pipes, and rule out asbestos, before you drill.",
              "Pack each ledger plumb and level behind its anchors.");
      case TIE ->
          List.of("Hold each in its place, mark it there, and cut it then: no building is square.");
      case RAIL -> List.of("Pack them solid along their length.");
      case HANGER -> List.of("Plumb each before it is fastened.");
      case BEAM, SILL -> List.of("Level it, clamp it, and fasten it at each post.");
      default -> List.of("Plumb what they brace, then fasten both ends.");
    };
  }

  private List<String> finishing() {
    return List.of(
        "Round the front edges, and seal the face and all edges: what is cut is open to damp.",
        layout.wall().inserts().fastening().kind() == Fixing.SCREW_ON
            ? "From the back, square to the sheet: screw each flange on flat."
            : "From the back, square to the sheet: draw each in with a bolt and a washer until its"
                + " flange lies flat.",
        "Turn a bolt into each by hand: one that binds is chased or changed now.");
  }

  /** What ends it. */
  List<String> checks(BuildStep step) {
    return switch (step.work()) {
      case MARK_OUT -> List.of("every stick has its mark", "lengths as in the cut list");
      case BUILD_FLAT -> diagonals(facet(step));
      case BUILD_IN_PLACE, RAISE -> List.of(lean(facet(step)), "nothing moves when it is pushed");
      case SIDE_FRAMES -> List.of("all alike when laid on each other", "posts plumb, both ways");
      case SUPPORT ->
          List.of(
              switch (step.role().orElseThrow()) {
                case RAIL, LEDGER, BEAM, SILL -> "level";
                default -> "tight at both ends, and what it holds still plumb";
              });
      case FIX -> List.of("plumb, and no hollow behind an anchor");
      case HOLD -> List.of("every angle tried with nobody under it");
      case INSERTS -> List.of("a bolt turns in by hand in each", "no flange stands off");
      case SHEETS -> List.of("no edge stands off its timber", "gaps even");
      case EDGES -> List.of("a cloth drawn over it catches nowhere");
      case MATS -> List.of("no gap between mats");
      case FIRST_USE ->
          List.of(
              "every bolt and screw tight", "nothing creaks or moves", "mats where people fall");
    };
  }

  private FacetLayout facet(BuildStep step) {
    return layout.facet(step.facet());
  }

  private String height(BuildStep step) {
    double needed = Raising.diagonal(layout.wall(), List.of(facet(step)));
    return tape.text(tape.snapUp(needed));
  }

  private double top(BuildStep step) {
    return facet(step).facet().overallHeight();
  }

  private double posts() {
    return layout.standing().stream()
        .filter(one -> one.member().role() == MemberRole.POST)
        .mapToDouble(one -> one.member().length())
        .max()
        .orElse(0);
  }

  private String prop(double height) {
    String length = tape.text(tape.snapUp(PROPPED * height * DIAGONAL));
    return "Prop it before you let go: a stick of about "
        + length
        + " from two thirds of its height to a block on the floor, at each end.";
  }

  private String reach() {
    return tape.text(
        tape.snapUp(
            layout.runs().stream()
                .map(run -> run.stream().map(FacetLayout::facet).toList())
                .mapToDouble(run -> FallZone.of(layout, run).end())
                .max()
                .orElse(0)));
  }

  /** Both diagonals of a frame that is a rectangle, over its members. */
  private List<String> diagonals(FacetLayout facet) {
    if (!facet.facet().isRectangle()) {
      return List.of("angles as drawn", "flat, without a twist");
    }
    Envelope box = new Envelope();
    facet.members().stream().map(Member::shadow).forEach(box::expandToInclude);
    double across = box.getWidth();
    double up = box.getHeight();
    String diagonal = tape.text(tape.snap(Math.sqrt(across * across + up * up)));
    return List.of("both diagonals " + diagonal, "flat, without a twist");
  }

  /** How far its upper edge stands before or behind its lower one. */
  private String lean(FacetLayout facet) {
    Vector3 low = facet.facet().plane().toRoom(new Vector3(0, 0, 0));
    Vector3 high = facet.facet().plane().toRoom(new Vector3(0, facet.facet().length(), 0));
    Vector3 way = high.minus(low);
    double out = Math.sqrt(way.x() * way.x() + way.y() * way.y());
    if (!facet.facet().leans()) {
      return "plumb";
    }
    return Decimal.of(Math.abs(facet.facet().angle()), 1)
        + "° from plumb: its upper edge stands "
        + tape.text(tape.snap(out))
        + (facet.facet().angle() > 0 ? " before" : " behind")
        + " its lower one";
  }
}
