package plycrag.document;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * A named layer; its name says the operation and the depth or diameter, or that it is not for
 * cutting.
 *
 * @param name A–Z, 0–9 and _, at most 31 characters: what the strictest readers take
 * @param pen how everything on it is drawn
 */
public record Layer(String name, Pen pen) {
  private static final Pattern NAME = Pattern.compile("[A-Z0-9_]{1,31}");

  /** Rejects names that some reader would refuse. */
  public Layer {
    Objects.requireNonNull(pen);
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("layer name: " + name);
    }
  }
}
