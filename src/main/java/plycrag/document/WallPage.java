package plycrag.document;

import java.util.List;
import java.util.Optional;

/**
 * A wall to be looked at from all sides, and what is told of each of its parts.
 *
 * @param title the wall
 * @param stamp what stands over everything; empty where nothing does
 * @param caution what everybody must know who sees it
 * @param figures always in sight, in order
 * @param parts of the scene, each by its name there
 * @param steps in which they come together, in order
 * @param remarks what was found, in the order in which it is numbered
 */
public record WallPage(
    String title,
    String stamp,
    String caution,
    List<Fact> figures,
    List<Part> parts,
    List<String> steps,
    List<Remark> remarks) {

  /** Copies the lists; rejects a part of a step that there is not. */
  public WallPage {
    figures = List.copyOf(figures);
    parts = List.copyOf(parts);
    steps = List.copyOf(steps);
    remarks = List.copyOf(remarks);
    for (Part part : parts) {
      if (part.step() < 0 || part.step() > steps.size()) {
        throw new IllegalArgumentException("no such step: " + part);
      }
    }
  }

  /**
   * A figure with its name.
   *
   * @param name what it is of
   * @param value with its unit
   */
  public record Fact(String name, String value) {}

  /**
   * What is told of a part.
   *
   * @param mark its name in the scene
   * @param what it is, with its size
   * @param list the file that has a line of it, from the folder; empty where none has
   * @param step the number of the step in which it comes, from 1; 0 if it is there from the start
   */
  public record Part(String mark, String what, String list, int step) {}

  /**
   * What was found.
   *
   * @param severity its weight in a word
   * @param sentence what was found
   * @param suggestion what would mend it; empty if nothing simple would
   * @param marks the parts that it names
   * @param place where it is, in the scene's axes, if it has a place
   */
  public record Remark(
      String severity,
      String sentence,
      String suggestion,
      List<String> marks,
      Optional<Xyz> place) {
    /** Copies the marks. */
    public Remark {
      marks = List.copyOf(marks);
    }
  }
}
