/** The relay's control loop, the phases it sees and the tank's limit, as the setup enters them. */
@NullMarked
package deadband.loop;

import org.jspecify.annotations.NullMarked;
