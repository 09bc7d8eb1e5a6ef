package plycrag.layout.support;

import java.util.List;
import plycrag.layout.frame.MemberNumbers;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.Tether.Task;

/** Counts what has marks, over all parts of a wall's support. */
final class SupportNumbers {
  private final MemberNumbers members = new MemberNumbers();
  private int joints;
  private int anchors;
  private int tethers;

  /**
   * @param joints the number of the frame's last joint
   */
  SupportNumbers(int joints) {
    this.joints = joints;
  }

  String nextMember(MemberRole role) {
    return members.next(role);
  }

  String nextJoint() {
    joints++;
    return "J" + joints;
  }

  /** How many anchors there are already. */
  int anchors() {
    return anchors;
  }

  /** How many tethers there are already, what is beside each not counted. */
  int tethers() {
    return tethers;
  }

  void count(List<Anchor> moreAnchors, List<Tether> moreTethers) {
    anchors += moreAnchors.size();
    tethers += (int) moreTethers.stream().filter(one -> one.task() == Task.HOLDS).count();
  }
}
