package plycrag.solve.tour;

/** Of the exchanges possible at one level: the best that shortens the tour, and the most open. */
final class ExchangeChoices {
  private final double leastGain;
  private final Exchange[] widest;
  private int size;
  private Exchange best;
  private double gain;

  ExchangeChoices(int breadth, double leastGain) {
    widest = new Exchange[breadth];
    this.leastGain = leastGain;
  }

  void clear() {
    size = 0;
    best = null;
    gain = leastGain;
  }

  /** Whether an exchange so open, and so much shorter with the way to its end, would be kept. */
  boolean wants(double open, double closed) {
    return closed > gain || size < widest.length || (size > 0 && open > widest[size - 1].open());
  }

  void offer(Exchange exchange, double closed) {
    if (closed > gain) {
      gain = closed;
      best = exchange;
    }
    if (size < widest.length) {
      insert(exchange, size++);
    } else if (size > 0 && exchange.open() > widest[size - 1].open()) {
      insert(exchange, size - 1);
    }
  }

  private void insert(Exchange exchange, int free) {
    int at = free;
    for (; at > 0 && widest[at - 1].open() < exchange.open(); at--) {
      widest[at] = widest[at - 1];
    }
    widest[at] = exchange;
  }

  /** How many can be tried at length. */
  int size() {
    return size;
  }

  /** One to try at length, the most open first. */
  Exchange get(int index) {
    return widest[index];
  }

  boolean shortens() {
    return best != null;
  }

  /** The one that shortens the tour most, if one {@link #shortens} it. */
  Exchange best() {
    return best;
  }

  /** By how much the best shortens the tour. */
  double gain() {
    return gain;
  }
}
