package plycrag.check.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.layout.Layout;

/** The lines of members: each check of its section at its worst, then how far it bends in use. */
final class MemberLines {
  private MemberLines() {}

  static List<StructureLine> of(WallEnvelope envelope, Layout layout, TimberValues timber) {
    List<StructureLine> lines = new ArrayList<>();
    double part = layout.wall().structure().deflection();
    for (MemberEnvelope member : envelope.members().values()) {
      String mark = member.member().axis().mark();
      member
          .worst()
          .forEach(
              (check, worst) ->
                  lines.add(
                      StructureLine.of(
                          mark,
                          check.words(),
                          worst.loadCase(),
                          check.worked(worst.actions(), worst.resistance()),
                          timber.source())));
      lines.add(deflection(member, part));
    }
    layout.members().stream()
        .filter(member -> !envelope.members().containsKey(member.mark()))
        .forEach(
            member ->
                lines.add(
                    StructureLine.needing(
                        member.mark(), "all of it", "", 0, "", "two joints that hold it")));
    return lines;
  }

  /** EN 1995-1-1, 7.2: w_inst ≤ l/n, from the line between its outermost joints; mm. */
  private static StructureLine deflection(MemberEnvelope member, double part) {
    double length = member.member().to() - member.member().from();
    double most = length / part;
    double bent = member.bent().amount();
    return new StructureLine(
        member.member().axis().mark(),
        "deflection in use",
        "EN 1995-1-1, 7.2",
        member.bent().loadCase(),
        bent,
        Optional.of(most),
        "mm",
        Optional.of(bent / most),
        LineStatus.of(bent / most),
        "[structure] deflection",
        Optional.empty());
  }
}
