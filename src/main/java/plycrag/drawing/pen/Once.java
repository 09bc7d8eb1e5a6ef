package plycrag.drawing.pen;

import java.util.Optional;
import java.util.function.Supplier;

/** Makes a value when it is first asked for, and keeps it; safe for several threads. */
final class Once<T> implements Supplier<T> {
  private final Supplier<T> maker;
  private Optional<T> made = Optional.empty();

  Once(Supplier<T> maker) {
    this.maker = maker;
  }

  @Override
  public synchronized T get() {
    if (made.isEmpty()) {
      made = Optional.of(maker.get());
    }
    return made.get();
  }
}
