package plycrag.files.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes JSON text in memory. */
public final class JsonText {
  static final JsonFactory FACTORY = new JsonFactory();

  private JsonText() {}

  /** Writes the fields of an object. */
  @FunctionalInterface
  public interface Fields {
    /**
     * Writes them.
     *
     * @throws IOException never in memory; declared because the generator does
     */
    void write(JsonGenerator json) throws IOException;
  }

  /** An object on one line. */
  public static String object(Fields fields) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      fields.write(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** An array of values that are JSON text already, each on a line of its own. */
  public static String lines(Stream<String> values) {
    String lines = values.collect(Collectors.joining(",\n"));
    return lines.isEmpty() ? "[]" : "[\n" + lines + "\n]";
  }
}
