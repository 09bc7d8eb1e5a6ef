package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * Letters of single strokes, made for this project: capitals, digits, space and {@code . - _} on a
 * grid four wide and six high. A stroke is told by its corners, each two digits, across and up.
 */
final class StrokeFont {
  private static final double GRID = 6;

  private static final Map<Character, String> LETTERS =
      Map.ofEntries(
          Map.entry('A', "00-04-26-44-40 02-42"),
          Map.entry('B', "00-06-36-45-44-33-03 33-42-41-30-00"),
          Map.entry('C', "45-36-16-05-01-10-30-41"),
          Map.entry('D', "00-06-26-44-42-20-00"),
          Map.entry('E', "46-06-00-40 03-33"),
          Map.entry('F', "46-06-00 03-33"),
          Map.entry('G', "45-36-16-05-01-10-30-41-43-23"),
          Map.entry('H', "00-06 40-46 03-43"),
          Map.entry('I', "16-36 26-20 10-30"),
          Map.entry('J', "46-41-30-10-01"),
          Map.entry('K', "00-06 46-03-40"),
          Map.entry('L', "06-00-40"),
          Map.entry('M', "00-06-23-46-40"),
          Map.entry('N', "00-06-40-46"),
          Map.entry('O', "10-01-05-16-36-45-41-30-10"),
          Map.entry('P', "00-06-36-45-44-33-03"),
          Map.entry('Q', "10-01-05-16-36-45-41-30-10 22-40"),
          Map.entry('R', "00-06-36-45-44-33-03 23-40"),
          Map.entry('S', "45-36-16-05-04-13-33-42-41-30-10-01"),
          Map.entry('T', "06-46 26-20"),
          Map.entry('U', "06-01-10-30-41-46"),
          Map.entry('V', "06-20-46"),
          Map.entry('W', "06-10-23-30-46"),
          Map.entry('X', "00-46 06-40"),
          Map.entry('Y', "06-23-46 23-20"),
          Map.entry('Z', "06-46-00-40"),
          Map.entry('0', "10-01-05-16-36-45-41-30-10 01-45"),
          Map.entry('1', "04-26-20 10-30"),
          Map.entry('2', "05-16-36-45-44-00-40"),
          Map.entry('3', "05-16-36-45-44-33-42-41-30-10-01 13-33"),
          Map.entry('4', "30-36-02-42"),
          Map.entry('5', "46-06-03-33-42-41-30-10-01"),
          Map.entry('6', "45-36-16-05-01-10-30-41-42-33-03"),
          Map.entry('7', "06-46-10"),
          Map.entry('8', "13-04-05-16-36-45-44-33-13-02-01-10-30-41-42-33"),
          Map.entry('9', "01-10-30-41-45-36-16-05-04-13-43"),
          Map.entry('.', "20-21"),
          Map.entry('-', "13-33"),
          Map.entry('_', "00-40"));

  private StrokeFont() {}

  /**
   * A stroke.
   *
   * @param points two or more, mm from where the text begins
   */
  record Stroke(List<Coordinate> points) {
    Stroke {
      points = List.copyOf(points);
    }
  }

  /**
   * The strokes of a text, letter by letter.
   *
   * @param height of the letters, mm
   */
  static List<Stroke> strokes(String text, double height) {
    List<Stroke> strokes = new ArrayList<>();
    for (int at = 0; at < text.length(); at++) {
      double left = EngravedMark.PITCH * height * at;
      String letter = LETTERS.getOrDefault(text.charAt(at), "");
      for (String stroke : letter.isEmpty() ? List.<String>of() : List.of(letter.split(" ", -1))) {
        strokes.add(stroke(stroke, left, height / GRID));
      }
    }
    return strokes;
  }

  private static Stroke stroke(String corners, double left, double unit) {
    List<Coordinate> points = new ArrayList<>();
    for (String corner : corners.split("-", -1)) {
      double across = Character.digit(corner.charAt(0), 10) * unit;
      points.add(new Coordinate(left + across, Character.digit(corner.charAt(1), 10) * unit));
    }
    return new Stroke(points);
  }
}
