package plycrag.layout.sheets;

import java.util.List;

/**
 * A strip of sheet over the gap that square-cut sheets leave at a fold.
 *
 * @param mark {@code CS1}, {@code CS2}, …
 * @param facet the facet whose side it covers, by name
 * @param isCorner whether it covers that facet's right side, or else its upper one
 * @param gap what it covers, mm
 * @param width of the strip, mm
 * @param parts that it is joined from, end to end; one where an offcut is long enough
 */
public record CoverStrip(
    String mark, String facet, boolean isCorner, double gap, double width, List<OffcutPart> parts) {
  /** Copies the parts. */
  public CoverStrip {
    parts = List.copyOf(parts);
  }

  /** Of all parts, mm. */
  public double length() {
    return parts.stream().mapToDouble(OffcutPart::length).sum();
  }

  /** What it covers, in words: {@code above facet main}. */
  public String over() {
    return (isCorner ? "to the right of facet " : "above facet ") + facet;
  }

  /** Which sheets yield it, in words: {@code an offcut of S2}. */
  public String from() {
    String joined = parts.size() > 1 ? "joined from " + parts.size() + " lengths, " : "";
    List<String> sheets = parts.stream().flatMap(part -> part.sheet().stream()).distinct().toList();
    String further =
        parts.stream().anyMatch(part -> part.sheet().isEmpty()) ? "a further sheet" : "";
    String offcuts = sheets.isEmpty() ? "" : "an offcut of " + String.join(" and ", sheets);
    return joined + offcuts + (sheets.isEmpty() || further.isEmpty() ? "" : " and ") + further;
  }
}
