package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line taken apart: its words, then its comment.
 *
 * @param words in order
 * @param remark what a comment says; empty if there is none
 */
record ProgramLine(List<Word> words, String remark) {
  private static final Pattern WORD =
      Pattern.compile(" *(([A-Z])(-?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)))");

  /** Comments that are commands (LinuxCNC manual, G-code overview, "Comments"). */
  private static final Pattern OBEYED =
      Pattern.compile(
          " *(?:(?:MSG|DEBUG|PRINT|LOG|PY|AXIS|WEBGCODE|LOGOPEN|LOGAPPEND|PROBEOPEN) *,"
              + "|LOGCLOSE|PROBEOPEN|PROBECLOSE).*",
          Pattern.CASE_INSENSITIVE);

  /** Copies the words. */
  ProgramLine {
    words = List.copyOf(words);
  }

  /** Takes a line apart, its end left out. */
  static ProgramLine of(String text, Abilities abilities) throws ReadingException {
    require(text.length() <= abilities.longestLine(), "longer than " + abilities.longestLine());
    require(text.chars().allMatch(one -> one >= ' ' && one <= '~'), "a character is not ASCII");
    int open = text.indexOf('(');
    int semicolon = text.indexOf(';');
    if (semicolon >= 0 && (open < 0 || semicolon < open)) {
      require(abilities.can(Ability.SEMICOLON), "a comment after a semicolon is not understood");
      return new ProgramLine(
          words(text.substring(0, semicolon)), remark(text.substring(semicolon + 1)));
    }
    return open < 0 ? new ProgramLine(words(text), "") : parenthesised(text, open, abilities);
  }

  private static ProgramLine parenthesised(String text, int open, Abilities abilities)
      throws ReadingException {
    require(abilities.can(Ability.PARENTHESES), "a comment in parentheses is not understood");
    int close = text.indexOf(')', open);
    require(close >= 0, "a comment does not close");
    String inside = text.substring(open + 1, close);
    require(inside.indexOf('(') < 0, "a comment opens within a comment");
    require(text.substring(close + 1).isBlank(), "a comment closes before its line ends");
    return new ProgramLine(words(text.substring(0, open)), remark(inside));
  }

  private static String remark(String text) throws ReadingException {
    require(!OBEYED.matcher(text).matches(), "some controllers obey this comment");
    return text.strip();
  }

  private static List<Word> words(String text) throws ReadingException {
    List<Word> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(text.stripTrailing());
    int at = 0;
    while (at < matcher.regionEnd()) {
      require(matcher.lookingAt(), "no word: " + text.substring(at).strip());
      double value = Double.parseDouble(matcher.group(3));
      words.add(new Word(matcher.group(2).charAt(0), value, matcher.group(1)));
      at = matcher.end();
      matcher.region(at, matcher.regionEnd());
    }
    return words;
  }
}
