package plycrag.book;

import java.util.List;
import plycrag.document.Book.Block;
import plycrag.document.Book.Checklist;
import plycrag.layout.Layout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.standing.Assembly;
import plycrag.layout.standing.Assembly.Step;

/** The order of work, step by step, with the marks of what is set in each. */
final class AssemblySteps {
  private AssemblySteps() {}

  static Block of(Layout layout) {
    List<Step> steps = Assembly.of(layout).steps();
    return new Checklist(steps.stream().map(AssemblySteps::words).toList());
  }

  private static String words(Step step) {
    return step.marks().isEmpty()
        ? sentence(step)
        : sentence(step) + ": " + String.join(", ", step.marks());
  }

  /** What is done, without the marks. */
  static String sentence(Step step) {
    return switch (step.task()) {
      case BUILD_FLAT -> "Join the frame of facet " + step.facet() + " flat on the floor";
      case BUILD_IN_PLACE ->
          "Join the frame of facet "
              + step.facet()
              + " where it stays, each member held until it is fixed";
      case RAISE -> "Tilt up the frame of facet " + step.facet() + ", and prop it";
      case SIDE_FRAME ->
          "Join a side frame flat on the floor, with its gussets on both sides where no stud is"
              + " under them; stand it, and prop it";
      case SUPPORT -> support(step.role().orElseThrow());
      case FIX ->
          "Fix the frame of facet "
              + step.facet()
              + " to the building's wall through its plates, packed solid at each anchor until it"
              + " stands plumb";
      case HOLD -> "Fix what holds facet " + step.facet() + ", the backups first";
      case SHEETS -> "Screw the sheets on to facet " + step.facet();
    };
  }

  private static String support(MemberRole role) {
    return switch (role) {
      case RAIL -> "Lay the base rails and pack them level";
      case LEDGER -> "Fix the ledgers to the building";
      case POST -> "Stand the posts on their rails, and prop them";
      case TIE -> "Fit the ties";
      case HANGER -> "Fit the hangers";
      case BEAM -> "Screw the beam across the posts, at their upper ends";
      case SILL -> "Screw the sill across the posts";
      case KNEE -> "Fit the knee braces";
      default -> "Fit the braces";
    };
  }
}
