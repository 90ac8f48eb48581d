/** Where a derived value comes from: what was entered, what was assumed, what is missing. */
@NullMarked
package deadband.provenance;

import org.jspecify.annotations.NullMarked;
