package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What one line tells the controller, apart from the order of its words.
 *
 * @param line counted from 1
 * @param codes its G and M words, one a group
 * @param values its other words by their letters
 */
record Block(int line, Map<ModalGroup, Code> codes, Map<Character, Double> values) {
  private static final String LETTERS = "FHIJLPQRSTXYZ";

  static Block of(int line, List<Word> words, Abilities abilities) throws ReadingException {
    Block block = new Block(line, new EnumMap<>(ModalGroup.class), new TreeMap<>());
    for (Word word : numberless(words, abilities)) {
      if (word.letter() == 'G' || word.letter() == 'M') {
        block.addCode(word, abilities);
      } else {
        block.addValue(word);
      }
    }
    return block;
  }

  private static List<Word> numberless(List<Word> words, Abilities abilities)
      throws ReadingException {
    if (words.isEmpty() || words.get(0).letter() != 'N') {
      return words;
    }
    Word number = words.get(0);
    require(abilities.can(Ability.LINE_NUMBERS), "line numbers are not understood");
    require(number.text().matches("N[0-9]+"), "no line number: " + number.text());
    return words.subList(1, words.size());
  }

  private void addCode(Word word, Abilities abilities) throws ReadingException {
    Optional<Code> known = Code.of(word).filter(code -> code.isIn(abilities));
    require(known.isPresent(), word.text() + " is not understood");
    Code before = codes.put(known.get().group(), known.get());
    require(before == null, word.text() + " and " + before + " exclude each other");
  }

  private void addValue(Word word) throws ReadingException {
    require(LETTERS.indexOf(word.letter()) >= 0, word.text() + " is not understood");
    Double before = values.put(word.letter(), word.value());
    require(before == null, "two words with the letter " + word.letter());
  }

  boolean isEmpty() {
    return codes.isEmpty() && values.isEmpty();
  }

  Optional<Code> code(ModalGroup group) {
    return Optional.ofNullable(codes.get(group));
  }

  boolean has(char letter) {
    return values.containsKey(letter);
  }

  boolean hasPlace() {
    return has('X') || has('Y') || has('Z');
  }

  /** The number after a letter, or what holds without it. */
  double value(char letter, double otherwise) {
    return values.getOrDefault(letter, otherwise);
  }

  /** The number after a letter that must stand here. */
  double value(char letter) throws ReadingException {
    require(has(letter), "the word " + letter + " is missing");
    return values.get(letter);
  }
}
