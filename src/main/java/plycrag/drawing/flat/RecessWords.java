package plycrag.drawing.flat;

import java.util.Optional;
import plycrag.units.Tape;
import plycrag.wall.Wall;

/** What a drawing says of recesses in which flanges lie. */
public final class RecessWords {
  private RecessWords() {}

  /**
   * A sentence with their size and the thickness that remains under them; none where flanges lie on
   * the back.
   */
  public static Optional<String> of(Wall wall) {
    Tape tape = wall.tape();
    double thickness = wall.sheet().thickness();
    return wall.inserts()
        .body()
        .recess()
        .map(
            recess ->
                "Recesses for flanges in the back: "
                    + tape.size(recess.diameter())
                    + " across, "
                    + tape.size(recess.depth())
                    + " deep; "
                    + tape.size(thickness - recess.depth())
                    + " of "
                    + tape.size(thickness)
                    + " remain.");
  }
}
