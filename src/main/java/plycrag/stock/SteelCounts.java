package plycrag.stock;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.prices.Article;
import plycrag.solve.fixing.SteelFit;
import plycrag.units.Tape;

/**
 * How many brackets, straps and hinges of each size all joints take, and how many screws for them.
 *
 * @param pieces in the order of the joints; where the catalogue has none, without a size
 * @param screws of each size, those for pieces without a size without one
 */
record SteelCounts(Map<Piece, Integer> pieces, Map<Screw, Integer> screws) {

  /** A kind and a size of it. */
  record Piece(JointHardware.Kind kind, Optional<SteelFit> fit) {}

  /** A size of screw, mm; 0 by 0 for one without. */
  record Screw(double diameter, double length) {
    private static final Screw ANY = new Screw(0, 0);

    String size(Tape tape) {
      return equals(ANY)
          ? "as their maker says"
          : tape.bareSize(diameter) + " x " + tape.size(length);
    }

    Sourcing sourcing() {
      return equals(ANY)
          ? Sourcing.of(Article.BRACKET_SCREW)
          : Sourcing.of(Article.BRACKET_SCREW, diameter, length);
    }
  }

  static SteelCounts of(Layout layout) {
    Map<Piece, Integer> pieces = new LinkedHashMap<>();
    Map<Screw, Integer> screws = new LinkedHashMap<>();
    int each = layout.wall().joints().bracketScrews();
    for (Joint joint : layout.joints()) {
      JointHardware hardware = JointHardware.of(joint, layout);
      switch (hardware.kind()) {
        case BRACKET, STRAP, HINGE -> {
          pieces.merge(
              new Piece(hardware.kind(), hardware.steel()), hardware.count(), Integer::sum);
          Screw screw =
              hardware
                  .steel()
                  .map(fit -> new Screw(fit.diameter(), fit.length()))
                  .orElse(Screw.ANY);
          int taken = hardware.steel().map(SteelFit::screws).orElse(each);
          screws.merge(screw, hardware.count() * taken, Integer::sum);
        }
        case BOLT, SCREW, GUSSET, OTHERS -> {
          continue;
        }
      }
    }
    return new SteelCounts(pieces, screws);
  }
}
