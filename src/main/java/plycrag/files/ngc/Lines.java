package plycrag.files.ngc;

import java.util.List;

/** Collects the lines of a program. */
final class Lines {
  private static final int STEP = 1;

  private final Dialect.Look look;
  private final StringBuilder out = new StringBuilder();
  private int number;

  Lines(Dialect.Look look) {
    this.look = look;
  }

  /** A remark, on as many lines as it takes. */
  void remark(String text) {
    if (look.comments() != Dialect.Comments.NONE) {
      int room = look.longest() - Comments.FRAME;
      Comments.of(text, room).forEach(line -> end(framed(line)));
    }
  }

  private String framed(String comment) {
    return look.comments() == Dialect.Comments.SEMICOLON ? "; " + comment : "(" + comment + ")";
  }

  /** A line that has no number of its own. */
  void bare(String line) {
    end(line);
  }

  /** Words to be obeyed together; the feed, last of them, goes before where they are too many. */
  void code(List<String> words) {
    String line = String.join(" ", words);
    String feed = words.get(words.size() - 1);
    boolean fits = numberWords(number + STEP).length() + line.length() <= look.longest();
    if (!fits && feed.startsWith("F")) {
      numbered(feed);
      line = String.join(" ", words.subList(0, words.size() - 1));
    }
    numbered(line);
  }

  private void numbered(String line) {
    number += STEP;
    String whole = numberWords(number) + line;
    if (whole.length() > look.longest()) {
      throw new IllegalStateException("a line longer than the controller reads: " + whole);
    }
    end(whole);
  }

  private String numberWords(int at) {
    return look.numbered() ? "N" + at + " " : "";
  }

  private void end(String line) {
    out.append(line).append('\n');
  }

  /** All of them, each ended by a line feed. */
  String text() {
    return out.toString();
  }
}
