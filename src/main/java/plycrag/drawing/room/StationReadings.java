package plycrag.drawing.room;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Where a tape is read to set the timber of a station. */
final class StationReadings {
  private StationReadings() {}

  /** Heights above the floor, mm. */
  static void addHeights(StationTimber timber, List<Double> heights) {
    Envelope box = timber.profile().getEnvelopeInternal();
    switch (timber.role()) {
      case BRACE, KNEE, HEEL -> corners(timber).forEach(corner -> heights.add(corner.y));
      case POST, HANGER -> heights.addAll(List.of(box.getMinY(), box.getMaxY()));
      default -> heights.add(box.getMinY());
    }
  }

  /** Ways out from a datum, mm. */
  static void addWays(StationTimber timber, double datum, List<Double> ways) {
    Envelope box = timber.profile().getEnvelopeInternal();
    switch (timber.role()) {
      case BRACE, KNEE, HEEL -> corners(timber).forEach(corner -> ways.add(corner.x - datum));
      case RAIL -> ways.addAll(List.of(box.getMinX() - datum, box.getMaxX() - datum));
      default -> ways.add(box.getMinX() - datum);
    }
  }

  private static Stream<Coordinate> corners(StationTimber timber) {
    return Stream.of(timber.profile().getExteriorRing().getCoordinates()).skip(1);
  }
}
