package plycrag.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.check.Inspection;
import plycrag.check.rule.Rule;
import plycrag.document.Book.Block;
import plycrag.document.Book.Listing;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.drawing.room.GussetView;
import plycrag.finding.Finding;
import plycrag.finding.FindingGroup;
import plycrag.layout.frame.EndCut;
import plycrag.layout.frame.Joint;
import plycrag.layout.joints.Gusset;
import plycrag.layout.sheets.CoverStrip;
import plycrag.layout.sheets.LaidGusset;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.solve.fixing.GussetFit;
import plycrag.stock.CutList;
import plycrag.stock.JointHardware;
import plycrag.stock.SawList;
import plycrag.stock.SteelSize;
import plycrag.units.Decimal;
import plycrag.units.Tape;

/** The lists as a person reads them, in the units of the wall's tape. */
final class Listings {
  private Listings() {}

  /** The frame's sticks, of timber of a grade. */
  static Block cutList(CheckedLayout checked, String grade) {
    Tape tape = checked.layout().wall().tape();
    List<List<Cell>> rows = new ArrayList<>();
    for (CutList.Row row : CutList.of(checked).rows()) {
      rows.add(
          List.of(
              Cell.marks(row.marks()),
              Cell.of(row.role()),
              Cell.of(row.section()),
              Cell.of(row.marks().size()),
              Cell.of(tape.text(row.length())),
              Cell.of(ends(row))));
    }
    List<String> columns = List.of("Mark", "Role", "Section, mm", "Pieces", "Length", "Ends");
    return new Listing(
        new Table("Cut list: " + grade + "; lengths over the long points", columns, rows));
  }

  /** Which piece is cut from which sheet. */
  static Block pieces(CheckedLayout checked) {
    Tape tape = checked.layout().wall().tape();
    List<List<Cell>> rows = new ArrayList<>();
    for (LaidSheet sheet : checked.layout().sheets()) {
      for (LaidPiece laid : sheet.pieces()) {
        Envelope box = laid.piece().blank().getEnvelopeInternal();
        rows.add(
            List.of(
                Cell.marks(List.of(laid.piece().mark())),
                Cell.of(sheet.mark()),
                Cell.of(laid.facet()),
                Cell.of(tape.reading(box.getWidth()) + " x " + tape.text(box.getHeight()))));
      }
    }
    List<String> columns = List.of("Mark", "Sheet", "Facet", "Size as cut, across and up");
    return new Listing(new Table("Pieces of the sheets", columns, rows));
  }

  private static String ends(CutList.Row row) {
    String low = end(row.lowEnd());
    String high = end(row.highEnd());
    return low.equals("0°") && high.equals("0°") ? "square" : low + ", " + high;
  }

  /** The blade's tilt and, after a slash, the mitre, if there is one. */
  private static String end(EndCut end) {
    String tilt = Decimal.of(Math.abs(end.tilt()), 1) + "°";
    String mitre = Decimal.of(Math.abs(end.mitre()), 1);
    String both = mitre.equals("0") ? tilt : tilt + " / " + mitre + "° mitre";
    return end.isPointed() ? both + ", pointed" : both;
  }

  /** What covers gaps at folds; nothing if none are left. */
  static List<Block> coverStrips(CheckedLayout checked) {
    Tape tape = checked.layout().wall().tape();
    List<List<Cell>> rows = new ArrayList<>();
    for (CoverStrip strip : checked.layout().offcuts().strips()) {
      rows.add(
          List.of(
              Cell.of(strip.mark()),
              Cell.of(strip.over()),
              Cell.of(tape.reading(strip.length()) + " x " + tape.text(strip.width())),
              Cell.of(strip.from())));
    }
    List<String> columns = List.of("Mark", "Over the gap", "Size", "From");
    return rows.isEmpty()
        ? List.of()
        : List.of(new Listing(new Table("Cover strips", columns, rows)));
  }

