package plycrag.check.structure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What the preliminary check of a wall's strength found.
 *
 * @param leftOut why there is none; empty where there is
 * @param lines part by part
 */
public record StructureReport(Optional<String> leftOut, List<StructureLine> lines) {
  /** Copies the lines. */
  public StructureReport {
    lines = List.copyOf(lines);
  }

  public static StructureReport without(String reason) {
    return new StructureReport(Optional.of(reason), List.of());
  }

  /** Of some lines the one of the largest utilisation; empty where none has one. */
  public Optional<StructureLine> governing(Predicate<StructureLine> which) {
    return lines.stream()
        .filter(which)
        .filter(line -> line.utilisation().isPresent())
        .max(Comparator.comparingDouble(line -> line.utilisation().orElseThrow()));
  }

  /** How many lines fail. */
  public int failing() {
    return (int) lines.stream().filter(line -> line.status() instanceof LineStatus.Fails).count();
  }

  /** How many have nothing to be held against. */
  public int unchecked() {
    return (int)
        lines.stream().filter(line -> line.status() instanceof LineStatus.NotChecked).count();
  }
}
