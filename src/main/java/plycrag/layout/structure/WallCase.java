package plycrag.layout.structure;

import plycrag.solve.frame.LoadCase;

/**
 * Loads that act together, and how they came about.
 *
 * @param combination how they add up
 * @param words in words, without how they add up
 * @param loads what is solved
 */
public record WallCase(Combination combination, String words, LoadCase loads) {
  /** Both. */
  public String name() {
    return words.isEmpty() ? combination.words() : combination.words() + ", " + words;
  }
}
