package plycrag.glb;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON to maps, lists, numbers and text. */
public final class JsonTree {
  private JsonTree() {}

  /** The object that a text is; no key of an object twice. */
  public static Map<String, Object> of(byte[] text) {
    try (JsonParser parser = new JsonFactory().createParser(text)) {
      parser.nextToken();
      return object(value(parser));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static Object value(JsonParser parser) throws IOException {
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      Map<String, Object> object = new LinkedHashMap<>();
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String key = parser.currentName();
        parser.nextToken();
        assertThat(object.put(key, value(parser))).as(key).isNull();
      }
      return object;
    }
    if (parser.currentToken() == JsonToken.START_ARRAY) {
      List<Object> array = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        array.add(value(parser));
      }
      return array;
    }
    return parser.currentToken().isNumeric() ? parser.getDoubleValue() : parser.getText();
  }

  /** A value that is an object. */
  @SuppressWarnings("unchecked")
  public static Map<String, Object> object(Object value) {
    return (Map<String, Object>) value;
  }

  /** An array of an object; an empty one where it has none. */
  @SuppressWarnings("unchecked")
  public static List<Object> array(Map<String, Object> object, String key) {
    return (List<Object>) object.getOrDefault(key, List.of());
  }
}
