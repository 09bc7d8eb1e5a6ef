/**
 * Text to millimetres and back.
 *
 * <p>Inside the program every length is a {@code double} in millimetres. Only this package turns
 * what a person wrote into such a number, and only {@link plycrag.units.Decimal} and {@link
 * plycrag.units.Tape} turn such a number into text that a file or a person receives.
 *
 * <p>Text that a person wrote comes in through {@link plycrag.units.LengthText}, which answers with
 * a value or with words that say what is wrong, never with an exception.
 *
 * <p>Guarantees: no locale, no exponent, no {@code -0}, never {@code NaN}; the same number gives
 * the same text on every machine.
 */
package plycrag.units;
