package plycrag.stock;

/** A wall on two posts, its frame of 45 by 90 mm, its rails of 45 by 140. */
final class StandingWall {
  static final String TOML =
      """
      [wall]
      width = 1200
      raise = 200
      [[facet]]
      angle = 30
      length = 1500
      [frame]
      section = [45, 90]
      stud-spacing = 600
      [support]
      kind = "freestanding"
      behind = 600
      [inserts]
      pattern = "none"
      """;

  private StandingWall() {}
}
