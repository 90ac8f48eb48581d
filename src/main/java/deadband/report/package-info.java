/** A judgement as people and programs read it: one renderer per format. */
@NullMarked
package deadband.report;

import org.jspecify.annotations.NullMarked;
