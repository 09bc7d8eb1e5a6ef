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
import plycrag.layout.standing.BuildStep;
import plycrag.layout.support.PlacedMember;
import plycrag.units.Tape;
import plycrag.wall.buying.Section;

/** What is told of each part of a wall, and in which step it comes. */
final class PartsInSpace {
  private static final String HOLES = "lists/holes.csv";

  private final Layout layout;
  private final Tape tape;
  private final Map<String, Integer> steps = new HashMap<>();
  private final List<Part> parts = new ArrayList<>();

  PartsInSpace(Layout layout, List<BuildStep> steps) {
    this.layout = layout;
    this.tape = layout.wall().tape();
    for (int at = 0; at < steps.size(); at++) {
      int number = at + 1;
      steps.get(at).parts().all().forEach(mark -> this.steps.put(mark, number));
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
    facet.pieces().forEach(this::addPiece);
    facet.members().forEach(this::addMember);
    facet.inserts().forEach(one -> add(one.mark(), "insert", HOLES));
    facet.screws().forEach(one -> add(one.mark(), "screw through the sheet", HOLES));
  }

  private void add(String mark, String what, String list) {
    parts.add(new Part(mark, what, list, steps.getOrDefault(mark, 0)));
  }

  private void addPiece(Piece piece) {
    Envelope size = piece.outline().getEnvelopeInternal();
    String what =
        "piece of a sheet, " + tape.bareSize(size.getWidth()) + " x " + tape.size(size.getHeight());
    add(piece.mark(), what, "lists/sheet-plan.csv");
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
    add(member.mark(), what, "lists/cut-list.csv");
  }

  private void addHardware(Hardware piece) {
    String what = piece.kind().word() + " at " + String.join(" and ", piece.members());
    add(piece.mark(), what, "lists/hardware.csv");
  }
}
