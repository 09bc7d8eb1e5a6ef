package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Print;
import plycrag.drawing.pen.PrintedSet;
import plycrag.drawing.pen.View;
import plycrag.drawing.pen.ViewKind;
import plycrag.layout.sheets.LaidSheet;
import plycrag.wall.Output;

/**
 * What guides a drill by hand: a strip jig for sheets whose holes stand at one pitch, story rods
 * for those whose rows or columns share their readings, a template at true size for the others.
 */
public final class Templates {
  private final CheckedLayout checked;
  private final Output output;

  private Templates(CheckedLayout checked, Output output) {
    this.checked = checked;
    this.output = output;
  }

  /**
   * A template.
   *
   * @param name of its files
   * @param drawing whole
   * @param print on paper
   */
  public record Template(String name, Drawing drawing, Print print) {}

  /** The templates of a wall, one for sheets that are drilled alike. */
  public static List<Template> of(CheckedLayout checked, Output output) {
    return new Templates(checked, output).all();
  }

  /** A jig and the sheets that it is for. */
  private record Jig(JigPlan plan, List<LaidSheet> sheets) {}

  private List<Template> all() {
    List<Template> templates = new ArrayList<>();
    List<Jig> jigs = new ArrayList<>();
    for (TemplateSheet sheet : TemplateSheet.of(checked.layout())) {
      boolean auto = output.templates() == Output.Templates.AUTO;
      Optional<JigPlan> plan = auto ? JigPlan.of(sheet.first(), sheet.datum()) : Optional.empty();
      plan.ifPresentOrElse(
          one -> join(new Jig(one, sheet.sheets()), jigs),
          () -> templates.add(auto ? rodsOrTiles(sheet) : tiled(sheet)));
    }
    jigs.forEach(jig -> templates.add(drawn(jig)));
    return templates;
  }

  /** Adds a jig, or makes another serve its sheets too. */
  private static void join(Jig jig, List<Jig> jigs) {
    for (int at = 0; at < jigs.size(); at++) {
      Optional<JigPlan> both = jigs.get(at).plan().with(jig.plan());
      if (both.isPresent()) {
        List<LaidSheet> sheets = new ArrayList<>(jigs.get(at).sheets());
        sheets.addAll(jig.sheets());
        jigs.set(at, new Jig(both.get(), sheets));
        return;
      }
    }
    jigs.add(jig);
  }

  private Template rodsOrTiles(TemplateSheet sheet) {
    return RodPlan.of(sheet.first(), sheet.datum())
        .map(plan -> printed("rods-" + low(sheet.first()), StoryRods.of(checked, plan, sheet)))
        .orElseGet(() -> tiled(sheet));
  }

  private static String low(LaidSheet sheet) {
    return sheet.mark().toLowerCase(Locale.ROOT);
  }

  private Template tiled(TemplateSheet sheet) {
    SheetTiles tiles = new SheetTiles(checked, sheet);
    return new Template(sheet.name(), tiles.whole(), tiles.tiled(output.templatePaper()));
  }

  private Template drawn(Jig jig) {
    List<LaidSheet> ordered =
        checked.layout().sheets().stream().filter(jig.sheets()::contains).toList();
    String words = TemplateSheet.words(ordered);
    return printed("jig-" + low(ordered.get(0)), StripJig.of(checked, jig.plan(), words));
  }

  private Template printed(String name, Drawing drawing) {
    View view = new View(ViewKind.JIG, name, "", () -> drawing);
    return new Template(name, drawing, PrintedSet.of(checked, output.paper(), List.of(view)));
  }
}
