package plycrag.read.text;

import java.util.ArrayList;
import java.util.List;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/**
 * A value as it stands in the file.
 *
 * @param key the full key
 * @param place where the key stands; of an element in a list, where the element stands
 * @param value as the TOML reader gave it
 */
public record Located(String key, SourcePlace place, Object value) {

  /** What kind of thing stands there, in a person's words. */
  public String kindWords() {
    if (value instanceof String) {
      return "a text";
    }
    if (value instanceof Number) {
      return "a number";
    }
    if (value instanceof Boolean) {
      return "true or false";
    }
    if (value instanceof TomlArray) {
      return "a list";
    }
    return value instanceof TomlTable ? "a table" : "a date or a time";
  }

  /** Whether something stands there that is neither a table nor a list. */
  public boolean isOther() {
    return value != null && !(value instanceof TomlTable) && !(value instanceof TomlArray);
  }

  /** The elements of a list, each at its own place. */
  public List<Located> elements() {
    TomlArray array = (TomlArray) value;
    List<Located> elements = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      elements.add(new Located(key, SourcePlace.of(array.inputPositionOf(i)), array.get(i)));
    }
    return elements;
  }
}
