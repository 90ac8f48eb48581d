/** The model of example days and years that a setup makes, and their runs. */
@NullMarked
package deadband.days;

import org.jspecify.annotations.NullMarked;
