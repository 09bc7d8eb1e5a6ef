package plycrag.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plycrag.book.BuildBook;
import plycrag.book.PartLabels;
import plycrag.book.WallInSpace;
import plycrag.check.ApprovedLayout;
import plycrag.check.CheckedLayout;
import plycrag.document.Book;
import plycrag.document.DrillProgram;
import plycrag.document.PaperSize;
import plycrag.document.Print;
import plycrag.document.Table;
import plycrag.document.WallPage;
import plycrag.drawing.Portfolio;
import plycrag.drawing.pen.OperationLayers;
import plycrag.drawing.pen.PrintedSet;
import plycrag.drawing.pen.View;
import plycrag.drawing.pen.ViewKind;
import plycrag.drawing.room.WallModel;
import plycrag.drawing.template.SheetCut;
import plycrag.drawing.template.Templates;
import plycrag.files.Digest;
import plycrag.files.OutputFile;
import plycrag.files.csv.CsvWriter;
import plycrag.files.dxf.DxfVersion;
import plycrag.files.dxf.DxfWriter;
import plycrag.files.geojson.FeatureMapWriter;
import plycrag.files.gltf.SceneWriter;
import plycrag.files.html.HtmlWriter;
import plycrag.files.html.LabelWriter;
import plycrag.files.ngc.Dialect;
import plycrag.files.ngc.NgcWriter;
import plycrag.files.pdf.BookWriter;
import plycrag.files.pdf.PdfWriter;
import plycrag.files.space.WallPageWriter;
import plycrag.files.svg.SvgWriter;
import plycrag.layout.Revision;
import plycrag.layout.sheets.WorkedFace;
import plycrag.lists.FindingTable;
import plycrag.lists.HoleTable;
import plycrag.lists.LayoutMap;
import plycrag.lists.MarkingOut;
import plycrag.lists.ScrewPointTable;
import plycrag.lists.StructureList;
import plycrag.machining.DrillPrograms;
import plycrag.machining.ProgramFile;
import plycrag.machining.SetUpSheets;
import plycrag.stock.CutList;
import plycrag.stock.FastenerList;
import plycrag.stock.GussetList;
import plycrag.stock.HardwareList;
import plycrag.stock.JointList;
import plycrag.stock.SawList;
import plycrag.stock.SheetList;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;
import plycrag.stock.ToolList;
import plycrag.wall.Output;
import plycrag.wall.buying.MaterialWishes;

/** Everything that a wall's folder holds, but for its manifest and the inputs that it keeps. */
public final class Deliverable {
  private final CheckedLayout checked;
  private final MaterialWishes buying;
  private final Output output;
  private final Bill bill;
  private final StickPlan plan;
  private final ShoppingList shopping;
  private final DxfVersion dxf;
  private final FolderPart part;
  private final List<OutputFile> files = new ArrayList<>();

  private Deliverable(Design.Judged design, FolderPart part) {
    this.checked = design.checked();
    this.buying = design.buying();
    this.output = design.output();
    this.part = part;
    this.bill = Bill.of(design);
    this.plan = bill.plan();
    this.shopping = bill.shopping();
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
    return of(design, FolderPart.whole());
  }

  /**
   * The files of a part; what it surely leaves out is not even made.
   *
   * @throws IllegalStateException if a program fails its self-check, a defect of its maker
   */
  static List<OutputFile> of(Design.Judged design, FolderPart part) {
    Deliverable deliverable = new Deliverable(design, part);
    deliverable.addPages();
    if (part.mayTakeOf("templates")) {
      deliverable.addTemplates();
    }
    if (part.mayTakeOf("cnc")) {
      deliverable.addCheckedPrograms();
    }
    deliverable.addLists();
    return deliverable.files.stream().filter(file -> part.takes(file.path())).toList();
  }

  /**
   * The programs and their set-up sheets alone; none of a refused layout.
   *
   * @throws IllegalStateException if a program fails its self-check, a defect of its maker
   */
  static List<OutputFile> programs(Design.Judged design) {
    Deliverable deliverable = new Deliverable(design, FolderPart.whole());
    deliverable.addCheckedPrograms();
    return List.copyOf(deliverable.files);
  }

  /** Whatever shows views; nothing that comes later holds them. */
  private void addPages() {
    Portfolio portfolio = Portfolio.of(checked, plan);
    if (part.mayTake(List.of("index.html", "build-book.pdf"))) {
      addBook(portfolio);
    }
    addLabels();
    if (part.mayTakeOf("drawings")) {
      addDrawings(portfolio);
      addSheetCuts();
    }
  }

  private void addBook(Portfolio portfolio) {
    Book book = BuildBook.of(checked, plan, shopping, portfolio);
    Set<String> marks = book.marks();
    add("index.html", HtmlWriter.write(book, drawing -> SvgWriter.inline(drawing, marks)));
    byte[] printed =
        switch (output.paper()) {
          case A4, A3 -> BookWriter.write(book, PaperSize.A4);
          case LETTER, TABLOID -> BookWriter.write(book, PaperSize.LETTER);
        };
    files.add(new OutputFile("build-book.pdf", printed));
  }

