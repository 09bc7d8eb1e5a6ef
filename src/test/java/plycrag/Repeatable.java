package plycrag;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Tries every property on the same samples on every machine, so that a build fails for what was
 * changed and for nothing else. The profile {@code fuzz} tries others, and as many times more as it
 * is told.
 */
public final class Repeatable implements AroundPropertyHook {
  private static final int TIMES = Integer.getInteger("plycrag.fuzz", 0);

  /** What jqwik tries where a property does not say. */
  private static final int DEFAULT_TRIES = 1000;

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    PropertyAttributes attributes = context.attributes();
    if (TIMES > 0) {
      attributes.setTries(TIMES * attributes.tries().orElse(DEFAULT_TRIES));
    } else if (attributes.seed().isEmpty()) {
      attributes.setSeed(Integer.toString(context.targetMethod().toGenericString().hashCode()));
    }
    return property.execute();
  }
}
