package plycrag.layout.sheets;

import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;

/**
 * A rectangle that is cut from what a sheet leaves over.
 *
 * @param mark its name
 * @param sheet the mark of the sheet whose offcut yields it; empty for a further sheet
 * @param place where it lies on that sheet, mm
 */
public record OffcutPart(String mark, Optional<String> sheet, Envelope place) {
  /** The same as an area. */
  public Polygon area() {
    return Shapes.rectangle(place);
  }

  /** Its longer side, mm. */
  public double length() {
    return Math.max(place.getWidth(), place.getHeight());
  }

  /** Whether it comes from a sheet. */
  public boolean isFrom(LaidSheet one) {
    return sheet.filter(one.mark()::equals).isPresent();
  }
}
