/** The limits that checks hold values against, by name, with unit and source. */
@NullMarked
package deadband.limits;

import org.jspecify.annotations.NullMarked;
