package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plycrag.check.CheckedLayout;
import plycrag.check.Inspection;
import plycrag.document.Book;
import plycrag.document.Book.Block;
import plycrag.document.Book.Facts;
import plycrag.document.Book.Figure;
import plycrag.document.Book.Link;
import plycrag.document.Book.Paragraph;
import plycrag.document.Book.Points;
import plycrag.document.Book.Section;
import plycrag.drawing.Portfolio;
import plycrag.drawing.pen.TitleLines;
import plycrag.drawing.pen.ViewKind;
import plycrag.drawing.room.ClimbingView;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.stock.Costs;
import plycrag.stock.JobFigures;
import plycrag.stock.ScrewDrilling;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;
import plycrag.units.Count;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.Screws;

/** Writes the build book of a checked layout. */
public final class BuildBook {
  private final CheckedLayout checked;
  private final StickPlan plan;
  private final ShoppingList shopping;
  private final Figures figures;
  private final Layout layout;
  private final Tape tape;

  private BuildBook(
      CheckedLayout checked, StickPlan plan, ShoppingList shopping, Portfolio portfolio) {
    this.checked = checked;
    this.plan = plan;
    this.shopping = shopping;
    this.figures = new Figures(portfolio);
    this.layout = checked.layout();
    this.tape = layout.wall().tape();
  }

  /**
   * The book.
   *
   * @param portfolio where its figures are
   */
  public static Book of(
      CheckedLayout checked, StickPlan plan, ShoppingList shopping, Portfolio portfolio) {
    return new BuildBook(checked, plan, shopping, portfolio).book();
  }

  private Book book() {
    List<Section> sections = new ArrayList<>();
    Making parts = new Making(checked, figures);
    sections.add(new Section("The wall", first()));
    if (!checked.findings().isEmpty()) {
      sections.add(new Section("Findings", findings()));
    }
    sections.add(new Section("Buy", new Buying(checked, plan, shopping).blocks()));
    sections.add(new Section("Cut the timber", cutting()));
    sections.add(new Section("Build it, step by step", new StepPages(checked).blocks()));
    sections.add(new Section("Frames and joints", parts.frame()));
    sections.add(new Section("Where it stands", new StandingUp(checked, figures).blocks()));
    sections.add(new Section("Mark and drill the sheets", parts.sheets()));
    sections.add(new Section("Inserts and screws", holes()));
    sections.add(new Section("Why the inserts are where they are", placing()));
    List<Block> strength = new Strength(checked).blocks();
    if (!strength.isEmpty()) {
      sections.add(new Section("Its strength, reckoned beforehand", strength));
    }
    sections.add(new Section("What was checked", reference()));
    sections.add(new Section("Use it and look after it", List.of(Cautions.use())));
    String stamp = checked.isApproved() ? "" : TitleLines.STAMP;
    return new Book(layout.wall().name(), subtitle(), stamp, Cautions.FOOTER, sections);
  }

  private String subtitle() {
    return "Build book. " + TitleLines.support(checked) + ".";
  }

