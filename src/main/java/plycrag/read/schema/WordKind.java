package plycrag.read.schema;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;
import plycrag.units.Printable;

/** One of a few words. */
public final class WordKind<E extends Enum<E>> implements Kind<E> {
  private final List<E> choices;

  /**
   * The words for these choices.
   *
   * @param choices what the words stand for; a word is its choice's name in lower case with hyphens
   */
  public WordKind(List<E> choices) {
    this.choices = choices;
  }

  @Override
  public Optional<E> read(Located value, Context context) {
    if (!(value.value() instanceof String word)) {
      return refuseKind(value, context);
    }
    Optional<E> choice = choices.stream().filter(each -> word(each).equals(word)).findFirst();
    if (choice.isEmpty()) {
      return refuseWord(word, value, context);
    }
    return choice;
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Words(words());
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    List<String> words = words();
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  /** The word for a choice. */
  public static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Optional<E> refuseWord(String word, Located value, Context context) {
    return context.refuse(
        value,
        Printable.quoted(word) + " is not among the words for this",
        mayStand(context),
        NearestKey.suggestion(word, words(), "word"));
  }

  private List<String> words() {
    return choices.stream().map(WordKind::word).toList();
  }
}
