package plycrag.files.dxf;

import java.util.Locale;
import plycrag.document.Xy;
import plycrag.units.Decimal;

/**
 * The grammar: group codes and values, a line each. Knows which tags a version has, so that nobody
 * else need ask: handles, owners and subclass markers are left out where there are none.
 */
final class TagWriter {
  /** Above all fixed handles. */
  private static final int FIRST_FREE_HANDLE = 0x30;

  private static final int DECIMALS = 4;

  private final StringBuilder out = new StringBuilder();
  private final DxfVersion version;
  private int freeHandle = FIRST_FREE_HANDLE;

  TagWriter(DxfVersion version) {
    this.version = version;
  }

  /**
   * Words.
   *
   * @throws IllegalArgumentException if they are not one line of ASCII; a defect of the caller
   */
  TagWriter text(int code, String value) {
    if (value.chars().anyMatch(letter -> letter < ' ' || letter > '~')) {
      throw new IllegalArgumentException("not a tag's value: " + value);
    }
    out.append(code).append('\n').append(value).append('\n');
    return this;
  }

  TagWriter whole(int code, int value) {
    return text(code, Integer.toString(value));
  }

  TagWriter real(int code, double value) {
    return text(code, Decimal.of(value, DECIMALS));
  }

  /** A place in the plane. */
  TagWriter flat(int code, Xy place) {
    return real(code, place.x()).real(code + 10, place.y());
  }

  /** A place in space, on the ground. */
  TagWriter place(int code, Xy place) {
    return flat(code, place).real(code + 20, 0);
  }

  /** A direction or a place off the ground: straight up. */
  TagWriter up(int code) {
    return flat(code, new Xy(0, 0)).real(code + 20, 1);
  }

  /** A handle, or a reference to one. */
  TagWriter handle(int code, int handle) {
    return since2000() ? text(code, Integer.toHexString(handle).toUpperCase(Locale.ROOT)) : this;
  }

  /** A subclass marker. */
  TagWriter marker(String subclass) {
    return since2000() ? text(100, subclass) : this;
  }

  /** Starts a record or an entity with a handle of its own. */
  TagWriter record(String type, int owner) {
    return record(type, freeHandle++, owner);
  }

  /** Starts a record that others refer to. */
  TagWriter record(String type, int handle, int owner) {
    return text(0, type).handle(5, handle).handle(330, owner);
  }

  TagWriter section(String name) {
    return text(0, "SECTION").text(2, name);
  }

  TagWriter endSection() {
    return text(0, "ENDSEC");
  }

  boolean since2000() {
    return version == DxfVersion.R2000;
  }

  /** A handle that nothing has yet. */
  int freeHandle() {
    return freeHandle;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
