package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Caution;
import plycrag.document.Book.Step;
import plycrag.document.Book.Taken;
import plycrag.drawing.room.StepView;
import plycrag.layout.standing.BuildOrder;
import plycrag.layout.standing.BuildStep;
import plycrag.layout.standing.BuildStep.Work;
import plycrag.units.Decimal;

/** The steps of building, each with its picture, what it takes, what is done and what ends it. */
final class StepPages {
  private final CheckedLayout checked;
  private final StepWords words;
  private final StepTakes takes;
  private final List<BuildStep> steps;

  StepPages(CheckedLayout checked) {
    this.checked = checked;
    this.words = new StepWords(checked.layout());
    this.takes = new StepTakes(checked);
    this.steps = BuildOrder.of(checked.layout());
  }

  /** All steps in order. */
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    for (int at = 0; at < steps.size(); at++) {
      blocks.add(page(at));
    }
    return blocks;
  }

  private Block page(int at) {
    BuildStep step = steps.get(at);
    String heading = words.heading(step);
    List<Taken> taken = new ArrayList<>(takes.of(step));
    people(step).ifPresent(taken::add);
    return new Step(
        at + 1,
        heading,
        StepView.of(checked, steps, at, "Step " + (at + 1) + ": " + heading),
        taken,
        words.sentences(step),
        words.checks(step),
        caution(step));
  }

  /** Who lifts what is heaviest. */
  private Optional<Taken> people(BuildStep step) {
    double perPerson = checked.layout().wall().room().handling().perPerson();
    return step.heaviest() > perPerson / 2
        ? Optional.of(
            new Taken(
                Integer.toString(step.people(perPerson)),
                "people: the heaviest is "
                    + Decimal.of(step.heaviest(), 0)
                    + " kg, at "
                    + Decimal.of(perPerson, 0)
                    + " kg a person"))
        : Optional.empty();
  }

  /** A caution stands once, before the first step that it is about. */
  private Optional<Caution> caution(BuildStep step) {
    boolean isFirst =
        steps.stream()
            .filter(one -> warned(one.work()) == warned(step.work()))
            .findFirst()
            .filter(step::equals)
            .isPresent();
    return isFirst ? Optional.ofNullable(text(warned(step.work()))) : Optional.empty();
  }

  /** What a caution is about. */
  private enum Danger {
    SAWING,
    LIFTING,
    HINGE,
    MATTING,
    NONE
  }

  private static Danger warned(Work work) {
    return switch (work) {
      case MARK_OUT -> Danger.SAWING;
      case RAISE, SIDE_FRAMES, BUILD_IN_PLACE, SHEETS -> Danger.LIFTING;
      case HOLD -> Danger.HINGE;
      case MATS -> Danger.MATTING;
      default -> Danger.NONE;
    };
  }

  private static Caution text(Danger danger) {
    return switch (danger) {
      case SAWING -> Cautions.timber();
      case LIFTING -> Cautions.lifting();
      case HINGE -> Cautions.hinge();
      case MATTING -> Cautions.matting();
      case NONE -> null;
    };
  }
}
