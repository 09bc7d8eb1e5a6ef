package plycrag.read.text;

/**
 * A field of a CSV file.
 *
 * @param place where it begins
 * @param text without quotation marks and the spaces around it
 */
public record CsvField(SourcePlace place, String text) {
  public boolean isBlank() {
    return text.isBlank();
  }
}
