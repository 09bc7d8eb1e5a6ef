package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.FacetLayout;
import plycrag.layout.Member;
import plycrag.layout.Seam;

/** Finds room for words among what is drawn. */
final class FreeSpot {
  private static final int STEPS = 60;

  private final SpatialIndex<Envelope> taken;

  /** Room beside boxes that are taken. */
  FreeSpot(List<Envelope> taken) {
    this.taken = new SpatialIndex<>(taken, box -> box);
  }

  /**
   * Room on a facet: clear of holes, screws, seams and the sides of timber.
   *
   * @param rings what else is taken, in (u, v)
   */
  static FreeSpot on(FacetLayout layout, List<Envelope> rings) {
    List<Envelope> boxes = new ArrayList<>(rings);
    layout.inserts().forEach(insert -> boxes.add(insert.centre().getEnvelopeInternal()));
    layout.screws().forEach(screw -> boxes.add(screw.centre().getEnvelopeInternal()));
    for (Member member : layout.members()) {
      addSides(member.box(), boxes);
    }
    for (Seam seam : layout.seams()) {
      addSides(strip(seam, layout), boxes);
    }
    return new FreeSpot(boxes);
  }

  private static void addSides(Envelope box, List<Envelope> boxes) {
    boxes.add(new Envelope(box.getMinX(), box.getMinX(), box.getMinY(), box.getMaxY()));
    boxes.add(new Envelope(box.getMaxX(), box.getMaxX(), box.getMinY(), box.getMaxY()));
    boxes.add(new Envelope(box.getMinX(), box.getMaxX(), box.getMinY(), box.getMinY()));
    boxes.add(new Envelope(box.getMinX(), box.getMaxX(), box.getMaxY(), box.getMaxY()));
  }

  private static Envelope strip(Seam seam, FacetLayout layout) {
    double low = seam.middle() - seam.gap() / 2;
    double high = seam.middle() + seam.gap() / 2;
    return switch (seam.axis()) {
      case UP -> new Envelope(low, high, 0, layout.facet().length());
      case ACROSS -> new Envelope(0, layout.facet().width(), low, high);
    };
  }

  /**
   * The middle of the free place nearest to the middle of an area.
   *
   * @param area where to look
   * @param width of what is to be placed, mm
   * @param height likewise
   */
  Optional<Xy> in(Envelope area, double width, double height) {
    Envelope room = new Envelope(area);
    room.expandBy(-width / 2, -height / 2);
    Envelope best = null;
    for (int at = 0; !room.isNull() && at < (STEPS + 1) * (STEPS + 1); at++) {
      int column = at / (STEPS + 1);
      int row = at % (STEPS + 1);
      double u = room.getMinX() + room.getWidth() * column / STEPS;
      double v = room.getMinY() + room.getHeight() * row / STEPS;
      Envelope box = new Envelope(u - width / 2, u + width / 2, v - height / 2, v + height / 2);
      boolean nearer = best == null || toMiddle(box, area) < toMiddle(best, area);
      if (nearer && isFree(box)) {
        best = box;
      }
    }
    return Optional.ofNullable(best).map(box -> new Xy(box.centre().x, box.centre().y));
  }

  /** Whether nothing is drawn in a box. */
  boolean isFree(Envelope box) {
    return taken.near(box, 0).isEmpty();
  }

  private static double toMiddle(Envelope box, Envelope area) {
    return box.centre().distance(area.centre());
  }
}
