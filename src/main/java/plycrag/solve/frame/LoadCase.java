package plycrag.solve.frame;

import java.util.List;

/**
 * Loads that act together.
 *
 * @param name what it is called
 * @param loads on nodes and beams, and what supports do of themselves
 */
public record LoadCase(String name, List<FrameLoad> loads) {
  /** Keeps a copy. */
  public LoadCase {
    loads = List.copyOf(loads);
  }
}
