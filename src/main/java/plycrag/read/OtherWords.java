package plycrag.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.read.schema.TableSpec;

/** What people write for things that have another name here, which no likeness of letters tells. */
final class OtherWords {
  private static final String ANYWHERE = "";

  /** The first that fits is told, so what is meant in one table stands before what is anywhere. */
  static final List<Entry> ENTRIES =
      List.of(
          words("inserts", "inserts.pitch-across", "spacing", "pitch", "pitch-x", "distance"),
          words("inserts", "inserts.pitch-up", "pitch-y", "row-spacing"),
          words("frame", "frame.stud-spacing", "spacing", "studs", "pitch", "centres", "centers"),
          words("screws", "screws.field-spacing", "spacing", "pitch"),
          words("room", "room.ceiling", "height"),
          words("wall", "facet.vertical-height", "height"),
          words("facet", "facet.vertical-height", "height"),
          words(ANYWHERE, "facet.angle", "overhang", "lean", "tilt", "steepness", "inclination"),
          words(ANYWHERE, "wall.raise", "lift", "off-the-floor", "mat-height"),
          words(ANYWHERE, "wall.unit", "measure", "metric", "imperial", "inches"),
          words(ANYWHERE, "facet", "kick", "kickboard", "panel", "panels", "face", "board"),
          words(ANYWHERE, "inserts", "holds", "tnuts", "t-nuts", "nuts", "grid", "holes"),
          words(ANYWHERE, "inserts.pitch-across", "spacing", "pitch", "hold-spacing"),
          words(ANYWHERE, "inserts.setback", "margin", "edge", "edge-distance", "border"),
          words(ANYWHERE, "inserts.thread", "bolts", "bolt", "m10"),
          words(ANYWHERE, "inserts.when-blocked", "blocked", "on-conflict", "collision"),
          words(ANYWHERE, "frame", "studs", "timber", "lumber", "framing", "joists", "beams"),
          words(ANYWHERE, "frame.section", "stud", "2x4", "2x6", "stud-size", "timber-size"),
          words(ANYWHERE, "sheet", "plywood", "ply", "sheathing"),
          words(ANYWHERE, "cutout", "window", "windows", "opening", "openings", "hole-in-wall"),
          words(ANYWHERE, "obstacle", "radiator", "beam", "pipe"),
          words(ANYWHERE, "mat", "mats", "pads", "crash-pad", "crash-pads", "flooring"),
          words(ANYWHERE, "support", "legs", "posts", "bracing", "stand"),
          words(ANYWHERE, "machine", "cnc", "router", "mill"),
          words(ANYWHERE, "stock.prices", "price-list", "price", "costs", "cost"));

  private OtherWords() {}

  /**
   * Words for a thing.
   *
   * @param table where they mean it; empty for anywhere
   * @param meant the table, or the key with its table, that tells it
   * @param words in small letters
   */
  record Entry(String table, String meant, List<String> words) {
    private boolean fits(String typedIn, String word) {
      boolean isElsewhere = !meant.equals(typedIn);
      return isElsewhere && (table.isEmpty() || table.equals(typedIn)) && words.contains(word);
    }
  }

  /** What a word means in a table; the table's name is empty where it stands in none. */
  static Optional<String> find(String table, String typed) {
    String word = typed.toLowerCase(Locale.ROOT).replace('_', '-');
    return ENTRIES.stream().filter(entry -> entry.fits(table, word)).map(Entry::meant).findFirst();
  }

  /** {@code here that is facet.angle}, or {@code here that is the table [frame]}. */
  static Optional<String> suggestion(String table, String typed) {
    return find(table, typed).map(meant -> "here that is " + shown(meant));
  }

  private static String shown(String meant) {
    return ParameterTable.find(meant)
        .map(TableSpec::header)
        .map(header -> "the table " + header)
        .orElse(meant);
  }

  private static Entry words(String table, String meant, String... words) {
    return new Entry(table, meant, Stream.of(words).toList());
  }
}
