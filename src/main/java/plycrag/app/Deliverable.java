package plycrag.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import plycrag.book.BuildBook;
import plycrag.book.PartLabels;
import plycrag.check.ApprovedLayout;
import plycrag.check.CheckedLayout;
import plycrag.document.Book;
import plycrag.document.Drawing;
import plycrag.document.DrillProgram;
import plycrag.document.Print;
import plycrag.document.Table;
import plycrag.drawing.CornerDetail;
import plycrag.drawing.CuttingDiagram;
import plycrag.drawing.DrawingSet;
import plycrag.drawing.ExplodedView;
import plycrag.drawing.FacetView;
import plycrag.drawing.FindingTable;
import plycrag.drawing.FoldDetail;
import plycrag.drawing.FrameView;
import plycrag.drawing.GussetView;
import plycrag.drawing.HoleTable;
import plycrag.drawing.LayoutMap;
import plycrag.drawing.MarkingOut;
import plycrag.drawing.PlanView;
import plycrag.drawing.ScrewPointTable;
import plycrag.drawing.SheetCut;
import plycrag.drawing.SheetDetail;
import plycrag.drawing.SheetSawing;
import plycrag.drawing.SheetTemplate;
import plycrag.drawing.SheetView;
import plycrag.drawing.SideView;
import plycrag.drawing.StandingView;
import plycrag.drawing.SupportBack;
import plycrag.drawing.SupportSide;
import plycrag.drawing.Templates;
import plycrag.files.Digest;
import plycrag.files.OutputFile;
import plycrag.files.csv.CsvWriter;
import plycrag.files.dxf.DxfVersion;
import plycrag.files.dxf.DxfWriter;
import plycrag.files.geojson.FeatureMapWriter;
import plycrag.files.html.HtmlWriter;
import plycrag.files.html.LabelWriter;
import plycrag.files.ngc.Dialect;
import plycrag.files.ngc.NgcWriter;
import plycrag.files.pdf.BookWriter;
import plycrag.files.pdf.PdfWriter;
import plycrag.files.svg.SvgWriter;
import plycrag.layout.Face;
import plycrag.layout.FacetLayout;
import plycrag.layout.LaidSheet;
import plycrag.layout.WorkedFace;
import plycrag.machining.DrillPrograms;
import plycrag.machining.ProgramFile;
import plycrag.machining.SetUpSheets;
import plycrag.params.BuyingParameters;
import plycrag.params.OutputParameters;
import plycrag.stock.Costs;
import plycrag.stock.CutList;
import plycrag.stock.FastenerList;
import plycrag.stock.GussetList;
import plycrag.stock.JobFigures;
import plycrag.stock.JointList;
import plycrag.stock.SawList;
import plycrag.stock.SheetList;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;
import plycrag.stock.ToolList;

/** Everything that a wall's folder holds, but for its manifest. */
public final class Deliverable {
  private final CheckedLayout checked;
  private final BuyingParameters buying;
  private final OutputParameters output;
  private final StickPlan plan;
  private final ShoppingList shopping;
  private final DxfVersion dxf;
  private final List<OutputFile> files = new ArrayList<>();
  private final List<DrawingSet.View> views = new ArrayList<>();

  private Deliverable(Design.Judged design) {
    this.checked = design.checked();
    this.buying = design.buying();
    this.output = design.output();
    this.plan = StickPlan.of(checked, design.prices());
    this.shopping = ShoppingList.of(checked, plan, buying, design.prices());
    this.dxf =
        switch (output.dxf()) {
          case R2000 -> DxfVersion.R2000;
          case R12 -> DxfVersion.R12;
        };
  }

