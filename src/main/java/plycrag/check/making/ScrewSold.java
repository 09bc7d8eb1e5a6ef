package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.catalog.ScrewCatalog;
import plycrag.catalog.SoldScrew;
import plycrag.catalog.SoldScrew.Use;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.units.Tape;
import plycrag.wall.JointFasteners;
import plycrag.wall.ScrewReach;
import plycrag.wall.Screws;
import plycrag.wall.Wall;

/** The screws are of a size that is sold. */
public final class ScrewSold implements Rule {

  @Override
  public String name() {
    return "screw-sold";
  }

  @Override
  public String promise() {
    return "The screws are of a size that the catalogue has, or it is said which would do.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    Wall wall = layout.wall();
    List<Finding> findings = new ArrayList<>();
    Screws screws = wall.screws();
    if (!layout.screws().isEmpty()) {
      ScrewReach reach =
          ScrewReach.throughSheet(wall.sheet().thickness(), wall.frame(), wall.clearance());
      Size size = new Size(Use.SHEET, screws.diameter(), screws.length());
      finding(size, reach, wall.tape()).ifPresent(findings::add);
    }
    if (layout.joints().stream().anyMatch(joint -> joint.kind() == Joint.Kind.SIDE)) {
      JointFasteners joints = wall.joints();
      Size size = new Size(Use.MEMBER, joints.screws().diameter(), joints.screws().length());
      ScrewReach reach = ScrewReach.sideBySide(wall.frame().breadth(), size.diameter());
      finding(size, reach, wall.tape()).ifPresent(findings::add);
    }
    return findings;
  }

  /** What is asked for, mm. */
  private record Size(Use use, double diameter, double length) {
    String words(Tape tape) {
      return tape.bareSize(diameter) + " x " + tape.size(length);
    }

    String key() {
      return use == Use.SHEET ? "[screws] length" : "[joints] screw-length";
    }
  }

  private Optional<Finding> finding(Size size, ScrewReach reach, Tape tape) {
    if (ScrewCatalog.find(size.use(), size.diameter(), size.length()).isPresent()) {
      return Optional.empty();
    }
    String what = size.use() == Use.SHEET ? "sheet to frame" : "member to member";
    return Optional.of(
        new Finding(
            name(),
            Severity.WARNING,
            new Place.WholeWall(),
            "",
            "",
            Optional.empty(),
            "the catalogue has no screw of " + size.words(tape) + " for " + what,
            reach
                .shortest(size.use(), size.diameter())
                .map(screw -> choose(size, screw, tape))
                .orElseGet(() -> wanted(size, reach, tape))));
  }

  private static String choose(Size size, SoldScrew screw, Tape tape) {
    Size sold = new Size(size.use(), screw.diameter(), screw.length());
    return "choose one of " + sold.words(tape) + " (" + size.key() + ") or make sure of yours";
  }

  private static String wanted(Size size, ScrewReach reach, Tape tape) {
    String diameter = "one of " + tape.size(size.diameter()) + " ";
    return reach.least() > reach.most()
        ? "no length of " + tape.size(size.diameter()) + " would do; choose a thinner screw"
        : diameter
            + "and "
            + tape.text(tape.snapUp(reach.least()))
            + " to "
            + tape.text(tape.snapDown(reach.most()))
            + " would do; choose another diameter or find one";
  }
}
