package plycrag.files.lint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads DXF: pairs of group code and value, in records that begin with code 0. Shares nothing with
 * the writer and asks nothing of the version.
 *
 * @param records in the order of the file; sections' and tables' marks among them
 */
public record DxfTags(List<Entry> records) {
  /** DXF reference, "Group codes in numerical order": a remark that readers pass over. */
  private static final int COMMENT = 999;

  /** A group code and its value. */
  public record Tag(int code, String value) {}

  /** A place, mm. */
  public record Point(double x, double y) {}

  /** A circle. */
  public record Circle(String layer, double x, double y, double radius) {}

  /** A polyline. */
  public record Polyline(String layer, boolean closed, List<Point> points) {}

  /** A straight line. */
  public record Line(String layer, Point from, Point to) {}

  /**
   * A record.
   *
   * @param section the section it stands in
   * @param type the value of code 0
   * @param tags the others
   */
  public record Entry(String section, String type, List<Tag> tags) {
    /** The first value of a code. */
    public Optional<String> text(int code) {
      return tags.stream().filter(tag -> tag.code() == code).map(Tag::value).findFirst();
    }

    /** The first number of a code, or not a number. */
    public double number(int code) {
      return text(code).map(Double::parseDouble).orElse(Double.NaN);
    }

    /** The place at a code. */
    public Point point(int code) {
      return new Point(number(code), number(code + 10));
    }

    /** The layer. */
    public String layer() {
      return text(8).orElse("");
    }

    /** All numbers of a code, in order. */
    public List<Double> numbers(int code) {
      return tags.stream()
          .filter(tag -> tag.code() == code)
          .map(tag -> Double.valueOf(tag.value()))
          .toList();
    }
  }

  /**
   * Reads a file's text.
   *
   * @throws IllegalArgumentException if it is not made of pairs of a code and a value, or begins
   *     otherwise than with a record
   */
  public static DxfTags read(String text) {
    List<Entry> records = new ArrayList<>();
    String section = "";
    for (Tag tag : pairs(text)) {
      if (tag.code() == 0) {
        records.add(new Entry(section, tag.value(), new ArrayList<>()));
        section = tag.value().equals("ENDSEC") ? "" : section;
      } else if (records.isEmpty()) {
        throw new IllegalArgumentException("begins with code " + tag.code());
      } else {
        Entry last = records.get(records.size() - 1);
        boolean names = last.type().equals("SECTION") && tag.code() == 2;
        section = names ? tag.value() : section;
        last.tags().add(tag);
      }
    }
    return new DxfTags(records);
  }

  private static List<Tag> pairs(String text) {
    String[] lines = text.split("\n", -1);
    if (lines.length % 2 != 1 || !lines[lines.length - 1].isEmpty()) {
      throw new IllegalArgumentException("not pairs of whole lines");
    }
    List<Tag> tags = new ArrayList<>();
    for (int i = 0; i + 1 < lines.length; i += 2) {
      int code = Integer.parseInt(lines[i].strip());
      if (code != COMMENT) {
        tags.add(new Tag(code, lines[i + 1]));
      }
    }
    return tags;
  }

  /** The records of the ENTITIES section. */
  public List<Entry> entities() {
    return records.stream()
        .filter(entry -> entry.section().equals("ENTITIES") && !entry.type().equals("ENDSEC"))
        .toList();
  }

  /** Entities of a type. */
  public List<Entry> entities(String type) {
    return entities().stream().filter(entity -> entity.type().equals(type)).toList();
  }

  /** Records of a table, such as LAYER. */
  public List<Entry> table(String name) {
    return records.stream()
        .filter(entry -> entry.section().equals("TABLES") && entry.type().equals(name))
        .toList();
  }

  /** What follows a header variable's name. */
  public List<Tag> header(String variable) {
    List<Tag> tags =
        records.stream()
            .filter(entry -> entry.text(2).orElse("").equals("HEADER"))
            .flatMap(entry -> entry.tags().stream())
            .toList();
    int start = tags.indexOf(new Tag(9, variable)) + 1;
    List<Tag> values = new ArrayList<>();
    for (int i = start; start > 0 && i < tags.size() && tags.get(i).code() != 9; i++) {
      values.add(tags.get(i));
    }
    return values;
  }

  /** All circles. */
  public List<Circle> circles() {
    return entities("CIRCLE").stream()
        .map(
            entity ->
                new Circle(entity.layer(), entity.number(10), entity.number(20), entity.number(40)))
        .toList();
  }

  /** All lines. */
  public List<Line> lines() {
    return entities("LINE").stream()
        .map(entity -> new Line(entity.layer(), entity.point(10), entity.point(11)))
        .toList();
  }

  /** All polylines of either kind, open or closed. */
  public List<Polyline> polylines() {
    List<Polyline> found = new ArrayList<>();
    for (Entry entity : entities()) {
      if (entity.type().equals("LWPOLYLINE")) {
        found.add(polyline(entity, points(entity)));
      } else if (entity.type().equals("POLYLINE")) {
        found.add(polyline(entity, new ArrayList<>()));
      } else if (entity.type().equals("VERTEX")) {
        found.get(found.size() - 1).points().add(entity.point(10));
      }
    }
    return found;
  }

  private static Polyline polyline(Entry entity, List<Point> points) {
    int flags = Integer.parseInt(entity.text(70).orElse("0"));
    return new Polyline(entity.layer(), flags % 2 == 1, points);
  }

  private static List<Point> points(Entry entity) {
    List<Double> xs = entity.numbers(10);
    List<Double> ys = entity.numbers(20);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xs.size(); i++) {
      points.add(new Point(xs.get(i), ys.get(i)));
    }
    return points;
  }
}
