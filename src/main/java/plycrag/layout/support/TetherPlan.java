package plycrag.layout.support;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Vector3;
import plycrag.layout.support.Tether.Task;
import plycrag.wall.Wall;
import plycrag.wall.room.GivenSupport.Hold;

/**
 * What holds a hinged run on the outer studs of its uppermost facet: one on each, a second beside
 * it that works by itself, and where these cannot push, something stiff that keeps the facet from
 * lifting. On posts each goes straight to the post behind it, one below the other; on a ledger side
 * by side, off its ends.
 */
final class TetherPlan {
  /** From one to the next, on the facet and where they are anchored (a choice), mm. */
  private static final double APART = 100;

  /** On a post, less: what is held further down the facet must not come above its anchor, mm. */
  private static final double APART_ON_POST = 80;

  private final Wall wall;
  private final RunSite run;

  TetherPlan(Wall wall, RunSite run) {
    this.wall = wall;
    this.run = run;
  }

  /**
   * All of them, from the left.
   *
   * @param before how many studs are held already
   */
  List<Tether> tethers(int before) {
    List<Tether> tethers = new ArrayList<>();
    List<Double> studs = run.swings() ? run.upperStuds() : List.of();
    if (!studs.isEmpty()) {
      add(studs.get(0), 1, before + 1, tethers);
      add(studs.get(studs.size() - 1), -1, before + 2, tethers);
    }
    return tethers;
  }

  /**
   * @param inward toward the middle of the wall, 1 or -1 in x of the run
   */
  private void add(double stud, int inward, int number, List<Tether> tethers) {
    tethers.add(tether("TE" + number, Task.HOLDS, stud, 0, inward));
    tethers.add(tether("TE" + number + "b", Task.BACKUP, stud, 1, inward));
    if (run.asked().hinge().hold() != Hold.STRUTS) {
      tethers.add(tether("LK" + number, Task.LOCK, stud, 2, inward));
    }
  }

  private Tether tether(String mark, Task task, double stud, int place, int inward) {
    double middle = stud + wall.frame().breadth() / 2;
    double u = middle - run.top().plane().left();
    double v = run.attach() - place * APART;
    return new Tether(mark, task, u, v, run.floorAxes().toRoom(anchor(middle, place, inward)));
  }

  private Vector3 anchor(double middle, int place, int inward) {
    double height = run.anchorHeight();
    if (run.asked().hasPosts()) {
      return new Vector3(
          run.outerStation(inward) + wall.frame().breadth() / 2,
          run.buildingFace(),
          height - place * APART_ON_POST);
    }
    double along = middle + (inward * place) * APART;
    return new Vector3(along, run.buildingFace() + run.asked().timber().ledger().breadth(), height);
  }
}
