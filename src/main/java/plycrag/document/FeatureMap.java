package plycrag.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;

/**
 * Geometries with what they are, for other programs.
 *
 * @param features in a stable order
 */
public record FeatureMap(List<Feature> features) {
  /** Copies the list. */
  public FeatureMap {
    features = List.copyOf(features);
  }

  /**
   * A geometry and its properties.
   *
   * @param geometry in (u, v), mm
   * @param properties words and numbers by name, in order
   */
  public record Feature(Geometry geometry, Map<String, Cell> properties) {
    /** Copies the properties in their order. */
    public Feature {
      properties = Collections.unmodifiableMap(new LinkedHashMap<>(properties));
    }
  }
}
