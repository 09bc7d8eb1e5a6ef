package plycrag.proof.replay;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * What a controller or its owner wants of every program apart from what it makes.
 *
 * @param percent whether a percent sign stands first and last
 * @param number of the program, said before all words; empty for none
 * @param words that are said before the first motion
 * @param beside whether something is to run beside the spindle while it cuts
 * @param park where the tool is left; empty for anywhere
 */
public record Customs(
    boolean percent,
    Optional<Integer> number,
    List<String> words,
    boolean beside,
    Optional<Coordinate> park) {
  /** Nothing. */
  static final Customs NONE =
      new Customs(false, Optional.empty(), List.of(), false, Optional.empty());

  /** Copies the list. */
  public Customs {
    words = List.copyOf(words);
  }
}
