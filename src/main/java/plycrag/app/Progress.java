package plycrag.app;

import java.io.PrintWriter;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;
import java.util.function.Supplier;

/**
 * Tells somebody at a terminal that work goes on, once it has taken a second. Nothing is left of it
 * on the screen, and where nobody sits nothing is written at all.
 */
final class Progress {
  private static final long FIRST = 1000;
  private static final long EVERY = 250;
  private static final int WIDTH = 70;

  private final PrintWriter err;
  private final boolean isShown;

  /** Tells it at a terminal, if somebody sits there. */
  Progress(Terminal terminal) {
    this.err = terminal.err();
    this.isShown = terminal.isInteractive();
  }

  /** Does something of which no part can be told. */
  <T> T during(String what, Supplier<T> work) {
    return during(what, work, 0, () -> 0);
  }

  /**
   * Does something.
   *
   * @param what is done, as a person reads it
   * @param steps how many there are; 0 if they cannot be told
   * @param done how many of them are over
   */
  <T> T during(String what, Supplier<T> work, int steps, IntSupplier done) {
    if (!isShown) {
      return work.get();
    }
    ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(Progress::thread);
    long begin = System.nanoTime();
    ScheduledFuture<?> ticking =
        clock.scheduleAtFixedRate(
            () -> show(what + steps(steps, done), System.nanoTime() - begin),
            FIRST,
            EVERY,
            TimeUnit.MILLISECONDS);
    try {
      return work.get();
    } finally {
      ticking.cancel(false);
      clock.shutdownNow();
      wipe(clock);
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "progress");
    thread.setDaemon(true);
    return thread;
  }

  private static String steps(int steps, IntSupplier done) {
    return steps > 0 ? " " + done.getAsInt() + " of " + steps : "";
  }

  private void show(String what, long nanoseconds) {
    String line = what + ", " + TimeUnit.NANOSECONDS.toSeconds(nanoseconds) + " s";
    err.print("\r" + line + " ".repeat(Math.max(0, WIDTH - line.length())));
    err.flush();
  }

  private void wipe(ScheduledExecutorService clock) {
    try {
      clock.awaitTermination(1, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    err.print("\r" + " ".repeat(WIDTH) + "\r");
    err.flush();
  }
}
