package plycrag.layout.pattern;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.layout.skin.Axis;

/** A thing that inserts keep off. */
interface Avoided extends MarkedThing {

  /** The distances that inserts keep from it; of equally short ones the first is told. */
  List<KeptDistance> margins();

  /** What the set-out calls it in words. */
  default String called() {
    return words();
  }

  /**
   * Whether it keeps whole lines off. Others keep their place beside it, and lose or mend what it
   * blocks of them ({@link PartlyBlockedLines}). Left to itself a thing does where it blocks half
   * of a line.
   *
   * @param lines the way they run
   * @param area the smallest box around the lines
   */
  default boolean keepsOff(Axis lines, Envelope area) {
    Envelope shared = box().intersection(area);
    return !shared.isNull() && lines.size(shared) >= lines.size(area) / 2;
  }

  /** The smallest box around all that is measured from. */
  default Envelope box() {
    Envelope box = new Envelope();
    margins().forEach(margin -> box.expandToInclude(margin.extent().box()));
    return box;
  }
}
