package plycrag.solve.frame;

import java.util.Map;
import java.util.TreeMap;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/** The loads of a case on the freedoms of a frame. */
final class CaseLoads {
  private final Equations equations;
  private final double[] forces;
  private final double[] moved;
  private final Map<Integer, PieceLoad> pieces = new TreeMap<>();

  CaseLoads(Equations equations, LoadCase loadCase) {
    this.equations = equations;
    this.forces = new double[equations.freedoms()];
    this.moved = new double[equations.freedoms()];
    loadCase.loads().forEach(this::add);
    pieces.forEach(
        (number, load) -> {
          BeamPiece piece = equations.piece(number);
          piece.addOwnForces(load.onEnds(piece), forces);
        });
  }

  private void add(FrameLoad load) {
    if (load instanceof FrameLoad.OnNode one) {
      int node = equations.number(one.node());
      add(node, Freedom.ALONG_X, one.force());
      add(node, Freedom.ABOUT_X, one.moment());
    } else if (load instanceof FrameLoad.Spread one) {
      equations.of(one.beam()).forEach(number -> add(number, one));
    } else if (load instanceof FrameLoad.OnBeam one) {
      add(one);
    } else if (load instanceof FrameLoad.Settlement one) {
      moved[equations.rigid(one)] += one.amount();
    }
  }

  private void add(int node, Freedom first, Vector3 value) {
    int at = FreedomCount.of(node, first);
    forces[at] += value.x();
    forces[at + 1] += value.y();
    forces[at + 2] += value.z();
  }

  private void add(int number, FrameLoad.Spread load) {
    BeamPiece piece = equations.piece(number);
    put(number, on(number).withLine(piece.axes().inward(load.force())));
  }

  private void add(FrameLoad.OnBeam load) {
    for (int number : equations.of(load.beam())) {
      BeamPiece piece = equations.piece(number);
      double at = load.at() - piece.from();
      if (Tolerance.atMost(at, piece.length())) {
        put(number, on(number).with(action(piece, at, load)));
        return;
      }
    }
    throw new IllegalArgumentException("beyond the end of the beam: " + load);
  }

  private static PieceLoad.Action action(BeamPiece piece, double at, FrameLoad.OnBeam load) {
    if (!Tolerance.atLeast(at, 0)) {
      throw new IllegalArgumentException("before the start of the beam: " + load);
    }
    return new PieceLoad.Action(
        at, piece.axes().inward(load.force()), piece.axes().inward(load.moment()));
  }

  private void put(int number, PieceLoad load) {
    pieces.put(number, load);
  }

  /** What acts on an element between its ends. */
  PieceLoad on(int number) {
    return pieces.getOrDefault(number, PieceLoad.NONE);
  }

  /** What acts on each freedom, N or N mm. */
  double[] forces() {
    return forces;
  }

  /** How far supports move of themselves those freedoms that are held, mm or radians. */
  double[] moved(boolean[] held) {
    double[] those = new double[moved.length];
    for (int i = 0; i < those.length; i++) {
      those[i] = held[i] ? moved[i] : 0;
    }
    return those;
  }

  /** How far the support of a freedom moves. */
  double moved(int freedom) {
    return moved[freedom];
  }

  double greatest() {
    return greatest(forces);
  }

  /** The greatest of some values, whatever its sign. */
  static double greatest(double[] values) {
    double greatest = 0;
    for (double value : values) {
      greatest = Math.max(greatest, Math.abs(value));
    }
    return greatest;
  }
}
