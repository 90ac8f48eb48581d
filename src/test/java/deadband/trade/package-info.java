/** Tests of the trade's formulas, and the list of what they are held against. */
@NullMarked
package deadband.trade;

import org.jspecify.annotations.NullMarked;
