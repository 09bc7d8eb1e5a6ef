package plycrag.check.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.sheets.LaidSheet;
import plycrag.units.Tape;
import plycrag.wall.buying.Section;
import plycrag.wall.room.Room.BringIn;
import plycrag.wall.room.Room.Ways;

/**
 * Sheets, sticks and frames pass the narrowest door and stair, and the turn before each if one is
 * told. What lies behind the door is not judged.
 */
public final class BroughtIn implements Rule {
  @Override
  public String name() {
    return "brought-in";
  }

  @Override
  public String promise() {
    return "Sheets, sticks and frames pass the narrowest door and stair that are told.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    Ways ways = layout.wall().room().ways();
    Opening.of(ways.door()).ifPresent(door -> judge(layout, "door", door, findings));
    Opening.of(ways.stair()).ifPresent(stair -> judge(layout, "stair", stair, findings));
    return findings;
  }

  private void judge(Layout layout, String what, Opening way, List<Finding> findings) {
    sheets(layout, what, way, findings);
    sticks(layout, what, way, findings);
    if (layout.wall().room().handling().bringIn() == BringIn.FRAMES) {
      layout.facets().forEach(facet -> frame(layout, facet, new Named(what, way), findings));
    }
  }

  /** An opening and what it is. */
  private record Named(String what, Opening way) {}

  private void sheets(Layout layout, String what, Opening way, List<Finding> findings) {
    double thickness = layout.wall().sheet().thickness();
    Tape tape = layout.wall().tape();
    TreeMap<Double, Double> sizes = new TreeMap<>();
    for (LaidSheet sheet : layout.sheets()) {
      double width = sheet.stock().width();
      double height = sheet.stock().height();
      sizes.merge(Math.min(width, height), Math.max(width, height), Math::max);
    }
    sizes.forEach(
        (side, length) -> {
          if (!way.passes(side, length, thickness)) {
            findings.add(
                warning(
                    way.mostBeside(length, thickness) - side,
                    "a sheet of "
                        + tape.text(length)
                        + " by "
                        + tape.text(side)
                        + " does not pass the narrowest "
                        + what,
                    "buy smaller sheets, or have them cut before they are brought in"));
          }
        });
  }

  /** What of a section passes, and the longest member cut from it. */
  private record Sticks(double passing, Member longest) {
    double over() {
      return longest.length() - passing;
    }
  }

  /**
   * The member that is too long by most decides; where it passes, the longest stick that may be
   * bought is told.
   */
  private void sticks(Layout layout, String what, Opening way, List<Finding> findings) {
    List<Sticks> all = new ArrayList<>();
    layout
        .sections()
        .members()
        .forEach((section, members) -> all.addAll(sticks(way, section, members)));
    double passing =
        all.stream().mapToDouble(Sticks::passing).min().orElse(Double.POSITIVE_INFINITY);
    double bought = layout.wall().stock().longestMember();
    Tape tape = layout.wall().tape();
    String most = tape.text(tape.snapDown(Math.min(passing, bought)));
    Optional<Sticks> worst = all.stream().max(Comparator.comparingDouble(Sticks::over));
    if (worst.filter(one -> one.over() > Tolerance.TOUCH).isPresent()) {
      Member longest = worst.get().longest();
      findings.add(
          warning(
              -worst.get().over(),
              longest.mark()
                  + " is "
                  + tape.text(tape.snapUp(longest.length()))
                  + " long and does not pass the narrowest "
                  + what,
              "let no stick be longer than "
                  + most
                  + " ([stock] carry-length): longer members are then spliced"));
    } else if (bought > passing + Tolerance.TOUCH) {
      findings.add(
          new WholeWall(name(), Severity.NOTE)
              .finding(
                  "sticks of more than " + most + " do not pass the narrowest " + what,
                  "saw longer ones before they are brought in, or buy none ([stock]"
                      + " carry-length)"));
    }
  }

  private static List<Sticks> sticks(Opening way, Section section, List<Member> members) {
    double passing = way.longestStick(section.smaller(), section.greater());
    return members.stream()
        .max(Comparator.comparingDouble(Member::length))
        .map(longest -> new Sticks(passing, longest))
        .stream()
        .toList();
  }

  private void frame(Layout layout, FacetLayout facet, Named opening, List<Finding> findings) {
    Envelope box = new Envelope();
    facet.members().forEach(member -> box.expandToInclude(member.shadow()));
    double depth = layout.wall().frame().depth();
    if (opening.way().passes(box.getWidth(), box.getHeight(), depth)) {
      return;
    }
    Tape tape = layout.wall().tape();
    double part = tape.snapDown(opening.way().mostBeside(box.getWidth(), depth));
    findings.add(
        warning(
            part - box.getHeight(),
            "the frame of facet "
                + facet.facet().name()
                + ", "
                + tape.text(tape.snapUp(box.getWidth()))
                + " wide and "
                + tape.text(tape.snapUp(box.getHeight()))
                + " up the slope, does not pass the narrowest "
                + opening.what(),
            part > 0
                ? "split it: tell facets of the same angle, none longer than "
                    + tape.text(part)
                    + " up the slope ("
                    + facet.facet().lengthKey()
                    + "), whose frames are bolted together"
                : "build it in the room ([handling] bring-in = \"parts\")"));
  }

  private Finding warning(double room, String sentence, String suggestion) {
    return new WholeWall(name(), Severity.WARNING)
        .finding("", "", new Measure(room, 0), sentence, suggestion);
  }
}
