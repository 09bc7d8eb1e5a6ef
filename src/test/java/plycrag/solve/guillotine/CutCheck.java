package plycrag.solve.guillotine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Holds a plan against what it promises, from the rectangles alone. */
final class CutCheck {
  private static final double GRID = 1e-6;

  private final Cutting cutting;

  CutCheck(Cutting cutting) {
    this.cutting = cutting;
  }

  /** A rectangle from its lower left to its upper right corner, mm. */
  record Box(double left, double low, double right, double high) {
    static Box of(CutItem item) {
      double width = item.turned() ? item.item().height() : item.item().width();
      double height = item.turned() ? item.item().width() : item.item().height();
      return new Box(item.x(), item.y(), item.x() + width, item.y() + height);
    }

    double area() {
      return Math.max(0, right - left) * Math.max(0, high - low);
    }

    /** The same mirrored at the diagonal, so that one test serves both directions. */
    Box mirrored() {
      return new Box(/* left= */ low, /* low= */ left, /* right= */ high, /* high= */ right);
    }
  }

  void everyItemOnce(List<Item> items, GuillotinePlan plan) {
    List<Item> laid = new ArrayList<>(plan.left());
    plan.sheets().forEach(sheet -> sheet.items().forEach(item -> laid.add(item.item())));
    assertThat(laid).containsExactlyInAnyOrderElementsOf(items);
    assertThat(plan.sheets()).allSatisfy(sheet -> assertThat(sheet.items()).isNotEmpty());
    assertThat(plan.sheets().stream().flatMap(sheet -> sheet.items().stream()))
        .allMatch(item -> item.item().mayTurn() || !item.turned());
  }

  void limitsKept(GuillotinePlan plan) {
    Map<String, Long> used =
        plan.sheets().stream()
            .collect(
                Collectors.groupingBy(
                    sheet -> sheet.kind().name(), TreeMap::new, Collectors.counting()));
    for (CutSheet sheet : plan.sheets()) {
      assertThat(used.get(sheet.kind().name())).isLessThanOrEqualTo(sheet.kind().limit());
    }
  }

  void apartAndInside(CutSheet sheet) {
    List<Box> boxes = sheet.items().stream().map(Box::of).toList();
    Box inside = inside(sheet);
    for (Box box : boxes) {
      assertThat(box.left()).isGreaterThanOrEqualTo(inside.left() - GRID);
      assertThat(box.low()).isGreaterThanOrEqualTo(inside.low() - GRID);
      assertThat(box.right()).isLessThanOrEqualTo(inside.right() + GRID);
      assertThat(box.high()).isLessThanOrEqualTo(inside.high() + GRID);
      assertThat(boxes).allMatch(other -> other.equals(box) || apart(box, other));
    }
    assertThat(boxes).doesNotHaveDuplicates();
  }

  private boolean apart(Box one, Box other) {
    return clear(one, other)
        || clear(other, one)
        || clear(one.mirrored(), other.mirrored())
        || clear(other.mirrored(), one.mirrored());
  }

  private boolean clear(Box left, Box right) {
    return left.right() + cutting.kerf() <= right.left() + GRID;
  }

  /** Looks for a cut of its own, whatever cuts the plan names, until every item stands alone. */
  void separable(CutSheet sheet) {
    assertThat(separable(sheet.items().stream().map(Box::of).toList())).isTrue();
  }

  private boolean separable(List<Box> boxes) {
    return boxes.size() < 2
        || splits(boxes, box -> box)
        || splits(boxes.stream().map(Box::mirrored).toList(), Box::mirrored);
  }

  private boolean splits(List<Box> boxes, Function<Box, Box> back) {
    for (Box last : boxes) {
      List<Box> near =
          boxes.stream().filter(box -> box.right() <= last.right() + GRID).map(back).toList();
      List<Box> far = boxes.stream().filter(box -> clear(last, box)).map(back).toList();
      if (!far.isEmpty() && near.size() + far.size() == boxes.size()) {
        return separable(near) && separable(far);
      }
    }
    return false;
  }

  /** Follows the plan's own cuts: what they free is the items and offcuts to their edges. */
  void cutsTile(CutSheet sheet) {
    double kerfs = kerfs(sheet.whole(), inside(sheet));
    double parts =
        sheet.items().stream().mapToDouble(item -> Box.of(item).area()).sum()
            + sheet.offcuts().stream().mapToDouble(CutCheck::area).sum();
    double whole = inside(sheet).area();
    assertThat(kerfs + parts).isCloseTo(whole, within(whole * 1e-9));
  }

  private double kerfs(Part part, Box room) {
    if (part instanceof Cut cut) {
      return cut.upright()
          ? kerfs(cut, room, box -> box)
          : kerfs(cut, room.mirrored(), Box::mirrored);
    }
    Box own = part instanceof CutItem item ? Box.of(item) : box((Offcut) part);
    assertThat(List.of(own.left(), own.low(), own.right(), own.high()))
        .usingElementComparator((a, b) -> Math.abs(a - b) < GRID ? 0 : Double.compare(a, b))
        .isEqualTo(List.of(room.left(), room.low(), room.right(), room.high()));
    return 0;
  }

  private double kerfs(Cut cut, Box room, Function<Box, Box> back) {
    assertThat(cut.at()).isBetween(room.left(), room.right());
    double end = Math.min(cut.at() + cutting.kerf(), room.right());
    Box near = new Box(room.left(), room.low(), cut.at(), room.high());
    Box far = new Box(end, room.low(), room.right(), room.high());
    double kerf = new Box(cut.at(), room.low(), end, room.high()).area();
    double beyond = cut.far().map(part -> kerfs(part, back.apply(far))).orElse(0.0);
    assertThat(cut.far().isPresent()).isEqualTo(room.right() - end > GRID);
    return kerf + kerfs(cut.near(), back.apply(near)) + beyond;
  }

  static double area(Offcut offcut) {
    return offcut.width() * offcut.height();
  }

  private static Box box(Offcut offcut) {
    return new Box(
        offcut.x(), offcut.y(), offcut.x() + offcut.width(), offcut.y() + offcut.height());
  }

  private Box inside(CutSheet sheet) {
    double trim = cutting.trim();
    return new Box(trim, trim, sheet.kind().width() - trim, sheet.kind().height() - trim);
  }
}
