package plycrag.read.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plycrag.units.LengthText;

/** A size as a merchant writes it: lengths with an {@code x} between them, the unit at the end. */
final class SizeText {
  private static final Pattern UNIT = Pattern.compile(".*[0-9]\\s*(?<unit>[a-z]+|['\"])");

  private final String text;

  /**
   * One text.
   *
   * @param text {@code 45 x 90 x 3000 mm}
   */
  SizeText(String text) {
    this.text = text;
  }

  /** The lengths, ascending, mm; none if the text is no size. */
  Optional<List<Double>> lengths() {
    Matcher unit = UNIT.matcher(text);
    if (!unit.matches()) {
      return Optional.empty();
    }
    List<Double> lengths = new ArrayList<>();
    for (String side : text.split("[x×]", -1)) {
      String measure =
          UNIT.matcher(side.strip()).matches() ? side : side + " " + unit.group("unit");
      if (!(LengthText.parse(measure) instanceof LengthText.Value length)
          || length.millimetres() <= 0) {
        return Optional.empty();
      }
      lengths.add(length.millimetres());
    }
    return Optional.of(lengths.stream().sorted().toList());
  }
}
