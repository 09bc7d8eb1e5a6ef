package plycrag.read.text;

import org.tomlj.TomlPosition;

/**
 * A place in the file that is read.
 *
 * @param line from 1
 * @param column from 1
 */
public record SourcePlace(int line, int column) {
  public static final SourcePlace START = new SourcePlace(1, 1);

  public static SourcePlace of(TomlPosition position) {
    return position == null ? START : new SourcePlace(position.line(), position.column());
  }
}
