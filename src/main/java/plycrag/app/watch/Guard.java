package plycrag.app.watch;

import com.sun.net.httpserver.Headers;
import java.util.List;
import java.util.Set;

/**
 * Says whom the server answers: a page that a program on this machine asked for by its own name.
 * Another site's page can make a browser ask, too, but not under this host's name and without its
 * own as the origin.
 */
final class Guard {
  private final Set<String> hosts;

  Guard(int port) {
    this.hosts = Set.of("localhost:" + port, "127.0.0.1:" + port, "[::1]:" + port);
  }

  /** Whether a request with these headers is answered. */
  boolean lets(Headers headers) {
    return all(headers.get("Host"), "") && all(headers.get("Origin"), "http://");
  }

  /** Whether each of the values is one of the hosts behind a prefix; an absent origin is none. */
  private boolean all(List<String> values, String prefix) {
    return values == null
        ? !prefix.isEmpty()
        : values.stream()
            .allMatch(
                value ->
                    value.startsWith(prefix) && hosts.contains(value.substring(prefix.length())));
  }
}
