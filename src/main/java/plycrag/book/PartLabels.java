package plycrag.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.LabelSheet;
import plycrag.document.LabelSheet.Label;
import plycrag.drawing.pen.TitleLines;
import plycrag.layout.Layout;
import plycrag.layout.MemberSections;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Gusset;
import plycrag.layout.sheets.CoverStrip;
import plycrag.layout.sheets.LaidGusset;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.skin.Piece;
import plycrag.solve.fixing.FacePlace;
import plycrag.stock.Stick;
import plycrag.stock.StickPlan;
import plycrag.units.Tape;
import plycrag.wall.buying.Section;

/**
 * A label for every part: its mark, its size, where it belongs what it is fixed to and what lies
 * beside it.
 */
public final class PartLabels {
  private final CheckedLayout checked;
  private final Layout layout;
  private final MemberSections sections;
  private final Tape tape;
  private final Map<String, Set<String>> neighbours = new LinkedHashMap<>();
  private final Map<String, String> sources = new LinkedHashMap<>();

  private PartLabels(CheckedLayout checked, StickPlan plan) {
    this.checked = checked;
    this.layout = checked.layout();
    this.sections = layout.sections();
    this.tape = layout.wall().tape();
    for (Joint joint : layout.joints()) {
      meet(joint.first(), joint.second());
      meet(joint.second(), joint.first());
    }
    layout.screws().forEach(screw -> meet(screw.piece(), screw.member()));
    for (Stick stick : plan.sticks()) {
      stick.cuts().forEach(cut -> sources.put(cut.member().mark(), "from stick " + stick.number()));
    }
    for (LaidSheet sheet : layout.sheets()) {
      sheet
          .pieces()
          .forEach(laid -> sources.put(laid.piece().mark(), "from sheet " + sheet.mark()));
    }
  }

  /** The labels: members, pieces facet by facet, what is cut from offcuts. */
  public static LabelSheet of(CheckedLayout checked, StickPlan plan) {
    return new PartLabels(checked, plan).sheet();
  }

  private void meet(String part, String other) {
    neighbours.computeIfAbsent(part, unseen -> new LinkedHashSet<>()).add(other);
  }

  private LabelSheet sheet() {
    List<Label> labels = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      String name = facet.facet().name();
      facet.members().forEach(member -> labels.add(label(member, "Facet " + name)));
    }
    layout.standing().forEach(placed -> labels.add(label(placed.member(), "Support")));
    for (FacetLayout facet : layout.facets()) {
      String name = facet.facet().name();
      Seams seams = new Seams(facet, layout.wall().sheet().seams().gap());
      facet.pieces().forEach(piece -> labels.add(label(piece, "Facet " + name, seams)));
    }
    layout.offcuts().gussets().forEach(laid -> labels.add(label(laid)));
    layout.offcuts().strips().forEach(strip -> labels.add(label(strip)));
    String stamp = checked.isApproved() ? "" : TitleLines.STAMP;
    return new LabelSheet(layout.wall().name(), stamp, TitleLines.BOULDERING, labels);
  }

  private Label label(Member member, String where) {
    Section section = sections.of(member);
    String what =
        member.role().word()
            + ", "
            + tape.bareSize(section.breadth())
            + " x "
            + tape.size(section.depth())
            + ", "
            + tape.text(member.length())
            + " long";
    return label(member.mark(), what, where, "Joined to ");
  }

  private Label label(Piece piece, String where, Seams seams) {
    Envelope box = piece.blank().getEnvelopeInternal();
    String what =
        "piece, "
            + tape.reading(box.getWidth())
            + " across x "
            + tape.text(box.getHeight())
            + " up, "
            + tape.size(layout.wall().sheet().thickness())
            + " thick";
    Label label = label(piece.mark(), what, where, "Screwed to ");
    String beside = (label.neighbours() + " " + seams.words(piece)).strip();
    return new Label(label.mark(), what, label.where(), beside);
  }

  private Label label(LaidGusset laid) {
    Gusset gusset = laid.gusset();
    FacePlace size = gusset.fit().size();
    String what = "gusset, " + tape.reading(size.along()) + " x " + tape.text(size.across());
    String over = "Over " + String.join(" ", gusset.members()) + ".";
    String where = "On the " + gusset.side().words() + ", from " + laid.from() + ".";
    return new Label(gusset.mark(), what, where, over);
  }

  private Label label(CoverStrip strip) {
    String size = tape.reading(strip.length()) + " x " + tape.text(strip.width());
    String gap = "Over the gap " + strip.over() + ".";
    return new Label(strip.mark(), "cover strip, " + size, "From " + strip.from() + ".", gap);
  }

  private Label label(String mark, String what, String where, String how) {
    String source = sources.containsKey(mark) ? ", " + sources.get(mark) : "";
    Set<String> others = neighbours.getOrDefault(mark, Set.of());
    String to = others.isEmpty() ? "" : how + String.join(" ", inOrder(others)) + ".";
    return new Label(mark, what, where + source + ".", to);
  }

  /** In the order in which the layout lists members. */
  private List<String> inOrder(Set<String> marks) {
    return layout.members().stream().map(Member::mark).filter(marks::contains).toList();
  }
}
