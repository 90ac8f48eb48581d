/**
 * The day run: what the settings of one installation do, minute by minute.
 *
 * <p>{@link DayRun} steps the devices of an {@link Installation} through {@link Day}s and comes
 * back with a {@link Result}; a {@link Trace} may watch each {@link Step}. Each device is a small
 * state machine of its own, described by the {@code Spec} record inside it: plain numbers, every
 * default already decided by the caller. The formulas are those of {@code deadband.trade}.
 */
@NullMarked
package deadband.dayrun;

import org.jspecify.annotations.NullMarked;
