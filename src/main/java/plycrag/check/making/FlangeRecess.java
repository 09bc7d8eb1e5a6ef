package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.units.Tape;
import plycrag.wall.Clearances;
import plycrag.wall.Recess;
import plycrag.wall.Wall;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/**
 * Where flanges lie in recesses, enough of the sheet remains under them, an end mill cuts them, and
 * they meet nothing that flanges keep clear of.
 */
public final class FlangeRecess implements Rule {
  @Override
  public String name() {
    return "flange-recess";
  }

  @Override
  public String promise() {
    return "Recesses for flanges have a tool, and leave enough of the sheet below them.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    Optional<Recess> wanted = layout.wall().inserts().body().recess();
    if (wanted.isEmpty() || layout.inserts().isEmpty()) {
      return List.of();
    }
    Judge judge = new Judge(layout.wall(), wanted.get(), new WholeWall(name(), Severity.ERROR));
    List<Finding> findings = new ArrayList<>();
    judge.tooThin().ifPresent(findings::add);
    judge.tool(layout.inserts().size()).ifPresent(findings::add);
    judge.tooWide().ifPresent(findings::add);
    return findings;
  }

  /** Judges the recesses, which are all alike. */
  private static final class Judge {
    private final Wall wall;
    private final Recess recess;
    private final WholeWall error;

    /**
     * Judges for one wall.
     *
     * @param wall on which they are
     * @param recess one of them
     * @param error what writes findings
     */
    Judge(Wall wall, Recess recess, WholeWall error) {
      this.wall = wall;
      this.recess = recess;
      this.error = error;
    }

    private Tape tape() {
      return wall.tape();
    }

    private double thickness() {
      return wall.sheet().thickness();
    }

    private double left() {
      return wall.inserts().under(thickness());
    }

    private String leaves() {
      return "recesses of "
          + tape().size(recess.depth())
          + " leave "
          + tape().size(left())
          + " of sheets of "
          + tape().size(thickness());
    }

    Optional<Finding> tooThin() {
      Measure measure = new Measure(left(), recess.least(thickness()));
      return fallsShort(
          measure,
          leaves() + "; " + tape().size(measure.required()) + " must remain",
          shallower(thickness() - measure.required())
              + ", or allow less to remain ([inserts] recess-leaves)");
    }

    /** What to do where a recess may be so deep at most. */
    private String shallower(double depth) {
      double marked = tape().snapDown(depth);
      return marked > 0
          ? "make them at most " + tape().text(marked) + " deep ([inserts] recess-depth)"
          : "leave them out ([inserts] recess-depth)";
    }

    Optional<Finding> tooWide() {
      Clearances clearance = wall.clearance();
      double least =
          Math.min(
              Math.min(clearance.flange().toEdge(), clearance.flange().toFlange() / 2),
              clearance.screw().toFlange());
      double beyond = (recess.diameter() - wall.inserts().body().flange()) / 2;
      return fallsShort(
          new Measure(least, beyond),
          "recesses reach "
              + tape().size(beyond)
              + " beyond flanges all round, and flanges need not be further than that from edges,"
              + " screws and each other",
          "make them narrower ([inserts] recess-clearance), or ask for more ([clearance]"
              + " insert-to-edge, insert-to-insert, screw-to-insert)");
    }

    Optional<Finding> tool(int count) {
      ToolBox tools =
          new ToolBox(
              wall.machine().equipment().tools(), wall.machine().equipment().limits().spindle());
      if (tools.forRecess(recess.diameter(), recess.depth()).isPresent()) {
        return Optional.empty();
      }
      String what = count + (count == 1 ? " recess" : " recesses") + " of " + diameter();
      String are = count == 1 ? " is" : " are";
      List<Tool> candidates = tools.recessCandidates(recess.diameter());
      return Optional.of(
          candidates.isEmpty() ? noTool(what + are) : unfit(what, candidates.get(0), tools));
    }

    private String diameter() {
      return tape().size(recess.diameter());
    }

    private Finding noTool(String what) {
      return error.finding(
          what + " to be cut, and no end mill is told that is narrow enough to circle in them",
          "add a [[tool]] of kind end-mill narrower than "
              + diameter()
              + ", or leave recesses out ([inserts] recess-depth)");
    }

    private Finding unfit(String what, Tool tool, ToolBox tools) {
      return ToolBox.reaches(tool, recess.depth())
          ? error.finding(
              what + ": " + DrivenSpeed.words(tool, tools.spindle()),
              "set a speed that both allow ([[tool]] speed)")
          : error.finding(
              tool.name(),
              "",
              new Measure(tool.shape().length(), recess.depth()),
              what
                  + ": "
                  + tool.name()
                  + " reaches "
                  + tape().size(tool.shape().length())
                  + " deep and "
                  + tape().size(recess.depth())
                  + " is needed",
              "take a longer end mill");
    }

    private Optional<Finding> fallsShort(Measure measure, String sentence, String suggestion) {
      return !Tolerance.isSome(measure.shortfall())
          ? Optional.empty()
          : Optional.of(error.finding("", "", measure, sentence, suggestion));
    }
  }
}
