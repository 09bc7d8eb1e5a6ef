package plycrag.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import plycrag.read.schema.Needed;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.ShapeWriter;
import plycrag.read.schema.TableSpec;
import plycrag.units.LengthUnit;

/**
 * What a parameter file may say, as a JSON Schema of draft 7, by which editors complete and check.
 * What bare numbers may be depends on the file's unit, so the ranges of lengths stand apart from
 * the rest, once for each unit.
 */
public final class ParameterSchema {
  private static final String DRAFT = "http://json-schema.org/draft-07/schema#";

  private final JsonGenerator json;
  private final ShapeWriter shapes;

  private ParameterSchema(JsonGenerator json) {
    this.json = json;
    this.shapes = new ShapeWriter(json);
  }

  /** The text of the file; lines end with LF. */
  public static String json() {
    StringWriter text = new StringWriter();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
      new ParameterSchema(json).write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text + "\n";
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", DRAFT);
    json.writeStringField("title", "A wall, as Plycrag reads it");
    json.writeStringField("type", "object");
    json.writeObjectFieldStart("properties");
    for (TableSpec table : ParameterTable.TABLES) {
      writeTable(table);
    }
    json.writeEndObject();
    writeNames("required", List.of(FacetTable.TABLE.name()));
    json.writeBooleanField("additionalProperties", false);
    writeRangesByUnit();
    json.writeEndObject();
  }

  private void writeTable(TableSpec table) throws IOException {
    json.writeObjectFieldStart(table.name());
    json.writeStringField("description", table.meaning());
    if (table.isList()) {
      json.writeStringField("type", "array");
      json.writeNumberField("minItems", 1);
      json.writeObjectFieldStart("items");
      writeKeys(table);
      json.writeEndObject();
    } else {
      writeKeys(table);
    }
    json.writeEndObject();
  }

  private void writeKeys(TableSpec table) throws IOException {
    json.writeStringField("type", "object");
    json.writeObjectFieldStart("properties");
    for (Parameter<?> parameter : table.parameters()) {
      json.writeObjectFieldStart(parameter.key());
      json.writeStringField("description", description(parameter));
      shapes.write(parameter.kind().shape());
      json.writeEndObject();
    }
    for (TableSpec inner : table.inner()) {
      writeTable(inner);
    }
    json.writeEndObject();
    List<String> needed =
        table.parameters().stream()
            .filter(parameter -> parameter.standard().equals(Needed.NONE))
            .map(Parameter::key)
            .toList();
    if (!needed.isEmpty()) {
      writeNames("required", needed);
    }
    json.writeBooleanField("additionalProperties", false);
  }

  private static String description(Parameter<?> parameter) {
    return parameter.meaning()
        + " Allowed: "
        + parameter.kind().allowed(List.of(LengthUnit.values()))
        + ". Default: "
        + parameter.standard().words()
        + ".";
  }

  private void writeRangesByUnit() throws IOException {
    json.writeObjectFieldStart("if");
    writeNames("required", List.of(WallTable.TABLE.name()));
    json.writeObjectFieldStart("properties");
    json.writeObjectFieldStart(WallTable.TABLE.name());
    writeNames("required", List.of(WallTable.UNIT.key()));
    json.writeObjectFieldStart("properties");
    json.writeObjectFieldStart(WallTable.UNIT.key());
    json.writeStringField("const", LengthUnit.IN.word());
    for (int open = 0; open < 5; open++) {
      json.writeEndObject();
    }
    writeRanges("then", LengthUnit.IN);
    writeRanges("else", LengthUnit.MM);
  }

  private void writeRanges(String branch, LengthUnit unit) throws IOException {
    json.writeObjectFieldStart(branch);
    json.writeObjectFieldStart("properties");
    for (TableSpec table : ParameterTable.TABLES) {
      if (table.parameters().stream().anyMatch(ParameterSchema::hasLengths)) {
        json.writeObjectFieldStart(table.name());
        if (table.isList()) {
          json.writeObjectFieldStart("items");
        }
        writeRanges(table, unit);
        if (table.isList()) {
          json.writeEndObject();
        }
        json.writeEndObject();
      }
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void writeRanges(TableSpec table, LengthUnit unit) throws IOException {
    json.writeObjectFieldStart("properties");
    for (Parameter<?> parameter : table.parameters()) {
      if (hasLengths(parameter)) {
        json.writeObjectFieldStart(parameter.key());
        shapes.writeRange(parameter.kind().shape(), unit);
        json.writeEndObject();
      }
    }
    for (TableSpec inner : table.inner()) {
      json.writeObjectFieldStart(inner.name());
      writeRanges(inner, unit);
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private static boolean hasLengths(Parameter<?> parameter) {
    return parameter.kind().shape().hasLengths();
  }

  private void writeNames(String field, List<String> names) throws IOException {
    json.writeArrayFieldStart(field);
    for (String name : names) {
      json.writeString(name);
    }
    json.writeEndArray();
  }
}
