package plycrag.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import plycrag.units.LengthUnit;

/** A wall from which a user starts: a commented parameter file that builds as it stands. */
enum Starter {
  /** Plane, on posts of its own. */
  LEANING,
  /** A kick, a steep wall and a roof. */
  CAVE,
  /** Two walls that meet. */
  CORNER,
  /** Low, for children. */
  SLAB,
  /** Plumb, around an opening. */
  WINDOW,
  /** One that swings. */
  HINGED,
  /** Long and high, tied to a building. */
  HALL;

  /** Its word on the command line. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The file as it stands, for a tape in that unit. */
  StarterText text(LengthUnit unit) {
    String resource = "/plycrag/starters/" + this + "-" + unit.word() + ".toml";
    try (InputStream in = Starter.class.getResourceAsStream(resource)) {
      return new StarterText(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
