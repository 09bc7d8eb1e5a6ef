package plycrag.files.html;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * Boxes that are ticked, and what keeps the ticks in the browser that set them: under the words
 * beside each box, so that they stay where a book is made anew and its words did not change.
 */
final class Ticks {
  /** In the words of a table: a box to tick. */
  static final String BOX = "☐";

  /** Free of what XML would have escaped. */
  static final String SCRIPT =
      """
      "use strict";
      const boxes = Array.from(document.querySelectorAll("input[type=checkbox]"));
      const place = "ticks of " + location.pathname;
      const words = new Map();
      for (const box of boxes) {
        const beside = box.closest("li, tr").textContent.trim();
        words.set(box, beside + " " + boxes.slice(0, boxes.indexOf(box))
          .filter(one => one.closest("li, tr").textContent.trim() === beside).length);
      }
      try {
        const kept = new Set(JSON.parse(localStorage.getItem(place) ?? "[]"));
        for (const box of boxes) {
          box.checked = kept.has(words.get(box));
          box.onchange = () => localStorage.setItem(place,
            JSON.stringify(boxes.filter(one => one.checked).map(one => words.get(one))));
        }
      } catch {
        // A browser that keeps nothing shows the boxes all the same.
      }
      """;

  private Ticks() {}

  /** An item of a list with its box. */
  static String item(String escaped) {
    return "<li><label><input type=\"checkbox\"/><span>" + escaped + "</span></label></li>\n";
  }

  /** A box by itself. */
  static String box(String name) {
    return "<input type=\"checkbox\" aria-label=\"" + name + "\"/>";
  }

  /** What lets a browser run the script, and no other. */
  static String source() {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(SCRIPT.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException every) {
      throw new IllegalStateException("every Java has SHA-256", every);
    }
  }
}
