package plycrag.read.schema;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plycrag.units.Decimal;
import plycrag.units.LengthText;
import plycrag.units.LengthUnit;
import plycrag.wall.buying.Section;

/**
 * What holds where a key is left out.
 *
 * @param metric in millimetre files; empty where it follows from other values
 * @param imperial in inch files
 * @param words the same for a person
 */
public record DefaultValue<T>(Optional<T> metric, Optional<T> imperial, String words) {
  private static final String JOINT = " / ";

  /** What holds in a file of that unit. */
  public Optional<T> in(LengthUnit unit) {
    return unit == LengthUnit.MM ? metric : imperial;
  }

  /** A length for each unit, written as a user would. */
  public static DefaultValue<Double> length(String metric, String imperial) {
    return both(millimetres(metric), millimetres(imperial), metric + JOINT + imperial);
  }

  /** A feed for each unit, without its {@code /min}. */
  public static DefaultValue<Double> feed(String metric, String imperial) {
    return per("/min", metric, imperial);
  }

  /** An acceleration for each unit, without its {@code /s2}. */
  public static DefaultValue<Double> acceleration(String metric, String imperial) {
    return per("/s2", metric, imperial);
  }

  private static DefaultValue<Double> per(String time, String metric, String imperial) {
    return both(
        millimetres(metric), millimetres(imperial), metric + time + JOINT + imperial + time);
  }

  /** A list of lengths for each unit: numbers with spaces between, the unit at the end. */
  public static DefaultValue<List<Double>> lengths(String metric, String imperial) {
    return both(list(metric), list(imperial), listWords(metric) + JOINT + listWords(imperial));
  }

  /** A section for each unit, written like a list. */
  public static DefaultValue<Section> section(String metric, String imperial) {
    List<Double> metricSides = list(metric);
    List<Double> imperialSides = list(imperial);
    return both(
        new Section(metricSides.get(0), metricSides.get(1)),
        new Section(imperialSides.get(0), imperialSides.get(1)),
        listWords(metric) + JOINT + listWords(imperial));
  }

  /** A number. */
  public static DefaultValue<Double> number(double number) {
    return both(number, number, Decimal.of(number, 4));
  }

  /** A count. */
  public static DefaultValue<Integer> count(int count) {
    return both(count, count, Integer.toString(count));
  }

  /** A word. */
  public static <E extends Enum<E>> DefaultValue<E> word(E choice) {
    return both(choice, choice, WordKind.word(choice));
  }

  /** A word for each unit. */
  public static <E extends Enum<E>> DefaultValue<E> word(E metric, E imperial) {
    return both(metric, imperial, WordKind.word(metric) + JOINT + WordKind.word(imperial));
  }

  /** A text for each unit. */
  public static DefaultValue<String> text(String metric, String imperial) {
    return both(metric, imperial, metric + JOINT + imperial);
  }

  /** A text whatever the unit. */
  public static DefaultValue<String> text(String text) {
    return both(text, text, text);
  }

  /** Yes or no. */
  public static DefaultValue<Boolean> flag(boolean flag) {
    return both(flag, flag, Boolean.toString(flag));
  }

  /** It follows from other values, as the words say. */
  public static <T> DefaultValue<T> derived(String words) {
    return new DefaultValue<>(Optional.empty(), Optional.empty(), words);
  }

  private static <T> DefaultValue<T> both(T metric, T imperial, String words) {
    return new DefaultValue<>(Optional.of(metric), Optional.of(imperial), words);
  }

  private static List<Double> list(String text) {
    int unit = text.lastIndexOf(' ');
    return Arrays.stream(text.substring(0, unit).split(" ", -1))
        .map(number -> millimetres(number + text.substring(unit)))
        .toList();
  }

  private static String listWords(String text) {
    int unit = text.lastIndexOf(' ');
    return "[" + text.substring(0, unit).replace(" ", ", ") + "]" + text.substring(unit);
  }

  private static double millimetres(String text) {
    if (LengthText.parse(text) instanceof LengthText.Value length) {
      return length.millimetres();
    }
    throw new IllegalArgumentException("not a length: " + text);
  }
}
