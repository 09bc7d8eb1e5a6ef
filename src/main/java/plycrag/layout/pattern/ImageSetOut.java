package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import plycrag.solve.setout.AskedLine;
import plycrag.solve.setout.Bay;
import plycrag.solve.setout.CrossingMember;
import plycrag.solve.setout.ForbiddenStretch;
import plycrag.solve.setout.Mode;
import plycrag.solve.setout.Result;
import plycrag.solve.setout.SetLine;
import plycrag.solve.setout.SetOut;
import plycrag.solve.setout.Task;
import plycrag.units.Tape;

/**
 * Sets out columns as their image in a mirror would be, so that the image of a wall is set out as
 * the image of what that has. The mirror turns the marking grid into itself.
 */
final class ImageSetOut {
  private final Task task;

  /** The sum of a place and of its image, mm. */
  private final double about;

  /**
   * @param task of all columns
   * @param width of the facet, mm
   * @param tape what it is set out with
   */
  ImageSetOut(Task task, double width, Tape tape) {
    this.task = task;
    this.about = tape.snapUp(width);
  }

  /** The best that a mode allows. */
  Result best(Mode mode) {
    Result image = SetOut.of(image(), mode);
    List<SetLine> lines = new ArrayList<>();
    for (int line = 0; line < task.lines().size(); line++) {
      SetLine set = image.lines().get(task.lines().size() - 1 - line);
      OptionalDouble place =
          set.place().isPresent()
              ? OptionalDouble.of(about - set.place().getAsDouble())
              : OptionalDouble.empty();
      lines.add(new SetLine(task.lines().get(line), place, set.blockers()));
    }
    List<List<Double>> bays = new ArrayList<>();
    for (List<Double> bay : image.bays()) {
      bays.add(0, reversed(bay.stream().map(place -> about - place).toList()));
    }
    return new Result(lines, bays, image.cost());
  }

  private Task image() {
    return new Task(
        reversed(
            task.lines().stream()
                .map(line -> new AskedLine(line.name(), about - line.wanted()))
                .toList()),
        task.keepouts().stream()
            .map(
                keepout ->
                    new ForbiddenStretch(
                        keepout.name(), about - keepout.high(), about - keepout.low()))
            .toList(),
        members(task.fixed()),
        reversed(task.bays().stream().map(this::bay).toList()),
        task.limits());
  }

  private Bay bay(Bay bay) {
    int after = task.fixed().size() - 2 - bay.after();
    return new Bay(after, bay.greatestSpacing(), members(bay.members()));
  }

  private List<CrossingMember> members(List<CrossingMember> members) {
    return reversed(
        members.stream()
            .map(
                member ->
                    new CrossingMember(
                        member.name(), about - member.centre(), member.halfBreadth()))
            .toList());
  }

  private static <T> List<T> reversed(List<T> things) {
    List<T> reversed = new ArrayList<>(things);
    Collections.reverse(reversed);
    return reversed;
  }
}