  /**
   * The files; of a refused layout no program is among them.
   *
   * @throws IllegalStateException if a program fails its self-check, a defect of its maker
   */
  public static List<OutputFile> of(Design.Judged design) {
    Deliverable deliverable = new Deliverable(design);
    deliverable.addBook();
    deliverable.addLabels();
    deliverable.addDrawings();
    deliverable.addTemplates();
    if (design.checked() instanceof ApprovedLayout approved) {
      deliverable.addPrograms(approved);
      ProgramCheck.require(approved.layout(), deliverable.files);
    }
    deliverable.addLists();
    return List.copyOf(deliverable.files);
  }

  private void addBook() {
    Book book = BuildBook.of(checked, plan, shopping);
    Set<String> marks = book.marks();
    add("index.html", HtmlWriter.write(book, drawing -> SvgWriter.inline(drawing, marks)));
    byte[] printed =
        switch (output.paper()) {
          case A4, A3 -> BookWriter.write(book, 210, 297);
          case LETTER, TABLOID -> BookWriter.write(book, 8.5 * 25.4, 11 * 25.4);
        };
    files.add(new OutputFile("build-book.pdf", printed));
  }

  private void addLabels() {
    add("labels.html", LabelWriter.write(PartLabels.of(checked, plan)));
  }

  private void addDrawings() {
    addView("all-parts", "Exploded view", ExplodedView.of(checked));
    addView("all-parts-back", "Exploded view", ExplodedView.fromBehind(checked));
    addView("plan", "Plan", PlanView.of(checked));
    if (checked.layout().support().isPresent()) {
      addView("standing-front", "Standing", StandingView.fromFront(checked));
      addView("standing-back", "Standing", StandingView.fromBehind(checked));
      addSupport();
    }
    for (FacetLayout facet : checked.layout().facets()) {
      String name = fileName(facet.facet().name());
      addView("facet-" + name + "-front", "Elevation", FacetView.of(checked, facet, Face.FRONT));
      addView("facet-" + name + "-back", "Elevation", FacetView.of(checked, facet, Face.BACK));
      addView("frame-" + name, "Framing elevation", FrameView.of(checked, facet));
    }
    List<List<FacetLayout>> runs = checked.layout().runs();
    for (List<FacetLayout> run : runs) {
      String name = "section-" + fileName(run.get(0).facet().name());
      addView(runs.size() == 1 ? "section" : name, "Section", SideView.of(checked, run));
      for (int level = 1; level < run.size(); level++) {
        String fold = "fold-" + fileName(run.get(level).facet().name());
        addView(fold, "Detail", FoldDetail.of(checked, run.get(level - 1), run.get(level)));
      }
    }
    List<Drawing> corners = CornerDetail.all(checked);
    for (int at = 1; at <= corners.size(); at++) {
      addView("corner-" + at, "Detail", corners.get(at - 1));
    }
    GussetView.all(checked).forEach((mark, view) -> addView("gusset-" + mark, "Detail", view));
    addView("insert-and-seam", "Detail", SheetDetail.of(checked));
    if (!plan.sticks().isEmpty()) {
      addCuttingPlan();
    }
    for (LaidSheet sheet : checked.layout().sheets()) {
      if (SheetSawing.isNeeded(checked, sheet)) {
        addView("cutting-" + sheet.mark(), "Sheet cutting", SheetSawing.of(checked, sheet));
      }
      views.add(
          new DrawingSet.View(
              "sheet-" + sheet.mark(), "Sheet as it lies", SheetView.of(checked, sheet)));
    }
    for (WorkedFace face : checked.layout().faces()) {
      String path = "drawings/" + face.sheet().fileName();
      add(path + ".dxf", DxfWriter.write(SheetCut.of(checked, face), dxf));
      add(path + ".svg", SvgWriter.write(SheetTemplate.of(checked, face)));
    }
    Print print = DrawingSet.of(checked, output.paper(), views);
    files.add(new OutputFile("drawings/drawings.pdf", PdfWriter.write(print)));
  }

