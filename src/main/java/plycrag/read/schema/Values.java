package plycrag.read.schema;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import plycrag.read.text.SourcePlace;
import plycrag.units.LengthUnit;

/**
 * What the file says in one table.
 *
 * @param path the table's full name, {@code sheet} or {@code facet[1]}
 * @param unit the unit whose defaults hold
 * @param entries by key; one that could not be read has no value
 * @param inner what it says in tables within this one, by their names; what is left out is missing
 */
public record Values(
    String path, LengthUnit unit, Map<String, Entry<?>> entries, Map<String, Values> inner) {
  /** Copies the maps. */
  public Values {
    entries = Map.copyOf(entries);
    inner = Map.copyOf(inner);
  }

  /** Those of a table in which no other stands. */
  public Values(String path, LengthUnit unit, Map<String, Entry<?>> entries) {
    this(path, unit, entries, Map.of());
  }

  /**
   * An entry of the file.
   *
   * @param place where its key stands
   * @param value what was read, empty if it was refused
   */
  public record Entry<T>(SourcePlace place, Optional<T> value) {}

  /** The same with a value where the file gives none, as if it stood where another key stands. */
  public <T> Values or(Parameter<T> parameter, T value, SourcePlace place) {
    Map<String, Entry<?>> more = new HashMap<>(entries);
    more.putIfAbsent(parameter.key(), new Entry<>(place, Optional.of(value)));
    return new Values(path, unit, more, inner);
  }

  /** The same with what other values of such a table say where these say nothing. */
  public Values or(Values others) {
    Map<String, Entry<?>> more = new HashMap<>(others.entries);
    more.putAll(entries);
    return new Values(path, unit, more, inner);
  }

  /** What the file says in a table within this one, if it has it. */
  public Optional<Values> inner(TableSpec table) {
    return Optional.ofNullable(inner.get(table.name()));
  }

  /** Whether the file has the key, with a good value or a bad one. */
  public boolean isGiven(Parameter<?> parameter) {
    return entries.containsKey(parameter.key());
  }

  /** Whether the value may be compared with others: given and good, or left out. */
  public boolean isSound(Parameter<?> parameter) {
    return !isGiven(parameter) || entries.get(parameter.key()).value().isPresent();
  }

  /** Where the key stands; the start of the file if it does not. */
  public SourcePlace place(Parameter<?> parameter) {
    return isGiven(parameter) ? entries.get(parameter.key()).place() : SourcePlace.START;
  }

  /** The full key. */
  public String key(Parameter<?> parameter) {
    return path + "." + parameter.key();
  }

  /** The value, if the file gives a good one. */
  @SuppressWarnings("unchecked")
  public // an entry was read by the kind of the parameter with its key
  <T> Optional<T> given(Parameter<T> parameter) {
    return isGiven(parameter)
        ? (Optional<T>) entries.get(parameter.key()).value()
        : Optional.empty();
  }

  /** The value, or what holds where it is left out; empty if that follows from other values. */
  <T> Optional<T> find(Parameter<T> parameter) {
    return given(parameter).or(() -> parameter.standard().in(unit));
  }

  /**
   * The value of a parameter whose default does not depend on others.
   *
   * @throws java.util.NoSuchElementException if it does; a defect of the caller
   */
  public <T> T get(Parameter<T> parameter) {
    return find(parameter).orElseThrow();
  }
}
