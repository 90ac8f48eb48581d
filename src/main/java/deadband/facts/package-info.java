/**
 * What rules look at: conditions and facts, read in the reading in force, and what stands behind
 * them.
 */
@NullMarked
package deadband.facts;

import org.jspecify.annotations.NullMarked;
