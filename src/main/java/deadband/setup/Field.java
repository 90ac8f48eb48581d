package deadband.setup;

import org.jspecify.annotations.Nullable;

/**
 * One field of a section: the one place where its name, meaning, kind and default are known.
 *
 * @param name as it stands in the file, unit included
 * @param means the words of the trade for it
 * @param kind what it holds
 * @param position of its component in the section's record
 * @param optional whether the record holds it as a {@link Entered}; a plain section is always there
 * @param assumed the documented default, null where there is none
 * @param asked how it is asked for
 * @param ofType whether a data sheet may say it
 */
public record Field(
    String name,
    String means,
    FieldKind kind,
    int position,
    boolean optional,
    @Nullable Default<?> assumed,
    Asked asked,
    boolean ofType) {}
