package plycrag.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import plycrag.proof.replay.Customs;
import plycrag.wall.machine.ProgramFrame;

/** What a controller wants said around the moves, in the words of the self-check. */
record ControllerCustoms(ProgramFrame frame) {
  /** Of the program that follows so many others of the wall. */
  Customs of(int before) {
    List<String> words = new ArrayList<>(List.of(frame.workOffset().name()));
    if (frame.safeStart()) {
      words.addAll(List.of("G40", "G49", "G80"));
    }
    switch (frame.centres()) {
      case UNSAID -> {}
      case FROM_START -> words.add("G91.1");
      case FROM_ZERO -> words.add("G90.1");
    }
    return new Customs(
        frame.percent(),
        frame.number().map(first -> first + before),
        words,
        frame.beside() != ProgramFrame.Beside.NOTHING,
        park());
  }

  /** Where the spindle is left; empty where it stays. */
  Optional<Coordinate> park() {
    return frame.park().map(park -> new Coordinate(park.x(), park.y()));
  }
}
