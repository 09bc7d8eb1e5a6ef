package plycrag.document;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * A named layer; its name says the operation and the depth or diameter, or that it is not for
 * cutting.
 *
 * @param name A–Z, 0–9 and _, at most 31 characters: what the strictest readers take
 * @param pen how everything on it is drawn
 * @param colour of it where operations are told apart by colours: an index of the palette that CAD
 *     programs share, from 1; 0 follows the pen
 */
public record Layer(String name, Pen pen, int colour) {
  private static final Pattern NAME = Pattern.compile("[A-Z0-9_]{1,31}");
  private static final int GREATEST_COLOUR = 255;

  /** Rejects names that some reader would refuse. */
  public Layer {
    Objects.requireNonNull(pen);
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("layer name: " + name);
    }
    if (colour < 0 || colour > GREATEST_COLOUR) {
      throw new IllegalArgumentException("colour " + colour);
    }
  }

  /** A layer in the colour of its pen. */
  public Layer(String name, Pen pen) {
    this(name, pen, 0);
  }
}
