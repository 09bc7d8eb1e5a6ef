package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.List;

/** Tries every way to cut a small task: each piece into every stick that is begun, or a new one. */
final class BruteForce {
  private final CuttingTask task;
  private final List<Long> pieces = new ArrayList<>();
  private long cost = Long.MAX_VALUE;
  private long waste = Long.MAX_VALUE;

  private BruteForce(CuttingTask task) {
    this.task = task;
    for (CuttingTask.Piece piece : task.pieces()) {
      for (int i = 0; i < piece.demand(); i++) {
        pieces.add(piece.length());
      }
    }
  }

  /** Least cost, and the least waste at that cost; none if nothing holds the pieces. */
  static List<Long> costAndWaste(CuttingTask task) {
    BruteForce search = new BruteForce(task);
    search.place(0, new ArrayList<>(), new ArrayList<>());
    return search.cost == Long.MAX_VALUE ? List.of() : List.of(search.cost, search.waste);
  }

  private void place(int next, List<Integer> sticks, List<List<Long>> held) {
    if (next == pieces.size()) {
      rate(sticks, held);
      return;
    }
    for (int stick = 0; stick < sticks.size(); stick++) {
      List<Long> inside = held.get(stick);
      inside.add(pieces.get(next));
      if (fits(sticks.get(stick), inside)) {
        place(next + 1, sticks, held);
      }
      inside.remove(inside.size() - 1);
    }
    for (int kind = 0; kind < task.stocks().size(); kind++) {
      int wanted = kind;
      List<Long> alone = new ArrayList<>(List.of(pieces.get(next)));
      long taken = sticks.stream().filter(one -> one == wanted).count();
      if (taken < task.stocks().get(kind).limit() && fits(kind, alone)) {
        sticks.add(kind);
        held.add(alone);
        place(next + 1, sticks, held);
        sticks.remove(sticks.size() - 1);
        held.remove(held.size() - 1);
      }
    }
  }

  private boolean fits(int kind, List<Long> inside) {
    long needed = 2 * task.trim() + task.kerf() * (inside.size() - 1);
    for (long length : inside) {
      needed += length;
    }
    return needed <= task.stocks().get(kind).length();
  }

  private void rate(List<Integer> sticks, List<List<Long>> held) {
    long price = 0;
    long rest = 0;
    for (int stick = 0; stick < sticks.size(); stick++) {
      price += task.stocks().get(sticks.get(stick)).price();
      rest += task.stocks().get(sticks.get(stick)).length();
      for (long length : held.get(stick)) {
        rest -= length;
      }
    }
    if (price < cost || (price == cost && rest < waste)) {
      cost = price;
      waste = rest;
    }
  }
}
