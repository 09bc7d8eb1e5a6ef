package plycrag.app.watch;

import plycrag.files.json.JsonText;

/**
 * What open pages are told.
 *
 * @param revision how many there were, with this one
 * @param text as server-sent events have it
 */
record News(int revision, String text) {

  /** There is another wall to be shown. */
  static News wall(int revision) {
    return of(revision, "wall", "{}");
  }

  /** The last save is no wall. */
  static News fault(int revision, String words) {
    return of(revision, "fault", JsonText.object(json -> json.writeStringField("words", words)));
  }

  private static News of(int revision, String event, String data) {
    return new News(revision, "id: " + revision + "\nevent: " + event + "\ndata: " + data + "\n\n");
  }
}
