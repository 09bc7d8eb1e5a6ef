package plycrag.document;

import java.util.List;

/**
 * Labels to cut out and fix to parts.
 *
 * @param title the wall's name
 * @param stamp words across the head of the first page, empty for none
 * @param caution words under the title, empty for none
 * @param labels in reading order
 */
public record LabelSheet(String title, String stamp, String caution, List<Label> labels) {
  /** Copies the labels. */
  public LabelSheet {
    labels = List.copyOf(labels);
  }

  /**
   * A label.
   *
   * @param mark of the part
   * @param what it is, with its size
   * @param where it belongs and what it is cut from
   * @param neighbours what it is fixed to, in a sentence; empty if it is fixed to nothing
   */
  public record Label(String mark, String what, String where, String neighbours) {}
}
