package plycrag.glb;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Holds the inserts of a model against those of a map in (u, v): as far apart, u to the right of
 * whoever stands before the facet, v up, and the sheets behind.
 */
public final class Handedness {
  /** Rounded to a micrometre, ways to a millionth. */
  private static final double CLOSE = 2e-5;

  private final List<GlbFile.Node> nodes;
  private final Map<String, List<Double>> places = new LinkedHashMap<>();
  private final List<String> faults = new ArrayList<>();

  private Handedness(List<GlbFile.Node> nodes, String geojson) {
    this.nodes = nodes;
    Map<String, Object> map = JsonTree.of(geojson.getBytes(StandardCharsets.UTF_8));
    for (Object one : JsonTree.array(map, "features")) {
      Map<String, Object> feature = JsonTree.object(one);
      Map<String, Object> properties = JsonTree.object(feature.get("properties"));
      if (properties.get("kind").equals("insert")) {
        Map<String, Object> geometry = JsonTree.object(feature.get("geometry"));
        places.put(
            (String) properties.get("mark"),
            JsonTree.array(geometry, "coordinates").stream()
                .map(number -> (Double) number / 1000)
                .toList());
      }
    }
  }

  /** What is wrong; nothing if both tell of the same wall. */
  public static List<String> faults(List<GlbFile.Node> nodes, String geojson) {
    Handedness check = new Handedness(nodes, geojson);
    List<GlbFile.Node> inserts =
        nodes.stream().filter(node -> node.kind().equals("insert")).toList();
    if (!inserts.stream()
        .map(GlbFile.Node::name)
        .toList()
        .equals(List.copyOf(check.places.keySet()))) {
      check.faults.add("not the same inserts");
      return check.faults;
    }
    Map<String, GlbFile.Node> first = new LinkedHashMap<>();
    inserts.forEach(insert -> first.putIfAbsent(insert.facet(), insert));
    inserts.forEach(insert -> check.against(first.get(insert.facet()), insert));
    first.values().forEach(check::faces);
    return check.faults;
  }

  private void against(GlbFile.Node first, GlbFile.Node insert) {
    Space way = insert.at().minus(first.at());
    double u = places.get(insert.name()).get(0) - places.get(first.name()).get(0);
    double v = places.get(insert.name()).get(1) - places.get(first.name()).get(1);
    Space right = insert.turned(new Space(1, 0, 0));
    Space up = insert.turned(new Space(0, 1, 0));
    if (Math.abs(way.dot(right) - u) > CLOSE
        || Math.abs(way.dot(up) - v) > CLOSE
        || Math.abs(way.dot(insert.turned(new Space(0, 0, 1)))) > CLOSE) {
      faults.add(insert.name() + " lies elsewhere");
    }
  }

  /** As one stands before it, looking at it, head up. */
  private void faces(GlbFile.Node insert) {
    Space out = insert.turned(new Space(0, 0, 1));
    Space right = out.times(-1).cross(new Space(0, 1, 0));
    if (insert.turned(new Space(1, 0, 0)).dot(right) <= 0
        || insert.turned(new Space(0, 1, 0)).y() <= 0) {
      faults.add(insert.facet() + " does not run to the right and up");
    }
    boolean behind =
        nodes.stream()
            .filter(node -> node.kind().equals("piece") && node.facet().equals(insert.facet()))
            .flatMap(node -> node.mesh().corners())
            .allMatch(corner -> corner.minus(insert.at()).dot(out) < CLOSE);
    if (!behind) {
      faults.add(insert.facet() + " faces its sheets");
    }
  }
}
