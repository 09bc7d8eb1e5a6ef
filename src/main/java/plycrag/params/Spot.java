package plycrag.params;

import org.tomlj.TomlPosition;

/**
 * A place in the file that is read.
 *
 * @param line from 1
 * @param column from 1
 */
record Spot(int line, int column) {
  static final Spot START = new Spot(1, 1);

  static Spot of(TomlPosition position) {
    return position == null ? START : new Spot(position.line(), position.column());
  }
}
