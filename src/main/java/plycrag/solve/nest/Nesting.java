package plycrag.solve.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plycrag.solve.guillotine.CutSheet;
import plycrag.solve.guillotine.Cutting;
import plycrag.solve.guillotine.Guillotine;
import plycrag.solve.guillotine.GuillotinePlan;
import plycrag.solve.guillotine.Item;
import plycrag.solve.guillotine.StockKind;
import plycrag.solve.nest.DraftSheet.Spot;

/** Lays blanks on sheets. The package's page tells how. */
public final class Nesting {
  /** Looks for each item: enough for a wall's few dozen pieces, and quick. */
  private static final int LOOKS = 5_000;

  /** So many numbers of pairs are tried. */
  private static final int PAIRINGS = 8;

  private final NestTask task;
  private final Cutting cutting;
  private final List<StockKind> stock;

  private Nesting(NestTask task) {
    this.task = task;
    this.cutting = new Cutting(task.gap(), task.margin());
    this.stock =
        IntStream.range(0, task.kinds().size())
            .mapToObj(at -> stock(task.kinds().get(at), String.valueOf(at)))
            .toList();
  }

  private static StockKind stock(SheetKind kind, String name) {
    return new StockKind(name, kind.length(), kind.width(), kind.price(), kind.count());
  }

  /**
   * The sheets in the order of their first blanks.
   *
   * @param task what is to be laid on what
   */
  public static List<StockSheet> of(NestTask task) {
    return new Nesting(task).sheets();
  }

  private List<StockSheet> sheets() {
    List<Bundle> bundles =
        IntStream.range(0, task.blanks().size())
            .mapToObj(at -> Bundle.of(task.blanks().get(at), at, task.manner().mirrored()))
            .toList();
    List<Bundle> housed = housed(bundles.stream().filter(this::fits).toList());
    List<DraftSheet> drafts = new ArrayList<>();
    bundles.stream()
        .filter(bundle -> !housed.contains(bundle))
        .map(this::alone)
        .forEach(drafts::add);
    drafts.addAll(nested(housed));
    drafts.sort(Comparator.comparingInt(DraftSheet::number));
    return IntStream.range(0, drafts.size())
        .mapToObj(at -> drafts.get(at).marked("S" + (at + 1), task.blanks(), task.manner().lying()))
        .toList();
  }

  /** Those for which there are sheets; some may fit none but a kind of which there are few. */
  private List<Bundle> housed(List<Bundle> bundles) {
    if (bundles.stream().allMatch(bundle -> fits(bundle, SheetKind.UNLIMITED))) {
      return bundles;
    }
    List<Item> left = lookedFor(bundles).left();
    return left.isEmpty()
        ? bundles
        : housed(bundles.stream().filter(bundle -> !left.contains(item(bundle))).toList());
  }

  private boolean fits(Bundle bundle) {
    return fits(bundle, 1);
  }

  /** Whether there is a kind of sheet on which it fits, and so many of it. */
  private boolean fits(Bundle bundle, int count) {
    return stock.stream()
        .anyMatch(
            kind ->
                kind.limit() >= count
                    && (fits(bundle.width(), bundle.height(), kind)
                        || (task.manner().mayTurn()
                            && fits(bundle.height(), bundle.width(), kind))));
  }

  private boolean fits(double width, double height, StockKind kind) {
    double margins = 2 * cutting.trim();
    return width <= kind.width() - margins && height <= kind.height() - margins;
  }

  /** What leaves no margin, or is larger than any sheet: a sheet of its own, as it stands. */
  private DraftSheet alone(Bundle bundle) {
    return new DraftSheet(
        task.kinds().get(0),
        List.of(new Spot(bundle, 0, 0, false)),
        new SheetCutting(List.of(), List.of()));
  }

  private List<DraftSheet> nested(List<Bundle> bundles) {
    List<Bundle> best = bundles;
    GuillotinePlan plan = plan(bundles);
    for (Pairs pairs : couldSave(bundles, plan) ? pairs(bundles) : List.<Pairs>of()) {
      GuillotinePlan other = plan(pairs.bundles());
      if (isCheaper(other, plan)) {
        plan = other;
        best = pairs.bundles();
      }
    }
    return drafts(plan, best);
  }

  private List<Pairs> pairs(List<Bundle> bundles) {
    return new Pairs(task, bundles, this::fits).ofAnyNumber(PAIRINGS);
  }

  /** Whether fewer sheets could hold what the blanks themselves cover. */
  private boolean couldSave(List<Bundle> bundles, GuillotinePlan plan) {
    double covered =
        bundles.stream()
            .mapToDouble(bundle -> task.blanks().get(bundle.number()).outline().getArea())
            .sum();
    double sheet = stock.get(0).width() * stock.get(0).height();
    return stock.size() > 1 || covered <= sheet * (plan.sheets().size() - 1);
  }

  private GuillotinePlan plan(List<Bundle> bundles) {
    GuillotinePlan plan = lookedFor(bundles);
    if (!plan.left().isEmpty()) {
      throw new IllegalStateException("no sheet is left for " + plan.left());
    }
    return plan;
  }

  private GuillotinePlan lookedFor(List<Bundle> bundles) {
    return Guillotine.plan(bundles.stream().map(this::item).toList(), stock, cutting, LOOKS);
  }

  private Item item(Bundle bundle) {
    return new Item(name(bundle), bundle.width(), bundle.height(), task.manner().mayTurn());
  }

  private static String name(Bundle bundle) {
    return String.valueOf(bundle.number());
  }

  private static boolean isCheaper(GuillotinePlan one, GuillotinePlan other) {
    return one.price() == other.price()
        ? one.sheets().size() < other.sheets().size()
        : one.price() < other.price();
  }

  private List<DraftSheet> drafts(GuillotinePlan plan, List<Bundle> bundles) {
    Map<String, Bundle> byName =
        bundles.stream().collect(Collectors.toMap(Nesting::name, Function.identity()));
    List<DraftSheet> drafts = new ArrayList<>();
    for (CutSheet sheet : plan.sheets()) {
      DraftSheet draft = draft(sheet, byName);
      drafts.add(
          drafts.stream().filter(draft::isLike).findFirst().map(draft::laidAs).orElse(draft));
    }
    return drafts;
  }

  private DraftSheet draft(CutSheet sheet, Map<String, Bundle> byName) {
    List<Spot> spots =
        sheet.items().stream()
            .map(laid -> new Spot(byName.get(laid.item().id()), laid.x(), laid.y(), laid.turned()))
            .toList();
    SheetKind kind = task.kinds().get(stock.indexOf(sheet.kind()));
    return new DraftSheet(kind, spots, CutReader.of(sheet, cutting));
  }
}
