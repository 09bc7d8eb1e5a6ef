package plycrag.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Categories of characters are those of the Unicode Standard, chapter 4.5. */
class PrintableTest {

  @Test
  void lettersOfAnyLanguageArePrintable() {
    assertThat(Printable.isOneLine("Søndre naust, Ελλάς 12 東 🛶")).isTrue();
  }

  @Test
  void controlsAreNot() {
    assertThat(Printable.isOneLine("a\nb")).isFalse();
    assertThat(Printable.isOneLine("a\u001b[31m")).isFalse();
    assertThat(Printable.isOneLine("a\u202eb")).isFalse();
    assertThat(Printable.isOneLine("a\u2028b")).isFalse();
    assertThat(Printable.isOneLine("a\ud83d")).isFalse();
  }

  @Test
  void foreignTextIsMaskedAndShortened() {
    assertThat(Printable.quoted("a\u001b[31m")).isEqualTo("\"a?[31m\"");
    assertThat(Printable.quoted("oar ".repeat(20))).isEqualTo("\"" + "oar ".repeat(10) + "…\"");
  }
}
