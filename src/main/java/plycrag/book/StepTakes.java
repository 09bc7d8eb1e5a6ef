package plycrag.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Taken;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.skin.Piece;
import plycrag.layout.standing.BuildStep;
import plycrag.stock.CutList;
import plycrag.stock.HardwareList;
import plycrag.stock.ScrewDrilling;
import plycrag.units.Count;
import plycrag.units.Tape;
import plycrag.wall.Inserts;
import plycrag.wall.Screws;

/** What each step takes, alike things together, as the lists name them. */
final class StepTakes {
  /** More kinds of one sort than this are looked up in the lists. */
  private static final int MOST = 9;

  /** More marks than this are told by the first and the last. */
  private static final int MARKS = 4;

  private final Layout layout;
  private final Tape tape;
  private final List<CutList.Row> sticks;
  private final Map<String, String> articles = new LinkedHashMap<>();

  StepTakes(CheckedLayout checked) {
    this.layout = checked.layout();
    this.tape = layout.wall().tape();
    this.sticks = CutList.of(checked).rows();
    Table hardware = HardwareList.of(checked);
    for (List<Cell> row : hardware.rows()) {
      articles.put(row.get(0).text(), row.get(1).text());
    }
  }

  /** In the order in which they are used. */
  List<Taken> of(BuildStep step) {
    List<Taken> all = new ArrayList<>(members(step.parts().members()));
    all.addAll(hardware(step.parts().hardware()));
    all.addAll(pieces(step.parts().pieces()));
    inserts(step.parts().inserts(), all);
    screws(step.parts().screws(), all);
    return all;
  }

  private List<Taken> members(List<String> marks) {
    Set<String> wanted = new HashSet<>(marks);
    List<Taken> all = new ArrayList<>();
    for (CutList.Row row : sticks) {
      List<String> own = row.marks().stream().filter(wanted::contains).toList();
      if (!own.isEmpty()) {
        String size = row.section().replace("x", " x ") + ", " + tape.text(row.length());
        all.add(new Taken(marks(own), row.role() + ", " + size));
      }
    }
    return shortened(all, "lists/cut-list.csv");
  }

  private List<Taken> hardware(List<String> marks) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (String mark : marks) {
      counts.merge(articles.get(mark), 1, Integer::sum);
    }
    List<Taken> all = new ArrayList<>();
    counts.forEach((article, count) -> all.add(new Taken(count + " ×", article)));
    return shortened(all, "lists/hardware.csv");
  }

  private static List<Taken> shortened(List<Taken> all, String list) {
    if (all.size() <= MOST) {
      return all;
    }
    List<Taken> few = new ArrayList<>(all.subList(0, MOST - 1));
    few.add(new Taken("and", (all.size() - few.size()) + " other kinds, in " + list));
    return few;
  }

  private List<Taken> pieces(List<String> marks) {
    List<Taken> all = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      for (Piece piece : facet.pieces()) {
        if (marks.contains(piece.mark())) {
          double width = piece.box().getWidth();
          double height = piece.box().getHeight();
          String size = tape.bareSize(width) + " x " + tape.size(height);
          all.add(new Taken(piece.mark(), "of plywood, " + size));
        }
      }
    }
    return all.isEmpty() && !marks.isEmpty()
        ? List.of(new Taken(marks(marks), "strips over gaps"))
        : shortened(all, "lists/sheet-plan.csv");
  }

  private void inserts(List<String> marks, List<Taken> all) {
    if (!marks.isEmpty()) {
      Inserts inserts = layout.wall().inserts();
      String what =
          "inserts "
              + inserts.fastening().thread().word()
              + ", holes "
              + tape.size(inserts.body().hole());
      all.add(new Taken(marks.size() + " ×", what));
    }
  }

  private void screws(List<String> marks, List<Taken> all) {
    if (!marks.isEmpty()) {
      Screws screws = layout.wall().screws();
      ScrewDrilling holes = ScrewDrilling.of(screws);
      String pilot = holes.pilot() > 0 ? ", pilot " + tape.size(holes.pilot()) : ", no pilot";
      String what =
          "screws "
              + tape.bareSize(screws.diameter())
              + " x "
              + tape.size(screws.length())
              + ", holes "
              + tape.size(holes.clearance())
              + pilot;
      all.add(new Taken(marks.size() + " ×", what));
    }
  }

  private static String marks(List<String> marks) {
    return marks.size() <= MARKS
        ? String.join(", ", marks)
        : Count.of(marks.size(), "piece")
            + ": "
            + marks.get(0)
            + " … "
            + marks.get(marks.size() - 1);
  }
}
