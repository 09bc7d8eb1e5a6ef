package plycrag.files.geojson;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import plycrag.document.Cell;
import plycrag.document.FeatureMap;

class FeatureMapWriterTest {

  @Test
  void oneFeatureStandsOnALine() throws ParseException {
    Map<String, Cell> properties = new LinkedHashMap<>();
    properties.put("facet", Cell.of("main"));
    properties.put("mark", Cell.of("main 56/235"));
    properties.put("kind", Cell.of("insert"));
    properties.put("hole_mm", Cell.mm(12));
    FeatureMap map =
        new FeatureMap(
            List.of(
                new FeatureMap.Feature(wkt("POINT(562.5 2350)"), properties),
                new FeatureMap.Feature(wkt("POINT(1 2)"), Map.of())));

    assertThat(FeatureMapWriter.write(map))
        .isEqualTo(
            """
            {"type":"FeatureCollection","features":[
            {"type":"Feature","geometry":{"type":"Point","coordinates":[562.5,2350]},\
            "properties":{"facet":"main","mark":"main 56/235","kind":"insert","hole_mm":12}},
            {"type":"Feature","geometry":{"type":"Point","coordinates":[1,2]},"properties":{}}
            ]}
            """);
  }

  @Test
  void aMapWithoutFeaturesIsACollection() {
    assertThat(FeatureMapWriter.write(new FeatureMap(List.of())))
        .isEqualTo("{\"type\":\"FeatureCollection\",\"features\":[]}\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "POINT (532.5 2400)",
        "LINESTRING (0 0, 1.25 3.5, -4 7)",
        "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0), (1 1, 1 2, 2 2, 2 1, 1 1))",
        "MULTIPOINT ((1 2), (3 4))",
        "MULTILINESTRING ((0 0, 1 1), (2 2, 3 3))",
        "MULTIPOLYGON (((0 0, 1 0, 1 1, 0 0)), ((5 5, 6 5, 6 6, 5 5)))",
        "GEOMETRYCOLLECTION (POINT (1 2), POLYGON ((0 0, 1 0, 1 1, 0 0)))"
      })
  void anotherReaderFindsTheSameGeometry(String text) throws ParseException {
    assertThat(read(write(wkt(text))).toText()).isEqualTo(text);
  }

  /** RFC 7946, section 3.1.6: shells counter-clockwise, holes clockwise. */
  @Test
  void ringsAreTurnedByTheRightHandRule() throws ParseException {
    Geometry turned = wkt("MULTIPOLYGON(((0 0, 0 9, 9 9, 9 0, 0 0), (1 1, 2 1, 2 2, 1 2, 1 1)))");

    Polygon polygon = (Polygon) read(write(turned)).getGeometryN(0);

    assertThat(Orientation.isCCW(polygon.getExteriorRing().getCoordinates())).isTrue();
    assertThat(Orientation.isCCW(polygon.getInteriorRingN(0).getCoordinates())).isFalse();
    assertThat(polygon.equalsTopo(turned)).isTrue();
  }

  /** The writer of jts-io-common prints 4.0E-4, 1.0E7 and 0.0 here. */
  @Test
  void numbersHaveNoExponentNoMinusZeroAndFourDecimals() throws ParseException {
    String text =
        write(wkt("LINESTRING(0.00001 0.0004, -0.00001 10000000, 532.123456 -12345678.5)"));

    assertThat(text).contains("[[0,0.0004],[0,10000000],[532.1235,-12345678.5]]");
  }

  @Test
  void wordsStayWords() throws IOException, ParseException {
    String hostile = "\"}],\\ </script> \u0001 \u2028 é 樹";
    FeatureMap map =
        new FeatureMap(
            List.of(new FeatureMap.Feature(wkt("POINT(1 2)"), Map.of("facet", Cell.of(hostile)))));

    try (JsonParser parser = new JsonFactory().createParser(FeatureMapWriter.write(map))) {
      while (!"facet".equals(parser.currentName())) {
        parser.nextToken();
      }
      assertThat(parser.nextTextValue()).isEqualTo(hostile);
    }
  }

  private static Geometry wkt(String text) throws ParseException {
    return new WKTReader().read(text);
  }

  private static String write(Geometry geometry) {
    return FeatureMapWriter.write(
        new FeatureMap(List.of(new FeatureMap.Feature(geometry, Map.of()))));
  }

  private static Geometry read(String text) throws ParseException {
    return new GeoJsonReader().read(text).getGeometryN(0);
  }
}
