/** The command line: one class per command. */
@NullMarked
package deadband.cli;

import org.jspecify.annotations.NullMarked;
