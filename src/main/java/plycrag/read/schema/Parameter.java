package plycrag.read.schema;

/**
 * The declaration of one key.
 *
 * @param key its name within its table
 * @param kind what values it takes
 * @param standard what holds where it is left out
 * @param meaning what it is, in a sentence; for clearances also why the default
 * @param <T> what is made of its value
 */
public record Parameter<T>(String key, Kind<T> kind, DefaultValue<T> standard, String meaning) {}
