package plycrag.check.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.catalog.StrengthCatalog;
import plycrag.catalog.StrengthClass;
import plycrag.layout.Layout;
import plycrag.layout.standing.RunAtAngle;
import plycrag.layout.structure.FrameVariant;
import plycrag.wall.buying.MaterialWishes.Environment;
import plycrag.wall.room.GivenStructure;
import plycrag.wall.room.GivenStructure.Basis;

/** Checks a layout's strength beforehand, as far as it is known how. */
public final class Precheck {
  private static final List<FrameVariant> VARIANTS =
      List.of(
          new FrameVariant(false, true),
          new FrameVariant(true, true),
          new FrameVariant(false, false));

  private Precheck() {}

  /** What it finds. */
  public static StructureReport of(Layout layout) {
    GivenStructure given = layout.wall().structure();
    Optional<String> reason = leftOut(layout, given);
    if (reason.isPresent()) {
      return StructureReport.without(reason.get());
    }
    Optional<StrengthClass> timber = StrengthCatalog.find(given.timber().name());
    return new StructureReport(
        Optional.empty(),
        timber
            .map(one -> lines(layout, new TimberValues(one)))
            .orElseGet(() -> List.of(unknown(given))));
  }

  /** Whether it reckons anything of a layout, without reckoning it. */
  public static boolean isMade(Layout layout) {
    GivenStructure given = layout.wall().structure();
    return leftOut(layout, given).isEmpty()
        && StrengthCatalog.find(given.timber().name()).isPresent();
  }

  private static Optional<String> leftOut(Layout layout, GivenStructure given) {
    if (given.basis() == Basis.NONE) {
      return Optional.of("the file asks for no check of strength ([structure] basis)");
    }
    if (given.timber().environment() == Environment.OUTDOORS) {
      return Optional.of(
          "the wall stands in the open, and wind, snow and wet timber are not reckoned");
    }
    if (layout.support().isEmpty()) {
      return Optional.of("what holds the wall up is not told ([support])");
    }
    return Optional.empty();
  }

  private static StructureLine unknown(GivenStructure given) {
    String grade = given.timber().name();
    return StructureLine.needing(
        "wall",
        "all of its timber",
        "",
        0,
        "",
        "EC5 values of the timber, " + grade + " being no class of EN 338 that is known");
  }

  private static List<StructureLine> lines(Layout layout, TimberValues timber) {
    WallEnvelope envelope = new WallEnvelope(layout, timber);
    for (double angle : RunAtAngle.angles(layout, 0)) {
      VARIANTS.forEach(variant -> envelope.add(angle, variant));
    }
    List<StructureLine> lines = new ArrayList<>(envelope.standing());
    lines.addAll(new Toppling(layout).lines());
    lines.addAll(MemberLines.of(envelope, layout, timber));
    envelope.joints().values().forEach(joint -> lines.addAll(joint.lines()));
    lines.addAll(AnchorLines.of(envelope, layout));
    return lines;
  }
}
