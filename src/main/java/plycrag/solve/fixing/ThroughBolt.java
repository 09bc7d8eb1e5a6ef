package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.catalog.Bolt;
import plycrag.catalog.BoltCatalog;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Surface;
import plycrag.geometry.Vector3;

/**
 * A bolt with what bears on the timber. Head and nut are as ISO 4014 and ISO 4032 have those of
 * M10, in diameters: 17.77 across corners, 6.4 and 8.4 high; a washer as EN 1995-1-1, 10.4.3, asks
 * for it, from memory: 3 across and 0.3 thick.
 *
 * @param line through the timber
 * @param diameter of the thread, mm
 * @param length under the head, mm
 * @param hasNut whether a washer and a nut are at its end; else it goes into the building there
 */
public record ThroughBolt(ThroughLine line, double diameter, double length, boolean hasNut) {
  private static final double CORNERS = 1.777;
  private static final double HEAD = 0.64;
  private static final double NUT = 0.84;
  private static final double WASHER = 0.3;
  private static final double BROAD = 3;

  /** Beyond the timber, in diameters: two washers, a nut and two threads (common practice). */
  private static final double BEYOND = 2;

  /** The shortest of a diameter that is sold and long enough; as long as it must be if none is. */
  public static ThroughBolt of(ThroughLine line, double diameter) {
    double least = leastLength(line.grip(), diameter);
    Optional<Bolt> sold = BoltCatalog.shortest(diameter, least);
    return new ThroughBolt(line, diameter, sold.map(Bolt::length).orElse(least), true);
  }

  /** How long one must be under the head for so much timber, mm. */
  public static double leastLength(double grip, double diameter) {
    return grip + BEYOND * diameter;
  }

  /** One that ends where the timber does, and goes on into the building. */
  public static ThroughBolt intoBuilding(ThroughLine line, double diameter) {
    return new ThroughBolt(line, diameter, line.grip() + WASHER * diameter, false);
  }

  /** How far head and washer stand out, mm. */
  public double headHeight() {
    return (HEAD + WASHER) * diameter;
  }

  /** Its shank, from under the head. */
  public Rod shank() {
    Vector3 underHead = line.from().minus(line.way().times(WASHER * diameter));
    return new Rod(underHead, line.way(), length, diameter);
  }

  /** A stretch along it that is as broad. */
  private record Part(double from, double to, double broad) {}

  private List<Part> parts() {
    double washer = WASHER * diameter;
    double beyond = washer + line.grip();
    List<Part> parts = new ArrayList<>();
    parts.add(new Part(-HEAD * diameter, 0, CORNERS * diameter));
    parts.add(new Part(0, washer, BROAD * diameter));
    parts.add(new Part(washer, beyond, diameter));
    if (hasNut) {
      double outer = beyond + washer;
      double end = outer + NUT * diameter;
      parts.add(new Part(beyond, outer, BROAD * diameter));
      parts.add(new Part(outer, end, CORNERS * diameter));
      parts.add(new Part(end, Math.max(end, length), diameter));
    }
    return parts;
  }

  /** Head, washer, shank, washer, nut and end, one after the other. */
  public List<Solid> bodies() {
    Rod shank = shank();
    return parts().stream()
        .map(
            part ->
                new Solid(
                    shank.ring(part.from(), part.broad()), shank.ring(part.to(), part.broad())))
        .toList();
  }

  /** All of it as one. */
  public Surface surface() {
    List<List<Vector3>> rings = new ArrayList<>();
    for (Solid body : bodies()) {
      rings.add(body.near());
      rings.add(body.far());
    }
    return Surface.through(rings);
  }
}
