package plycrag.check.structure;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plycrag.geometry.Vector3;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.MemberLine;
import plycrag.solve.frame.FrameSolution;
import plycrag.solve.frame.MemberForces;
import plycrag.solve.frame.NodeMotion;

/** The worst of every check of one member so far. */
final class MemberEnvelope {
  /**
   * The worst of a check.
   *
   * @param utilisation as the check has it
   * @param actions under which
   * @param resistance against which
   * @param loadCase the loads
   */
  record Worst(double utilisation, Actions actions, MemberResistance resistance, String loadCase) {}

  /**
   * How far it bends.
   *
   * @param amount from the line between its outermost stations, mm
   * @param loadCase the loads
   */
  record Bent(double amount, String loadCase) {}

  private final MemberLine member;
  private final Map<Combination, MemberResistance> resistances = new EnumMap<>(Combination.class);
  private final Map<MemberCheck, Worst> worst = new LinkedHashMap<>();
  private Bent bent = new Bent(0, "");

  MemberEnvelope(MemberLine member, TimberValues timber) {
    this.member = member;
    for (Combination one : Combination.values()) {
      resistances.put(one, MemberResistance.of(member, timber, one));
    }
  }

  MemberLine member() {
    return member;
  }

  /** Takes a solution in; its pieces may differ from one way to take the wall to another. */
  void add(MemberLine line, FrameSolution solution, Combination combination, String loadCase) {
    if (combination.isUltimate()) {
      for (MemberLine.Piece piece : line.pieces()) {
        for (MemberForces.Station station : solution.forces(piece.beam()).stations()) {
          add(station, resistances.get(combination), loadCase);
        }
      }
    } else {
      bend(line, solution, loadCase);
    }
  }

  private void add(MemberForces.Station station, MemberResistance resistance, String loadCase) {
    Actions actions = Actions.of(station.forces(), resistance.isFlat());
    for (MemberCheck check : MemberCheck.ALL) {
      double utilisation = check.utilisation(actions, resistance);
      Worst before = worst.get(check);
      if (before == null || utilisation > before.utilisation()) {
        worst.put(check, new Worst(utilisation, actions, resistance, loadCase));
      }
    }
  }

  /** Its pieces have the same axes, so that their motions add up. */
  private void bend(MemberLine line, FrameSolution solution, String loadCase) {
    List<MemberLine.Piece> pieces = line.pieces();
    Vector3 first = motion(solution, pieces.get(0), 0);
    MemberLine.Piece last = pieces.get(pieces.size() - 1);
    Vector3 end = motion(solution, last, last.to() - last.from());
    double whole = line.to() - line.from();
    for (MemberLine.Piece piece : pieces) {
      double length = piece.to() - piece.from();
      for (double at : new double[] {length / 2, length}) {
        double part = (piece.from() - line.from() + at) / whole;
        Vector3 chord = first.times(1 - part).plus(end.times(part));
        Vector3 off = motion(solution, piece, at).minus(chord);
        double amount = new Vector3(0, off.y(), off.z()).length();
        if (amount > bent.amount()) {
          bent = new Bent(amount, loadCase);
        }
      }
    }
  }

  private static Vector3 motion(FrameSolution solution, MemberLine.Piece piece, double at) {
    NodeMotion motion = solution.forces(piece.beam()).motion(at);
    return motion.translation();
  }

  /** The worst of each check, in the order of the checks. */
  Map<MemberCheck, Worst> worst() {
    return worst;
  }

  /** The most that it bends in use. */
  Bent bent() {
    return bent;
  }
}
