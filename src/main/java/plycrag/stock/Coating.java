package plycrag.stock;

import plycrag.wall.buying.MaterialWishes.Environment;

/** How steel is kept from rusting (common practice, no source). */
final class Coating {
  private Coating() {}

  /** In the merchant's words. */
  static String words(Environment environment) {
    return switch (environment) {
      case INDOORS -> "zinc-plated at least";
      case DAMP -> "hot-dip galvanized or stainless";
      case OUTDOORS -> "stainless steel; the timber's treatment must suit it";
    };
  }
}
