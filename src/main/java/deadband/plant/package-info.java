/** What several topics derive: programmes, tank temperatures, thresholds and what bounds them. */
@NullMarked
package deadband.plant;

import org.jspecify.annotations.NullMarked;
