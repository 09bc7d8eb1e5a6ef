package plycrag.files.lint;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Finds what readers of SVG take at another size or not at all: a size that is not stated in
 * millimetres, units inside, strokes that do not scale, numbers that are none.
 */
public final class SvgLint {
  private static final String NUMBER = "-?[0-9]+(\\.[0-9]{1,4})?";
  private static final Pattern ONE = Pattern.compile(NUMBER);
  private static final Pattern PLACES = Pattern.compile(NUMBER + "," + NUMBER);
  private static final Pattern ZERO_BELOW = Pattern.compile("-0(\\.0*)?");
  private static final Set<String> LENGTHS =
      Set.of("x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "stroke-width", "font-size");

  private final List<String> faults = new ArrayList<>();

  private SvgLint() {}

  /** All faults of a file, each a sentence; none if it is sound. */
  public static List<String> faults(String text) {
    SvgLint lint = new SvgLint();
    XMLInputFactory factory = XMLInputFactory.newFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    try {
      lint.read(factory.createXMLStreamReader(new StringReader(text)));
    } catch (XMLStreamException broken) {
      lint.faults.add("not XML: " + broken.getMessage());
    }
    return List.copyOf(lint.faults);
  }

  private void read(XMLStreamReader reader) throws XMLStreamException {
    boolean root = true;
    while (reader.hasNext()) {
      if (reader.next() == XMLStreamReader.START_ELEMENT) {
        if (root) {
          size(reader);
        } else {
          attributes(reader);
        }
        root = false;
      }
    }
  }

  /** Only millimetres outside and a view box of the same numbers are read alike everywhere. */
  private void size(XMLStreamReader reader) {
    String width = length(reader, "width");
    String height = length(reader, "height");
    String box = Objects.requireNonNullElse(reader.getAttributeValue(null, "viewBox"), "");
    check(box.equals("0 0 " + width + " " + height), "view box " + box);
  }

  private String length(XMLStreamReader reader, String name) {
    String value = Objects.requireNonNullElse(reader.getAttributeValue(null, name), "");
    check(value.endsWith("mm"), "not in millimetres: " + name + " " + value);
    String number = value.replace("mm", "");
    number(name, number);
    return number;
  }

  private void attributes(XMLStreamReader reader) {
    for (int at = 0; at < reader.getAttributeCount(); at++) {
      String name = reader.getAttributeLocalName(at);
      String value = reader.getAttributeValue(at);
      check(!name.equals("vector-effect"), "stroke that does not scale");
      if (LENGTHS.contains(name)) {
        number(name, value);
      } else if (name.equals("points")) {
        places(value);
      }
    }
  }

  private void places(String value) {
    for (String place : value.split(" ", -1)) {
      check(PLACES.matcher(place).matches(), "not places: points " + place);
      for (String number : place.split(",", -1)) {
        check(!ZERO_BELOW.matcher(number).matches(), "zero below zero: points " + place);
      }
    }
  }

  private void number(String name, String value) {
    check(ONE.matcher(value).matches(), "not a number: " + name + " " + value);
    check(!ZERO_BELOW.matcher(value).matches(), "zero below zero: " + name + " " + value);
  }

  private void check(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }
}
