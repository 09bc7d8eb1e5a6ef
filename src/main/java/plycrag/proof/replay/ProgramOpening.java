package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a program says around its moves. */
final class ProgramOpening {
  private final Set<String> words = new HashSet<>();
  private Optional<Integer> number = Optional.empty();
  private int percents;
  private boolean told;
  private boolean moved;

  void addPercent() {
    percents++;
  }

  /** Takes the program's number over, which stands before all else. */
  void number(String text) throws ReadingException {
    require(text.matches("O[0-9]{4}"), "no program's number: " + text);
    require(!told && number.isEmpty(), "a program's number after its beginning");
    number = Optional.of(Integer.valueOf(text.substring(1)));
  }

  /** Takes a line over, up to the first that names a place. */
  void add(ProgramLine line) {
    told = true;
    moved |= line.words().stream().anyMatch(word -> "XYZ".indexOf(word.letter()) >= 0);
    if (!moved) {
      line.words().forEach(word -> words.add(word.text()));
    }
  }

  /** What is wanted and not so. */
  List<String> faults(Customs customs) {
    List<String> faults = new ArrayList<>();
    if (percents == 1 || (customs.percent() && percents == 0)) {
      faults.add("a percent sign does not stand first and last");
    }
    if (!number.equals(customs.number())) {
      faults.add("not the program's number");
    }
    customs.words().stream()
        .filter(word -> !words.contains(word))
        .forEach(word -> faults.add("does not say before its first motion: " + word));
    return faults;
  }
}
