package plycrag.proof.replay;

import java.util.List;

/**
 * A program's text, read.
 *
 * @param steps what the controller does; only as far as there is no fault
 * @param remarks what its first lines say to a person, in capitals
 * @param told what all its comments say, in order, in capitals
 * @param faults all that cannot be obeyed
 */
record ReadProgram(List<Step> steps, List<String> remarks, List<String> told, List<Fault> faults) {
  /** Copies the lists. */
  ReadProgram {
    steps = List.copyOf(steps);
    remarks = List.copyOf(remarks);
    told = List.copyOf(told);
    faults = List.copyOf(faults);
  }
}
