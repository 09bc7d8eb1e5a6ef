package plycrag.app;

/** What a starter leaves to its user, each with the way in which an answer changes its text. */
enum Question {
  WIDTH("Width of the wall"),
  ANGLE("Angle from vertical in degrees, above zero leaning out"),
  CEILING("Height of the ceiling above the floor");

  private final String words;

  Question(String words) {
    this.words = words;
  }

  /** How a person is asked. */
  String words() {
    return words;
  }

  /** The text with an answer in it. */
  StarterText answer(StarterText text, String typed) {
    return switch (this) {
      case WIDTH -> text.with("width", typed);
      case ANGLE -> text.withAngle(typed);
      case CEILING -> text.with("ceiling", typed);
    };
  }
}
