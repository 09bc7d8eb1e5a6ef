package plycrag.files.geojson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.geojson.GeoJsonWriter;
import plycrag.document.Cell;
import plycrag.document.FeatureMap;
import plycrag.files.json.JsonText;
import plycrag.units.Decimal;

/**
 * Writes a feature map as one GeoJSON FeatureCollection.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc7946">RFC 7946</a>
 */
public final class FeatureMapWriter {
  private static final int DECIMALS = 4;

  private FeatureMapWriter() {}

  /** The text of the file. */
  public static String write(FeatureMap map) {
    String features = JsonText.lines(map.features().stream().map(FeatureMapWriter::feature));
    return JsonText.object(
            json -> {
              json.writeStringField("type", "FeatureCollection");
              json.writeFieldName("features");
              json.writeRawValue(features);
            })
        + "\n";
  }

  private static String feature(FeatureMap.Feature feature) {
    return JsonText.object(
        json -> {
          json.writeStringField("type", "Feature");
          json.writeFieldName("geometry");
          writeGeometry(json, feature.geometry());
          json.writeObjectFieldStart("properties");
          for (Map.Entry<String, Cell> property : feature.properties().entrySet()) {
            json.writeFieldName(property.getKey());
            value(json, property.getValue());
          }
          json.writeEndObject();
        });
  }

  /** As JTS writes it, but for its numbers, which may have an exponent there. */
  private static void writeGeometry(JsonGenerator json, Geometry geometry) throws IOException {
    GeoJsonWriter writer = new GeoJsonWriter(DECIMALS);
    writer.setEncodeCRS(false);
    writer.setForceCCW(true);
    try (JsonParser parser = new JsonFactory().createParser(writer.write(geometry))) {
      while (parser.nextToken() != null) {
        if (parser.currentToken().isNumeric()) {
          json.writeNumber(Decimal.of(parser.getDoubleValue(), DECIMALS));
        } else {
          json.copyCurrentEvent(parser);
        }
      }
    }
  }

  private static void value(JsonGenerator json, Cell cell) throws IOException {
    if (cell instanceof Cell.Quantity) {
      json.writeNumber(cell.text());
    } else {
      json.writeString(cell.text());
    }
  }
}
