package plycrag.params;

/**
 * A field of a CSV file.
 *
 * @param spot where it begins
 * @param text without quotation marks and the spaces around it
 */
record CsvField(Spot spot, String text) {
  boolean isBlank() {
    return text.isBlank();
  }
}
