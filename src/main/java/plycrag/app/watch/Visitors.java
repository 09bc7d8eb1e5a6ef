package plycrag.app.watch;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The pages that are open. Each waits in a thread of its own for the next news; who is slow is told
 * of the last alone, since a wall that was replaced is of no use.
 *
 * @see <a href="https://html.spec.whatwg.org/multipage/server-sent-events.html">HTML, server-sent
 *     events</a>
 */
final class Visitors {
  private static final int FOUND = 200;

  /** After so long a line without meaning finds out whether a page is still there, ms. */
  private static final long PULSE = 5000;

  private Optional<News> last = Optional.empty();
  private boolean isOver;

  /** How many news there were. */
  synchronized int revision() {
    return last.map(News::revision).orElse(0);
  }

  synchronized void tell(News news) {
    last = Optional.of(news);
    notifyAll();
  }

  /** Nobody is told anything any more. */
  synchronized void leave() {
    isOver = true;
    notifyAll();
  }

  /** Tells a page all that it has not seen, until it is closed. */
  void stay(HttpExchange exchange) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    exchange.sendResponseHeaders(FOUND, 0);
    OutputStream out = exchange.getResponseBody();
    int seen = seen(exchange);
    write(out, ": here\n\n");
    while (!isOver()) {
      Optional<News> next = next(seen);
      write(out, next.map(News::text).orElse(": still here\n\n"));
      seen = next.map(News::revision).orElse(seen);
    }
  }

  private static void write(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
    out.flush();
  }

  private synchronized boolean isOver() {
    return isOver;
  }

  /** The last news, once they are others than those seen; nothing where they stay out. */
  private synchronized Optional<News> next(int seen) {
    try {
      long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PULSE);
      for (long left = end - System.nanoTime();
          !isOver && revision() == seen && left > 0;
          left = end - System.nanoTime()) {
        TimeUnit.NANOSECONDS.timedWait(this, left);
      }
    } catch (InterruptedException e) {
      isOver = true;
      Thread.currentThread().interrupt();
    }
    return last.filter(news -> news.revision() != seen);
  }

  /** What a page was made of, or what it was told of last before it lost the connection. */
  private static int seen(HttpExchange exchange) {
    String told = exchange.getRequestHeaders().getFirst("Last-Event-ID");
    String query = exchange.getRequestURI().getQuery();
    String number = told != null ? told : query == null ? "" : query.replace("revision=", "");
    return number.matches("[0-9]{1,9}") ? Integer.parseInt(number) : 0;
  }
}
