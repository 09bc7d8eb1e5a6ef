package plycrag.solve.guillotine;

import java.util.Optional;

/** Gives the slices of a sheet their places, and what is free to the largest offcuts it can. */
final class Arrangement {
  private final GuillotineTask job;

  Arrangement(GuillotineTask job) {
    this.job = job;
  }

  CutSheet of(Sheets sheets, int sheet) {
    Place whole = new Place(job.trim, job.trim, sheets.width(sheet), sheets.height(sheet));
    return new CutSheet(job.stock.get(sheets.kind(sheet)), filled(sheets.slice(sheet), whole));
  }

  private Part filled(Slice slice, Place room) {
    FreeStrips free = FreeStrips.of(slice, room.width, room.height, job.kerf);
    return strip(slice, room, free, free.rightFirst());
  }

  /** Parts one free strip from a slice, then the other, then the slice itself. */
  private Part strip(Slice slice, Place room, FreeStrips free, boolean upright) {
    int strip = upright ? free.right() : free.top();
    Place rest = room.near(upright, (upright ? room.width : room.height) - strip);
    boolean second = upright != free.rightFirst();
    Part near = second ? exact(slice, rest) : strip(slice, rest, free, !upright);
    if (strip == 0) {
      return near;
    }
    return new Cut(upright, end(rest, upright), near, offcut(room.far(upright, strip)));
  }

  private Part exact(Slice slice, Place room) {
    if (slice.isItem()) {
      double x = Sizes.millimetres(room.x);
      return new CutItem(job.items.get(slice.item), x, Sizes.millimetres(room.y), slice.turned);
    }
    boolean upright = slice.across;
    Place near = room.near(upright, upright ? slice.near.width : slice.near.height);
    Place far = room.far(upright, upright ? slice.far.width : slice.far.height);
    return new Cut(
        upright, end(near, upright), filled(slice.near, near), Optional.of(filled(slice.far, far)));
  }

  private double end(Place place, boolean upright) {
    int end = upright ? place.x + place.width : place.y + place.height;
    return Sizes.millimetres(end - job.kerf);
  }

  private Optional<Part> offcut(Place place) {
    int width = place.width - job.kerf;
    int height = place.height - job.kerf;
    if (width <= 0 || height <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Offcut(
            Sizes.millimetres(place.x),
            Sizes.millimetres(place.y),
            Sizes.millimetres(width),
            Sizes.millimetres(height)));
  }

  /** A rectangle of a sheet, its sizes with one kerf more than they measure, µm. */
  private record Place(int x, int y, int width, int height) {
    Place near(boolean upright, int size) {
      return upright ? new Place(x, y, size, height) : new Place(x, y, width, size);
    }

    Place far(boolean upright, int size) {
      return upright
          ? new Place(x + width - size, y, size, height)
          : new Place(x, y + height - size, width, size);
    }
  }
}
