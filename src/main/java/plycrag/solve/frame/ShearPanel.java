package plycrag.solve.frame;

import java.util.List;

/**
 * A sheet that resists racking in its plane and nothing else. On a rectangle of breadth b and
 * height h it is as stiff against a force along b as {@code stiffness · b / h}, N/mm.
 *
 * @param name what it is called, unlike any other member of its frame
 * @param corners four, in order round it
 * @param stiffness shear modulus times thickness, N/mm, less what its fasteners give
 */
public record ShearPanel(String name, List<Attachment> corners, double stiffness) {
  /** Refuses what is not four corners. */
  public ShearPanel {
    corners = List.copyOf(corners);
    if (corners.size() != 4 || !(stiffness > 0)) {
      throw new IllegalArgumentException("a panel has four corners and a stiffness: " + name);
    }
  }
}