  /** What to set the support out from, run by run. */
  private void addSupport() {
    List<List<FacetLayout>> runs = checked.layout().runs();
    for (int number = 0; number < runs.size(); number++) {
      if (SupportSide.isNeeded(checked, number)) {
        List<FacetLayout> run = runs.get(number);
        String name = runs.size() == 1 ? "" : "-" + fileName(run.get(0).facet().name());
        addView("support-side" + name, "Support", SupportSide.of(checked, run));
        addView("support-back" + name, "Support", SupportBack.of(checked, run));
      }
    }
  }

  private void addTemplates() {
    for (Templates.Template template : Templates.of(checked, output)) {
      String path = "templates/" + template.name();
      add(path + ".svg", SvgWriter.write(template.drawing()));
      files.add(new OutputFile(path + ".pdf", PdfWriter.write(template.print())));
    }
  }

  /** Whole as a file, page by page in print. */
  private void addCuttingPlan() {
    addFiles("cutting-plan", CuttingDiagram.of(checked, plan, plan.sticks()));
    CuttingDiagram.pages(checked, plan)
        .forEach(page -> views.add(new DrawingSet.View("cutting-plan", "Cutting diagram", page)));
  }

  private void addView(String name, String type, Drawing drawing) {
    views.add(new DrawingSet.View(name, type, drawing));
    addFiles(name, drawing);
  }

  private void addFiles(String name, Drawing drawing) {
    add("drawings/" + name + ".dxf", DxfWriter.write(drawing, dxf));
    add("drawings/" + name + ".svg", SvgWriter.write(drawing));
  }

  private void addPrograms(ApprovedLayout approved) {
    Dialect dialect = Dialects.of(approved.layout().wall().machine().controller());
    List<ProgramFile> programs = new ArrayList<>();
    for (DrillProgram program : DrillPrograms.of(approved)) {
      String name =
          "sheet-" + program.sheet() + "-" + program.side() + "-t" + program.tool() + ".ngc";
      OutputFile file = OutputFile.text("cnc/" + name, NgcWriter.write(program, dialect));
      files.add(file);
      programs.add(new ProgramFile(program, name, Digest.sha256(file.content())));
    }
    for (SetUpSheets.SetUp sheet : SetUpSheets.of(approved, programs)) {
      String page = HtmlWriter.writeSheet(sheet.page(), SvgWriter::inline);
      add("cnc/sheet-" + sheet.sheet() + "-" + sheet.side() + ".html", page);
    }
  }

  private void addLists() {
    addList("lists/holes.csv", HoleTable.of(checked));
    if (!checked.layout().screwPoints().isEmpty()) {
      addList("lists/screw-points.csv", ScrewPointTable.of(checked));
    }
    addList("lists/cut-list.csv", CutList.of(checked).table(shopping.grade()));
    addList("lists/saw-list.csv", SawList.of(checked).table());
    addList("lists/joints.csv", JointList.of(checked));
    if (!checked.layout().offcuts().gussets().isEmpty()) {
      addList("lists/gussets.csv", GussetList.of(checked));
    }
    addList("lists/cutting-plan.csv", plan.table());
    addList("lists/sheet-plan.csv", SheetList.of(checked));
    addList("lists/fasteners.csv", FastenerList.of(checked, buying.environment()));
    addList("lists/shopping.csv", shopping.table());
    addList("lists/costs.csv", Costs.of(shopping).table());
    addList("lists/tools.csv", ToolList.of(checked));
    JobFigures figures = JobFigures.of(checked.layout(), plan, shopping);
    int inserts = checked.layout().inserts().size();
    addList("lists/figures.csv", figures.table(Costs.of(shopping), inserts));
    addList("lists/marking-out.csv", MarkingOut.of(checked));
    addList("checks/clearance.csv", FindingTable.of(checked));
    add("layout.geojson", FeatureMapWriter.write(LayoutMap.of(checked)));
  }

  private void addList(String path, Table table) {
    add(path, CsvWriter.write(table));
  }

  private void add(String path, String text) {
    files.add(OutputFile.text(path, text));
  }

  private static String fileName(String facet) {
    return facet.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