  /** What holds joints that no bracket does; nothing if there are none. */
  static List<Block> gussets(CheckedLayout checked) {
    Tape tape = checked.layout().wall().tape();
    List<List<Cell>> rows = new ArrayList<>();
    for (List<LaidGusset> alike : GussetView.alike(checked)) {
      Gusset gusset = alike.get(0).gusset();
      GussetFit fit = gusset.fit();
      rows.add(
          List.of(
              Cell.of(joined(alike, one -> one.gusset().mark())),
              Cell.of(joined(alike, one -> String.join("+", one.gusset().members()))),
              Cell.of(tape.reading(fit.size().along()) + " x " + tape.text(fit.size().across())),
              Cell.of(
                  fit.screws().size()
                      + " of "
                      + tape.bareSize(fit.diameter())
                      + " x "
                      + tape.size(fit.screwLength())),
              Cell.of(joined(alike, LaidGusset::from))));
    }
    List<String> columns = List.of("Mark", "Over", "Size", "Screws", "From");
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new Listing(
                new Table(
                    "Gussets of plywood, alike ones together; where their holes are stands in"
                        + " drawings/drawings.pdf",
                    columns,
                    rows)));
  }

  private static String joined(List<LaidGusset> alike, Function<LaidGusset, String> what) {
    return alike.stream().map(what).distinct().collect(Collectors.joining(", "));
  }

  /** The cuts for which the saw is tilted, alike ones together; nothing if there are none. */
  static List<Block> sawList(CheckedLayout checked) {
    Tape tape = checked.layout().wall().tape();
    Map<List<String>, List<String>> groups = new LinkedHashMap<>();
    for (SawList.Cut cut : SawList.of(checked).cuts()) {
      String angle = Decimal.of(cut.angle(), 1) + "°";
      String longer = cut.longer() + " by " + tape.text(cut.difference());
      List<String> alike = List.of(cut.what(), angle, longer);
      groups.computeIfAbsent(alike, unseen -> new ArrayList<>()).add(cut.part());
    }
    List<List<Cell>> rows = new ArrayList<>();
    groups.forEach(
        (alike, parts) ->
            rows.add(
                List.of(
                    Cell.of(String.join(" ", parts)),
                    Cell.of(alike.get(0)),
                    Cell.of(alike.get(1)),
                    Cell.of(alike.get(2)))));
    List<String> columns = List.of("Mark", "Cut", "From square", "Longer");
    return rows.isEmpty()
        ? List.of()
        : List.of(new Listing(new Table("Saw list: cuts with the saw tilted", columns, rows)));
  }

  /** Joints that are made alike. */
  private record Alike(String how, String taken) {}

  /** The joints of the frame, alike ones together. */
  static Block joints(CheckedLayout checked) {
    Map<Alike, List<String>> groups = new LinkedHashMap<>();
    for (Joint joint : checked.layout().joints()) {
      JointHardware hardware = JointHardware.of(joint, checked.layout());
      String pair = joint.first() + "–" + joint.second();
      String taken =
          hardware.gussets().isEmpty() ? taken(hardware, checked) : "gussets of plywood, as below";
      groups
          .computeIfAbsent(new Alike(joint.kind().words(), taken), unseen -> new ArrayList<>())
          .add(pair);
    }
    List<List<Cell>> rows = new ArrayList<>();
    groups.forEach(
        (alike, pairs) ->
            rows.add(
                List.of(
                    Cell.of(alike.how()),
                    Cell.of(String.join(", ", pairs)),
                    Cell.of(alike.taken()))));
    List<String> columns = List.of("How they meet", "Members", "Each takes");
    return new Listing(new Table("Joints of the frame", columns, rows));
  }

  private static String taken(JointHardware hardware, CheckedLayout checked) {
    if (hardware.kind() == JointHardware.Kind.OTHERS) {
      return "nothing of its own: held through " + String.join(", ", hardware.others());
    }
    String what = hardware.count() + " × " + hardware.kind().word();
    return hardware
        .steel()
        .map(fit -> what + " " + SteelSize.words(fit, checked.layout().wall().tape()))
        .orElseGet(() -> hardware.isSteel() ? what + ", none of the catalogue fits" : what);
  }

  /** The marking out of one part, or of all parts that a name fits. */
  static Block markingOut(String title, List<List<Cell>> rows) {
    List<List<Cell>> forReading = new ArrayList<>();
    for (List<Cell> row : rows) {
      String line =
          row.get(2).text().isEmpty() ? "" : row.get(3).text() + " from " + row.get(2).text();
      forReading.add(
          List.of(
              row.get(0),
              row.get(1),
              Cell.of(line),
              Cell.of(row.get(5).text() + ", from " + row.get(4).text())));
    }
    List<String> columns = List.of("On", "What", "Line at", "Readings");
    return new Listing(new Table(title, columns, forReading));
  }

  /** What was checked, and what came of it. */
  static Block rules(CheckedLayout checked) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Rule rule : Inspection.rules()) {
      long found =
          checked.findings().stream().filter(one -> one.rule().equals(rule.name())).count();
      rows.add(List.of(Cell.of(rule.name()), Cell.of(rule.promise()), Cell.of((int) found)));
    }
    return new Listing(new Table("What was checked", List.of("Rule", "Promise", "Findings"), rows));
  }

  /** The findings under the numbers that the drawings show, equal ones under one. */
  static Block findings(CheckedLayout checked) {
    List<List<Cell>> rows = new ArrayList<>();
    for (FindingGroup group : checked.groups()) {
      Finding finding = group.first();
      rows.add(
          List.of(
              Cell.of(rows.size() + 1),
              Cell.of(finding.severity().word()),
              Cell.of(where(group)),
              Cell.of(sentence(group.sentence())),
              Cell.of(finding.suggestion().isEmpty() ? "" : sentence(finding.suggestion()))));
    }
    List<String> columns = List.of("No.", "Kind", "Facet", "Finding", "What would mend it");
    return new Listing(new Table("Findings", columns, rows));
  }

  private static String where(FindingGroup group) {
    return String.join(", ", group.facets());
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
