package plycrag.layout.structure;

import java.util.List;

/**
 * A member of the frame in the pieces between its stations.
 *
 * @param axis where it is
 * @param pieces in order along it; none where fewer than two places of it are held
 */
public record MemberLine(MemberAxis axis, List<Piece> pieces) {
  /** Copies the pieces. */
  public MemberLine {
    pieces = List.copyOf(pieces);
  }

  /**
   * A beam of the frame.
   *
   * @param beam its name
   * @param from where it begins, along the member, mm
   * @param to where it ends, mm
   */
  public record Piece(String beam, double from, double to) {}

  /** Whether the frame knows it. */
  public boolean isHeld() {
    return !pieces.isEmpty();
  }

  /** Where its first piece begins, mm. */
  public double from() {
    return pieces.get(0).from();
  }

  /** Where its last one ends, mm. */
  public double to() {
    return pieces.get(pieces.size() - 1).to();
  }

  /** The piece at a place, or the one nearest to it. */
  Piece at(double along) {
    return pieces.stream()
        .filter(piece -> along <= piece.to())
        .findFirst()
        .orElse(pieces.get(pieces.size() - 1));
  }

  /** The longest of its pieces, mm. */
  public double longest() {
    return pieces.stream().mapToDouble(piece -> piece.to() - piece.from()).max().orElse(0);
  }
}
