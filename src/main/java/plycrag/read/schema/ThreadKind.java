package plycrag.read.schema;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.catalog.BoltThread;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;
import plycrag.units.Printable;

/** A thread, as the standards write it; capitals are not told apart. */
public final class ThreadKind implements Kind<BoltThread> {

  @Override
  public Optional<BoltThread> read(Located value, Context context) {
    if (!(value.value() instanceof String word)) {
      return refuseKind(value, context);
    }
    Optional<BoltThread> thread =
        Stream.of(BoltThread.values())
            .filter(each -> each.word().equalsIgnoreCase(word))
            .findFirst();
    return thread.isPresent()
        ? thread
        : context.refuse(
            value,
            Printable.quoted(word) + " is not among the threads",
            mayStand(context),
            NearestKey.suggestion(word, words(), "thread"));
  }

  @Override
  public ValueShape shape() {
    List<String> words = words();
    Stream<String> small = words.stream().map(word -> word.toLowerCase(Locale.ROOT));
    return new ValueShape.Words(Stream.concat(words.stream(), small).toList());
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    List<String> words = words();
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  private static List<String> words() {
    return Stream.of(BoltThread.values()).map(BoltThread::word).toList();
  }
}
