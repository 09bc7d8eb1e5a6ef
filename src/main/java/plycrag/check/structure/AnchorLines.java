package plycrag.check.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.layout.Layout;
import plycrag.wall.room.GivenStructure.AnchorValues;

/**
 * What anchors and tethers have to bear, as design values in kN. An anchor is held against what its
 * maker declares, if the file says it; edges, spacing and what it goes into are in that value.
 */
final class AnchorLines {
  private static final double KILO = 1000;

  private AnchorLines() {}

  static List<StructureLine> of(WallEnvelope envelope, Layout layout) {
    AnchorValues values = layout.wall().structure().anchor();
    List<StructureLine> lines = new ArrayList<>();
    envelope
        .anchors()
        .forEach(
            (mark, anchor) -> {
              lines.add(line(mark, "anchor pulled", anchor.pull(), values.pull(), "anchor-pull"));
              lines.add(
                  line(mark, "anchor sheared", anchor.shear(), values.shear(), "anchor-shear"));
            });
    envelope
        .tethers()
        .forEach(
            (mark, force) ->
                lines.add(
                    StructureLine.needing(
                        mark,
                        "tether",
                        force.loadCase(),
                        force.amount() / KILO,
                        "kN",
                        "the working load that its maker declares")));
    return lines;
  }

  private static StructureLine line(
      String mark, String check, AnchorEnvelope.Force force, Optional<Double> bears, String key) {
    double demand = force.amount() / KILO;
    return bears
        .map(
            one ->
                StructureLine.of(
                    mark,
                    check,
                    "EN 1990, (6.8)",
                    force.loadCase(),
                    demand,
                    one / KILO,
                    "kN",
                    "[structure] " + key + ", as its maker declares it"))
        .orElseGet(
            () ->
                StructureLine.needing(
                    mark,
                    check,
                    force.loadCase(),
                    demand,
                    "kN",
                    "what the anchor bears ([structure] " + key + ")"));
  }
}
