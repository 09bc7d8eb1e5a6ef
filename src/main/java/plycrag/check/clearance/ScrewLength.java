package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.units.Tape;

/** A screw reaches far enough into the timber and not out of it; told once for each depth. */
public final class ScrewLength implements Rule {
  @Override
  public String name() {
    return "screw-length";
  }

  @Override
  public String promise() {
    return "The screws reach far enough into the timber and not out of it.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    TreeMap<Double, String> depths = new TreeMap<>();
    for (FacetLayout facet : layout.facets()) {
      for (Member member : facet.members()) {
        depths.putIfAbsent(member.depth(), member.mark());
      }
    }
    List<Finding> findings = new ArrayList<>();
    Measure bite = new Measure(bite(layout), layout.wall().clearance().point().penetration());
    if (Tolerance.isSome(bite.shortfall()) && !depths.isEmpty()) {
      findings.add(tooShort(bite, layout));
    }
    depths.forEach(
        (depth, mark) -> {
          Measure rest =
              new Measure(depth - bite(layout), layout.wall().clearance().point().toFarSide());
          if (Tolerance.isSome(rest.shortfall())) {
            findings.add(tooLong(rest, mark, layout));
          }
        });
    return findings;
  }

  private static double bite(Layout layout) {
    return layout.wall().screws().length() - layout.wall().sheet().thickness();
  }

  private Finding tooShort(Measure bite, Layout layout) {
    Tape tape = layout.wall().tape();
    double least = layout.wall().sheet().thickness() + bite.required();
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            "",
            "",
            bite,
            "a screw of "
                + tape.size(layout.wall().screws().length())
                + " through the sheet bites "
                + tape.size(Math.max(0, bite.found()))
                + " into the timber; "
                + tape.size(bite.required())
                + " are required",
            "choose screws of at least " + told(tape.snapUp(least), tape));
  }

  private Finding tooLong(Measure rest, String member, Layout layout) {
    Tape tape = layout.wall().tape();
    double most = layout.wall().screws().length() - rest.shortfall();
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            "",
            member,
            rest,
            "a screw of "
                + tape.size(layout.wall().screws().length())
                + " ends "
                + tape.size(Math.abs(rest.found()))
                + (rest.found() < 0 ? " beyond" : " before")
                + " the far side of "
                + member
                + "; "
                + tape.size(rest.required())
                + " must remain",
            most > layout.wall().sheet().thickness()
                ? "choose screws of at most " + told(tape.snapDown(most), tape)
                : "choose deeper timber ([frame] section)");
  }

  private static String told(double length, Tape tape) {
    return tape.text(length) + " " + Cure.length("[screws] length", length, tape).words();
  }
}
