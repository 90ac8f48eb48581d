/**
 * What the rules look at: cases derived from a setup, quantities that know where they come from,
 * and the table of limits they are held against.
 */
@NullMarked
package deadband.cases;

import org.jspecify.annotations.NullMarked;
