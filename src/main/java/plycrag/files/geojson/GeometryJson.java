package plycrag.files.geojson;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.units.Decimal;

/**
 * Writes geometries into a JSON text.
 *
 * @param json where they go
 */
record GeometryJson(JsonGenerator json) {
  private static final int DECIMALS = 4;

  /** Writes a geometry object, or {@code null} for an empty geometry. */
  void write(Geometry geometry) throws IOException {
    if (geometry.isEmpty()) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    json.writeStringField("type", type(geometry));
    content(geometry);
    json.writeEndObject();
  }

  private static String type(Geometry geometry) {
    return geometry instanceof LinearRing
        ? Geometry.TYPENAME_LINESTRING
        : geometry.getGeometryType();
  }

  private void content(Geometry geometry) throws IOException {
    if (geometry.getGeometryType().equals(Geometry.TYPENAME_GEOMETRYCOLLECTION)) {
      json.writeArrayFieldStart("geometries");
      for (Geometry part : parts(geometry)) {
        write(part);
      }
      json.writeEndArray();
    } else {
      json.writeFieldName("coordinates");
      coordinates(geometry);
    }
  }

  private static List<Geometry> parts(Geometry geometry) {
    return IntStream.range(0, geometry.getNumGeometries())
        .mapToObj(geometry::getGeometryN)
        .filter(part -> !part.isEmpty())
        .toList();
  }

  private void coordinates(Geometry geometry) throws IOException {
    if (geometry instanceof GeometryCollection) {
      json.writeStartArray();
      for (Geometry part : parts(geometry)) {
        coordinates(part);
      }
      json.writeEndArray();
    } else if (geometry instanceof Polygon polygon) {
      rings(polygon);
    } else if (geometry instanceof Point point) {
      position(point.getCoordinate());
    } else {
      positions(geometry);
    }
  }

  private void rings(Polygon polygon) throws IOException {
    json.writeStartArray();
    positions(turned(polygon.getExteriorRing(), true));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      positions(turned(polygon.getInteriorRingN(i), false));
    }
    json.writeEndArray();
  }

  private static LinearRing turned(LinearRing ring, boolean counterClockwise) {
    return Orientation.isCCW(ring.getCoordinateSequence()) == counterClockwise
        ? ring
        : ring.reverse();
  }

  private void positions(Geometry line) throws IOException {
    json.writeStartArray();
    for (Coordinate coordinate : line.getCoordinates()) {
      position(coordinate);
    }
    json.writeEndArray();
  }

  private void position(Coordinate coordinate) throws IOException {
    json.writeStartArray();
    json.writeNumber(Decimal.of(coordinate.getX(), DECIMALS));
    json.writeNumber(Decimal.of(coordinate.getY(), DECIMALS));
    json.writeEndArray();
  }
}
