package plycrag.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.drawing.flat.CuttingDiagram;
import plycrag.drawing.flat.FacetView;
import plycrag.drawing.flat.FrameView;
import plycrag.drawing.flat.SheetDetail;
import plycrag.drawing.flat.SheetSawing;
import plycrag.drawing.flat.SheetView;
import plycrag.drawing.pen.View;
import plycrag.drawing.pen.ViewKind;
import plycrag.drawing.room.CornerDetail;
import plycrag.drawing.room.ExplodedView;
import plycrag.drawing.room.FoldDetail;
import plycrag.drawing.room.GussetView;
import plycrag.drawing.room.PlanView;
import plycrag.drawing.room.SideView;
import plycrag.drawing.room.StandingView;
import plycrag.drawing.room.SupportBack;
import plycrag.drawing.room.SupportSide;
import plycrag.drawing.template.SheetCut;
import plycrag.drawing.template.SheetTemplate;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.sheets.LaidGusset;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.SheetFace;
import plycrag.layout.sheets.WorkedFace;
import plycrag.stock.StickPlan;
import plycrag.wall.Fold;

/**
 * The one list of a wall's views, in the order of the printed set: the folder writes them, the set
 * and the book put them on pages, and whatever holds for every view is tested on it.
 *
 * <p>What is printed true size to drill by hand is no view and has a list of its own, {@link
 * Templates}: it follows from the paper that the user prints on, may serve several sheets, and its
 * pages are tiles that no scale fits.
 */
public final class Portfolio {
  private final CheckedLayout checked;
  private final Layout layout;
  private final StickPlan plan;
  private final List<View> views = new ArrayList<>();
  private final Map<ViewKind, List<View>> byKind = new EnumMap<>(ViewKind.class);

  private Portfolio(CheckedLayout checked, StickPlan plan) {
    this.checked = checked;
    this.layout = checked.layout();
    this.plan = plan;
  }

  /**
   * The views of a wall; nothing is drawn yet.
   *
   * @param plan of the wall's sticks
   */
  public static Portfolio of(CheckedLayout checked, StickPlan plan) {
    Portfolio portfolio = new Portfolio(checked, plan);
    portfolio.addAll();
    return portfolio;
  }

  /** All views; a sheet's cut and its template share a name, and else each has its own. */
  public List<View> views() {
    return List.copyOf(views);
  }

  /** The views of a kind. */
  public List<View> views(ViewKind kind) {
    return List.copyOf(byKind.getOrDefault(kind, List.of()));
  }

  /**
   * The views of a kind that are of one thing.
   *
   * @param subject as in {@link View#subject}
   */
  public List<View> views(ViewKind kind, String subject) {
    return views(kind).stream().filter(view -> view.subject().equals(subject)).toList();
  }

  private void addAll() {
    add(ViewKind.EXPLODED_FRONT, "all-parts", () -> ExplodedView.of(checked));
    add(ViewKind.EXPLODED_BACK, "all-parts-back", () -> ExplodedView.fromBehind(checked));
    add(ViewKind.PLAN, "plan", () -> PlanView.of(checked));
    if (layout.support().isPresent()) {
      add(ViewKind.STANDING_FRONT, "standing-front", () -> StandingView.fromFront(checked));
      add(ViewKind.STANDING_BACK, "standing-back", () -> StandingView.fromBehind(checked));
      addSupport();
    }
    layout.facets().forEach(this::addFacet);
    layout.runs().forEach(this::addRun);
    addCorners();
    GussetView.alike(checked).forEach(this::addGusset);
    add(ViewKind.INSERT_AND_SEAM, "insert-and-seam", () -> SheetDetail.of(checked));
    addCuttingPlan();
    layout.sheets().forEach(this::addSheet);
    layout.faces().forEach(this::addFace);
  }

