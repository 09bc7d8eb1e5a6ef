package plycrag.solve.guillotine;

/**
 * A node of a slicing tree: an item, or two slices beside or above each other. It knows the least
 * room it needs, one kerf included each way, and no place; so a cut between two slices can still
 * shift while there is room. Never changes; sheets share slices with their earlier states.
 */
final class Slice {
  final int width;
  final int height;

  /** Of the items in it, kerfs included, µm². */
  final long area;

  /** The item's number, -1 in a pair. */
  final int item;

  final boolean turned;

  /** Of a pair: far lies to the right of near; otherwise above it. */
  final boolean across;

  /** Null in an item. */
  final Slice near;

  /** Null in an item. */
  final Slice far;

  /** An item. */
  Slice(GuillotineTask job, int item, boolean turned) {
    this.item = item;
    this.turned = turned;
    width = job.width(item, turned);
    height = job.height(item, turned);
    area = job.area(item);
    across = false;
    near = null;
    far = null;
  }

  /** A pair. */
  Slice(Slice near, Slice far, boolean across) {
    this.near = near;
    this.far = far;
    this.across = across;
    width = across ? near.width + far.width : Math.max(near.width, far.width);
    height = across ? Math.max(near.height, far.height) : near.height + far.height;
    area = near.area + far.area;
    item = -1;
    turned = false;
  }

  boolean isItem() {
    return near == null;
  }

  /** This slice with one part of it exchanged for another; itself if the part is not in it. */
  Slice exchange(Slice part, Slice other) {
    if (this == part) {
      return other;
    }
    if (isItem()) {
      return this;
    }
    Slice changedNear = near.exchange(part, other);
    Slice changedFar = changedNear == near ? far.exchange(part, other) : far;
    boolean same = changedNear == near && changedFar == far;
    return same ? this : new Slice(changedNear, changedFar, across);
  }
}
