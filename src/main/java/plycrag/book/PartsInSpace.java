package plycrag.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.WallPage.Part;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Hardware;
import plycrag.layout.skin.Piece;
import plycrag.layout.standing.Assembly.Step;
import plycrag.layout.standing.Assembly.Task;
import plycrag.layout.support.PlacedMember;
import plycrag.units.Tape;
import plycrag.wall.buying.Section;

/** What is told of each part of a wall, and in which step it comes. */
final class PartsInSpace {
  private static final String HOLES = "lists/holes.csv";

  private final Layout layout;
  private final Tape tape;
  private final Map<String, Integer> steps = new HashMap<>();
  private final Map<String, Integer> sheeting = new HashMap<>();
  private final List<Part> parts = new ArrayList<>();

  PartsInSpace(Layout layout, List<Step> steps) {
    this.layout = layout;
    this.tape = layout.wall().tape();
    for (int at = 0; at < steps.size(); at++) {
      take(steps.get(at), at + 1);
    }
  }

  /** A part comes where it is first named: one that is raised was joined before. */
  private void take(Step step, int number) {
    step.marks().forEach(mark -> steps.putIfAbsent(mark, number));
    if (step.task() == Task.SHEETS) {
      sheeting.put(step.facet(), number);
    }
  }

  /** By marks as the model has them. */
  List<Part> all() {
    layout.facets().forEach(this::addFacet);
    layout.standing().stream().map(PlacedMember::member).forEach(this::addMember);
    layout.hardware().forEach(this::addHardware);
    return List.copyOf(parts);
  }

  private void addFacet(FacetLayout facet) {
    int sheets = sheeting.getOrDefault(facet.facet().name(), 0);
    facet.pieces().forEach(piece -> addPiece(piece, sheets));
    facet.members().forEach(this::addMember);
    facet.inserts().forEach(one -> parts.add(new Part(one.mark(), "insert", HOLES, sheets)));
    facet
        .screws()
        .forEach(one -> parts.add(new Part(one.mark(), "screw through the sheet", HOLES, sheets)));
  }

  private void addPiece(Piece piece, int step) {
    Envelope size = piece.outline().getEnvelopeInternal();
    String what =
        "piece of a sheet, " + tape.bareSize(size.getWidth()) + " x " + tape.size(size.getHeight());
    parts.add(new Part(piece.mark(), what, "lists/sheet-plan.csv", step));
  }

  private void addMember(Member member) {
    Section section = layout.sections().of(member);
    String what =
        member.role().word()
            + ", "
            + tape.bareSize(section.smaller())
            + " x "
            + tape.size(section.greater())
            + ", "
            + tape.text(member.length())
            + " long";
    parts.add(new Part(member.mark(), what, "lists/cut-list.csv", step(member.mark())));
  }

  /** It comes with the last of what it holds. */
  private void addHardware(Hardware piece) {
    int step = piece.members().stream().mapToInt(this::step).max().orElse(0);
    String what = piece.kind().word() + " at " + String.join(" and ", piece.members());
    parts.add(
        new Part(piece.mark(), what, "lists/hardware.csv", steps.getOrDefault(piece.mark(), step)));
  }

  private int step(String mark) {
    return steps.getOrDefault(mark, 0);
  }
}
