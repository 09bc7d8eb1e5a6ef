package plycrag.proof.replay;

/** Words that exclude each other on one line; of most groups one stays in force (NISTIR 6556). */
enum ModalGroup {
  MOTION,
  PLANE,
  DISTANCE,
  ARC_CENTRE,
  FEED_MODE,
  UNITS,
  CYCLE_RETURN,
  OFFSET,
  TOOL_LENGTH,
  COMPENSATION,
  BESIDE,
  WAIT,
  SPINDLE,
  TOOL,
  STOP
}
