package plycrag.trial;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What a refusal must say: which part is at fault, and what would mend it. */
final class TrueWords {
  private static final String ERROR = ": error: ";

  /** A mark, or what a user's file calls a thing. */
  private static final Pattern PART =
      Pattern.compile(
          "\\b[A-Z]{1,3}[0-9]+\\b|\\b(facets?|cutouts?|zones?|tools?|sheets?|pieces?|inserts?|screws?"
              + "|columns?|rows?|obstacles?|keep-outs?|ceiling|floor|door|stair|building"
              + "|recess(?:es)?|marks|support|posts?|wall|frame|frames|holes?|barrels?|mitred|mats?)\\b");

  private TrueWords() {}

  /** The refusals of a check that lack something. */
  static List<String> lacking(String told) {
    return told.lines().filter(line -> line.contains(ERROR) && !isWhole(line)).toList();
  }

  private static boolean isWhole(String line) {
    String told = line.substring(line.indexOf(ERROR) + ERROR.length());
    String words = told.substring(told.indexOf(": ") + 2);
    Optional<String> sentence = Stream.of(words.split("; ", 2)).findFirst();
    return words.contains("; ") && sentence.filter(one -> PART.matcher(one).find()).isPresent();
  }
}