  private void addLabels() {
    add("labels.html", LabelWriter.write(PartLabels.of(checked, plan)));
  }

  private void addDrawings(Portfolio portfolio) {
    for (View view : portfolio.views()) {
      String path = "drawings/" + view.name();
      if (view.kind().isForCad() && view.kind() != ViewKind.SHEET_CUT) {
        add(path + ".dxf", DxfWriter.write(view.drawing(), dxf));
      }
      if (view.kind().isPicture()) {
        add(path + ".svg", SvgWriter.write(view.drawing()));
      }
    }
    Print print = PrintedSet.of(checked, output.paper(), portfolio.views());
    files.add(new OutputFile("drawings/drawings.pdf", PdfWriter.write(print)));
  }

  /** For a shop, with the layers that it asks for. */
  private void addSheetCuts() {
    OperationLayers layers = new OperationLayers(output.layers());
    String revision = Revision.of(checked.layout());
    for (WorkedFace face : checked.layout().faces()) {
      add(
          "drawings/" + face.sheet().fileName() + ".dxf",
          DxfWriter.write(SheetCut.of(checked, face, layers, revision), dxf));
    }
  }

  private void addTemplates() {
    for (Templates.Template template : Templates.of(checked, output)) {
      String path = "templates/" + template.name();
      add(path + ".svg", SvgWriter.write(template.drawing()));
      files.add(new OutputFile(path + ".pdf", PdfWriter.write(template.print())));
    }
  }

  private void addCheckedPrograms() {
    if (checked instanceof ApprovedLayout approved) {
      addPrograms(approved);
      ProgramRelease.require(approved.layout(), files);
    }
  }

  private void addPrograms(ApprovedLayout approved) {
    Dialect dialect = Dialects.of(approved.layout().wall().machine().equipment().controller());
    List<ProgramFile> programs = new ArrayList<>();
    for (DrillProgram program : DrillPrograms.of(approved)) {
      String name = fileName(program);
      OutputFile file =
          OutputFile.text(
              "cnc/" + name, NgcWriter.write(program, dialect.forProgram(programs.size())));
      files.add(file);
      programs.add(new ProgramFile(program, name, Digest.sha256(file.content())));
    }
    for (SetUpSheets.SetUp sheet : SetUpSheets.of(approved, programs)) {
      String page = HtmlWriter.writeSheet(sheet.page(), SvgWriter::inline);
      add("cnc/sheet-" + sheet.sheet() + "-" + sheet.side() + ".html", page);
    }
  }

  /** In two digits, so that names stand in the order in which programs run. */
  private static String fileName(DrillProgram program) {
    String place = (program.place() < 10 ? "0" : "") + program.place();
    return "sheet-" + program.sheet() + "-" + program.side() + "-t" + place + ".ngc";
  }

  private void addLists() {
    addList("lists/holes.csv", HoleTable.of(checked));
    if (!checked.layout().screwPoints().isEmpty()) {
      addList("lists/screw-points.csv", ScrewPointTable.of(checked));
    }
    addList("lists/cut-list.csv", CutList.of(checked).table(shopping.grade()));
    addList("lists/saw-list.csv", SawList.of(checked).table());
    addList("lists/joints.csv", JointList.of(checked));
    addList("lists/hardware.csv", HardwareList.of(checked));
    if (!checked.layout().offcuts().gussets().isEmpty()) {
      addList("lists/gussets.csv", GussetList.of(checked));
    }
    addList("lists/cutting-plan.csv", plan.table());
    addList("lists/sheet-plan.csv", SheetList.of(checked));
    addList("lists/fasteners.csv", FastenerList.of(checked, buying.environment()));
    addList("lists/shopping.csv", shopping.table());
    addList("lists/costs.csv", bill.costs().table());
    addList("lists/tools.csv", ToolList.of(checked));
    int inserts = checked.layout().inserts().size();
    addList("lists/figures.csv", bill.figures().table(bill.costs(), inserts));
    addList("lists/marking-out.csv", MarkingOut.of(checked));
    addList("checks/clearance.csv", FindingTable.of(checked));
    if (!checked.structure().lines().isEmpty()) {
      addList("checks/structure.csv", StructureList.of(checked));
    }
    add("layout.geojson", FeatureMapWriter.write(LayoutMap.of(checked)));
    if (part.mayTake(List.of("model.glb", "model.html"))) {
      addModel();
    }
  }

  private void addModel() {
    byte[] model = SceneWriter.write(WallModel.of(checked));
    files.add(new OutputFile("model.glb", model));
    if (output.modelPage() && part.takes("model.html")) {
      WallPage page = WallInSpace.of(checked, bill.figures(), bill.costs());
      add("model.html", WallPageWriter.write(page, model));
    }
  }

  private void addList(String path, Table table) {
    add(path, CsvWriter.write(table));
  }

  private void add(String path, String text) {
    files.add(OutputFile.text(path, text));
  }
}
