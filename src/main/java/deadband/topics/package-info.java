/** The facts of every topic of the rules, collected. */
@NullMarked
package deadband.topics;

import org.jspecify.annotations.NullMarked;