  /** What to set the support out from, run by run. */
  private void addSupport() {
    List<List<FacetLayout>> runs = layout.runs();
    for (int number = 0; number < runs.size(); number++) {
      if (SupportSide.isNeeded(checked, number)) {
        List<FacetLayout> run = runs.get(number);
        String lowest = lowest(run);
        String name = runs.size() == 1 ? "" : "-" + fileName(lowest);
        add(
            ViewKind.SUPPORT_SIDE,
            "support-side" + name,
            lowest,
            () -> SupportSide.of(checked, run));
        add(
            ViewKind.SUPPORT_BACK,
            "support-back" + name,
            lowest,
            () -> SupportBack.of(checked, run));
      }
    }
  }

  private void addFacet(FacetLayout facet) {
    String subject = facet.facet().name();
    String name = fileName(subject);
    add(
        ViewKind.FACET_FRONT,
        "facet-" + name + "-front",
        subject,
        () -> FacetView.of(checked, facet, SheetFace.FRONT));
    add(
        ViewKind.FACET_BACK,
        "facet-" + name + "-back",
        subject,
        () -> FacetView.of(checked, facet, SheetFace.BACK));
    if (!facet.members().isEmpty()) {
      add(ViewKind.FRAME, "frame-" + name, subject, () -> FrameView.of(checked, facet));
    }
  }

  private void addRun(List<FacetLayout> run) {
    String lowest = lowest(run);
    String name = layout.runs().size() == 1 ? "" : "-" + fileName(lowest);
    add(ViewKind.SECTION, "section" + name, lowest, () -> SideView.of(checked, run));
    for (int level = 1; level < run.size(); level++) {
      FacetLayout lower = run.get(level - 1);
      FacetLayout upper = run.get(level);
      String subject = upper.facet().name();
      add(
          ViewKind.FOLD,
          "fold-" + fileName(subject),
          subject,
          () -> FoldDetail.of(checked, lower, upper));
    }
  }

  private void addCorners() {
    int number = 0;
    for (FacetLayout right : layout.facets()) {
      for (Fold fold : right.facet().folds(Fold.Place.LEFT)) {
        if (!right.facet().isLevel(fold)) {
          number++;
          add(
              ViewKind.CORNER,
              "corner-" + number,
              right.facet().name(),
              () -> CornerDetail.of(checked, right, fold));
        }
      }
    }
  }

  private void addGusset(List<LaidGusset> alike) {
    String mark = alike.get(0).gusset().mark();
    add(ViewKind.GUSSET, "gusset-" + mark, mark, () -> GussetView.of(checked, alike));
  }

  private void addCuttingPlan() {
    if (!plan.sticks().isEmpty()) {
      add(
          new View(
              ViewKind.CUTTING_PLAN,
              "cutting-plan",
              () -> CuttingDiagram.of(checked, plan, plan.sticks()),
              () -> CuttingDiagram.pages(checked, plan)));
    }
  }

  private void addSheet(LaidSheet sheet) {
    String mark = sheet.mark();
    if (SheetSawing.isNeeded(checked, sheet)) {
      add(ViewKind.SHEET_SAWING, "cutting-" + mark, mark, () -> SheetSawing.of(checked, sheet));
    }
    add(ViewKind.SHEET, "sheet-" + mark, mark, () -> SheetView.of(checked, sheet));
  }

  private void addFace(WorkedFace face) {
    String mark = face.sheet().mark();
    String name = face.sheet().fileName();
    add(ViewKind.SHEET_CUT, name, mark, () -> SheetCut.of(checked, face));
    add(ViewKind.SHEET_TEMPLATE, name, mark, () -> SheetTemplate.of(checked, face));
  }

  private void add(ViewKind kind, String name, Supplier<Drawing> maker) {
    add(kind, name, "", maker);
  }

  private void add(ViewKind kind, String name, String subject, Supplier<Drawing> maker) {
    add(new View(kind, name, subject, maker));
  }

  private void add(View view) {
    views.add(view);
    byKind.computeIfAbsent(view.kind(), unseen -> new ArrayList<>()).add(view);
  }

  private static String lowest(List<FacetLayout> run) {
    return run.get(0).facet().name();
  }

  private static String fileName(String facet) {
    return facet.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
