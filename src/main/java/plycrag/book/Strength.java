package plycrag.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.check.CheckedLayout;
import plycrag.check.structure.Assumptions;
import plycrag.check.structure.StructureLine;
import plycrag.check.structure.StructureReport;
import plycrag.document.Book.Block;
import plycrag.document.Book.Caution;
import plycrag.document.Book.Link;
import plycrag.document.Book.Listing;
import plycrag.document.Book.Paragraph;
import plycrag.document.Book.Points;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.units.Significant;

/** The preliminary check of strength: what governs, the worst of each kind, what was assumed. */
final class Strength {
  /** The number of a part, which its kind has not. */
  private static final String NUMBER = "[0-9].*";

  private static final double HALF = 0.5;

  private final CheckedLayout checked;
  private final StructureReport report;

  Strength(CheckedLayout checked) {
    this.checked = checked;
    this.report = checked.structure();
  }

  /** The chapter; none where nothing was reckoned. */
  List<Block> blocks() {
    if (report.lines().isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Caution(
            "Preliminary.",
            "This is a first reckoning that shows its work, made before an engineer's and not in"
                + " its place. It knows the loads below and no others, and what it does not check is"
                + " not strong for that."));
    blocks.add(new Paragraph(summary()));
    report.governing(line -> true).ifPresent(line -> blocks.add(new Paragraph(inFull(line))));
    report
        .governing(StructureLine::hasFormula)
        .filter(line -> !report.governing(one -> true).equals(Optional.of(line)))
        .ifPresent(line -> blocks.add(new Paragraph(inFull(line))));
    blocks.add(kinds());
    blocks.add(new Paragraph("What was assumed, each to be put right in [structure]:"));
    blocks.add(new Points(Assumptions.of(checked.layout())));
    blocks.add(new Link("Every line, for an engineer", "checks/structure.csv"));
    return blocks;
  }

  /** In a sentence or two. */
  private String summary() {
    String counts =
        report.lines().size()
            + " lines: "
            + report.failing()
            + " fail, "
            + report.unchecked()
            + " are not checked.";
    return report.governing(line -> true).map(line -> governs(line) + " " + counts).orElse(counts);
  }

  private static String governs(StructureLine line) {
    return "What governs: "
        + line.part()
        + ", "
        + line.check()
        + ", with "
        + Significant.of(line.utilisation().orElseThrow())
        + " times what it bears.";
  }

  /** As an engineer redoes it. */
  private static String inFull(StructureLine line) {
    return line.part()
        + ", "
        + line.check()
        + ": "
        + line.reckoning()
        + " Loads: "
        + line.loadCase()
        + ".";
  }

  /** The worst line of each kind of part and check. */
  private Block kinds() {
    Map<String, StructureLine> worst = new LinkedHashMap<>();
    for (StructureLine line : report.lines()) {
      worst.merge(kind(line), line, Strength::worse);
    }
    List<List<Cell>> rows =
        worst.values().stream().filter(Strength::isWorthReading).map(Strength::row).toList();
    List<String> columns = List.of("Part", "Check", "Demand", "Bears", "Part of it", "Result");
    String title =
        "The worst line of each kind of part, if it takes half of what it bears or more, or could"
            + " not be checked";
    return new Listing(new Table(title, columns, rows));
  }

  private static boolean isWorthReading(StructureLine line) {
    return line.utilisation().map(part -> part >= HALF).orElse(true);
  }

  private static String kind(StructureLine line) {
    return line.part().replaceAll(NUMBER, "") + " " + line.check().replaceAll(" [0-9].*", "");
  }

  private static StructureLine worse(StructureLine one, StructureLine other) {
    return weight(other) > weight(one) ? other : one;
  }

  private static double weight(StructureLine line) {
    return line.utilisation().orElse(line.demand());
  }

  private static List<Cell> row(StructureLine line) {
    String unit = line.unit().isEmpty() ? "" : " " + line.unit();
    return List.of(
        Cell.of(line.part()),
        Cell.of(line.check()),
        Cell.of(line.demand() == 0 ? "" : Significant.of(line.demand()) + unit),
        Cell.of(line.capacity().map(one -> Significant.of(one) + unit).orElse("")),
        Cell.of(line.utilisation().map(Significant::of).orElse("")),
        Cell.of(line.status().words()));
  }
}
