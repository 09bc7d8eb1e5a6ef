package plycrag.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plycrag.catalog.ScrewCatalog;
import plycrag.catalog.SoldScrew.Use;
import plycrag.layout.Layout;
import plycrag.layout.joints.Hardware;
import plycrag.layout.joints.Hardware.Anchored;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.Tether;
import plycrag.layout.support.WallSupport;
import plycrag.prices.Article;
import plycrag.stock.Need.Amount;
import plycrag.units.Tape;
import plycrag.wall.Inserts;
import plycrag.wall.Inserts.Fixing;
import plycrag.wall.JointFasteners;
import plycrag.wall.Screws;
import plycrag.wall.Wall;
import plycrag.wall.buying.MaterialWishes.Environment;

/** The inserts, the screws and the steel of a wall. */
final class HardwareNeeds {
  private final Layout layout;
  private final Wall wall;
  private final Tape tape;
  private final String coating;
  private final Map<JointHardware.Kind, Integer> counts;
  private final List<Need> needs = new ArrayList<>();

  HardwareNeeds(Layout layout, Environment environment) {
    this.layout = layout;
    this.wall = layout.wall();
    this.tape = wall.tape();
    this.counts = JointHardware.counts(layout);
    this.coating = Coating.words(environment);
  }

  List<Need> needs() {
    addInserts();
    addScrews();
    addGussetScrews();
    addBrackets();
    addBolts();
    addSupport();
    return needs;
  }

  private void addInserts() {
    Inserts insert = wall.inserts();
    int count = layout.inserts().size();
    boolean screwed = insert.fastening().kind() == Fixing.SCREW_ON;
    String thread = insert.fastening().thread().word();
    String size =
        thread
            + ", hole "
            + tape.size(insert.body().hole())
            + ", flange "
            + tape.size(insert.body().flange())
            + ", barrel "
            + tape.size(insert.body().barrel());
    String what = screwed ? "T-nut, screwed on" : "T-nut with prongs, hammered in";
    Amount amount = Amount.withSpare(count);
    add("inserts", what, size, amount, Sourcing.of(Article.INSERT, insert.body().hole()));
    int screws = screwed ? insert.fastening().flangeScrews() : 0;
    double most = insert.under(wall.sheet().thickness()) - wall.clearance().barrelToFace();
    add(
        "inserts",
        "screw for flanges",
        "at most " + tape.size(most) + " long",
        new Amount(BigDecimal.valueOf((long) count * screws), "piece", amount.spare() * screws),
        Sourcing.of(Article.FLANGE_SCREW));
    needs.add(
        new Need(
            "holds",
            "bolt for a hold, one an insert",
            thread,
            amount,
            Sourcing.of(Article.HOLD_BOLT),
            "head and length as the holds ask; fewer if holds are fewer"));
  }

  private void addScrews() {
    Screws screw = wall.screws();
    add(
        "screws",
        "countersunk wood screw, sheet to frame",
        size(screw.diameter(), screw.length()),
        Amount.pieces(layout.screws().size()),
        Sourcing.of(Article.SHEET_SCREW, screw.diameter(), screw.length()));
    noteDrive(Use.SHEET, screw.diameter(), screw.length());
  }

  /** Adds to the last line how the screw is driven, where the catalogue has it. */
  private void noteDrive(Use use, double diameter, double length) {
    int last = needs.size() - 1;
    ScrewCatalog.find(use, diameter, length)
        .map(sold -> coating + "; " + sold.head() + " head, drive " + sold.drive())
        .ifPresent(note -> needs.set(last, needs.get(last).noting(note)));
  }

  /** Through gussets into the timber under them. */
  private void addGussetScrews() {
    GussetList.screws(layout.fixings().gussets())
        .forEach(
            (screw, count) -> {
              add(
                  "screws",
                  "countersunk wood screw, gusset to frame",
                  screw.size(tape),
                  Amount.pieces(count),
                  Sourcing.of(Article.SHEET_SCREW, screw.diameter(), screw.length()));
              noteDrive(Use.SHEET, screw.diameter(), screw.length());
            });
  }

