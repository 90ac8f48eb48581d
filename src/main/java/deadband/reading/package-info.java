/** From bytes to located values, or to problems with places. */
@NullMarked
package deadband.reading;

import org.jspecify.annotations.NullMarked;
