package plycrag.files.geojson;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import plycrag.document.Cell;
import plycrag.document.FeatureMap;
import plycrag.files.json.JsonText;

/**
 * Writes a feature map as one GeoJSON FeatureCollection.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc7946">RFC 7946</a>
 */
public final class FeatureMapWriter {
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
          new GeometryJson(json).write(feature.geometry());
          json.writeObjectFieldStart("properties");
          for (Map.Entry<String, Cell> property : feature.properties().entrySet()) {
            json.writeFieldName(property.getKey());
            value(json, property.getValue());
          }
          json.writeEndObject();
        });
  }

  private static void value(JsonGenerator json, Cell cell) throws IOException {
    if (cell instanceof Cell.Quantity) {
      json.writeNumber(cell.text());
    } else {
      json.writeString(cell.text());
    }
  }
}