  private void addBrackets() {
    SteelCounts steel = SteelCounts.of(layout);
    steel.pieces().forEach((piece, count) -> addSteel(piece, count));
    steel
        .screws()
        .forEach(
            (screw, count) ->
                addPieces(
                    "pan-head screw for brackets and straps",
                    screw.size(tape),
                    count,
                    screw.sourcing()));
  }

  private void addSteel(SteelCounts.Piece piece, int count) {
    String size = piece.fit().map(fit -> SteelSize.words(fit, tape)).orElse("");
    Double[] sides =
        piece.fit().map(fit -> SteelSize.sides(fit.steel())).orElseGet(() -> new Double[0]);
    switch (piece.kind()) {
      case BRACKET ->
          addPieces(HardwareWords.BRACKET, size, count, Sourcing.of(Article.BRACKET, sides));
      case STRAP -> addPieces(HardwareWords.STRAP, size, count, Sourcing.of(Article.STRAP, sides));
      default -> addPieces(HardwareWords.HINGE, size, count, Sourcing.of(Article.HINGE, sides));
    }
    String noted =
        piece
            .fit()
            .map(fit -> SteelSize.requirement(fit.steel()))
            .orElse("none of the catalogue fits");
    if (!noted.isEmpty()) {
      int last = needs.size() - 1;
      needs.set(last, needs.get(last).noting(coating + "; " + noted));
    }
  }

  private void addBolts() {
    JointFasteners joints = wall.joints();
    BoltSize needed = BoltSize.of(wall);
    double diameter = needed.diameter();
    int bolts = counts.getOrDefault(JointHardware.Kind.BOLT, 0);
    String size = tape.size(diameter);
    String length =
        needed
            .length()
            .map(sold -> tape.text(sold) + " under the head; ")
            .orElse("at least " + tape.text(tape.snapUp(needed.least())) + " under the head; ");
    String bolt = HardwareWords.bolt(needed, tape);
    addPieces(bolt, size, bolts, Sourcing.of(Article.BOLT, diameter));
    int last = needs.size() - 1;
    needs.set(last, needs.get(last).noting(length + coating));
    addPieces("washer for timber", size, 2 * bolts, Sourcing.of(Article.WASHER, diameter));
    addPieces("nut", size, bolts, Sourcing.of(Article.NUT, diameter));
    addPieces(
        HardwareWords.SCREW,
        size(joints.screws().diameter(), joints.screws().length()),
        counts.getOrDefault(JointHardware.Kind.SCREW, 0),
        Sourcing.of(Article.JOINT_SCREW, joints.screws().diameter(), joints.screws().length()));
    noteDrive(Use.MEMBER, joints.screws().diameter(), joints.screws().length());
  }

  /** What holds it to the building, and what it swings on. */
  private void addSupport() {
    if (layout.support().isPresent()) {
      WallSupport support = layout.support().get();
      for (Anchor.Into into : Anchor.Into.values()) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        anchors()
            .filter(one -> one.anchor().into() == into)
            .map(one -> HardwareWords.anchor(one, layout.wall().tape()))
            .forEach(what -> counts.merge(what, 1, Integer::sum));
        counts.forEach((what, count) -> addPieces(what, "", count, Sourcing.of(Article.ANCHOR)));
      }
      Map<Boolean, List<Tether>> tethers =
          support.tethers().stream()
              .collect(Collectors.partitioningBy(one -> one.task() == Tether.Task.LOCK));
      addPieces(HardwareWords.TETHER, "", tethers.get(false).size(), Sourcing.of(Article.TETHER));
      addPieces(HardwareWords.LOCK, "", tethers.get(true).size(), Sourcing.of(Article.LOCK));
    }
  }

  private Stream<Anchored> anchors() {
    return layout.hardware().stream()
        .map(Hardware::form)
        .filter(Anchored.class::isInstance)
        .map(Anchored.class::cast);
  }

  private void addPieces(String what, String size, int count, Sourcing sourcing) {
    add("hardware", what, size, Amount.pieces(count), sourcing);
  }

  private void add(String group, String what, String size, Amount amount, Sourcing sourcing) {
    needs.add(new Need(group, what, size, amount, sourcing, coating));
  }

  private String size(double one, double other) {
    return tape.bareSize(one) + " x " + tape.size(other);
  }
}
