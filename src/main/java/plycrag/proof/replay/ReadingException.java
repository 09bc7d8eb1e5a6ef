package plycrag.proof.replay;

/** A line that cannot be obeyed; its message is a fault's sentence. */
final class ReadingException extends Exception {
  private static final long serialVersionUID = 1L;

  ReadingException(String sentence) {
    super(sentence);
  }

  static void require(boolean holds, String otherwise) throws ReadingException {
    if (!holds) {
      throw new ReadingException(otherwise);
    }
  }
}
