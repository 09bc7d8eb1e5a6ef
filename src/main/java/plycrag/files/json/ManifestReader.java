package plycrag.files.json;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a manifest. */
public final class ManifestReader {
  private final JsonParser parser;

  private ManifestReader(JsonParser parser) {
    this.parser = parser;
  }

  /** The manifest, or none if the content is anything else. */
  public static Optional<Manifest> read(byte[] content) {
    try (JsonParser parser = JsonText.FACTORY.createParser(content)) {
      parser.enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
      return Optional.of(new ManifestReader(parser).manifest());
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private Manifest manifest() throws IOException {
    parser.nextToken();
    Object root = value();
    if (parser.nextToken() != null
        || !ManifestWriter.PROGRAM.equals(field(root, "program", String.class))) {
      throw new JsonParseException(parser, "no manifest");
    }
    List<Manifest.Entry> files = new ArrayList<>();
    for (Object file : field(root, "files", List.class)) {
      files.add(entry(file));
    }
    return new Manifest(origin(root), files);
  }

  private Manifest.Origin origin(Object root) throws IOException {
    return new Manifest.Origin(
        field(root, "version", String.class),
        input(field(root, "parameters", Map.class)),
        list(root, "prices"),
        list(root, "positions"),
        list(root, "catalogue"));
  }

  private Optional<Manifest.Input> list(Object root, String name) throws IOException {
    boolean isNamed = root instanceof Map<?, ?> fields && fields.containsKey(name);
    return isNamed ? Optional.of(input(field(root, name, Map.class))) : Optional.empty();
  }

  private Manifest.Input input(Object input) throws IOException {
    return new Manifest.Input(
        field(input, "file", String.class), field(input, "sha256", String.class));
  }

  private Manifest.Entry entry(Object file) throws IOException {
    return new Manifest.Entry(
        field(file, "path", String.class),
        field(file, "size", Long.class),
        field(file, "sha256", String.class));
  }

  private <T> T field(Object object, String name, Class<T> type) throws IOException {
    Object value = object instanceof Map<?, ?> fields ? fields.get(name) : null;
    if (!type.isInstance(value)) {
      throw new JsonParseException(parser, "no " + name);
    }
    return type.cast(value);
  }

  /** The value at which the parser stands; what a manifest does not use becomes an empty text. */
  private Object value() throws IOException {
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      return fields();
    }
    if (parser.currentToken() == JsonToken.START_ARRAY) {
      return elements();
    }
    if (parser.currentToken() == JsonToken.VALUE_NUMBER_INT) {
      return parser.getLongValue();
    }
    return parser.currentToken() == JsonToken.VALUE_STRING ? parser.getText() : "";
  }

  private Map<String, Object> fields() throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      parser.nextToken();
      fields.put(name, value());
    }
    return fields;
  }

  private List<Object> elements() throws IOException {
    List<Object> elements = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      elements.add(value());
    }
    return elements;
  }
}
