package plycrag.read.schema;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import plycrag.read.schema.ValueShape.Bounded;
import plycrag.read.schema.ValueShape.Flag;
import plycrag.read.schema.ValueShape.Length;
import plycrag.read.schema.ValueShape.Line;
import plycrag.read.schema.ValueShape.Named;
import plycrag.read.schema.ValueShape.Several;
import plycrag.read.schema.ValueShape.Words;
import plycrag.units.LengthText;
import plycrag.units.LengthUnit;

/** Writes shapes as the fields of a JSON Schema of draft 7. */
public final class ShapeWriter {
  /** So many decimals of an inch, outwards, lose no length that is allowed. */
  private static final int DECIMALS = 6;

  private final JsonGenerator json;

  /** Writes to a generator, within an object. */
  public ShapeWriter(JsonGenerator json) {
    this.json = json;
  }

  /** All but what lengths may be, which depends on the unit. */
  public void write(ValueShape shape) throws IOException {
    if (shape instanceof Length length) {
      writeLength(length);
    } else if (shape instanceof Bounded number) {
      json.writeStringField("type", number.isWhole() ? "integer" : "number");
      writeBounds(number.range(), LengthUnit.MM);
    } else if (shape instanceof Words words) {
      writeWords(words);
    } else if (shape instanceof Line line) {
      json.writeStringField("type", "string");
      json.writeNumberField("minLength", 1);
      json.writeNumberField("maxLength", line.longest());
      writePattern(line.expression());
    } else if (shape instanceof Flag) {
      json.writeStringField("type", "boolean");
    } else if (shape instanceof Several several) {
      writeSeveral(several);
    } else if (shape instanceof Named named) {
      writeEither(named.list(), named.names());
    }
  }

  /** What lengths may be in a file of a unit. */
  public void writeRange(ValueShape shape, LengthUnit unit) throws IOException {
    if (shape instanceof Length length) {
      writeBounds(length.range(), unit);
    } else if (shape instanceof Several several) {
      json.writeObjectFieldStart("items");
      writeRange(several.each(), unit);
      json.writeEndObject();
    } else if (shape instanceof Named named) {
      writeRange(named.list(), unit);
    }
  }

  private void writeLength(Length length) throws IOException {
    String sign = length.range().least() < 0 ? "(?:-\\s*)?" : "";
    json.writeArrayFieldStart("type");
    json.writeString("number");
    json.writeString("string");
    json.writeEndArray();
    writePattern("\\s*" + sign + LengthText.expression() + "\\s*" + length.per() + "\\s*");
  }

  private void writePattern(String expression) throws IOException {
    json.writeStringField("pattern", "^(?:" + expression + ")$");
  }

  private void writeWords(Words words) throws IOException {
    json.writeArrayFieldStart("enum");
    for (String word : words.words()) {
      json.writeString(word);
    }
    json.writeEndArray();
  }

  private void writeSeveral(Several several) throws IOException {
    json.writeStringField("type", "array");
    json.writeNumberField("minItems", several.least());
    json.writeNumberField("maxItems", several.most());
    json.writeObjectFieldStart("items");
    write(several.each());
    json.writeEndObject();
  }

  private void writeEither(ValueShape one, ValueShape other) throws IOException {
    json.writeArrayFieldStart("anyOf");
    for (ValueShape shape : List.of(one, other)) {
      json.writeStartObject();
      write(shape);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void writeBounds(Range range, LengthUnit unit) throws IOException {
    json.writeNumberField("minimum", bound(range.least(), unit, RoundingMode.FLOOR));
    json.writeNumberField("maximum", bound(range.greatest(), unit, RoundingMode.CEILING));
  }

  private static BigDecimal bound(double length, LengthUnit unit, RoundingMode outwards) {
    BigDecimal bound =
        BigDecimal.valueOf(length)
            .divide(BigDecimal.valueOf(unit.millimetres()), DECIMALS, outwards)
            .stripTrailingZeros();
    return bound.scale() < 0 ? bound.setScale(0) : bound;
  }
}
