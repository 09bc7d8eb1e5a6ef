package plycrag.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Follows every cure that refusals of walls at random tell, and collects those after which the same
 * is said again, or that cannot be written into a file.
 */
final class CuresFollowed {
  private final Path folder;
  private final Set<String> vain = new TreeSet<>();
  private int followed;

  /**
   * @param folder that files are written to
   */
  CuresFollowed(Path folder) {
    this.folder = folder;
  }

  /** A check of a file, and of the file after each cure that it is refused with. */
  Trial checked(String text) {
    Trial trial = Trial.of("check", text, folder);
    if (trial.exit() == Trial.ERROR_FINDINGS) {
      ToldCure.refusals(trial.told()).forEach(refusal -> follow(refusal, text));
    }
    return trial;
  }

  private void follow(String refusal, String text) {
    for (String cured : ToldCure.followed(refusal, text)) {
      followed++;
      Trial trial = Trial.of("check", cured, folder);
      if (trial.exit() > Trial.ERROR_FINDINGS) {
        vain.add(refusal + "\n" + trial.told() + "\n" + cured);
      } else if (ToldCure.refusals(trial.told()).contains(refusal)) {
        vain.add(refusal + "\n" + cured);
      }
    }
  }

  /** How many were followed. */
  int count() {
    return followed;
  }

  /** What was told in vain, with the file that followed it. */
  List<String> vain() {
    return List.copyOf(vain);
  }
}
