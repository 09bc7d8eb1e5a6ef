package plycrag.app.watch;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import plycrag.files.space.WallPageWriter;

/** Serves what is shown now. */
public final class PageServer implements AutoCloseable {
  private static final int FOUND = 200;
  private static final int FORBIDDEN = 403;
  private static final int MISSING = 404;
  private static final int NOT_ALLOWED = 405;
  private static final int NO_BODY = -1;

  /** By what a name ends in. */
  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "json", "application/json",
          "geojson", "application/geo+json",
          "csv", "text/csv; charset=utf-8",
          "svg", "image/svg+xml",
          "pdf", "application/pdf",
          "glb", "model/gltf-binary",
          "toml", "text/plain; charset=utf-8",
          "ngc", "text/plain; charset=utf-8");

  private final String name;
  private final HttpServer server;
  private final Guard guard;
  private final ExecutorService workers = Executors.newCachedThreadPool(PageServer::thread);
  private final Visitors visitors = new Visitors();
  private Optional<Showing> showing = Optional.empty();

  /**
   * Listens, and has nothing to show yet.
   *
   * @param name of the file that it is about
   * @param port 0 for any that is free
   * @throws IOException if the port is taken
   */
  public PageServer(String name, int port) throws IOException {
    this.name = name;
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
    guard = new Guard(server.getAddress().getPort());
    server.createContext("/", this::answer);
    server.setExecutor(workers);
    server.start();
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "page");
    thread.setDaemon(true);
    return thread;
  }

  /** Where a browser finds it. */
  public String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
  }

  /** Shows this from now on. */
  public synchronized void show(Showing next) {
    showing = Optional.of(next);
    visitors.tell(News.wall(visitors.revision() + 1));
  }

  /** Says what is wrong with the last save; the wall before it stays. */
  public synchronized void fault(String words) {
    visitors.tell(News.fault(visitors.revision() + 1, words));
  }

  /** What is shown at a moment, and its number. */
  private record Moment(Optional<Showing> showing, int revision) {}

  private synchronized Moment now() {
    return new Moment(showing, visitors.revision());
  }

  private Optional<byte[]> content(String path) {
    Moment now = now();
    if (now.showing().isEmpty() && path.isEmpty()) {
      String page = WallPageWriter.writeWaiting(name);
      return Optional.of(page.getBytes(StandardCharsets.UTF_8));
    }
    return now.showing().flatMap(one -> one.at(path, now.revision()));
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      String path = exchange.getRequestURI().getPath().substring(1);
      if (!guard.lets(exchange.getRequestHeaders())) {
        exchange.sendResponseHeaders(FORBIDDEN, NO_BODY);
      } else if (!exchange.getRequestMethod().equals("GET")) {
        exchange.sendResponseHeaders(NOT_ALLOWED, NO_BODY);
      } else if (path.equals("changes")) {
        visitors.stay(exchange);
      } else {
        send(exchange, path);
      }
    }
  }

  private void send(HttpExchange exchange, String path) throws IOException {
    Optional<byte[]> content = content(path);
    if (content.isEmpty()) {
      exchange.sendResponseHeaders(MISSING, NO_BODY);
      return;
    }
    exchange.getResponseHeaders().set("Content-Type", type(path));
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
    exchange.sendResponseHeaders(FOUND, content.get().length);
    exchange.getResponseBody().write(content.get());
  }

  private static String type(String path) {
    String ending = path.isEmpty() ? "html" : path.substring(path.lastIndexOf('.') + 1);
    return TYPES.getOrDefault(ending, "application/octet-stream");
  }

  @Override
  public void close() {
    visitors.leave();
    server.stop(0);
    workers.shutdownNow();
  }
}
