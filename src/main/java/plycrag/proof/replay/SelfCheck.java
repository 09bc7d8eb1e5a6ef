package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reads the programs of one face of a sheet, plays them and holds what they make against what is to
 * be made.
 */
public final class SelfCheck {
  private final Abilities abilities;
  private final Bench bench;

  /**
   * Checks the programs of one face.
   *
   * @param abilities what the controller understands
   * @param bench the machine with the sheet on it
   */
  public SelfCheck(Abilities abilities, Bench bench) {
    this.abilities = abilities;
    this.bench = bench;
  }

  /**
   * All that is wrong; nothing if the programs may be released.
   *
   * @param face the sheet and its face, for what no single program lacks
   */
  public List<Fault> faults(String face, Expected expected, List<Program> programs) {
    List<Fault> faults = new ArrayList<>();
    List<Visit> visits = new ArrayList<>();
    for (Program program : inOrder(programs)) {
      ReadProgram read =
          ProgramReader.read(program.name(), program.text(), abilities, program.customs());
      faults.addAll(read.faults());
      zero(program, read).ifPresent(faults::add);
      told(program, read).ifPresent(faults::add);
      lengths(program, read).ifPresent(faults::add);
      ProgramPlay.Played played = ProgramPlay.play(bench, program, read.steps());
      faults.addAll(played.faults());
      visits.addAll(played.visits());
    }
    faults.addAll(made(face, expected, visits));
    faults.addAll(DepthCheck.faults(visits, bench.heights(), expected.sheet()));
    faults.addAll(OrderCheck.faults(expected, visits));
    return List.copyOf(faults);
  }

  /** Programs run in the order of their names. */
  private static List<Program> inOrder(List<Program> programs) {
    return programs.stream().sorted(Comparator.comparing(Program::name)).toList();
  }

  private Optional<Fault> zero(Program program, ReadProgram read) {
    boolean told = !abilities.hasComments() || read.remarks().contains(bench.zero());
    return told
        ? Optional.empty()
        : Optional.of(new Fault(program.name(), 1, "does not say at once: " + bench.zero()));
  }

  /** Where lengths are told, every change of tool is followed by one. */
  private Optional<Fault> lengths(Program program, ReadProgram read) {
    long changes =
        read.steps().stream()
            .filter(step -> step instanceof Step.Change || step instanceof Step.Pause)
            .count();
    long told = read.steps().stream().filter(Step.Length.class::isInstance).count();
    return !abilities.can(Ability.LENGTH_OFFSETS) || program.told().isEmpty() || changes == told
        ? Optional.empty()
        : Optional.of(new Fault(program.name(), 0, "a tool's length is not told"));
  }

  /** Lines may break anywhere between words, and one that some controllers obey begins with -. */
  private Optional<Fault> told(Program program, ReadProgram read) {
    if (!abilities.hasComments() || program.told().isEmpty()) {
      return Optional.empty();
    }
    String asked = plain(program.told());
    String told = plain(read.told().stream().map(line -> line.replaceFirst("^- ", "")).toList());
    return asked.equals(told)
        ? Optional.empty()
        : Optional.of(new Fault(program.name(), 1, "does not tell what it must: " + asked));
  }

  private static String plain(List<String> lines) {
    return String.join(" ", lines).replaceAll(" +", " ").strip();
  }

  private List<Fault> made(String face, Expected expected, List<Visit> visits) {
    List<MadeHole> holes = new ArrayList<>();
    List<Visit> routed = new ArrayList<>();
    for (Visit visit : Boring.joined(visits)) {
      Boring.of(visit, bench.heights()).ifPresentOrElse(holes::add, () -> routed.add(visit));
    }
    List<Fault> faults = new ArrayList<>(HoleCheck.faults(face, expected.holes(), holes));
    faults.addAll(MarkCheck.faults(face, expected.marks(), routed));
    faults.addAll(ContourCheck.faults(face, expected, routed));
    return faults;
  }
}
