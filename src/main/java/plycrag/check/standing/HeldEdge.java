package plycrag.check.standing;

import java.util.Optional;
import plycrag.finding.Cure;
import plycrag.finding.Measure;
import plycrag.layout.Layout;
import plycrag.layout.support.SupportPart;
import plycrag.solve.support.Unheld;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.room.GivenSupport.Kind;

/**
 * Why a support does not hold an upper edge, in words, and what would let it.
 *
 * @param edge what is not held, and why
 * @param kind of the support
 * @param report with the keys of its part
 * @param lengthKey the key that tells how long its facet is
 * @param tape what lengths are told with
 */
record HeldEdge(Unheld edge, Kind kind, PartReport report, String lengthKey, Tape tape) {
  /** Where somebody gets behind a wall (a choice, no source), mm. */
  private static final double SPACE = 600;

  /** What leans so far is no higher for being longer, degrees. */
  private static final double LEVEL = 90;

  static HeldEdge of(Unheld edge, SupportPart part, PartReport report, Layout layout) {
    String lengthKey =
        layout.wall().facets().stream()
            .filter(facet -> facet.name().equals(edge.facet()))
            .map(Facet::lengthKey)
            .findFirst()
            .orElseThrow();
    return new HeldEdge(edge, part.asked().kind(), report, lengthKey, layout.wall().tape());
  }

  /** What was found and required, where that is a length. */
  Optional<Measure> measure() {
    return switch (edge.cause()) {
      case TOO_STEEP, TOO_UPRIGHT, NO_BRACE, NOT_FLAT -> Optional.empty();
      default -> Optional.of(new Measure(edge.found(), edge.required()));
    };
  }

  String sentence() {
    return "the upper edge of facet " + edge.facet() + " is held by nothing: " + why();
  }

  private String why() {
    String found = tape.text(edge.found());
    String required = tape.text(edge.required());
    return switch (edge.cause()) {
      case NOT_FLAT -> leans() + ", and does not lie flat on the building's wall";
      case TOO_STEEP ->
          leans()
              + (kind == Kind.HUNG
                  ? ", and so low a brace from the floor must hold it, which ends on nothing that"
                      + " leans out by 45° or more"
                  : ", and what comes level from behind ends on nothing that leans further than "
                      + degrees(edge.required()));
      case TOO_UPRIGHT ->
          leans() + ", and a hanger ends on nothing that leans out less than " + required();
      case TOO_LOW ->
          "behind the frame it is " + found + " high, and what is to hold it takes " + required;
      case CEILING ->
          edge.found() > 0
              ? "it leaves " + found + " under the ceiling for a hanger, which takes " + required
              : "it ends above the ledger under the ceiling, and leaves no hanger room";
      case BRACE ->
          "the posts stand " + found + " behind, where the brace from their feet meets the frame";
      case NO_BRACE ->
          "the frame ends so low behind that no brace from the posts' feet passes behind it";
      case HEEL ->
          "the posts stand " + found + " behind, which leaves no room for a heel at its foot";
      case KNEE ->
          "the posts stand " + found + " behind, which leaves a knee brace no room before them";
      case SHORT_KNEE ->
          "a knee brace that reaches "
              + found
              + " is too short for its ends, which take "
              + required;
      case LOW_PANEL ->
          "under its tie a knee brace finds " + found + " of height, and it takes " + required;
    };
  }

  private String required() {
    return degrees(edge.required());
  }

  private String leans() {
    double angle = edge.found();
    if (angle == 0) {
      return "it stands plumb";
    }
    return "it leans " + (angle < 0 ? "back" : "out") + " by " + degrees(Math.abs(angle));
  }

  private static String degrees(double angle) {
    return Decimal.of(angle, 2) + "°";
  }

  String suggestion() {
    return switch (edge.cause()) {
      case NOT_FLAT ->
          "let it stand plumb "
              + angle(0)
              + ", or leave space behind it for ties "
              + Cure.length(key("behind"), SPACE, tape).words();
      case TOO_STEEP -> lessSteep();
      case TOO_UPRIGHT ->
          "lean it out by "
              + required()
              + " or more "
              + angle(edge.required())
              + ", or let the wall stand on posts "
              + report.onPosts();
      case TOO_LOW -> "make facet " + edge.facet() + " longer (" + lengthKey + ")" + lowElse();
      case CEILING ->
          "make facet "
              + edge.facet()
              + " shorter ("
              + lengthKey
              + "), or let the wall stand on posts "
              + report.onPosts();
      case BRACE -> further() + ", or take knee braces " + across("knee-braces");
      case NO_BRACE -> "take knee braces " + across("knee-braces");
      case HEEL -> further();
      case KNEE -> further() + ", or take braces from the posts' feet " + across("braces");
      case SHORT_KNEE -> "let it reach " + told(key("knee"), edge.required(), " ");
      case LOW_PANEL -> "take braces from the posts' feet " + across("braces");
    };
  }

  private String lessSteep() {
    String less = "lean it out less ([[facet]] angle)";
    return switch (kind) {
      case HUNG ->
          less
              + (edge.found() < LEVEL
                  ? ", or make it so long that hangers hold it (" + lengthKey + ")"
                  : ", or raise the wall until hangers hold it ([wall] raise)");
      case HINGED -> "let the lowest facet be a kick " + angle(0);
      case FREESTANDING, FIXED ->
          "lean it out by "
              + required()
              + " at most "
              + angle(edge.required())
              + ", or let the wall hang ("
              + key("kind")
              + ")";
    };
  }

  private String lowElse() {
    return kind == Kind.FREESTANDING
        ? ", or fix the wall to the building's (" + key("kind") + ")"
        : ", or choose timber that is less deep ([frame] section)";
  }

  private String further() {
    return "set the posts at least " + told(key("behind"), edge.required(), " behind ");
  }

  private String told(String key, double least, String where) {
    double marked = tape.snapUp(least);
    return tape.text(marked) + where + Cure.length(key, marked, tape).words();
  }

  private static String angle(double degrees) {
    return new Cure("[[facet]] angle", Decimal.of(degrees, 2)).words();
  }

  private String across(String what) {
    return report.cure("across", what);
  }

  private String key(String name) {
    return report.key(name);
  }
}