  /** What a partner or a landlord understands at once. */
  private List<Block> first() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Figure(ClimbingView.onPage(checked), "The climbing side, and a person beside it."));
    JobFigures job = JobFigures.of(layout, plan, shopping);
    blocks.add(new Facts(new WallFacts(checked).all(job, Costs.of(shopping))));
    blocks.addAll(Cautions.cover(checked));
    layout.facets().forEach(facet -> blocks.add(new Paragraph(size(facet.facet()))));
    blocks.add(
        new Paragraph(
            "Checked: "
                + Inspection.rules().size()
                + " rules of set-out and making. Not checked: "
                + String.join("; ", Cautions.notChecked(checked))
                + ". Those are yours to see to."));
    return blocks;
  }

  private List<Block> reference() {
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(figures.of(ViewKind.SECTION, "How it stands. Heights are above the floor."));
    blocks.addAll(figures.of(ViewKind.PLAN, "What it takes of the floor."));
    blocks.add(Listings.rules(checked));
    blocks.add(new Link("All drawings, to print at scale", "drawings/drawings.pdf"));
    blocks.add(new Link("The wall in space, for other programs", "model.glb"));
    blocks.add(new Link("This book, to print", "build-book.pdf"));
    return blocks;
  }

  private String size(Facet facet) {
    String lean =
        facet.leans()
            ? (facet.angle() > 0 ? ", leaning out " : ", leaning back ")
                + Decimal.of(Math.abs(facet.angle()), 2)
                + "° from vertical"
            : ", vertical";
    return "Facet "
        + facet.name()
        + ": "
        + tape.text(facet.width())
        + " wide, "
        + tape.text(facet.length())
        + " up the slope"
        + lean
        + ", its lower edge "
        + tape.text(facet.raise())
        + " and its upper edge "
        + tape.text(facet.overallHeight())
        + " above the floor."
        + corners(facet)
        + beside(facet);
  }

  /** Where its corners lie, if it is no rectangle. */
  private String corners(Facet facet) {
    if (facet.isRectangle()) {
      return "";
    }
    String places =
        Stream.of(facet.boundary().getCoordinates())
            .skip(1)
            .map(place -> tape.reading(place.x) + " / " + tape.reading(place.y))
            .collect(Collectors.joining("; "));
    return " Its corners, from its left and up the slope: " + places + ".";
  }

  /** What it meets on its left. */
  private static String beside(Facet facet) {
    return facet.folds(Fold.Place.LEFT).stream()
        .map(
            fold ->
                " It meets facet "
                    + fold.other()
                    + " in a corner on its left, where the climbing faces enclose "
                    + Decimal.of(180 - fold.turn(), 1)
                    + "°.")
        .collect(Collectors.joining());
  }

  private List<Block> findings() {
    String verdict =
        checked.isApproved()
            ? "Nothing forbids making this wall."
            : forbidding(checked.findings(Severity.ERROR).size())
                + " making this wall. No program was written.";
    return List.of(
        new Paragraph(verdict + " The numbers stand beside the rings on the drawings."),
        Listings.findings(checked));
  }

  private static String forbidding(int errors) {
    return Count.of(errors, "finding") + (errors == 1 ? " forbids" : " forbid");
  }

  private List<Block> placing() {
    List<Block> blocks = new ArrayList<>();
    for (SettingOut.Told told : SettingOut.of(layout)) {
      blocks.add(new Paragraph("Facet " + told.facet() + ". " + told.summary()));
      if (!told.lines().isEmpty()) {
        blocks.add(new Points(told.lines()));
      }
    }
    if (!layout.screwPoints().isEmpty()) {
      blocks.add(Cautions.screwedHolds());
    }
    return blocks;
  }

  private List<Block> cutting() {
    List<Block> blocks =
        new ArrayList<>(new Sawing(checked, plan, shopping.grade(), figures).blocks());
    blocks.addAll(Listings.sawList(checked));
    blocks.add(new Link("Labels for every part, to print and cut out", "labels.html"));
    return blocks;
  }

  private List<Block> holes() {
    List<Block> blocks = new ArrayList<>();
    String depth = tape.size(layout.wall().sheet().thickness());
    blocks.add(
        new Paragraph(
            "Inserts go in from the back. The holes are "
                + tape.size(layout.wall().inserts().body().hole())
                + " through a sheet of "
                + depth
                + "."));
    Screws screws = layout.wall().screws();
    ScrewDrilling holes = ScrewDrilling.of(screws);
    String pilot =
        holes.pilot() > 0
            ? " and a pilot of " + tape.size(holes.pilot()) + " in the timber"
            : " and no pilot in the timber";
    blocks.add(
        new Paragraph(
            "Screws "
                + tape.bareSize(screws.diameter())
                + " x "
                + tape.size(screws.length())
                + "; a clearance hole of "
                + tape.size(holes.clearance())
                + " in the sheet"
                + pilot
                + "."));
    blocks.addAll(Listings.coverStrips(checked));
    blocks.addAll(figures.of(ViewKind.INSERT_AND_SEAM, "How an insert sits in the sheet."));
    blocks.addAll(
        figures.of(
            ViewKind.FACET_BACK,
            "Seen from behind, mirrored: flanges and the timber they keep clear of."));
    blocks.addAll(
        figures.of(
            ViewKind.FACET_FRONT,
            "From the front: a slanting cross is a screw, a circle is an insert."));
    return blocks;
  }
}
