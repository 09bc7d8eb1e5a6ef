package plycrag.check.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.Joint;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.JointPath;
import plycrag.solve.frame.FrameSolution;

/** The worst of every check of one joint so far, and the greatest force through it. */
final class JointEnvelope {
  private static final double KILO = 1000;

  private final Joint joint;
  private final List<JointCheck> checks;
  private final String needs;
  private final double[] worst;
  private final double[] demand;
  private final double[] capacity;
  private final String[] cases;
  private double force;
  private String loads = "";

  JointEnvelope(Joint joint, JointChecks all) {
    this.joint = joint;
    this.checks = all.of(joint);
    this.needs = all.needs(joint);
    this.worst = new double[checks.size()];
    this.demand = new double[checks.size()];
    this.capacity = new double[checks.size()];
    this.cases = new String[checks.size()];
  }

  /** Takes what goes through it on one way in. */
  void add(JointPath path, FrameSolution solution, Combination combination, String loadCase) {
    if (!combination.isUltimate()) {
      return;
    }
    JointPath.Passed passed = path.passed(solution);
    Vector3 through = passed.force();
    if (through.length() > force) {
      force = through.length();
      loads = loadCase;
    }
    for (int i = 0; i < checks.size(); i++) {
      double asked = checks.get(i).demand(path, passed);
      double bears = checks.get(i).capacity(combination);
      if (asked / bears > worst[i]) {
        worst[i] = asked / bears;
        demand[i] = asked;
        capacity[i] = bears;
        cases[i] = loadCase;
      }
    }
  }

  /** Its lines: the worst of each kind of check, or what it needs. */
  List<StructureLine> lines() {
    if (checks.isEmpty()) {
      return List.of(
          StructureLine.needing(
              joint.mark(), "joint, force through it", loads, force / KILO, "kN", needs));
    }
    List<StructureLine> lines = new ArrayList<>();
    for (int i = 0; i < checks.size(); i++) {
      if (isWorst(i)) {
        JointCheck check = checks.get(i);
        lines.add(
            new StructureLine(
                joint.mark(),
                check.words(),
                check.clause(),
                cases[i] == null ? "" : cases[i],
                demand[i] / KILO,
                cases[i] == null ? Optional.empty() : Optional.of(capacity[i] / KILO),
                "kN",
                Optional.of(worst[i]),
                check.status(worst[i]),
                check.source(),
                Optional.empty()));
      }
    }
    return lines;
  }

  /** Of checks of the same words, as those of both gussets of a pair, the first that is worst. */
  private boolean isWorst(int number) {
    for (int i = 0; i < checks.size(); i++) {
      boolean same = checks.get(i).words().equals(checks.get(number).words());
      if (same && (worst[i] > worst[number] || (worst[i] == worst[number] && i < number))) {
        return false;
      }
    }
    return true;
  }
}
