package plycrag.files.svg;

/** Text inside XML. */
final class XmlText {
  private XmlText() {}

  /**
   * Escapes text for an element or a quoted attribute.
   *
   * @throws IllegalArgumentException if it holds a character that XML 1.0 section 2.2 forbids; a
   *     defect of the caller
   */
  static String of(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(character -> append(out, character));
    return out.toString();
  }

  private static void append(StringBuilder out, int character) {
    switch (character) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      default -> out.appendCodePoint(allowed(character));
    }
  }

  private static int allowed(int character) {
    boolean surrogate =
        character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
    boolean noncharacter = character == 0xFFFE || character == 0xFFFF;
    if (Character.isISOControl(character) || surrogate || noncharacter) {
      throw new IllegalArgumentException("no XML character: U+" + Integer.toHexString(character));
    }
    return character;
  }
}
