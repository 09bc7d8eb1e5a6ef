package plycrag.read.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Turns the bytes of a file into text. */
public final class SourceText {
  private static final String RULE = "encoding";
  private static final String ALLOWED = "UTF-8 is allowed";
  private static final String BYTE_ORDER_MARK = "\ufeff";

  private SourceText() {}

  /** The text without a byte-order mark, or none after saying why the bytes are no UTF-8. */
  public static Optional<String> decode(byte[] content, Faults faults) {
    if (looksLikeUtf16(content)) {
      faults.add(RULE, SourcePlace.START, "the file is UTF-16", ALLOWED, "save it again as UTF-8");
      return Optional.empty();
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT);
    CharBuffer text = CharBuffer.allocate(content.length);
    CoderResult result = decoder.decode(ByteBuffer.wrap(content), text, true);
    String decoded = text.flip().toString();
    boolean marked = decoded.startsWith(BYTE_ORDER_MARK);
    String plain = marked ? decoded.substring(BYTE_ORDER_MARK.length()) : decoded;
    if (result.isError()) {
      faults.add(
          RULE,
          end(plain),
          "the bytes here are not UTF-8",
          ALLOWED,
          "save the file again as UTF-8");
      return Optional.empty();
    }
    return Optional.of(plain);
  }

  private static boolean looksLikeUtf16(byte[] content) {
    if (content.length < 2) {
      return false;
    }
    int first = content[0] & 0xff;
    int second = content[1] & 0xff;
    return (first == 0xff && second == 0xfe)
        || (first == 0xfe && second == 0xff)
        || first == 0
        || second == 0;
  }

  /** The place after the last character. */
  private static SourcePlace end(String text) {
    int lastLine = text.lastIndexOf('\n') + 1;
    int line = 1 + (int) text.chars().filter(each -> each == '\n').count();
    return new SourcePlace(line, 1 + text.codePointCount(lastLine, text.length()));
  }
}
