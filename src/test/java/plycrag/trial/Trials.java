package plycrag.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.LongFunction;

/**
 * Tries many parameter files, and tells every kind of defect at once: how often it came, and the
 * shortest file that still shows it, to be kept among the hard walls.
 *
 * <p>The build's files are the same every time. With {@code plycrag.fuzz} there are so many times
 * more, and others.
 */
final class Trials {
  private static final int TIMES = Integer.getInteger("plycrag.fuzz", 0);

  private final Path folder;
  private final Map<String, Integer> counts = new TreeMap<>();
  private final Map<String, String> examples = new TreeMap<>();
  private final Map<Integer, Integer> exits = new TreeMap<>();
  private final Set<String> wordless = new TreeSet<>();
  private final long first = TIMES > 0 ? System.nanoTime() : 0;

  /**
   * @param folder that files are written to
   */
  Trials(Path folder) {
    this.folder = folder;
  }

  /** How a file is tried; files that cannot be read at all do not count. */
  interface Way {
    Trial of(String text);
  }

  /** Tries as many files as are asked for and can be read. */
  void run(int count, LongFunction<String> files, Way way) {
    long number = first;
    int wanted = Math.max(1, TIMES) * count;
    for (int tried = 0; tried < wanted; number++) {
      String text = files.apply(number);
      Trial trial = way.of(text);
      exits.merge(trial.exit(), 1, Integer::sum);
      tried += trial.exit() == Trial.WRONG_INPUT ? 0 : 1;
      wordless.addAll(TrueWords.lacking(trial.told()));
      if (trial.isDefect()) {
        note(trial.kind(), text, way);
      }
    }
  }

  private void note(String kind, String text, Way way) {
    counts.merge(kind, 1, Integer::sum);
    examples.computeIfAbsent(kind, unseen -> Reduction.of(text, shorter -> is(way, shorter, kind)));
  }

  private static boolean is(Way way, String text, String kind) {
    Trial trial = way.of(text);
    return trial.isDefect() && trial.kind().equals(kind);
  }

  /** A check, and then a build of what could be read. */
  Trial built(String text) {
    Trial checked = Trial.of("check", text, folder);
    return checked.exit() <= Trial.ERROR_FINDINGS ? Trial.of("build", text, folder) : checked;
  }

  Trial checked(String text) {
    return Trial.of("check", text, folder);
  }

  /** Fails if any file met a defect, or was refused without a part at fault and a cure. */
  void requireSound() {
    StringBuilder told = new StringBuilder("from number " + first + ", exit codes " + exits);
    counts.forEach(
        (kind, count) ->
            told.append("\n\n")
                .append(count)
                .append(" of ")
                .append(kind)
                .append('\n')
                .append(examples.get(kind)));
    assertThat(counts).as(told.toString()).isEmpty();
    assertThat(wordless).isEmpty();
  }
}
